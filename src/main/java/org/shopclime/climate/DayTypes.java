package org.shopclime.climate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Sums a year of hours up into day types: the days of each month sorted by their mean dry bulb, cut
 * into five as equal as the month allows (31 days: the middle fifth has seven).
 */
public final class DayTypes {

  private final WeatherYear year;

  private DayTypes(WeatherYear year) {
    this.year = year;
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
    List<Hours> shapes = new ArrayList<>();
    for (int month = 1; month <= Months.COUNT; month++) {
      List<Integer> days = daysOf(month);
      shapes.add(maker.shape(days));
      List<Integer> rising = days.stream().sorted(Comparator.comparing(maker::mean)).toList();
      int from = 0;
      for (int fifth = 1; fifth <= DayType.FIFTHS; fifth++) {
        int to = end(rising.size(), fifth);
        types.add(maker.type(month, fifth, rising.subList(from, to)));
        from = to;
      }
    }
    return new TypicalYear(year.station(), types, shapes);
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
    double mean = mean(days, this::mean);
    double square = mean(days, day -> Math.pow(mean(day) - mean, 2));
    return new DayType(
        month,
        fifth,
        days.size(),
        mean,
        mean(days, day -> ofDay(day, year::dryBulb).min()),
        mean(days, day -> ofDay(day, year::dryBulb).max()),
        Math.sqrt(square),
        mean(days, day -> ofDay(day, year::dewPoint).mean()),
        mean(days, day -> ofDay(day, year::globalHorizontal).mean()),
        mean(days, day -> ofDay(day, year::directNormal).mean()),
        mean(days, day -> ofDay(day, year::opaqueCloud).mean()),
        mean(days, day -> ofDay(day, year::windSpeed).mean()));
  }

  private Hours shape(List<Integer> days) {
    Hours course =
        Hours.from(ending -> mean(days, day -> year.dryBulb((day - 1) * Hours.COUNT + ending)));
    double low = course.min();
    double range = course.max() - low;
    return course.map(value -> range > 0 ? (value - low) / range : 0);
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
