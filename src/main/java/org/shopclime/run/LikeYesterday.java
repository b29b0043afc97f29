package org.shopclime.run;

/**
 * Guesses what some figures are in the hour to come: from one hour to the next they change as they
 * did the day before, and half of what their last change differed from that day's goes on. A guess
 * saves a round and is never the answer.
 */
final class LikeYesterday {

  private static final int DAY = 24;

  /** Hours that are kept: a day, what went before it, and this one. */
  private static final int KEPT = DAY + 3;

  /** Part of what a change differed from that of the day before that is there in the next hour. */
  private static final double GOES_ON = 0.5;

  private final double[][] kept;
  private int hours;

  /** For so many figures. */
  LikeYesterday(int count) {
    kept = new double[KEPT][count];
  }

  /** Nothing is known yet. */
  void forget() {
    hours = 0;
  }

  /** An hour begins. */
  void nextHour() {
    hours++;
  }

  /** Where the figures of this hour belong; what is written last is kept. */
  double[] ofThisHour() {
    return kept[hours % KEPT];
  }

  /**
   * The guess for this hour.
   *
   * @param into set to the figures; left as it is while less than a day is known
   */
  void guess(double[] into) {
    if (hours <= DAY + 2) {
      return;
    }
    double[] last = ofHour(1);
    double[] lastBefore = ofHour(2);
    double[] now = ofHour(DAY);
    double[] dayBefore = ofHour(DAY + 1);
    double[] dayBeforeThat = ofHour(DAY + 2);
    for (int i = 0; i < into.length; i++) {
      into[i] =
          GOES_ON * (last[i] - lastBefore[i] + dayBeforeThat[i])
              + (last[i] + now[i] - (1 + GOES_ON) * dayBefore[i]);
    }
  }

  private double[] ofHour(int ago) {
    return kept[(hours - ago) % KEPT];
  }
}
