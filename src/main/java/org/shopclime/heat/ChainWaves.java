package org.shopclime.heat;

/**
 * How the ends of all chains answer to what drives them through a day that repeats, wave by wave.
 * An end e answers to an end f of its chain by the kinds of {@link ModeWave}, the same way from f
 * to e.
 */
final class ChainWaves {

  /** Pairs of ends of a chain. */
  static final int LEFT_LEFT = 0;

  static final int LEFT_RIGHT = 1;
  static final int RIGHT_RIGHT = 2;

  private static final int PAIRS = 3;
  private static final int COUNT = Waves.COUNT;
  private static final int LENGTH = ModeWave.KINDS * COUNT;

  /** By chain, pair, kind and wave, K/W; of left to left only where the left end sees a room. */
  final double[] re;

  final double[] im;

  /** Steady answer of each left face to its own drive, K/W. */
  final double[] steadyLeft;

  ChainWaves(Network network) {
    int chains = network.chains();
    re = new double[chains * PAIRS * LENGTH];
    im = new double[re.length];
    steadyLeft = new double[chains];
    ModeWave mode = new ModeWave();
    for (int chain = 0; chain < chains; chain++) {
      ChainModes modes = ChainModes.of(network, chain, false);
      boolean roomLeft = network.endRoom[2 * chain] >= 0;
      steadyLeft[chain] = modes.leftToLeft;
      direct(at(chain, LEFT_LEFT), modes.leftToLeft);
      direct(at(chain, LEFT_RIGHT), modes.leftToRight);
      direct(at(chain, RIGHT_RIGHT), modes.rightToRight);
      for (int m = 0; m < modes.count(); m++) {
        double left = modes.left[m];
        double right = modes.right[m];
        mode.set(modes.rate[m]);
        steadyLeft[chain] += left * left / modes.rate[m];
        if (roomLeft) {
          add(at(chain, LEFT_LEFT), left * left, mode);
        }
        add(at(chain, LEFT_RIGHT), left * right, mode);
        add(at(chain, RIGHT_RIGHT), right * right, mode);
      }
    }
  }

  /** Where the answers of a pair begin. */
  static int at(int chain, int pair) {
    return (chain * PAIRS + pair) * LENGTH;
  }

  private void direct(int at, double answer) {
    for (int k = 0; k < COUNT; k++) {
      re[at + k] = answer;
      re[at + ModeWave.Q * COUNT + k] = answer;
    }
  }

  private void add(int at, double weight, ModeWave mode) {
    for (int i = 0; i < LENGTH; i++) {
      re[at + i] += weight * mode.re[i];
      im[at + i] += weight * mode.im[i];
    }
  }
}
