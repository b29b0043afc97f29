package org.shopclime.unit;

import org.shopclime.air.AirState;

/**
 * Anything that cools, heats, dries or stirs the air of a room, asked one question: in this air, at
 * this demand, what do you do?
 *
 * <p>Every answer is a mean over a time long against its cycles. The enthalpy convention is that of
 * {@link Delivered}; {@link RoomEffect} tells how the balances close.
 */
public interface RoomPlant {

  /** Narrowness at which the search of {@link #demandFor} ends, part of full demand. */
  double CLOSE = 1e-12;

  /**
   * What the plant does to its room.
   *
   * @param room air of the room, the air the plant draws in
   * @param outdoor outdoor air, at the same pressure
   * @param demand part of what it does flat out that is asked for, 0 (off) to 1
   * @return the effect, mean over time
   * @throws IllegalArgumentException if demand is outside 0 to 1 or NaN, the pressures differ, or a
   *     state is outside what the plant takes
   */
  RoomEffect at(AirState room, AirState outdoor, double demand);

  /**
   * The demand at which the plant gives this much sensible heat to the room, induced air not
   * counted. Plants that run on and off answer in proportion and are found in two looks; the others
   * are searched, their sensible heat growing with demand.
   *
   * @param sensible sensible heat to the room wished, W; negative cools
   * @param room air of the room
   * @param outdoor outdoor air, at the same pressure
   * @return 0 to 1: 0 where even the smallest demand does too much or works the other way, 1 where
   *     all it has is not enough
   * @throws IllegalArgumentException as {@link #at}, or if the wish is NaN
   */
  default double demandFor(double sensible, AirState room, AirState outdoor) {
    if (Double.isNaN(sensible)) {
      throw new IllegalArgumentException("sensible heat wished is NaN");
    }
    double low = 0;
    double high = 1;
    double missingLow = sensible - at(room, outdoor, low).sensible();
    double missingHigh = sensible - at(room, outdoor, high).sensible();
    double span = missingLow - missingHigh;
    if (span == 0 || missingLow / span <= 0) {
      return 0;
    }
    if (missingHigh / span >= 0) {
      return 1;
    }
    // false position; an end that stays twice running counts half (Illinois)
    int stayed = 0;
    double middle = low;
    while (high - low > CLOSE) {
      middle = low + (high - low) * missingLow / (missingLow - missingHigh);
      if (!(middle > low && middle < high)) {
        return middle;
      }
      double missing = sensible - at(room, outdoor, middle).sensible();
      if (Math.abs(missing) <= CLOSE * Math.abs(span)) {
        return middle;
      }
      if (missing / span > 0) {
        low = middle;
        missingLow = missing;
        missingHigh = stayed > 0 ? missingHigh / 2 : missingHigh;
        stayed = 1;
      } else {
        high = middle;
        missingHigh = missing;
        missingLow = stayed < 0 ? missingLow / 2 : missingLow;
        stayed = -1;
      }
    }
    return middle;
  }
}
