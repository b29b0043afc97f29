package org.shopclime.report;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.shopclime.balance.YearWeather;
import org.shopclime.balance.YearWeeks;
import org.shopclime.plan.Habit;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.plan.HabitYear;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;
import org.shopclime.run.RustWatch;
import org.shopclime.run.YearResult.Figure;

/** Leaving the unit on or switching it on, in words and rows. */
public final class HabitText {

  /** Two energies within this part of each other read as alike. */
  private static final double ALIKE = 0.02;

  /** A month that draws less than this part of the year's energy is one without cooling. */
  private static final double HARDLY = 0.03;

  /** Less is the same temperature, K. */
  private static final double SAME = 0.05;

  private final HabitAnswer answer;
  private final UnitSystem units;
  private final HabitYear always;
  private final HabitYear back;
  private final HabitYear demand;

  /**
   * Words on an answer.
   *
   * @param answer the answer
   * @param units system of units to show
   */
  public HabitText(HabitAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
    always = answer.of(Habit.ALWAYS_ON);
    back = answer.of(Habit.SET_BACK);
    demand = answer.of(Habit.ON_DEMAND);
  }

  /**
   * What leaving the unit on costs and spares.
   *
   * @return one sentence
   */
  public String sentence() {
    Month month = middle(answer.hotWeek());
    double more = always.cost().cooling().of(month) - demand.cost().cooling().of(month);
    String cost =
        Math.abs(more) < 1
            ? "costs no more in " + name(month) + " than "
            : "costs "
                + dollars(Math.rint(Math.abs(more)))
                + (more > 0 ? " more" : " less")
                + " in "
                + name(month)
                + " than ";
    return "Leaving it on " + cost + switchingOn() + ", and " + spared() + ".";
  }

  private String spared() {
    int damp = demand.rust().count().damp();
    int left = always.rust().count().damp();
    if (damp == 0 && left == 0) {
      return "the iron is not damp either way";
    }
    if (left == damp) {
      return "spares the iron none of its " + hours(damp) + " damp hours a year";
    }
    return left < damp
        ? "spares the iron " + hours(damp - left) + " of " + hours(damp) + " damp hours a year"
        : "gives the iron "
            + hours(left - damp)
            + " damp hours a year on top of "
            + hours(damp)
            + ", as a colder room makes colder iron";
  }

  private String switchingOn() {
    OptionalInt at = answer.switchedOn();
    return at.isPresent()
        ? "switching it on at " + WallClock.text(at.getAsInt())
        : "running it in working hours";
  }

  /** Name of a habit, as rows and panels tell it. */
  String name(Habit habit) {
    return switch (habit) {
      case ALWAYS_ON -> "Left on";
      case SET_BACK -> "Set back to " + Shown.temperature(answer.away(), units);
      case ON_DEMAND -> {
        OptionalInt at = answer.switchedOn();
        yield at.isPresent() ? "On from " + WallClock.text(at.getAsInt()) : "On while working";
      }
    };
  }

