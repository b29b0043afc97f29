package org.shopclime.climate;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The 60 day types of a station's typical year, five for each month.
 *
 * @param types January's five first, the coldest of each month first
 */
public record TypicalDays(List<DayType> types) {

  /** Copies the list; refuses any but 60 types in their order. */
  public TypicalDays {
    types = List.copyOf(types);
    if (types.size() != Months.COUNT * DayType.FIFTHS) {
      throw new IllegalArgumentException(types.size() + " day types; takes 60");
    }
    for (int i = 0; i < types.size(); i++) {
      DayType type = types.get(i);
      if (type.month() != i / DayType.FIFTHS + 1 || type.fifth() != i % DayType.FIFTHS + 1) {
        throw new IllegalArgumentException(
            "day type of month " + type.month() + ", fifth " + type.fifth() + " out of order");
      }
    }
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
