package org.shopclime.climate;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A station's typical year as 60 day types, five for each month, with the course of a usual day and
 * the order in which the days followed each other.
 *
 * @param station the station
 * @param types January's five first, the coldest of each month first
 * @param courses how weather goes through the usual day
 * @param sequence which day was which
 */
public record TypicalYear(
    Station station, List<DayType> types, DayCourses courses, DaySequence sequence) {

  /** Copies the list; refuses any but 60 types in their order. */
  public TypicalYear {
    types = new TypicalDays(types).types();
  }

  /**
   * Its day types alone.
   *
   * @return all 60
   */
  public TypicalDays days() {
    return new TypicalDays(types);
  }

  /**
   * The types of one month.
   *
   * @param month 1 to 12
   * @return five types, the coldest first
   * @throws IllegalArgumentException if the month is outside 1 to 12
   */
  public List<DayType> month(int month) {
    return days().month(month);
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
    return days().mean(month, figure);
  }
}
