package org.shopclime.shop;

import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Units;

/**
 * When work goes on.
 *
 * @param hours days and hours of work, wall clock
 * @param pullDown time allowed after the start until the set point must hold, s
 * @param clock whether the wall clock follows daylight saving
 * @param winterTemperature room temperature a heater must hold, °C
 * @param airSpeed air speed at the worker, m/s
 * @param setBackTo temperature the unit holds outside of work where it is set back, °C
 */
public record Work(
    @Say(
            label = "Working hours",
            help = "Such as Mon-Fri 8:00-17:00, or with a break Mon-Sat 8:00-12:00, 13:00-17:00.")
        Schedule hours,
    @Say(
            label = "Time to cool down",
            help = "After the start of work, until the wished temperature must hold.",
            kind = Kind.DURATION,
            max = 86400,
            otherwise = "1 h")
        double pullDown,
    @Say(
            label = "Clock",
            help = "Daylight saving in summer, or standard time all year.",
            otherwise = "daylight")
        Clock clock,
    @Say(
            label = "Held in winter",
            help = "Room temperature a heater must hold.",
            kind = Kind.TEMPERATURE,
            min = 0,
            max = 35,
            usualMin = 5,
            usualMax = 24,
            otherwise = "65 °F")
        double winterTemperature,
    @Say(
            label = "Air past the worker",
            help =
                "For the heat on the worker: {0.67 mph|0.3 m/s} in still air, {2 to 4.5 mph|1 to 2 m/s} before a fan.",
            kind = Kind.SPEED,
            min = 0.05,
            max = 5,
            usualMax = 3,
            otherwise = "0.3 m/s")
        double airSpeed,
    @Say(
            label = "Unit set back to",
            help =
                "Outside of work, where the habits of leaving it on, setting it back and switching it"
                    + " off are compared; at least {5 °F|2.8 K} above the wished temperature.",
            kind = Kind.TEMPERATURE,
            min = 15,
            max = 60,
            usualMin = 24,
            usualMax = 38,
            otherwise = "85 °F")
        double setBackTo) {

  /** Still indoor air, m/s (common practice). */
  private static final double STILL = 0.3;

  /** Where a unit is set back, °C: 85 °F (common practice). */
  private static final double USUAL_SET_BACK = Units.celsius(85);

  /**
   * Work in still air, the unit set back as is usual.
   *
   * @param hours days and hours of work, wall clock
   * @param pullDown time allowed after the start until the set point must hold, s
   * @param clock whether the wall clock follows daylight saving
   * @param winterTemperature room temperature a heater must hold, °C
   */
  public Work(Schedule hours, double pullDown, Clock clock, double winterTemperature) {
    this(hours, pullDown, clock, winterTemperature, STILL, USUAL_SET_BACK);
  }
}
