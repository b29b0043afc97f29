package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shopclime.balance.YearWeeks;
import org.shopclime.run.PullDown;
import org.shopclime.run.YearResult;

/**
 * The unit run by one habit or another, through the same year.
 *
 * @param away temperature held outside of work where it is set back, °C
 * @param awayAsked what the owner set for it, °C; lower than the other where that is too near to
 *     the wished temperature
 * @param morning the hot day's morning after days off, which the lead is taken from
 * @param leadHours whole hours before work at which the wished temperature is asked for
 * @param hotWeek first hour of the hottest week, 0 to 8,759
 * @param springWeek first hour of the damp week of spring; nothing where outdoor air never comes in
 *     moist upon cold iron
 * @param own the owner's days, one year for each habit, in the order of {@link Habit}
 * @param weekends the same hours on Saturday and Sunday only; empty where those are the owner's
 *     days
 */
public record HabitAnswer(
    double away,
    double awayAsked,
    PullDown morning,
    int leadHours,
    int hotWeek,
    Optional<Integer> springWeek,
    List<HabitYear> own,
    List<HabitYear> weekends) {

  /** Copies the lists. */
  public HabitAnswer {
    own = List.copyOf(own);
    weekends = List.copyOf(weekends);
  }

  /**
   * A year of the owner's own days.
   *
   * @param habit how the unit is run
   * @return the year
   */
  public HabitYear of(Habit habit) {
    return own.get(List.of(Habit.values()).indexOf(habit));
  }

  /**
   * When the unit is switched on, by the wall clock of the hottest week, where it is on demand.
   *
   * @return minute of the day, 0 to 1439; nothing where it is never switched on
   */
  public OptionalInt switchedOn() {
    HabitYear demand = of(Habit.ON_DEMAND);
    YearResult year = demand.year();
    for (int hour = hotWeek; hour < hotWeek + YearWeeks.HOURS; hour++) {
      if (year.year().plants().coolingOn(demand.room(), hour)
          && !year.year().plants().coolingOn(demand.room(), hour - 1)) {
        return OptionalInt.of((hour % 24 * 60 + year.year().minutesAhead(hour)) % (24 * 60));
      }
    }
    return OptionalInt.empty();
  }
}
