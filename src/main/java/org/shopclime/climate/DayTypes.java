package org.shopclime.climate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Sums a year of hours up into day types: the days of each month sorted by their mean dry bulb, cut
 * into five as equal as the month allows (31 days: the middle fifth has seven).
 *
 * <p>The dry bulb of an hour is taken as the running mean of the days, plus the usual course of the
 * month times the swing of the day (by least squares), plus what is left; of that the waves of 24
 * and of 12 hours are told by their strength only.
 */
public final class DayTypes {

  private static final int DAYS = DaySequence.DAYS;

  /** Below this a course is noise, K. */
  private static final double LEAST_RANGE = 1e-6;

  private final WeatherYear year;
  private final double[] mean;
  private final double[] lowest;
  private final double[] highest;
  private final double[] dewPoint;
  private final double[] global;
  private final double[] direct;
  private final double[] cloud;
  private final double[] wind;
  private final double[] swing = new double[DAYS];

  /** How far the dry bulb of each hour lies above the running mean, K. */
  private final double[] riding = new double[WeatherYear.COUNT];

  private final DayCourses courses;

  private DayTypes(WeatherYear year) {
    this.year = year;
    mean = means(year::dryBulb);
    lowest = each(day -> ofDay(day, year::dryBulb).min());
    highest = each(day -> ofDay(day, year::dryBulb).max());
    dewPoint = means(year::dewPoint);
    global = means(year::globalHorizontal);
    direct = means(year::directNormal);
    cloud = means(year::opaqueCloud);
    wind = means(year::windSpeed);
    RunningMean running = new RunningMean(mean);
    for (int hour = 0; hour < WeatherYear.COUNT; hour++) {
      riding[hour] =
          year.dryBulb(hour + 1) - running.at(hour / Hours.COUNT, hour % Hours.COUNT + 1);
    }
    courses = courses();
    for (int day = 0; day < DAYS; day++) {
      swing[day] = swing(day);
    }
  }

  /**
   * The day types of a year.
   *
   * @param year a year of hours
   * @return its day types, unrounded
   */
  public static TypicalYear of(WeatherYear year) {
    return new DayTypes(year).typicalYear();
  }

  private TypicalYear typicalYear() {
    List<DayType> types = new ArrayList<>();
    int[] warmth = new int[DAYS];
    int[] sun = new int[DAYS];
    int[] wide = new int[DAYS];
    for (int month = 1; month <= Months.COUNT; month++) {
      List<Integer> rising = sorted(days(month), mean);
      rank(rising, warmth);
      int from = 0;
      for (int fifth = 1; fifth <= DayType.FIFTHS; fifth++) {
        int to = end(rising.size(), fifth);
        List<Integer> days = rising.subList(from, to);
        types.add(type(month, fifth, days));
        rank(sorted(days, global), sun);
        rank(sorted(days, swing), wide);
        from = to;
      }
    }
    return new TypicalYear(year.station(), types, courses, DaySequence.of(warmth, sun, wide));
  }

  /** Days of the coldest fifths up to one, so that what cannot be shared out lies in the middle. */
  static int end(int days, int fifth) {
    return (int) Math.rint((double) days * fifth / DayType.FIFTHS);
  }

  private static List<Integer> sorted(List<Integer> days, double[] by) {
    return days.stream().sorted(Comparator.comparingDouble(day -> by[day])).toList();
  }

  private static void rank(List<Integer> rising, int[] into) {
    for (int rank = 0; rank < rising.size(); rank++) {
      into[rising.get(rank)] = rank;
    }
  }

  /** Days from 0. */
  private static List<Integer> days(int month) {
    return IntStream.range(0, DAYS).filter(day -> month(day) == month).boxed().toList();
  }

  private static int month(int day) {
    return WeatherYear.dateOf(day + 1).getMonthValue();
  }

  private DayType type(int month, int fifth, List<Integer> days) {
    return new DayType(
        month,
        fifth,
        days.size(),
        mean(days, mean),
        mean(days, lowest),
        mean(days, highest),
        mean(days, swing),
        mean(days, dewPoint),
        mean(days, global),
        mean(days, direct),
        mean(days, cloud),
        mean(days, wind),
        new DayType.Spread(
            spread(days, mean),
            spread(days, swing),
            spread(days, global),
            spread(days, direct),
            spread(days, cloud),
            spread(days, wind),
            wave(days, 1),
            wave(days, 2)));
  }

