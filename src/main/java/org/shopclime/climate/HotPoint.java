package org.shopclime.climate;

/**
 * One level of heat at a station.
 *
 * @param dryBulb temperature passed in the level's part of the hours, °C, -50 to 60
 * @param wetBulb mean wet bulb of the hours within 0.6 K of that dry bulb, °C, not above it
 * @param month month with most hours at or above that dry bulb, 1 to 12
 */
public record HotPoint(double dryBulb, double wetBulb, int month) {
  /** Refuses figures outside the ranges named. */
  public HotPoint {
    Guard.within("dry bulb, °C", dryBulb, -50, 60);
    Guard.within("wet bulb, °C", wetBulb, -50, dryBulb);
    Guard.within("month", month, 1, Months.COUNT);
  }
}
