package org.shopclime.plan;

import java.time.Month;
import org.shopclime.balance.YearWeeks;
import org.shopclime.run.LivedDay;
import org.shopclime.run.RustWatch;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;

/**
 * A year of a shop whose unit is run by one habit.
 *
 * @param habit how the unit is run
 * @param weekendsOnly whether work is laid on Saturday and Sunday in place of the owner's days
 * @param room index of the room that the unit cools
 * @param year the year's run
 * @param rust where the room's air is damp on iron and slab
 * @param cost what the year costs, the unit in {@link YearCost#cooling()}
 */
public record HabitYear(
    Habit habit, boolean weekendsOnly, int room, YearResult year, RustWatch rust, YearCost cost) {

  private static final double WATTS = 1000;

  /**
   * Electricity of the unit through the year.
   *
   * @return kWh
   */
  public double kilowattHours() {
    return year.kilowattHours(Figure.POWER, room);
  }

  /**
   * Electricity of the unit in some hours.
   *
   * @param from first hour, 0 to 8,759
   * @param to hour after the last
   * @return kWh
   */
  public double kilowattHours(int from, int to) {
    double sum = 0;
    for (int hour = from; hour < to; hour++) {
      sum += year.at(Figure.POWER, room, hour) / WATTS;
    }
    return sum;
  }

  /**
   * What the unit's electricity costs through the year.
   *
   * @return $
   */
  public double dollars() {
    return cost.cooling().total();
  }

  /**
   * What it costs in the month of an hour.
   *
   * @param hour 0 to 8,759
   * @return $
   */
  public double monthDollars(int hour) {
    return cost.cooling().of(month(hour));
  }

  /**
   * What it costs in a week, by the mean price of a kWh in the month in which the week's middle
   * lies.
   *
   * @param from first hour of the week
   * @return $
   */
  public double weekDollars(int from) {
    Month month = month(from + YearWeeks.HOURS / 2);
    double drawn = year.kilowattHours(Figure.POWER, room, month.getValue());
    return drawn > 0
        ? cost.cooling().of(month) / drawn * kilowattHours(from, from + YearWeeks.HOURS)
        : 0;
  }

  private static Month month(int hour) {
    return YearWeeks.date(hour).getMonth();
  }

  /**
   * Working hours warmer than counts as held, each by the part of it that is worked, the first hour
   * of work counted too.
   *
   * @param from first hour, 0 to 8,759
   * @param to hour after the last
   * @return hours above set point + 1 °F
   */
  public double hotWorkHours(int from, int to) {
    double limit = year.year().plants().cooledTo(room) + LivedDay.TOLERANCE;
    double sum = 0;
    for (int hour = from; hour < to; hour++) {
      sum += year.at(Figure.AIR, room, hour) > limit ? year.year().working(hour) : 0;
    }
    return sum;
  }
}
