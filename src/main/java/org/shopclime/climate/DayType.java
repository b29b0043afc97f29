package org.shopclime.climate;

/**
 * Days of one month that were alike: a fifth of the month, sorted by mean temperature. All figures
 * are means over these days.
 *
 * @param month 1 to 12
 * @param fifth 1 (the coldest days) to 5 (the hottest)
 * @param days number of days, 5 to 7
 * @param mean daily mean of the dry bulb, °C
 * @param low daily minimum of the dry bulb, °C, not above the mean
 * @param high daily maximum of the dry bulb, °C, not below the mean
 * @param spread standard deviation of the daily mean among these days, K, 0 to 20
 * @param dewPoint dew point, °C
 * @param global global horizontal irradiance, mean of all 24 hours, W/m²
 * @param direct direct normal irradiance, mean of all 24 hours, W/m²
 * @param opaqueCloud part of the sky covered by cloud that cannot be seen through, 0 to 1
 * @param wind wind at the station's mast, m/s
 */
public record DayType(
    int month,
    int fifth,
    int days,
    double mean,
    double low,
    double high,
    double spread,
    double dewPoint,
    double global,
    double direct,
    double opaqueCloud,
    double wind) {

  /** Fifths in a month. */
  public static final int FIFTHS = 5;

  /** Refuses figures outside the ranges named. */
  public DayType {
    Guard.within("month", month, 1, Months.COUNT);
    Guard.within("fifth", fifth, 1, FIFTHS);
    Guard.within("days", days, 5, 7);
    Guard.within("mean dry bulb, °C", mean, -60, 50);
    Guard.within("daily low, °C", low, -70, mean);
    Guard.within("daily high, °C", high, mean, 60);
    Guard.within("spread, K", spread, 0, 20);
    Guard.within("dew point, °C", dewPoint, -80, 40);
    Guard.within("global, W/m²", global, 0, 600);
    Guard.within("direct, W/m²", direct, 0, 800);
    Guard.within("opaque cloud", opaqueCloud, 0, 1);
    Guard.within("wind, m/s", wind, 0, 40);
  }
}
