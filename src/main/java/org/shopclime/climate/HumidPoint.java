package org.shopclime.climate;

/**
 * The moist air of a station: the dew point passed in 0.4 % of hours, and the days on which that
 * happens.
 *
 * @param dewPoint dew point passed in 0.4 % of hours, °C, -50 to 40
 * @param dryBulb mean dry bulb of the hours within 0.6 K of that dew point, °C, not below it
 * @param month month with most hours at or above that dew point, 1 to 12
 * @param dayPeak mean highest dry bulb of the days that reach that dew point, °C, -50 to 60
 * @param dayRange mean of highest less lowest dry bulb on those days, K, 0 to 40
 */
public record HumidPoint(
    double dewPoint, double dryBulb, int month, double dayPeak, double dayRange) {
  /** Refuses figures outside the ranges named. */
  public HumidPoint {
    Guard.within("dew point, °C", dewPoint, -50, 40);
    Guard.within("dry bulb, °C", dryBulb, dewPoint, 60);
    Guard.within("month", month, 1, Months.COUNT);
    Guard.within("peak, °C", dayPeak, -50, 60);
    Guard.within("range, K", dayRange, 0, 40);
  }
}
