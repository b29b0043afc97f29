package org.shopclime.climate;

/**
 * Temperature that runs straight from the middle of one day to the middle of the next, bent so that
 * each day keeps its mean; the last day of the year runs into the first.
 */
final class RunningMean {

  /** Part of a neighbour's middle that a day's mean holds when means run straight. */
  private static final double NEIGHBOUR = 1.0 / 8;

  /** Rounds of bending; each makes what is left a third, to below a millionth. */
  private static final int ROUNDS = 15;

  private static final double NOON = 12;

  private final double[] middles;

  /** Takes the mean of each day. */
  RunningMean(double[] means) {
    int days = means.length;
    double[] found = means.clone();
    for (int round = 0; round < ROUNDS; round++) {
      double[] bent = new double[days];
      for (int day = 0; day < days; day++) {
        double beside = found[(day + days - 1) % days] + found[(day + 1) % days];
        bent[day] = (means[day] - NEIGHBOUR * beside) / (1 - 2 * NEIGHBOUR);
      }
      found = bent;
    }
    middles = found;
  }

  /** At the end of an hour of a day: day from 0, hours from 1 to 24. */
  double at(int day, int ending) {
    double fromMiddle = (ending - NOON) / Hours.COUNT;
    int other = Math.floorMod(day + (fromMiddle < 0 ? -1 : 1), middles.length);
    return middles[day] + Math.abs(fromMiddle) * (middles[other] - middles[day]);
  }
}
