package org.shopclime.balance;

/**
 * A time for which walls are looked at in the steady mean.
 *
 * @param kind hot day, humid day or month
 * @param month month it lies in, 1 to 12
 * @param outdoor mean temperature of outdoor air, °C
 * @param outdoorPressure mean vapour pressure of outdoor air, Pa
 */
public record DampTime(Kind kind, int month, double outdoor, double outdoorPressure) {

  /** What kind of time. */
  public enum Kind {
    /** The day whose temperature decides, its mean over 24 hours. */
    HOT_DAY,
    /** The day whose dew point is passed in 0.4 % of hours, its mean over 24 hours. */
    HUMID_DAY,
    /** The mean of a month. */
    MONTH
  }

  /**
   * Whether it is a month.
   *
   * @return false for single days
   */
  public boolean isMonth() {
    return kind == Kind.MONTH;
  }
}
