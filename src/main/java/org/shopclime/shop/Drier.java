package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * A dehumidifier that stands in a room.
 *
 * @param capacity water taken out at 65 °F and 60 %, kg/s
 * @param energyFactor water for the electricity drawn, L/kWh
 * @param humidity relative humidity it is set to, 0 to 1
 */
public record Drier(
    @Say(
            label = "Takes out",
            help =
                "The pints a day on a label since 2019{|, typed as such or in liters}; older labels tell half as much again.",
            kind = Kind.WATER_FLOW,
            min = 1e-6,
            max = 0.01,
            usualMin = 5e-5,
            usualMax = 9e-4)
        double capacity,
    @Say(
            label = "Liters for each kWh",
            help = "The (integrated) energy factor on its label.",
            min = 0.2,
            max = 10,
            usualMin = 1,
            usualMax = 3.5,
            otherwise = "1.57")
        double energyFactor,
    @Say(
            label = "Set to",
            help = "Relative humidity from which it runs, day and night.",
            kind = Kind.FRACTION,
            min = 0.2,
            max = 0.9,
            usualMin = 0.35,
            usualMax = 0.7,
            otherwise = "50 %")
        double humidity) {}
