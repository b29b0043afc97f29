package org.shopclime.climate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Sums a year of hours up into day types: the days of each month sorted by their mean dry bulb, cut
 * into five as equal as the month allows (31 days: the middle fifth has seven).
 */
public final class DayTypes {

  private final WeatherYear year;
  private final List<Hours> courses;

  private DayTypes(WeatherYear year) {
    this.year = year;
    courses = courses(this::course);
  }

  /**
   * The day types of a year.
   *
   * @param year a year of hours
   * @return its day types, unrounded
   */
  public static TypicalYear of(WeatherYear year) {
    DayTypes maker = new DayTypes(year);
    List<DayType> types = new ArrayList<>();
    for (int month = 1; month <= Months.COUNT; month++) {
      List<Integer> days = daysOf(month);
      List<Integer> rising = days.stream().sorted(Comparator.comparing(maker::mean)).toList();
      int from = 0;
      for (int fifth = 1; fifth <= DayType.FIFTHS; fifth++) {
        int to = end(rising.size(), fifth);
        types.add(maker.type(month, fifth, rising.subList(from, to)));
        from = to;
      }
    }
    return new TypicalYear(year.station(), types, maker.courses, maker.courses(maker::windCourse));
  }

  /** Days of the coldest fifths up to one, so that what cannot be shared out lies in the middle. */
  static int end(int days, int fifth) {
    return (int) Math.rint((double) days * fifth / DayType.FIFTHS);
  }

  private static List<Integer> daysOf(int month) {
    return IntStream.rangeClosed(1, WeatherYear.COUNT / Hours.COUNT)
        .filter(day -> WeatherYear.dateOf(day).getMonthValue() == month)
        .boxed()
        .toList();
  }

  private DayType type(int month, int fifth, List<Integer> days) {
    return new DayType(
        month,
        fifth,
        days.size(),
        mean(days, this::mean),
        mean(days, day -> ofDay(day, year::dryBulb).min()),
        mean(days, day -> ofDay(day, year::dryBulb).max()),
        swing(days, courses.get(TypicalYear.quarter(month))),
        mean(days, day -> ofDay(day, year::dewPoint).mean()),
        mean(days, day -> ofDay(day, year::globalHorizontal).mean()),
        mean(days, day -> ofDay(day, year::directNormal).mean()),
        mean(days, day -> ofDay(day, year::opaqueCloud).mean()),
        mean(days, day -> ofDay(day, year::windSpeed).mean()),
        new DayType.Spread(
            spread(days, year::dryBulb),
            spread(days, year::globalHorizontal),
            spread(days, year::directNormal),
            spread(days, year::opaqueCloud),
            spread(days, year::windSpeed),
            swingBySun(days, courses.get(TypicalYear.quarter(month)))));
  }

  private double swing(List<Integer> days, Hours course) {
    double range = course.max() - course.min();
    double product = 0;
    double square = 0;
    for (int ending = 1; ending <= Hours.COUNT; ending++) {
      int of = ending;
      double part = course.at(ending) / range;
      product += part * mean(days, day -> ofDay(day, year::dryBulb).at(of));
      square += part * part;
    }
    return product / square;
  }

  private double swingBySun(List<Integer> days, Hours course) {
    double sun = spread(days, year::globalHorizontal);
    double mean = mean(days, day -> ofDay(day, year::globalHorizontal).mean());
    return sun > 0
        ? mean(
                days,
                day ->
                    swing(List.of(day), course)
                        * (ofDay(day, year::globalHorizontal).mean() - mean))
            / sun
        : 0;
  }

  private static double spread(List<Integer> days, IntToDoubleFunction value) {
    double mean = mean(days, day -> ofDay(day, value).mean());
    return Math.sqrt(mean(days, day -> Math.pow(ofDay(day, value).mean() - mean, 2)));
  }

  private List<Hours> courses(Function<List<Integer>, Hours> ofDays) {
    return IntStream.range(0, TypicalYear.QUARTERS)
        .mapToObj(
            quarter ->
                ofDays.apply(
                    IntStream.rangeClosed(1, WeatherYear.COUNT / Hours.COUNT)
                        .filter(
                            day ->
                                TypicalYear.quarter(WeatherYear.dateOf(day).getMonthValue())
                                    == quarter)
                        .boxed()
                        .toList()))
        .toList();
  }

  /** Each day in parts of its own range, so that days of great and small range count alike. */
  private Hours course(List<Integer> days) {
    return Hours.from(
        ending ->
            mean(
                days,
                day -> {
                  Hours dryBulb = ofDay(day, year::dryBulb);
                  double range = dryBulb.max() - dryBulb.min();
                  return range > 0 ? (dryBulb.at(ending) - dryBulb.mean()) / range : 0;
                }));
  }

  private Hours windCourse(List<Integer> days) {
    double mean = mean(days, day -> ofDay(day, year::windSpeed).mean());
    return Hours.from(
        ending -> mean > 0 ? mean(days, day -> ofDay(day, year::windSpeed).at(ending)) / mean : 1);
  }

  private double mean(int day) {
    return ofDay(day, year::dryBulb).mean();
  }

  private static double mean(List<Integer> days, ToDoubleFunction<Integer> value) {
    return days.stream().mapToDouble(value).average().orElseThrow();
  }

  private static Hours ofDay(int day, IntToDoubleFunction value) {
    return Hours.from(ending -> value.applyAsDouble((day - 1) * Hours.COUNT + ending));
  }
}
