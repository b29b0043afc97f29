package org.shopclime.balance;

/**
 * How an owner runs the unit over the week: to the wished temperature from some time before work to
 * its end, breaks included, and to another one all other hours.
 *
 * @param away temperature it is let rise to outside of those hours, °C; at or below the wished one:
 *     held all hours; infinite: switched off
 * @param leadHours whole hours before the start of work at which the wished temperature is asked
 *     for, 0 or more; never before midnight of standard time, but for work that goes on through it
 */
public record CoolingHabit(double away, int leadHours) {

  /** Checks the range. */
  public CoolingHabit {
    if (Double.isNaN(away)) {
      throw new IllegalArgumentException("away is no number; takes °C or an infinity");
    }
    if (leadHours < 0) {
      throw new IllegalArgumentException("leadHours " + leadHours + "; takes 0 or more");
    }
  }

  /**
   * Held at the wished temperature all hours.
   *
   * @return habit
   */
  public static CoolingHabit alwaysOn() {
    return new CoolingHabit(Double.NEGATIVE_INFINITY, 0);
  }

  /**
   * Off outside of work and the time before it.
   *
   * @param leadHours whole hours before work at which it is switched on
   * @return habit
   */
  public static CoolingHabit onDemand(int leadHours) {
    return new CoolingHabit(Double.POSITIVE_INFINITY, leadHours);
  }

  /** Hours of a day in which the wished temperature is asked for. */
  boolean[] wished(DaySlots work) {
    DaySlots there = work.withoutBreaks();
    boolean throughMidnight = there.at(0) > 0;
    int most = throughMidnight ? DaySlots.COUNT : Math.max(0, there.firstActiveSlot());
    DaySlots slots = there.earlier(Math.min(most, leadHours * DaySlots.PER_HOUR));
    boolean[] hours = new boolean[Profile.HOURS];
    for (int hour = 0; hour < hours.length; hour++) {
      hours[hour] = slots.mean(hour * DaySlots.PER_HOUR, DaySlots.PER_HOUR) >= 0.5;
    }
    return hours;
  }
}
