package org.shopclime.shop;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

/**
 * Schedules as text: "always", "never", "work", or days and periods such as "Mon-Fri 8:00-12:00,
 * 13:00-17:00 50 %". A part in percent belongs to the period before it; a period without one goes
 * on in full.
 */
public final class ScheduleText {

  /** What a schedule may be written as, for complaints. */
  public static final String TAKES =
      "\"always\", \"never\", \"work\", or days and periods such as \"Mon-Fri 8:00-12:00,"
          + " 13:00-17:00 50 %\" or \"daily 9:00-10:00\"";

  private static final Pattern PERIOD =
      Pattern.compile("(\\d{1,2})(?::(\\d{2}))?\\s*-\\s*(\\d{1,2})(?::(\\d{2}))?(?:\\s+(\\S.*))?");

  /** A time as Americans say it: "8am", "12:30 p.m.". */
  private static final Pattern HALF_DAY =
      Pattern.compile(
          "\\b(\\d{1,2})(?::(\\d{2}))?\\s*([ap])\\.?m\\b\\.?", Pattern.CASE_INSENSITIVE);

  private static final Pattern TO =
      Pattern.compile("(?<=[\\da-z])\\s+(?:to|until)\\s+(?=[\\da-z])", Pattern.CASE_INSENSITIVE);

  private static final int DAY = 24 * 60;

  private ScheduleText() {}

  /**
   * Reads a schedule.
   *
   * @param text text as typed
   * @return the schedule, or nothing if the text is none
   */
  public static Optional<Schedule> read(String text) {
    String plain = plain(text);
    Schedule named =
        switch (plain.toLowerCase(Locale.ROOT)) {
          case "always" -> always();
          case "never" -> never();
          case "work" -> work();
          default -> null;
        };
    if (named != null) {
      return Optional.of(named);
    }
    Matcher start = Pattern.compile("\\s\\d{1,2}(:\\d{2})?\\s*-").matcher(plain);
    if (!start.find()) {
      return Optional.empty();
    }
    Set<DayOfWeek> days = days(plain.substring(0, start.start()));
    List<Schedule.Period> periods = new ArrayList<>();
    for (String part : Pattern.compile(",").split(plain.substring(start.start()), -1)) {
      Optional<Schedule.Period> period = period(part.strip());
      if (period.isEmpty()) {
        return Optional.empty();
      }
      periods.add(period.get());
    }
    return days.isEmpty() ? Optional.empty() : Optional.of(new Schedule(false, days, periods));
  }

  /**
   * What is wrong with a text that is no schedule, as far as it can be told.
   *
   * @param text text that {@link #read} does not take
   * @return what is taken: {@link #TAKES}, or what was missed in a text that is nearly one
   */
  public static String takes(String text) {
    String plain = plain(text);
    Matcher times =
        Pattern.compile("(\\d{1,2})(?::(\\d{2}))?\\s*-\\s*(\\d{1,2})(?::(\\d{2}))?").matcher(plain);
    if (!times.find()) {
      return TAKES;
    }
    int start = minute(times.group(1), times.group(2));
    int end = minute(times.group(3), times.group(4));
    if (start < 0 || end < 0 || start > DAY || end > DAY) {
      return "times from 0:00 to 24:00, such as \"Mon-Fri 8:00-17:00\"";
    }
    if (end <= start) {
      return "periods that end after they begin, on the same day; for work past midnight two of"
          + " them, such as \"daily 0:00-2:00, 18:00-24:00\"; for an afternoon \"13:00-17:00\" or"
          + " \"1 pm-5 pm\"";
    }
    return times.start() == 0
        ? "the days before the times, such as \"Mon-Fri " + times.group() + "\""
        : TAKES;
  }

  /** With a hyphen between times, and those of half a day as hours from 0 to 24. */
  private static String plain(String text) {
    String joined =
        TO.matcher(text.strip().replace('\u2013', '-').replace('\u2212', '-')).replaceAll("-");
    return HALF_DAY
        .matcher(joined)
        .replaceAll(
            time -> {
              int hour = Integer.parseInt(time.group(1));
              if (hour < 1 || hour > 12) {
                return Matcher.quoteReplacement(time.group());
              }
              boolean late = time.group(3).equalsIgnoreCase("p");
              String minutes = time.group(2) == null ? "00" : time.group(2);
              // midnight that ends a day is its hour 24
              boolean midnight = !late && hour == 12 && ends(joined, time.start());
              return (midnight ? 24 : hour % 12 + (late ? 12 : 0)) + ":" + minutes;
            });
  }

