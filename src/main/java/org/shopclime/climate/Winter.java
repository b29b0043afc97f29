package org.shopclime.climate;

/**
 * The cold of a station.
 *
 * @param dryBulb99 temperature passed in 99 % of hours, °C, -70 to 40
 * @param dryBulb996 temperature passed in 99.6 % of hours, °C, not above the other
 * @param wind mean wind speed of the hours at or below the 99 % temperature, m/s, 0 to 40
 */
public record Winter(double dryBulb99, double dryBulb996, double wind) {
  /** Refuses figures outside the ranges named. */
  public Winter {
    Guard.within("99 % dry bulb, °C", dryBulb99, -70, 40);
    Guard.within("99.6 % dry bulb, °C", dryBulb996, -70, dryBulb99);
    Guard.within("wind, m/s", wind, 0, 40);
  }
}
