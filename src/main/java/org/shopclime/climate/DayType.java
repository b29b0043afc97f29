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
 * @param swing how far the usual course of the month swings on these days from its coolest to its
 *     warmest hour, K, -40 to 60; below 0 where they were warmer by night
 * @param dewPoint dew point, °C
 * @param global global horizontal irradiance, mean of all 24 hours, W/m²
 * @param direct direct normal irradiance, mean of all 24 hours, W/m²
 * @param opaqueCloud part of the sky covered by cloud that cannot be seen through, 0 to 1
 * @param wind wind at the station's mast, m/s
 * @param spread how these days differ from each other
 */
public record DayType(
    int month,
    int fifth,
    int days,
    double mean,
    double low,
    double high,
    double swing,
    double dewPoint,
    double global,
    double direct,
    double opaqueCloud,
    double wind,
    Spread spread) {

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
    Guard.within("swing, K", swing, -40, 60);
    Guard.within("dew point, °C", dewPoint, -80, 40);
    Guard.within("global, W/m²", global, 0, 600);
    Guard.within("direct, W/m²", direct, 0, 800);
    Guard.within("opaque cloud", opaqueCloud, 0, 1);
    Guard.within("wind, m/s", wind, 0, 40);
  }

  /**
   * How the days of one type differ from each other: standard deviations among them, and waves of
   * single hours.
   *
   * @param dryBulb of the daily mean, K, 0 to 20
   * @param swing of the swing, K, 0 to 60
   * @param global W/m², 0 to 400
   * @param direct W/m², 0 to 600
   * @param opaqueCloud part of the sky, 0 to 1
   * @param wind m/s, 0 to 20
   * @param dayWave what the days' hours leave of running mean and course: amplitude of its wave of
   *     24 hours, K, root mean square over the days, 0 to 20
   * @param halfDayWave the same of its wave of 12 hours
   */
  public record Spread(
      double dryBulb,
      double swing,
      double global,
      double direct,
      double opaqueCloud,
      double wind,
      double dayWave,
      double halfDayWave) {

    /** Days that are all alike. */
    public static final Spread NONE = new Spread(0, 0, 0, 0, 0, 0, 0, 0);

    /** Refuses figures outside the ranges named. */
    public Spread {
      Guard.within("spread of the dry bulb, K", dryBulb, 0, 20);
      Guard.within("spread of the swing, K", swing, 0, 60);
      Guard.within("spread of the global sun, W/m²", global, 0, 400);
      Guard.within("spread of the direct sun, W/m²", direct, 0, 600);
      Guard.within("spread of the cloud", opaqueCloud, 0, 1);
      Guard.within("spread of the wind, m/s", wind, 0, 20);
      Guard.within("wave of a day, K", dayWave, 0, 20);
      Guard.within("wave of half a day, K", halfDayWave, 0, 20);
    }
  }
}
