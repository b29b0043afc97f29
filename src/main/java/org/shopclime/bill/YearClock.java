package org.shopclime.bill;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.Objects;

/**
 * What the calendar and the clock on the wall show in each hour of a year of 365 days. Hours of the
 * year are of local standard time, 0 (which begins with 1 January) to 8,759.
 *
 * <p>Source: 15 U.S.C. 260a, daylight saving from the second Sunday of March to the first Sunday of
 * November; here by whole days.
 *
 * @param firstDay day of the week of 1 January
 * @param daylightSaving whether the clock follows daylight saving
 */
public record YearClock(DayOfWeek firstDay, boolean daylightSaving) {

  /** Hours of a year. */
  public static final int HOURS = 8760;

  /** Months of a year. */
  public static final int MONTHS = 12;

  private static final int HOURS_A_DAY = 24;
  private static final int DAYS_A_WEEK = 7;

  /** Days of the year, from 0. */
  private static final int FIRST_OF_MARCH = 59;

  private static final int FIRST_OF_NOVEMBER = 304;
  private static final int MINUTES_AN_HOUR = 60;

  /** Refuses a clock without a first day. */
  public YearClock {
    Objects.requireNonNull(firstDay, "firstDay");
  }

  /**
   * Month in which an hour lies, by standard time.
   *
   * @param hour 0 to 8,759
   * @return month
   * @throws IllegalArgumentException if there is no such hour
   */
  public static Month month(int hour) {
    return LocalDate.ofYearDay(2025, day(hour) + 1).getMonth(); // any year of 365 days
  }

  /** Day of the year, from 0. */
  private static int day(int hour) {
    if (hour < 0 || hour >= HOURS) {
      throw new IllegalArgumentException("hour " + hour + " is not in 0 to " + (HOURS - 1));
    }
    return hour / HOURS_A_DAY;
  }

  /**
   * Minute of the week, by the clock on the wall, at which an hour begins.
   *
   * @param hour 0 to 8,759
   * @return 0 (midnight before Monday) to 10,079
   * @throws IllegalArgumentException if there is no such hour
   */
  int minuteOfWeek(int hour) {
    int day = day(hour);
    int ahead = isAhead(day) ? 1 : 0;
    int hourOfWeek = (firstDay.getValue() - 1 + day) * HOURS_A_DAY + hour % HOURS_A_DAY + ahead;
    return hourOfWeek % (DAYS_A_WEEK * HOURS_A_DAY) * MINUTES_AN_HOUR;
  }

  /** Whether the clock shows an hour more on a day of the year, from 0. */
  private boolean isAhead(int day) {
    return daylightSaving
        && day >= sundayFrom(FIRST_OF_MARCH + DAYS_A_WEEK)
        && day < sundayFrom(FIRST_OF_NOVEMBER);
  }

  /** The first Sunday from a day of the year on. */
  private int sundayFrom(int day) {
    int sinceMonday = (firstDay.getValue() - 1 + day) % DAYS_A_WEEK;
    return day + DAYS_A_WEEK - 1 - sinceMonday;
  }
}
