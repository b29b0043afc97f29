package org.shopclime.climate;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A station's typical year as 60 day types, five for each month, with the course of a usual day.
 *
 * @param station the station
 * @param types January's five first, the coldest of each month first
 * @param course course of the dry bulb through the usual day of each quarter (December to February
 *     first): how far it lies above the day's mean at the end of each hour, in parts of the day's
 *     range, -1 to 1
 * @param windCourse course of the wind through the usual day of each quarter: wind of each hour
 *     over the day's mean, 0 to 24
 */
public record TypicalYear(
    Station station, List<DayType> types, List<Hours> course, List<Hours> windCourse) {

  /** Quarters of the year that have a course of their own. */
  public static final int QUARTERS = 4;

  private static final int MONTHS_IN_QUARTER = 3;

  /** Copies the lists; refuses any but 60 types in their order and four courses of each kind. */
  public TypicalYear {
    types = List.copyOf(types);
    course = List.copyOf(course);
    windCourse = List.copyOf(windCourse);
    if (types.size() != Months.COUNT * DayType.FIFTHS
        || course.size() != QUARTERS
        || windCourse.size() != QUARTERS) {
      throw new IllegalArgumentException(
          types.size()
              + " day types, "
              + course.size()
              + " courses and "
              + windCourse.size()
              + " of the wind; takes 60, 4 and 4");
    }
    for (int i = 0; i < types.size(); i++) {
      DayType type = types.get(i);
      if (type.month() != i / DayType.FIFTHS + 1 || type.fifth() != i % DayType.FIFTHS + 1) {
        throw new IllegalArgumentException(
            "day type of month " + type.month() + ", fifth " + type.fifth() + " out of order");
      }
    }
    for (Hours hours : course) {
      Guard.within("course", hours.min(), -1, 1);
      Guard.within("course", hours.max(), -1, 1);
    }
    for (Hours hours : windCourse) {
      Guard.within("course of the wind", hours.min(), 0, Hours.COUNT);
      Guard.within("course of the wind", hours.max(), 0, Hours.COUNT);
    }
  }

  /**
   * The quarter a month lies in.
   *
   * @param month 1 to 12
   * @return 0 (December to February) to 3 (September to November)
   */
  public static int quarter(int month) {
    return month % Months.COUNT / MONTHS_IN_QUARTER;
  }

  /**
   * The types of one month.
   *
   * @param month 1 to 12
   * @return five types, the coldest first
   * @throws IllegalArgumentException if the month is outside 1 to 12
   */
  public List<DayType> month(int month) {
    int first = (Guard.within("month", month, 1, Months.COUNT) - 1) * DayType.FIFTHS;
    return types.subList(first, first + DayType.FIFTHS);
  }

  /**
   * Mean of a figure over all days of a month, such as {@code mean(7, DayType::high)}.
   *
   * @param month 1 to 12
   * @param figure figure of a day type
   * @return mean, each type counting by its days
   * @throws IllegalArgumentException if the month is outside 1 to 12
   */
  public double mean(int month, ToDoubleFunction<DayType> figure) {
    double sum = 0;
    int days = 0;
    for (DayType type : month(month)) {
      sum += figure.applyAsDouble(type) * type.days();
      days += type.days();
    }
    return sum / days;
  }
}
