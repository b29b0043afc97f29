package org.shopclime.heat;

import java.util.Arrays;

/** The modes of all chains of a network, one behind the other. Made once and only read. */
final class Modes {

  /**
   * Modes that are stepped together; chains are filled up to whole groups with modes that neither
   * hold nor give anything.
   */
  static final int GROUP = 4;

  final Network network;

  /** First mode of each chain, and behind the last one the number of all modes. */
  final int[] start;

  /** Chain of each group. */
  final int[] chainOfGroup;

  final double[] rate;
  final double[] left;
  final double[] right;
  final double[] stored;

  /** Direct answers of the faces of each chain, K/W. */
  final double[] leftToLeft;

  final double[] leftToRight;
  final double[] rightToRight;

  private final ChainModes[] chains;

  /**
   * The modes of a network.
   *
   * @param network the network
   * @param shaped whether a state is to be handed over from another network or to one
   */
  Modes(Network network, boolean shaped) {
    this.network = network;
    int count = network.chains();
    chains = new ChainModes[count];
    start = new int[count + 1];
    for (int k = 0; k < count; k++) {
      chains[k] = ChainModes.of(network, k, shaped);
      start[k + 1] = start[k] + (chains[k].count() + GROUP - 1) / GROUP * GROUP;
    }
    chainOfGroup = new int[start[count] / GROUP];
    for (int k = 0; k < count; k++) {
      Arrays.fill(chainOfGroup, start[k] / GROUP, start[k + 1] / GROUP, k);
    }
    rate = new double[start[count]];
    Arrays.fill(rate, 1);
    left = new double[start[count]];
    right = new double[start[count]];
    stored = new double[start[count]];
    leftToLeft = new double[count];
    leftToRight = new double[count];
    rightToRight = new double[count];
    for (int k = 0; k < count; k++) {
      int modes = chains[k].count();
      System.arraycopy(chains[k].rate, 0, rate, start[k], modes);
      System.arraycopy(chains[k].left, 0, left, start[k], modes);
      System.arraycopy(chains[k].right, 0, right, start[k], modes);
      System.arraycopy(chains[k].stored, 0, stored, start[k], modes);
      leftToLeft[k] = chains[k].leftToLeft;
      leftToRight[k] = chains[k].leftToRight;
      rightToRight[k] = chains[k].rightToRight;
    }
  }

  int count() {
    return rate.length;
  }

  /**
   * The same temperatures in the modes of a network that differs in films only.
   *
   * @param from modes whose sizes are known
   * @param sizes those sizes
   * @param drives what drives the ends there, W, left and right of chain after chain
   * @param into set to the sizes of these modes
   * @throws IllegalArgumentException if the nodes differ
   */
  void takeOver(Modes from, double[] sizes, double[] drives, double[] into) {
    if (from.chains.length != chains.length) {
      throw new IllegalArgumentException("the networks differ in their chains");
    }
    for (int k = 0; k < chains.length; k++) {
      double[] nodes = from.chains[k].nodes(sizes, from.start[k], drives[2 * k], drives[2 * k + 1]);
      chains[k].take(nodes, into, start[k]);
    }
  }
}
