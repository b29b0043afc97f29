package org.shopclime.run;

import java.util.function.DoubleUnaryOperator;

/** How long a cooler must blow in a step. */
final class BlownShare {

  private static final int MOST_TRIES = 30;

  /** How near to the set point, K. */
  private static final double NEAR = 1e-7;

  private BlownShare() {}

  /**
   * The part of a step that a cooler blows.
   *
   * @param over how far the air ends above its set point, K, if the cooler blows for a part of the
   *     step; asked last for the part that is the answer
   * @return 0 where it need not or only warms, 1 where all it has is not enough
   */
  static double of(DoubleUnaryOperator over) {
    double free = over.applyAsDouble(0);
    if (free <= 0) {
      return 0;
    }
    double least = over.applyAsDouble(1);
    if (least >= free) {
      var unused = over.applyAsDouble(0); // only so that it was asked last
      return 0;
    }
    if (least >= 0) {
      return 1;
    }
    double low = 0;
    double high = 1;
    double atLow = free;
    double atHigh = least;
    double share = 1;
    double missed = least;
    // false position; an end that stays counts half (Illinois)
    for (int i = 0; i < MOST_TRIES && Math.abs(missed) > NEAR; i++) {
      share = low + (high - low) * atLow / (atLow - atHigh);
      double before = missed;
      missed = over.applyAsDouble(share);
      if (missed > 0) {
        low = share;
        atLow = missed;
        atHigh = before > 0 ? atHigh / 2 : atHigh;
      } else {
        high = share;
        atHigh = missed;
        atLow = before <= 0 ? atLow / 2 : atLow;
      }
    }
    return share;
  }
}
