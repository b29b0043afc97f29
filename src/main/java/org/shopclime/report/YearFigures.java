package org.shopclime.report;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.shopclime.balance.YearWeather;
import org.shopclime.plan.YearAnswer;
import org.shopclime.quantity.Units;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;

/** Sums of a year's answer by month and over all rooms. */
final class YearFigures {

  static final int MONTHS = 12;

  /** Above it work is called hot, °C; 85 °F (common practice). */
  static final double HOT = Units.celsius(85);

  private static final int HOURS_A_DAY = 24;

  private final YearAnswer answer;

  YearFigures(YearAnswer answer) {
    this.answer = answer;
  }

  int rooms() {
    return answer.described().year().rooms();
  }

  /** All rooms together, kWh. */
  double total(Figure figure) {
    return IntStream.range(0, rooms())
        .mapToDouble(room -> answer.described().kilowattHours(figure, room))
        .sum();
  }

  /** All rooms together in a month from 1 to 12, kWh. */
  double total(Figure figure, int month) {
    return IntStream.range(0, rooms())
        .mapToDouble(room -> answer.described().kilowattHours(figure, room, month))
        .sum();
  }

  /** The month, 1 to 12, in which all rooms together take most. */
  int worstMonth(Figure figure) {
    double[] months = new double[MONTHS];
    Arrays.setAll(months, month -> total(figure, month + 1));
    return IntStream.range(0, MONTHS)
            .reduce((best, month) -> months[month] > months[best] ? month : best)
            .orElseThrow()
        + 1;
  }

  /** Any plant of this kind in any room. */
  boolean isCooledBy(YearAnswer.Plant plant) {
    return IntStream.range(0, rooms()).anyMatch(room -> answer.cooling(room) == plant);
  }

  boolean isHeated() {
    return IntStream.range(0, rooms())
        .anyMatch(room -> answer.heating(room) != YearAnswer.Plant.NONE);
  }

  double outdoor(int hour) {
    return answer.described().year().weather().dryBulb(hour);
  }

  /** Mean outdoor air of a month from 1 to 12, °C. */
  double meanOutdoor(int month) {
    return hours(month).mapToDouble(this::outdoor).average().orElseThrow();
  }

  /** Mean outdoor air of the year, °C. */
  double meanOutdoor() {
    return IntStream.range(0, YearWeather.HOURS).mapToDouble(this::outdoor).average().orElseThrow();
  }

  /** Working hours of the year. */
  double workHours() {
    return IntStream.range(0, YearWeather.HOURS)
        .mapToDouble(answer.described().year()::working)
        .sum();
  }

  /** Working hours of the year in which a room is hot. */
  static double hotWorkHours(YearResult year, int room) {
    return year.workHoursAbove(Figure.AIR, room, HOT);
  }

  /** Working hours of a month in which a room is hot. */
  static double hotWorkHours(YearResult year, int room, int month) {
    return hours(month)
        .filter(hour -> year.at(Figure.AIR, room, hour) > HOT)
        .mapToDouble(year.year()::working)
        .sum();
  }

  /** Mean over the days of a month of the coolest hour. */
  static double meanLow(IntToDoubleFunction ofHour, int month) {
    return days(month)
        .mapToDouble(day -> ofDay(day).mapToDouble(ofHour).min().orElseThrow())
        .average()
        .orElseThrow();
  }

  /** Mean over the days of a month of the warmest hour. */
  static double meanHigh(IntToDoubleFunction ofHour, int month) {
    return days(month)
        .mapToDouble(day -> ofDay(day).mapToDouble(ofHour).max().orElseThrow())
        .average()
        .orElseThrow();
  }

  private static IntStream hours(int month) {
    return IntStream.range(0, YearWeather.HOURS).filter(hour -> YearWeather.monthOf(hour) == month);
  }

  private static IntStream days(int month) {
    return IntStream.range(0, YearWeather.DAYS)
        .filter(day -> YearWeather.monthOf(day * HOURS_A_DAY) == month);
  }

  private static IntStream ofDay(int day) {
    return IntStream.range(day * HOURS_A_DAY, (day + 1) * HOURS_A_DAY);
  }

  /** Such as "July". */
  static String monthName(int month) {
    return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** Date of an hour from 0 to 8,759. */
  static LocalDate date(int hour) {
    return LocalDate.ofYearDay(2025, hour / HOURS_A_DAY + 1);
  }

  /** Such as "July 14, hour ending 17:00 standard time", for an hour from 0 to 8,759. */
  static String when(int hour) {
    LocalDate date = date(hour);
    return monthName(date.getMonthValue())
        + " "
        + date.getDayOfMonth()
        + ", hour ending "
        + (hour % HOURS_A_DAY + 1)
        + ":00 standard time";
  }

  /** Water that the dehumidifier of a room takes out, US gal. */
  static double drierGallons(YearResult year, int room) {
    double kilograms = 3600 * 1000 * year.kilowattHours(Figure.DRIER_WATER, room);
    return Units.gallons(kilograms / 1000);
  }
}
