package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * Hours in which a room is heated to less, for the year's run.
 *
 * @param temperature temperature it is heated to then, °C
 * @param when hours of it, wall clock
 * @param rise time over which the set point then rises straight to the usual one, s; 0: at once
 */
public record SetBack(
    @Say(label = "Heated to", kind = Kind.TEMPERATURE, min = -20, max = 35) double temperature,
    @Say(label = "When") Schedule when,
    @Say(
            label = "Rises back within",
            help = "Straight, from the end of these hours on.",
            kind = Kind.DURATION,
            max = 43200,
            otherwise = "0 h")
        double rise) {}