  private static double[] each(IntToDoubleFunction ofDay) {
    return IntStream.range(0, DAYS).mapToDouble(ofDay).toArray();
  }

  private static double[] means(IntToDoubleFunction value) {
    return each(day -> ofDay(day, value).mean());
  }

  private static double mean(List<Integer> days, double[] ofDay) {
    return days.stream().mapToDouble(day -> ofDay[day]).average().orElseThrow();
  }

  private static double spread(List<Integer> days, double[] ofDay) {
    double mean = mean(days, ofDay);
    return Math.sqrt(
        days.stream().mapToDouble(day -> Math.pow(ofDay[day] - mean, 2)).average().orElseThrow());
  }

  private static Hours ofDay(int day, IntToDoubleFunction value) {
    return Hours.from(ending -> value.applyAsDouble(day * Hours.COUNT + ending));
  }

  private DayCourses courses() {
    UsualSky sky = new UsualSky(year.station());
    double[] clearGlobal = new double[WeatherYear.COUNT];
    double[] clearDirect = new double[WeatherYear.COUNT];
    for (int hour = 0; hour < WeatherYear.COUNT; hour++) {
      UsualSky.Sun clear = sky.at(hour / Hours.COUNT, hour % Hours.COUNT);
      clearGlobal[hour] = clear.global();
      clearDirect[hour] = clear.direct();
    }
    return new DayCourses(
        DayCourses.ofMonths(month -> dryBulb(days(month))),
        DayCourses.ofMonths(month -> ratio(days(month), year::globalHorizontal, clearGlobal)),
        DayCourses.ofMonths(month -> ratio(days(month), year::directNormal, clearDirect)),
        DayCourses.ofQuarters(
            quarter -> {
              List<Integer> days = quarter(quarter);
              double mean = mean(days, cloud);
              return Hours.from(ending -> mean(days, year::opaqueCloud, ending) - mean);
            }),
        DayCourses.ofQuarters(
            quarter -> {
              List<Integer> days = quarter(quarter);
              double mean = mean(days, wind);
              return Hours.from(
                  ending -> mean > 0 ? mean(days, year::windSpeed, ending) / mean : 1);
            }));
  }

  private static List<Integer> quarter(int quarter) {
    return IntStream.range(0, DAYS)
        .filter(day -> DayCourses.quarter(month(day)) == quarter)
        .boxed()
        .toList();
  }

  private static double mean(List<Integer> days, IntToDoubleFunction value, int ending) {
    return days.stream()
        .mapToDouble(day -> value.applyAsDouble(day * Hours.COUNT + ending))
        .average()
        .orElseThrow();
  }

  private Hours dryBulb(List<Integer> days) {
    Hours usual = Hours.from(ending -> mean(days, hour -> riding[hour - 1], ending));
    double mean = usual.mean();
    double range = usual.max() - usual.min();
    return usual.map(above -> range > LEAST_RANGE ? (above - mean) / range : 0);
  }

  private static Hours ratio(List<Integer> days, IntToDoubleFunction value, double[] clear) {
    return Hours.from(
        ending -> {
          double most = mean(days, hour -> clear[hour - 1], ending);
          return most > 0 ? Math.min(DayCourses.BRIGHTEST, mean(days, value, ending) / most) : 0;
        });
  }

  private double swing(int day) {
    Hours course = courses.dryBulb().get(month(day) - 1);
    double product = 0;
    double square = 0;
    for (int ending = 1; ending <= Hours.COUNT; ending++) {
      double part = course.at(ending);
      product += part * riding[day * Hours.COUNT + ending - 1];
      square += part * part;
    }
    return square > 0 ? product / square : 0;
  }

  /** Amplitude of the wave with so many turns a day in what course and running mean leave. */
  private double wave(List<Integer> days, int turns) {
    double squares = 0;
    for (int day : days) {
      Hours course = courses.dryBulb().get(month(day) - 1);
      double cosine = 0;
      double sine = 0;
      for (int ending = 1; ending <= Hours.COUNT; ending++) {
        double rest = riding[day * Hours.COUNT + ending - 1] - swing[day] * course.at(ending);
        double angle = 2 * Math.PI * turns * ending / Hours.COUNT;
        cosine += rest * Math.cos(angle) * 2 / Hours.COUNT;
        sine += rest * Math.sin(angle) * 2 / Hours.COUNT;
      }
      squares += (cosine * cosine + sine * sine) / days.size();
    }
    return Math.sqrt(squares);
  }
}
