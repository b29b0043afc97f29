package org.shopclime.balance;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Work;

/**
 * The weeks of a year run. Every day is one of fourteen: a day of the week under standard time or
 * under the clock of summer.
 */
final class YearWeek {

  /** Different days. */
  static final int PLANS = 14;

  private static final int WEEK = 7;
  private static final LocalDate WINTER = LocalDate.of(YearWeather.YEAR, 1, 15);
  private static final LocalDate SUMMER = LocalDate.of(YearWeather.YEAR, 7, 15);

  private final Work work;
  private final DayOfWeek first;

  /**
   * Weeks of a shop.
   *
   * @param work working hours and clock
   * @param first day of the week that 1 January is
   */
  YearWeek(Work work, DayOfWeek first) {
    this.work = work;
    this.first = first;
  }

  /** Which of the fourteen a day is, 0 to 13; days from 0. */
  int planOf(int day) {
    int weekday = (first.getValue() - 1 + day) % WEEK;
    boolean ahead = DaySlots.minutesAhead(work.clock(), YearWeather.date(day)) > 0;
    return weekday + (ahead ? WEEK : 0);
  }

  /** The same for each day of a year. */
  int[] plans() {
    int[] plans = new int[YearWeather.DAYS];
    Arrays.setAll(plans, this::planOf);
    return plans;
  }

  /** A schedule on one of the fourteen days. */
  DaySlots slots(Schedule schedule, int plan) {
    LocalDate date = plan < WEEK ? WINTER : SUMMER;
    return DaySlots.of(schedule, work, DayOfWeek.of(plan % WEEK + 1), date);
  }

  /** When a plant is on: "work" means from start to end of work, breaks included. */
  DaySlots plant(Schedule schedule, int plan) {
    DaySlots slots = slots(schedule, plan);
    return schedule.asWork() ? slots.withoutBreaks() : slots;
  }
}
