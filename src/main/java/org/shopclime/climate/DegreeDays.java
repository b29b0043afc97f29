package org.shopclime.climate;

/**
 * How far the days of a year lie below and above 18.3 °C (65 °F), added up. A day counts by the
 * middle of its highest and lowest dry bulb, as US weather services count it.
 *
 * @param heating sum of the distances of cooler days, K·day, 0 to 20000
 * @param cooling sum of the distances of warmer days, K·day, 0 to 10000
 */
public record DegreeDays(double heating, double cooling) {
  /** Temperature counted from, °C. */
  public static final double BASE = 18.3;

  /** Refuses figures outside the ranges named. */
  public DegreeDays {
    Guard.within("heating degree-days, K·day", heating, 0, 20_000);
    Guard.within("cooling degree-days, K·day", cooling, 0, 10_000);
  }
}
