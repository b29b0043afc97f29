package org.shopclime.climate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;

/**
 * Finds the hours of a year that are missing or cannot be, fills them, and says so.
 *
 * <p>Before that {@link FalseHeat} puts right what was written in °F.
 *
 * <p>Three kinds count as gaps: hours without a possible figure; a lone dry bulb more than 15 K
 * above or below both hours beside it; days whose highest or lowest dry bulb lies more than 20 K
 * above or below that of both days beside them. Of the 1,020 files of the collection 19 have such
 * hours and 31 such days (Florida at -12 °C in August).
 *
 * <p>A gap of up to six hours is filled straight from the hour before to the hour after; a longer
 * one, and any of the sun, by the mean of the same hour on the nearest days before and after. The
 * year is a circle. More than 5 % of a column or more than 72 hours in a row are not filled, but
 * for aerosol and albedo, whose whole column is then missing.
 */
final class WeatherGaps {
  private static final double MOST_PART = 0.05;
  private static final int LONGEST_H = 72;
  private static final int STRAIGHT_H = 6;
  private static final double LONE_K = 15;
  private static final double LONE_DAY_K = 20;
  private static final int YEAR = WeatherYear.COUNT;

  private static final Set<WeatherColumn> SUN =
      Set.of(WeatherColumn.GLOBAL, WeatherColumn.DIRECT_NORMAL, WeatherColumn.DIFFUSE);

  private static final Set<WeatherColumn> MAY_BE_MISSING =
      Set.of(WeatherColumn.AEROSOL, WeatherColumn.ALBEDO);

  private final Map<WeatherColumn, double[]> values;
  private final List<String> notes = new ArrayList<>();
  private final List<String> tooMany = new ArrayList<>();

  /** Takes the arrays of a year in SI, not a number where a figure is missing, and fills them. */
  WeatherGaps(Map<WeatherColumn, double[]> values) {
    this.values = values;
    FalseHeat heat = new FalseHeat(values);
    if (!heat.fahrenheit().isEmpty()) {
      notes.add(
          WeatherColumn.DRY_BULB.header()
              + ": "
              + hours(heat.fahrenheit().cardinality())
              + " far too hot for the days around, which fit when read as °F; taken so");
    }
    Map<WeatherColumn, BitSet> missing = new EnumMap<>(WeatherColumn.class);
    values.forEach((column, hours) -> missing.put(column, where(at -> Double.isNaN(hours[at]))));
    double[] dryBulb = values.get(WeatherColumn.DRY_BULB);
    BitSet lone = where(at -> isLone(dryBulb, at));
    blank(lone, WeatherColumn.DRY_BULB);
    BitSet days = loneDays(dryBulb);
    blank(days, WeatherColumn.DRY_BULB);
    blank(days, WeatherColumn.DEW_POINT);
    blank(days, WeatherColumn.RELATIVE_HUMIDITY);
    for (WeatherColumn column : WeatherColumn.values()) {
      fill(column, missing.get(column), lone, days);
    }
  }

  /** What was filled, a sentence for each column; empty where nothing was. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  /** What was too much to fill, a sentence for each column. */
  List<String> tooMany() {
    return List.copyOf(tooMany);
  }

  /** What is taken, in words. */
  static String takes() {
    return String.format(
        Locale.ROOT,
        "at most %.0f such hours (%.0f %%) and %d in a row",
        MOST_PART * YEAR,
        100 * MOST_PART,
        LONGEST_H);
  }

  private static BitSet where(IntPredicate holds) {
    BitSet hours = new BitSet(YEAR);
    for (int at = 0; at < YEAR; at++) {
      hours.set(at, holds.test(at));
    }
    return hours;
  }

  private void blank(BitSet hours, WeatherColumn column) {
    double[] figures = values.get(column);
    hours.stream().forEach(at -> figures[at] = Double.NaN);
  }

  private static boolean isLone(double[] dryBulb, int at) {
    return isBeyond(
        dryBulb[at], dryBulb[Math.floorMod(at - 1, YEAR)], dryBulb[(at + 1) % YEAR], LONE_K);
  }

  /** Whether one lies above both others, or below both, by more than a distance. */
  private static boolean isBeyond(double one, double before, double after, double distance) {
    return Math.min(one - before, one - after) > distance
        || Math.min(before - one, after - one) > distance;
  }

