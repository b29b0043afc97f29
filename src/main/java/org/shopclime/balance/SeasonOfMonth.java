package org.shopclime.balance;

import java.util.Arrays;
import org.shopclime.envelope.Season;

/** Which films stand in each month of a year. */
final class SeasonOfMonth {

  /**
   * Mean of a month from which on heat flows inwards more often than outwards, °C (common practice:
   * the balance temperature of a lightly heated building, 59 °F).
   */
  private static final double WARM = 15;

  private static final int MONTHS = 12;

  private SeasonOfMonth() {}

  /** Season of each month, January first. */
  static Season[] of(YearWeather weather) {
    double[] sums = new double[MONTHS];
    int[] hours = new int[MONTHS];
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      int month = YearWeather.monthOf(hour) - 1;
      sums[month] += weather.dryBulb(hour);
      hours[month]++;
    }
    Season[] seasons = new Season[MONTHS];
    Arrays.setAll(
        seasons, month -> sums[month] / hours[month] >= WARM ? Season.COOLING : Season.HEATING);
    return seasons;
  }
}
