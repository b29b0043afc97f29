package org.shopclime.sun;

/**
 * How the outdoor temperature of a hot day runs between its peak and its low: for each hour the
 * part of the daily range that it lies below the peak. For stations without an hour shape of their
 * own.
 */
public enum DailyRangeProfile {
  /** ASHRAE Handbook - Fundamentals (2009 and later), ch. 14, Table 6. From memory. */
  ASHRAE_2009(
      88, 92, 95, 98, 100, 98, 91, 74, 55, 38, 23, 13, 5, 0, 0, 6, 14, 24, 39, 50, 59, 68, 75, 82),
  /** ASHRAE Handbook - Fundamentals (1985 to 2005). From memory. */
  ASHRAE_1985(
      87, 92, 96, 99, 100, 98, 93, 84, 71, 56, 39, 23, 11, 3, 0, 3, 10, 21, 34, 47, 58, 68, 76, 82);

  @SuppressWarnings("ImmutableEnumChecker") // private, copied in, never written to
  private final int[] percent;

  DailyRangeProfile(int... percent) {
    this.percent = percent.clone();
  }

  /**
   * Part of the daily range below the peak.
   *
   * @param hour hour of the day, 1 to 24
   * @return 0 (at the peak) to 1 (at the low)
   * @throws IllegalArgumentException if the hour is outside that range
   */
  public double fractionBelowPeak(int hour) {
    return percent[(int) Range.check("hour", hour, 1, 24) - 1] / 100.0;
  }

  /**
   * Temperature at an hour.
   *
   * @param hour hour of the day, 1 to 24
   * @param peak highest temperature of the day, °C
   * @param range highest less lowest temperature of the day, K, 0 or more
   * @return °C
   * @throws IllegalArgumentException if hour or range is outside its range
   */
  public double temperature(int hour, double peak, double range) {
    return peak - Range.check("daily range, K", range, 0, 60) * fractionBelowPeak(hour);
  }
}
