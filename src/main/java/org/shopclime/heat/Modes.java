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
   * The same temperatures in the modes of a network that differs in films only; modes that stand
   * for several are left at 0.
   *
   * @param from modes whose sizes are known
   * @param sizes those sizes
   * @param into sizes of these modes
   * @throws IllegalArgumentException if the nodes differ
   */
  void takeOver(Modes from, double[] sizes, double[] into) {
    if (from.chains.length != chains.length) {
      throw new IllegalArgumentException("the networks differ in their chains");
    }
    for (int k = 0; k < chains.length; k++) {
      for (int m = 0; m < chains[k].count(); m++) {
        double[] mine = chains[k].shapes[m];
        double sum = 0;
        for (int n = 0; mine.length > 0 && n < from.chains[k].count(); n++) {
          double[] theirs = from.chains[k].shapes[n];
          sum += theirs.length == 0 ? 0 : sizes[from.start[k] + n] * product(mine, theirs);
        }
        into[start[k] + m] = sum;
      }
    }
  }

  /** Sets the modes of a chain that stand for several to where steady drives lead them. */
  void settle(int chain, double leftDrive, double rightDrive, double[] into) {
    for (int m = start[chain]; m < start[chain] + chains[chain].count(); m++) {
      if (chains[chain].shapes[m - start[chain]].length == 0) {
        into[m] = (left[m] * leftDrive + right[m] * rightDrive) / rate[m];
      }
    }
  }

  private static double product(double[] one, double[] other) {
    if (one.length != other.length) {
      throw new IllegalArgumentException("the networks differ in their nodes");
    }
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
