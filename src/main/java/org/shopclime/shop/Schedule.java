package org.shopclime.shop;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;

/**
 * When something goes on in a week, wall clock. Written "always", "never", "work" (the working
 * hours), or days and periods such as "Mon-Fri 8:00-12:00, 13:00-17:00 50 %".
 *
 * @param asWork true for "work": days and periods are those of the shop's working hours, and {@code
 *     days} and {@code periods} here are empty
 * @param days days on which the periods apply
 * @param periods periods of such a day, in order, not overlapping
 */
public record Schedule(boolean asWork, Set<DayOfWeek> days, List<Period> periods) {

  /** Copies the collections. */
  public Schedule {
    days = Set.copyOf(days);
    periods = List.copyOf(periods);
  }

  /** Compared by hand: what a record does by itself is linked at run time, which takes long. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Schedule schedule
        && asWork == schedule.asWork
        && days.equals(schedule.days)
        && periods.equals(schedule.periods);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Boolean.hashCode(asWork) + days.hashCode()) + periods.hashCode();
  }

  /**
   * Part of a day.
   *
   * @param startMinute first minute of the day, 0 to 1439
   * @param endMinute minute at which it ends, after {@code startMinute}, at most 1440
   * @param fraction how much of it goes on, 0 to 1
   */
  public record Period(int startMinute, int endMinute, double fraction) {

    /** Checks the range. */
    public Period {
      if (startMinute < 0 || endMinute <= startMinute || endMinute > 1440) {
        throw new IllegalArgumentException(
            "period " + startMinute + " to " + endMinute + " minutes; takes 0 to 1440, rising");
      }
      if (!(fraction >= 0 && fraction <= 1)) {
        throw new IllegalArgumentException("fraction " + fraction + "; takes 0 to 1");
      }
    }

    /** Compared by hand, as the schedule. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Period period
          && startMinute == period.startMinute
          && endMinute == period.endMinute
          && Double.compare(fraction, period.fraction) == 0;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * startMinute + endMinute) + Double.hashCode(fraction);
    }
  }
}