  private static BitSet loneDays(double[] dryBulb) {
    int days = YEAR / Hours.COUNT;
    double[] highs = new double[days];
    double[] lows = new double[days];
    for (int day = 0; day < days; day++) {
      highs[day] = highest(dryBulb, day, value -> value);
      lows[day] = -highest(dryBulb, day, value -> -value);
    }
    return where(
        at -> {
          int day = at / Hours.COUNT;
          int before = Math.floorMod(day - 1, days);
          int after = (day + 1) % days;
          return isBeyond(highs[day], highs[before], highs[after], LONE_DAY_K)
              || isBeyond(lows[day], lows[before], lows[after], LONE_DAY_K);
        });
  }

  /** Highest figure of a day that is one, or not a number where none is. */
  private static double highest(double[] figures, int day, DoubleUnaryOperator sign) {
    double highest = Double.NaN;
    for (int at = day * Hours.COUNT; at < (day + 1) * Hours.COUNT; at++) {
      double value = sign.applyAsDouble(figures[at]);
      if (!Double.isNaN(value) && !(value <= highest)) {
        highest = value;
      }
    }
    return highest;
  }

  private void fill(WeatherColumn column, BitSet missing, BitSet lone, BitSet days) {
    double[] figures = values.get(column);
    BitSet gaps = where(at -> Double.isNaN(figures[at]));
    if (gaps.isEmpty()) {
      return;
    }
    int longest = longest(gaps);
    String found =
        column.header()
            + ": "
            + reasons(column, missing, lone, days)
            + ", the longest gap "
            + hours(longest);
    if (gaps.cardinality() <= MOST_PART * YEAR && longest <= LONGEST_H) {
      double[] filled = figures.clone();
      gaps.stream().forEach(at -> filled[at] = filled(column, figures, at));
      System.arraycopy(filled, 0, figures, 0, YEAR);
      notes.add(found + "; filled from the hours and days around");
    } else if (MAY_BE_MISSING.contains(column)) {
      Arrays.fill(figures, 0);
      notes.add(found + "; the column is taken as missing");
    } else {
      tooMany.add(found);
    }
  }

  private static String reasons(WeatherColumn column, BitSet missing, BitSet lone, BitSet days) {
    List<String> reasons = new ArrayList<>();
    if (!missing.isEmpty()) {
      reasons.add(hours(missing.cardinality()) + " missing or impossible");
    }
    if (column == WeatherColumn.DRY_BULB && !lone.isEmpty()) {
      reasons.add(hours(lone.cardinality()) + " far from both hours beside");
    }
    if (!days.isEmpty()
        && (column == WeatherColumn.DRY_BULB
            || column == WeatherColumn.DEW_POINT
            || column == WeatherColumn.RELATIVE_HUMIDITY)) {
      reasons.add(hours(days.cardinality()) + " on days far hotter or colder than both beside");
    }
    return String.join(", ", reasons);
  }

  private static String hours(int count) {
    return count == 1 ? "1 hour" : count + " hours";
  }

  private static int longest(BitSet gaps) {
    if (gaps.cardinality() == YEAR) {
      return YEAR;
    }
    int longest = 0;
    int run = 0;
    // Twice round, so that a gap over New Year's Eve is one.
    for (int at = 0; at < 2 * YEAR; at++) {
      run = gaps.get(at % YEAR) ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  }

  private static double filled(WeatherColumn column, double[] figures, int at) {
    int before = stepsToFigure(figures, at, -1);
    int after = stepsToFigure(figures, at, 1);
    boolean straight = !SUN.contains(column) && before + after - 1 <= STRAIGHT_H;
    if (straight) {
      double from = figures[Math.floorMod(at - before, YEAR)];
      double to = figures[(at + after) % YEAR];
      return from + (to - from) * before / (before + after);
    }
    int dayBefore = stepsToFigure(figures, at, -Hours.COUNT);
    int dayAfter = stepsToFigure(figures, at, Hours.COUNT);
    return (figures[Math.floorMod(at - dayBefore * Hours.COUNT, YEAR)]
            + figures[(at + dayAfter * Hours.COUNT) % YEAR])
        / 2;
  }

  /** How many steps of so many hours to the next figure. */
  private static int stepsToFigure(double[] figures, int at, int hours) {
    int steps = 1;
    while (steps < YEAR && Double.isNaN(figures[Math.floorMod(at + steps * hours, YEAR)])) {
      steps++;
    }
    return steps;
  }
}
