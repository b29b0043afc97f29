package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * When work goes on.
 *
 * @param hours days and hours of work, wall clock
 * @param pullDown time allowed after the start until the set point must hold, s
 * @param clock whether the wall clock follows daylight saving
 * @param winterTemperature room temperature a heater must hold, °C
 * @param airSpeed air speed at the worker, m/s
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
        double airSpeed) {

  /** Still indoor air, m/s (common practice). */
  private static final double STILL = 0.3;

  /**
   * Work in still air.
   *
   * @param hours days and hours of work, wall clock
   * @param pullDown time allowed after the start until the set point must hold, s
   * @param clock whether the wall clock follows daylight saving
   * @param winterTemperature room temperature a heater must hold, °C
   */
  public Work(Schedule hours, double pullDown, Clock clock, double winterTemperature) {
    this(hours, pullDown, clock, winterTemperature, STILL);
  }
}
