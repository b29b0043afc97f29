package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Units;

/**
 * How a heat pump heats in winter.
 *
 * @param winter whether it does
 * @param capacity heat at 47 °F outdoors, W; absent: as much as it is rated to cool
 * @param hspf2 heat of the label's season for the electricity drawn, W/W; absent: a usual unit
 * @param lowestOutdoor lowest outdoor temperature at which it heats, °C
 */
public record PumpHeat(
    @Say(
            label = "In winter it",
            help = "A heater gives what it cannot; see prices.",
            otherwise = "heats")
        PumpWinter winter,
    @Say(
            label = "Heat at 47 °F",
            help = "The BTU/h of heating on its papers; empty: as much as it cools.",
            kind = Kind.POWER,
            min = 300,
            max = 100000,
            usualMin = 1400,
            usualMax = 14000,
            otherwise = "none")
        Optional<Double> capacity,
    @Say(
            label = "HSPF2",
            help = "BTU of heat for each watt-hour through a winter, on its label.",
            kind = Kind.EFFICIENCY,
            min = 4 * Units.WATTS_PER_BTUH,
            max = 17 * Units.WATTS_PER_BTUH,
            usualMin = 6 * Units.WATTS_PER_BTUH,
            usualMax = 14 * Units.WATTS_PER_BTUH,
            otherwise = "none")
        Optional<Double> hspf2,
    @Say(
            label = "Heats down to",
            help = "Colder than this outdoors it stands still.",
            kind = Kind.TEMPERATURE,
            min = -50,
            max = 15,
            usualMin = -32,
            usualMax = 2,
            otherwise = "5 °F")
        double lowestOutdoor) {

  private static final double USUAL_LOWEST = Units.celsius(5);

  /**
   * A heat pump of which nothing is said.
   *
   * @return a usual one, which heats
   */
  static PumpHeat usual() {
    return new PumpHeat(PumpWinter.HEATS, Optional.empty(), Optional.empty(), USUAL_LOWEST);
  }
}
