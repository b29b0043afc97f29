package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * When work goes on.
 *
 * @param hours days and hours of work, wall clock
 * @param pullDown time allowed after the start until the set point must hold, s
 * @param clock whether the wall clock follows daylight saving
 * @param winterTemperature room temperature a heater must hold, °C
 */
public record Work(
    @Say(label = "Working hours", help = "Such as Mon-Fri 8:00-17:00.") Schedule hours,
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
        double winterTemperature) {}
