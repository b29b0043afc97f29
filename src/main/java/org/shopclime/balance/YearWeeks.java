package org.shopclime.balance;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;
import org.shopclime.air.MoistAir;

/** Weeks of a year, Monday to Sunday, that tell how a shop is lived in. */
public final class YearWeeks {

  /** Hours in a week. */
  public static final int HOURS = 7 * Profile.HOURS;

  /** Hours over which the outdoor air has made slab and iron what they are: three days. */
  private static final int BEFORE = 3 * Profile.HOURS;

  private YearWeeks() {}

  /**
   * The week with the highest mean outdoor temperature; of equals the first.
   *
   * <p>Not seven design days: those come one at a time, and a week of them would tell a cost that
   * nobody pays. This week is one of the year that is run, so its kWh are part of the year's.
   *
   * @param weather the year
   * @return its first hour, midnight before a Monday, from 0
   */
  public static int hottest(YearWeather weather) {
    int best = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int from = first(); from + HOURS <= YearWeather.HOURS; from += HOURS) {
      double sum = 0;
      for (int hour = from; hour < from + HOURS; hour++) {
        sum += weather.dryBulb(hour);
      }
      if (sum > most) {
        most = sum;
        best = from;
      }
    }
    return best;
  }

  /**
   * The damp week of spring: the one that begins in March to May in which the outdoor dew point
   * rises most, summed over its hours, above the mean temperature of the three days before each
   * hour. Then moist air comes upon a slab and iron that are still cold.
   *
   * @param weather the year
   * @return its first hour, from 0; nothing where it never rises above that
   */
  public static Optional<Integer> dampSpring(YearWeather weather) {
    Optional<Integer> best = Optional.empty();
    double most = 0;
    for (int from = first(); from + HOURS <= YearWeather.HOURS; from += HOURS) {
      double sum = 0;
      for (int hour = from; isSpring(from) && hour < from + HOURS; hour++) {
        sum += Math.max(0, above(weather, hour));
      }
      if (sum > most) {
        most = sum;
        best = Optional.of(from);
      }
    }
    return best;
  }

  private static double above(YearWeather weather, int hour) {
    double before = 0;
    for (int ago = 1; ago <= BEFORE; ago++) {
      before += weather.dryBulb(hour - ago) / BEFORE;
    }
    HourAir air = weather.air(hour);
    return MoistAir.dewPoint(air.humidityRatio(), air.pressure()) - before;
  }

  private static boolean isSpring(int hour) {
    Month month = date(hour).getMonth();
    return month.compareTo(Month.MARCH) >= 0 && month.compareTo(Month.MAY) <= 0;
  }

  private static int first() {
    int day = 0;
    while (YearWeather.date(day).getDayOfWeek() != DayOfWeek.MONDAY) {
      day++;
    }
    return day * Profile.HOURS;
  }

  /**
   * Date of an hour in the calendar of the year.
   *
   * @param hour 0 to 8,759
   * @return date
   */
  public static LocalDate date(int hour) {
    return YearWeather.date(hour / Profile.HOURS);
  }
}