  /**
   * The answer in sentences, the first as {@link #sentence}.
   *
   * @return sentences
   */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(sentence());
    lines.add(energy());
    lines.add(lead());
    lines.add(hot());
    lines.add(water());
    when().ifPresent(lines::add);
    if (!answer.weekends().isEmpty()) {
      lines.add(weekends());
    }
    lines.add(
        "Damp: the room's air at the coldest iron has "
            + Shown.percent(RustWatch.DAMP)
            + " relative humidity or more. Bare, freshly blasted or salty steel begins to rust at"
            + " about "
            + Shown.percent(RustWatch.BARE)
            + ". Hours are a guide to which habit is better, no promise: oil, salt, dust and"
            + " fingers on the iron count for as much.");
    return lines;
  }

  private String energy() {
    String told =
        "Held at "
            + Shown.temperature(setPoint(), units)
            + " all hours the unit draws "
            + energy(always)
            + "; set back to "
            + Shown.temperature(answer.away(), units)
            + " outside of work "
            + energy(back)
            + "; off then, "
            + energy(demand)
            + ".";
    if (answer.away() > answer.awayAsked() + SAME) {
      told +=
          " You set it back to "
              + Shown.temperature(answer.awayAsked(), units)
              + "; as that is too near to the wished temperature, "
              + Shown.temperature(answer.away(), units)
              + " was taken.";
    }
    double saved = back.kilowattHours() - demand.kilowattHours();
    return Math.abs(saved) <= ALIKE * demand.kilowattHours()
        ? told
            + " Setting back is as good as switching off: left alone the room seldom gets that"
            + " warm."
        : told;
  }

  private static String energy(HabitYear year) {
    return Shown.grouped(Math.round(year.kilowattHours()))
        + " kWh a year ("
        + dollars(Math.rint(year.dollars()))
        + ")";
  }

  private String lead() {
    OptionalInt found = answer.morning().lead();
    String before =
        answer.leadHours() == 0
            ? "with the start of work"
            : answer.leadHours() + " h before work begins";
    return "Set back or off, the wished temperature is asked for "
        + before
        + ": "
        + (found.isEmpty()
            ? "on the hot day no lead is enough, so it is the time you allow for cooling down."
            : found.getAsInt() == 0
                ? "on the hot day the unit needs no lead."
                : "on the hot day the unit needs "
                    + Shown.duration(found.getAsInt())
                    + ". On cooler days less will do.");
  }

  private String hot() {
    return "Above "
        + Shown.temperature(setPoint() + LivedDay.TOLERANCE, units)
        + " the room is in "
        + hours(hotWork(always))
        + " working hours of the year if left on, "
        + hours(hotWork(back))
        + " if set back, "
        + hours(hotWork(demand))
        + " if switched on for work.";
  }

  private static double hotWork(HabitYear year) {
    return year.hotWorkHours(0, YearWeather.HOURS);
  }

  private String water() {
    RustWatch.Count left = always.rust().count();
    RustWatch.Count off = demand.rust().count();
    if (left.wet() == 0 && off.wet() == 0) {
      return "Water gathers neither on iron nor on the slab: the dew point stays below both.";
    }
    return "Water gathers, the dew point being at or above their own temperature: on iron in "
        + both(left.ironWet(), off.ironWet())
        + "; on the slab in "
        + both(left.slabWet(), off.slabWet())
        + ".";
  }

  private static String both(int left, int off) {
    return left == off
        ? some(left) + " of the year, left on or not"
        : some(left) + " of the year if left on, " + some(off) + " if switched on for work";
  }

  private static String some(int hours) {
    return hours == 0 ? "no hour" : hours == 1 ? "1 hour" : hours(hours) + " hours";
  }

  /** When the iron is damp, and whether the unit could help then. */
  private Optional<String> when() {
    Month worst = Month.JANUARY;
    int most = 0;
    for (Month month : Month.values()) {
      int damp = damp(demand.rust(), month);
      if (damp > most) {
        most = damp;
        worst = month;
      }
    }
    if (most == 0) {
      return Optional.empty();
    }
    double drawn = always.year().kilowattHours(Figure.POWER, always.room(), worst.getValue());
    String told = name(worst) + " has most of the damp hours, " + hours(most);
    return Optional.of(
        drawn < HARDLY * always.kilowattHours()
            ? told
                + ", and the unit hardly runs then: a little heat or a dehumidifier keeps iron dry in"
                + " that month, no way of running this unit does."
            : told + ".");
  }

  private static int damp(RustWatch rust, Month month) {
    int damp = 0;
    for (int day = 0; day < YearWeather.DAYS; day++) {
      int from = day * 24;
      damp += YearWeeks.date(from).getMonth() == month ? rust.count(from, from + 24).damp() : 0;
    }
    return damp;
  }

  private String weekends() {
    HabitYear left = answer.weekends().get(0);
    HabitYear off = answer.weekends().get(answer.weekends().size() - 1);
    return "Used on Saturday and Sunday only, the same hours: left on "
        + energy(left)
        + "; off between, "
        + energy(off)
        + ". Iron is damp in "
        + hours(left.rust().count().damp())
        + " hours of the year if left on and in "
        + hours(off.rust().count().damp())
        + " if off between, heat of work and heater counted on those days only.";
  }

  /** Head of the table. */
  static List<String> head() {
    return List.of(
        "Habit",
        "kWh",
        "$",
        "Hot week",
        "Hot work",
        "Damp",
        Shown.percent(RustWatch.BARE),
        "Wet iron",
        "Wet slab");
  }

  /** One row for each habit, weekends behind the owner's days. */
  List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    answer.own().forEach(year -> rows.add(row(year)));
    answer.weekends().forEach(year -> rows.add(row(year)));
    return rows;
  }

  private List<String> row(HabitYear year) {
    RustWatch.Count count = year.rust().count();
    int from = answer.hotWeek();
    return List.of(
        year.weekendsOnly() ? "Weekends: " + small(name(year.habit())) : name(year.habit()),
        hours(year.kilowattHours()),
        hours(year.dollars()),
        hours(year.kilowattHours(from, from + YearWeeks.HOURS)),
        hours(hotWork(year)),
        hours(count.damp()),
        hours(count.bare()),
        hours(count.ironWet()),
        hours(count.slabWet()));
  }

  private static String small(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  /** What stands in the table. */
  static String note() {
    return "kWh and $: the unit's alone, a year; hot week: its kWh in the hottest week. All else:"
        + " hours of the year. Hot work: working hours warmer than counts"
        + " as held, the first hour counted. Damp: iron at "
        + Shown.percent(RustWatch.DAMP)
        + " relative humidity or more at its face; beside it "
        + Shown.percent(RustWatch.BARE)
        + " or more, where bare steel begins to rust. Wet: the dew point at or above its"
        + " temperature.";
  }

  /** When a week begins, as "the week from July 21". */
  static String week(int from) {
    return "the week from "
        + name(YearWeeks.date(from).getMonth())
        + " "
        + YearWeeks.date(from).getDayOfMonth();
  }

  /**
   * What the picture of a week shows.
   *
   * @param from first hour of the week
   * @return sentences
   */
  public String caption(int from) {
    List<String> wet = new ArrayList<>();
    for (HabitYear year : answer.own()) {
      RustWatch.Count count = year.rust().count(from, from + YearWeeks.HOURS);
      wet.add(
          small(name(year.habit()))
              + " "
              + hours(year.kilowattHours(from, from + YearWeeks.HOURS))
              + " kWh, damp iron "
              + hours(count.damp())
              + " h, wet slab "
              + hours(count.slabWet())
              + " h");
    }
    return (from == answer.hotWeek()
            ? "The hottest week of the year, "
            : "The damp week of spring, ")
        + week(from)
        + ": "
        + String.join("; ", wet)
        + ". Where the dew point reaches iron or slab, water gathers on it. Shaded: work.";
  }

  private double setPoint() {
    return always.year().year().plants().cooledTo(always.room());
  }

  private static Month middle(int from) {
    return YearWeeks.date(from + YearWeeks.HOURS / 2).getMonth();
  }

  private static String name(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static String dollars(double amount) {
    return BillText.dollars(amount);
  }

  private static String hours(double hours) {
    return Shown.grouped(Math.round(hours));
  }
}
