package org.shopclime.plan;

import java.util.OptionalDouble;
import org.shopclime.run.LivedDay;

/** How a unit fares on the hot day. */
public enum Verdict {
  /** Every judged hour is held, with something to spare. */
  HOLDS,
  /** Held, but flat out for three hours or more, or not on a day 2 °F hotter. */
  JUST_HOLDS,
  /** Some judged hours are not held. */
  DRIFTS,
  /** No judged hour is held. */
  NEVER_CATCHES_UP;

  private static final double TWO_DEGREES = 2 / 1.8;
  private static final int FLAT_OUT = 3;

  /**
   * The verdict on a day.
   *
   * @param day the day with the unit
   * @param keepsUpTo highest outdoor peak at which the unit holds, °C; empty if there is none, or
   *     none was found however hot the day
   * @param outdoorPeak highest outdoor temperature of the day, °C
   * @return verdict
   */
  public static Verdict of(LivedDay day, OptionalDouble keepsUpTo, double outdoorPeak) {
    Verdict quick = quick(day);
    boolean soon = keepsUpTo.isPresent() && keepsUpTo.getAsDouble() < outdoorPeak + TWO_DEGREES;
    return quick == HOLDS && soon ? JUST_HOLDS : quick;
  }

  /**
   * The verdict before hotter days are tried: {@link #HOLDS} may yet become {@link #JUST_HOLDS}.
   *
   * @param day the day with the unit
   * @return verdict
   */
  public static Verdict quick(LivedDay day) {
    if (day.neverCatchesUp()) {
      return NEVER_CATCHES_UP;
    }
    if (!day.holds()) {
      return DRIFTS;
    }
    return day.flatOutHours() >= FLAT_OUT ? JUST_HOLDS : HOLDS;
  }
}
