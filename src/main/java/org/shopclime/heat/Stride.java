package org.shopclime.heat;

/**
 * All that a length of step makes of the modes of a network: made once, and only read but for the
 * factors of its {@link ModeCore}.
 *
 * <p>Ends are numbered as in {@link Network}. The answer of one end's face to the drives of both
 * ends of its chain is told by its mean (0) and its tilt (1) over the step, as are the drives.
 */
final class Stride {

  final double seconds;

  /**
   * What each group of modes does and takes, group after group; the figures of its modes stand side
   * by side in each of these places.
   */
  final double[] groups;

  /** What is left of a mode. */
  static final int DECAY = 0;

  /**
   * What a drive of mean or tilt 1 W at either end leaves in a mode. Over the length of the step it
   * is the mean, or less than nothing the tilt, of that end's face by a mode that starts at 1.
   */
  static final int LEFT = Modes.GROUP;

  static final int LEFT_TILT = 2 * Modes.GROUP;
  static final int RIGHT = 3 * Modes.GROUP;
  static final int RIGHT_TILT = 4 * Modes.GROUP;

  /** Figures of one group. */
  static final int OF_GROUP = 5 * Modes.GROUP;

  /** Mean of a face under a mean drive, K/W, by chain: left to left, across, right to right. */
  final double[][] meanByMean;

  /** Mean under a tilted drive; the tilt under a mean drive is its negative. */
  final double[][] meanByTilt;

  final double[][] tiltByTilt;

  /** The same by end: mean of a face under a mean drive at it and at the other end, K/W. */
  final double[] own;

  final double[] beyond;

  /** Mean under a tilted drive there. */
  final double[] ownTilted;

  final double[] beyondTilted;

  final ModeCore core;

  Stride(Modes modes, double seconds) {
    this.seconds = Check.positive("length of a step, s", seconds);
    Network network = modes.network;
    groups = new double[modes.chainOfGroup.length * OF_GROUP];
    meanByMean = new double[3][network.chains()];
    meanByTilt = new double[3][network.chains()];
    tiltByTilt = new double[3][network.chains()];
    for (int k = 0; k < network.chains(); k++) {
      direct(modes, k);
      for (int m = modes.start[k]; m < modes.start[k + 1]; m++) {
        add(modes, k, m);
      }
    }
    own = byEnd(meanByMean[0], meanByMean[2]);
    beyond = byEnd(meanByMean[1], meanByMean[1]);
    ownTilted = byEnd(meanByTilt[0], meanByTilt[2]);
    beyondTilted = byEnd(meanByTilt[1], meanByTilt[1]);
    core = core(network);
  }

  private static double[] byEnd(double[] left, double[] right) {
    double[] ends = new double[2 * left.length];
    for (int k = 0; k < left.length; k++) {
      ends[2 * k] = left[k];
      ends[2 * k + 1] = right[k];
    }
    return ends;
  }

  private void direct(Modes modes, int k) {
    meanByMean[0][k] = modes.leftToLeft[k];
    meanByMean[1][k] = modes.leftToRight[k];
    meanByMean[2][k] = modes.rightToRight[k];
    for (int way = 0; way < 3; way++) {
      tiltByTilt[way][k] = meanByMean[way][k] / 3;
    }
  }

  private void add(Modes modes, int k, int m) {
    ModeStep step = ModeStep.of(modes.rate[m] * seconds);
    double left = modes.left[m];
    double right = modes.right[m];
    int at = m / Modes.GROUP * OF_GROUP + m % Modes.GROUP;
    groups[at + DECAY] = step.decay();
    groups[at + LEFT] = seconds * left * step.mean();
    groups[at + LEFT_TILT] = -seconds * left * step.tilt();
    groups[at + RIGHT] = seconds * right * step.mean();
    groups[at + RIGHT_TILT] = -seconds * right * step.tilt();
    double[] products = {left * left, left * right, right * right};
    for (int way = 0; way < 3; way++) {
      double weight = seconds * products[way];
      meanByMean[way][k] += weight * step.meanOfSteady();
      meanByTilt[way][k] += weight * step.meanOfTilted();
      tiltByTilt[way][k] += weight * step.tiltOfTilted();
    }
  }

  private ModeCore core(Network network) {
    int rooms = network.rooms();
    // Air in the first half of the places, stars in the second.
    int size = 4 * rooms;
    double[] all = new double[size * size];
    for (int r = 0; r < rooms; r++) {
      double storing = network.airCapacity[r] / seconds;
      int mean = 2 * r;
      int tilt = 2 * r + 1;
      all[mean * size + mean] += storing;
      all[mean * size + tilt] += storing;
      all[tilt * size + mean] -= storing;
      all[tilt * size + tilt] += storing;
      if (!network.hasStar[r]) {
        for (int i = 0; i < 2; i++) {
          int star = 2 * rooms + 2 * r + i;
          all[star * size + star] = 1;
          all[star * size + 2 * r + i] = -1;
        }
      }
    }
    for (int l = 0; l < network.linkRoom.length; l++) {
      int mean = 2 * network.linkRoom[l];
      all[mean * size + mean] += network.linkConductance[l];
      all[(mean + 1) * size + mean + 1] += network.linkConductance[l] / 3;
    }
    for (int e = 0; e < network.endRoom.length; e++) {
      if (network.endRoom[e] >= 0) {
        own(network, e, all);
        answer(network, e, e, e % 2 == 0 ? 0 : 2, all);
        if (network.endRoom[e ^ 1] >= 0) {
          answer(network, e, e ^ 1, 1, all);
        }
      }
    }
    return new ModeCore(
        rooms,
        part(all, size, 0, 0),
        part(all, size, 0, 1),
        part(all, size, 1, 0),
        part(all, size, 1, 1));
  }

  /** What air and star lose to a face by being as warm as they are. */
  private static void own(Network network, int e, double[] all) {
    int rooms = network.rooms();
    int size = 4 * rooms;
    int air = 2 * network.endRoom[e];
    int star = 2 * rooms + air;
    all[air * size + air] += network.endConvective[e];
    all[(air + 1) * size + air + 1] += network.endConvective[e] / 3;
    all[star * size + star] += network.endRadiant[e];
    all[(star + 1) * size + star + 1] += network.endRadiant[e] / 3;
  }

  /** What the face at end e gives to its room by what the room at end f does to it. */
  private void answer(Network network, int e, int f, int way, double[] all) {
    int size = 4 * network.rooms();
    double[] gives = {network.endConvective[e], network.endRadiant[e]};
    double[] takes = {network.endConvective[f], network.endRadiant[f]};
    int k = e / 2;
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        int row = 2 * network.endRoom[e] + i * 2 * network.rooms();
        int column = 2 * network.endRoom[f] + j * 2 * network.rooms();
        double weight = gives[i] * takes[j];
        all[row * size + column] -= weight * meanByMean[way][k];
        all[row * size + column + 1] -= weight * meanByTilt[way][k];
        all[(row + 1) * size + column] += weight * meanByTilt[way][k];
        all[(row + 1) * size + column + 1] -= weight * tiltByTilt[way][k];
      }
    }
  }

  private static double[] part(double[] all, int size, int down, int across) {
    int half = size / 2;
    double[] part = new double[half * half];
    for (int i = 0; i < half; i++) {
      System.arraycopy(all, (i + down * half) * size + across * half, part, i * half, half);
    }
    return part;
  }
}
