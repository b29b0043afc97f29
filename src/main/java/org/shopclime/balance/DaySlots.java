package org.shopclime.balance;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Work;

/**
 * How much of something goes on in each five minutes of a day, by local standard time.
 *
 * <p>Schedules are wall clock; in summer the wall clock shows an hour more than standard time (15
 * U.S.C. 260a: second Sunday of March to first Sunday of November). What a schedule puts past
 * midnight of standard time is kept in the same day, as the day repeats.
 */
public final class DaySlots {

  /** Slots in a day. */
  public static final int COUNT = 288;

  /** Slots in an hour. */
  public static final int PER_HOUR = COUNT / Profile.HOURS;

  /** Length of a slot, s. */
  public static final double SECONDS = 300;

  private static final int MINUTES = 5;
  private static final int DAY = 1440;

  private final double[] fractions;

  /** Means of the hours. */
  private final double[] hours = new double[Profile.HOURS];

  private DaySlots(double[] fractions) {
    this.fractions = fractions;
    for (int hour = 0; hour < hours.length; hour++) {
      hours[hour] = sum(hour * PER_HOUR, PER_HOUR) / PER_HOUR;
    }
  }

  /**
   * Something at one level all day.
   *
   * @param fraction level, 0 to 1
   * @return the day
   */
  public static DaySlots constant(double fraction) {
    double[] fractions = new double[COUNT];
    Arrays.fill(fractions, fraction);
    return new DaySlots(fractions);
  }

  /** Levels of one's own, 288, 0 or more. */
  static DaySlots of(double[] levels) {
    return new DaySlots(levels.clone());
  }

  /** The same, each level times a factor. */
  DaySlots scaled(double factor) {
    return new DaySlots(times(factor));
  }

  /**
   * A schedule on a day of the week.
   *
   * @param schedule what goes on when
   * @param work working hours that "work" stands for, and the clock
   * @param day day of the week
   * @param date date, which decides on daylight saving
   * @return the day by standard time
   */
  public static DaySlots of(Schedule schedule, Work work, DayOfWeek day, LocalDate date) {
    Set<DayOfWeek> days = schedule.asWork() ? work.hours().days() : schedule.days();
    List<Schedule.Period> periods = schedule.asWork() ? work.hours().periods() : schedule.periods();
    if (!days.contains(day)) {
      return constant(0);
    }
    double[] minutes = new double[DAY];
    int ahead = minutesAhead(work.clock(), date);
    for (Schedule.Period period : periods) {
      int start = period.startMinute() - ahead;
      int end = period.endMinute() - ahead;
      // What lies before midnight of standard time is at the end of the day that repeats.
      Arrays.fill(minutes, Math.max(0, start), Math.max(0, end), period.fraction());
      Arrays.fill(minutes, DAY + Math.min(0, start), DAY + Math.min(0, end), period.fraction());
    }
    return average(minutes);
  }

  /**
   * A door opened for some minutes at the start of each hour of a schedule.
   *
   * @param opened hours in which it is opened
   * @param secondsPerHour time open in such an hour, s, 0 to 3600
   * @return part of each slot in which the door stands open
   */
  static DaySlots opened(DaySlots opened, double secondsPerHour) {
    double[] fractions = new double[COUNT];
    for (int slot = 0; slot < COUNT; slot++) {
      double from = slot % PER_HOUR * SECONDS;
      double open = Math.max(0, Math.min(SECONDS, secondsPerHour - from)) / SECONDS;
      fractions[slot] = open * opened.mean(slot / PER_HOUR * PER_HOUR, PER_HOUR);
    }
    return new DaySlots(fractions);
  }

  /**
   * Minutes by which the wall clock is ahead of standard time.
   *
   * @param clock what the wall clock does in summer
   * @param date date
   * @return 60 under daylight saving, else 0
   */
  public static int minutesAhead(Clock clock, LocalDate date) {
    if (clock == Clock.STANDARD) {
      return 0;
    }
    LocalDate start =
        LocalDate.of(date.getYear(), Month.MARCH, 1)
            .with(TemporalAdjusters.dayOfWeekInMonth(2, DayOfWeek.SUNDAY));
    LocalDate end =
        LocalDate.of(date.getYear(), Month.NOVEMBER, 1)
            .with(TemporalAdjusters.firstInMonth(DayOfWeek.SUNDAY));
    return !date.isBefore(start) && date.isBefore(end) ? 60 : 0;
  }

  /**
   * Level in a slot.
   *
   * @param slot 0 to 287; slot 0 begins at midnight, standard time
   * @return 0 to 1
   */
  public double at(int slot) {
    return fractions[slot];
  }

  /**
   * Mean level over some slots.
   *
   * @param first first slot
   * @param count number of slots, at least 1
   * @return 0 to 1
   */
  public double mean(int first, int count) {
    return count == PER_HOUR && first % PER_HOUR == 0
        ? hours[first / PER_HOUR]
        : sum(first, count) / count;
  }

  private double sum(int first, int count) {
    double sum = 0;
    for (int slot = first; slot < first + count; slot++) {
      sum += fractions[slot];
    }
    return sum;
  }

  /** Each slot's level times a factor. */
  double[] times(double factor) {
    double[] times = new double[COUNT];
    for (int slot = 0; slot < COUNT; slot++) {
      times[slot] = factor * fractions[slot];
    }
    return times;
  }

  /**
   * Sum over the day.
   *
   * @return full hours
   */
  public double hours() {
    return mean(0, COUNT) * 24;
  }

  /**
   * First slot in which anything goes on, after the longest pause of the day.
   *
   * @return 0 to 287; -1 if nothing goes on
   */
  public int firstActiveSlot() {
    int best = -1;
    int longest = -1;
    for (int slot = 0; slot < COUNT; slot++) {
      if (fractions[slot] > 0 && fractions[Math.floorMod(slot - 1, COUNT)] == 0) {
        int pause = 0;
        while (fractions[Math.floorMod(slot - 1 - pause, COUNT)] == 0) {
          pause++;
        }
        if (pause > longest) {
          longest = pause;
          best = slot;
        }
      }
    }
    if (best < 0 && fractions[0] > 0) {
      return 0;
    }
    return best;
  }

  /**
   * The same, begun earlier.
   *
   * @param slots how many slots before its first, 0 or more; all of them become 1
   * @return the day; itself if nothing goes on in it
   */
  public DaySlots earlier(int slots) {
    double[] earlier = fractions.clone();
    int start = firstActiveSlot();
    for (int before = 1; start >= 0 && before <= slots; before++) {
      earlier[Math.floorMod(start - before, COUNT)] = 1;
    }
    return new DaySlots(earlier);
  }

  /**
   * From the start to the end of what goes on, whatever pauses lie between: all of the day but its
   * longest pause.
   *
   * @return 1 from start to end, else 0
   */
  public DaySlots withoutBreaks() {
    int start = firstActiveSlot();
    double[] filled = new double[COUNT];
    if (start >= 0) {
      int last = 0;
      for (int since = 0; since < COUNT; since++) {
        if (fractions[(start + since) % COUNT] > 0) {
          last = since;
        }
      }
      for (int since = 0; since <= last; since++) {
        filled[(start + since) % COUNT] = 1;
      }
    }
    return new DaySlots(filled);
  }

  private static DaySlots average(double[] minutes) {
    double[] fractions = new double[COUNT];
    for (int slot = 0; slot < COUNT; slot++) {
      for (int minute = 0; minute < MINUTES; minute++) {
        fractions[slot] += minutes[slot * MINUTES + minute] / MINUTES;
      }
    }
    return new DaySlots(fractions);
  }
}
