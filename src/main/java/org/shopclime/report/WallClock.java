package org.shopclime.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.shopclime.balance.DaySlots;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Work;

/**
 * The owner's clock. Hours of a run end on local standard time, 1 to 24; in summer the clock on the
 * wall may be an hour ahead.
 */
final class WallClock {

  private static final int HOUR = 60;
  private static final int DAY = 24;

  private final Work work;
  private final LocalDate date;
  private final int ahead;

  WallClock(Work work, LocalDate date) {
    this.work = work;
    this.date = date;
    this.ahead = DaySlots.minutesAhead(work.clock(), date);
  }

  /** Hours by which the clock is ahead of standard time, 0 or 1. */
  int hoursAhead() {
    return ahead / HOUR;
  }

  /** When an hour begins, such as "2 pm". */
  String start(int hourEnding) {
    return text((hourEnding - 1) * HOUR + ahead);
  }

  /** When an hour ends, such as "3 pm". */
  String end(int hourEnding) {
    return text(hourEnding * HOUR + ahead);
  }

  /** An hour from its begin to its end, such as "2 to 3 pm". */
  String during(int hourEnding) {
    String start = start(hourEnding);
    String end = end(hourEnding);
    String half = end.substring(end.lastIndexOf(' ') + 1);
    return (start.endsWith(" " + half) ? start.substring(0, start.lastIndexOf(' ')) : start)
        + " to "
        + end;
  }

  /** A time of day, such as "3 pm", "3:30 pm", "noon", "midnight". */
  static String text(int minutes) {
    int minute = Math.floorMod(minutes, DAY * HOUR);
    if (minute == 0) {
      return "midnight";
    }
    if (minute == DAY / 2 * HOUR) {
      return "noon";
    }
    int hour = minute / HOUR;
    int shown = hour % (DAY / 2) == 0 ? DAY / 2 : hour % (DAY / 2);
    String past = minute % HOUR == 0 ? "" : String.format(":%02d", minute % HOUR);
    return shown + past + (hour < DAY / 2 ? " am" : " pm");
  }

  /** Hours in the order they are lived: beginning after the longest pause of the day. */
  static List<Integer> lived(Collection<Integer> hours) {
    List<Integer> rising = new ArrayList<>(new TreeSet<>(hours));
    int first = 0;
    int longest = -1;
    for (int i = 0; i < rising.size(); i++) {
      int before = rising.get(Math.floorMod(i - 1, rising.size()));
      int pause = Math.floorMod(rising.get(i) - before - 1, DAY);
      if (pause > longest) {
        longest = pause;
        first = i;
      }
    }
    List<Integer> lived = new ArrayList<>(rising.subList(first, rising.size()));
    lived.addAll(rising.subList(0, first));
    return lived;
  }

  /** Hours as stretches of the day, such as "9 am to noon and 1 pm to 5 pm". */
  String stretches(Collection<Integer> hours) {
    if (new TreeSet<>(hours).size() == DAY) {
      return "all day and night";
    }
    List<Integer> lived = lived(hours);
    List<String> stretches = new ArrayList<>();
    int i = 0;
    while (i < lived.size()) {
      int last = i;
      while (last + 1 < lived.size()
          && Math.floorMod(lived.get(last + 1) - lived.get(last), DAY) == 1) {
        last++;
      }
      stretches.add(start(lived.get(i)) + " to " + end(lived.get(last)));
      i = last + 1;
    }
    return Shown.row(stretches);
  }

  /** Hours in which work goes on for some of the time, in the order they are lived. */
  List<Integer> working() {
    Schedule hours = work.hours();
    if (hours.days().isEmpty()) {
      return List.of();
    }
    DaySlots slots = DaySlots.of(hours, work, hours.days().iterator().next(), date);
    List<Integer> working = new ArrayList<>();
    for (int hour = 1; hour <= DAY; hour++) {
      if (slots.mean((hour - 1) * DaySlots.PER_HOUR, DaySlots.PER_HOUR) > 0) {
        working.add(hour);
      }
    }
    return lived(working);
  }

  /** Periods of work by the clock on the wall. */
  List<Schedule.Period> periods() {
    return work.hours().periods().stream().filter(period -> period.fraction() > 0).toList();
  }
}