  private static boolean ends(String text, int at) {
    return text.substring(0, at).stripTrailing().endsWith("-");
  }

  /**
   * Writes a schedule so that {@link #read} gives it back.
   *
   * @param schedule schedule
   * @return text
   */
  public static String write(Schedule schedule) {
    if (schedule.asWork()) {
      return "work";
    }
    if (schedule.days().isEmpty() || schedule.periods().isEmpty()) {
      return "never";
    }
    if (schedule.equals(always())) {
      return "always";
    }
    StringBuilder text = new StringBuilder(days(schedule.days()));
    String between = " ";
    for (Schedule.Period period : schedule.periods()) {
      text.append(between).append(time(period.startMinute()));
      text.append('-').append(time(period.endMinute()));
      if (period.fraction() != 1) {
        text.append(' ');
        text.append(Quantities.exact(Kind.FRACTION, period.fraction(), UnitSystem.INCH_POUND));
      }
      between = ", ";
    }
    return text.toString();
  }

  /**
   * At all hours of the week.
   *
   * @return "always"
   */
  public static Schedule always() {
    return new Schedule(
        false, EnumSet.allOf(DayOfWeek.class), List.of(new Schedule.Period(0, DAY, 1)));
  }

  /**
   * At no hour.
   *
   * @return "never"
   */
  public static Schedule never() {
    return new Schedule(false, Set.of(), List.of());
  }

  /**
   * In the shop's working hours.
   *
   * @return "work"
   */
  public static Schedule work() {
    return new Schedule(true, Set.of(), List.of());
  }

  private static Optional<Schedule.Period> period(String text) {
    Matcher matcher = PERIOD.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    int start = minute(matcher.group(1), matcher.group(2));
    int end = minute(matcher.group(3), matcher.group(4));
    double fraction = 1;
    if (matcher.group(5) != null) {
      Reading reading = Quantities.read(Kind.FRACTION, matcher.group(5));
      if (!(reading instanceof Reading.Good good)) {
        return Optional.empty();
      }
      fraction = good.si() + 0.0;
    }
    boolean fits = start >= 0 && end > start && end <= DAY && fraction >= 0 && fraction <= 1;
    return fits ? Optional.of(new Schedule.Period(start, end, fraction)) : Optional.empty();
  }

  private static int minute(String hour, String minute) {
    int minutes = minute == null ? 0 : Integer.parseInt(minute);
    return minutes > 59 ? -1 : 60 * Integer.parseInt(hour) + minutes;
  }

  private static String time(int minute) {
    return String.format(Locale.ROOT, "%d:%02d", minute / 60, minute % 60);
  }

  private static Set<DayOfWeek> days(String text) {
    if (text.strip().toLowerCase(Locale.ROOT).equals("daily")) {
      return EnumSet.allOf(DayOfWeek.class);
    }
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (String part : Pattern.compile(",").split(text, -1)) {
      String[] ends = Pattern.compile("-").split(part, -1);
      Optional<DayOfWeek> first = day(ends[0]);
      Optional<DayOfWeek> last = day(ends[ends.length - 1]);
      if (ends.length > 2 || first.isEmpty() || last.isEmpty()) {
        return Set.of();
      }
      DayOfWeek day = first.get();
      days.add(day);
      while (day != last.get()) {
        day = day.plus(1);
        days.add(day);
      }
    }
    return days;
  }

  private static Optional<DayOfWeek> day(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (plain.length() >= 3 && day.name().toLowerCase(Locale.ROOT).startsWith(plain)) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  /** Days in runs from Monday: "Mon-Fri", "Mon,Wed,Fri", "daily". */
  private static String days(Set<DayOfWeek> days) {
    if (days.size() == 7) {
      return "daily";
    }
    List<String> parts = new ArrayList<>();
    int day = 1;
    while (day <= 7) {
      int last = day;
      while (last < 7
          && days.contains(DayOfWeek.of(day))
          && days.contains(DayOfWeek.of(last + 1))) {
        last++;
      }
      if (days.contains(DayOfWeek.of(day))) {
        parts.add(last == day ? name(day) : name(day) + (last > day + 1 ? "-" : ",") + name(last));
      }
      day = last + 1;
    }
    return String.join(",", parts);
  }

  private static String name(int day) {
    String name = DayOfWeek.of(day).name();
    return name.charAt(0) + name.substring(1, 3).toLowerCase(Locale.ROOT);
  }
}
