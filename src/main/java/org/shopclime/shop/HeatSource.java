package org.shopclime.shop;

import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Units;

/** What heats in winter and what it burns. */
public sealed interface HeatSource
    permits HeatSource.Electric, HeatSource.Propane, HeatSource.NaturalGas, HeatSource.HeatingOil {

  /** A plain electric heater: each kWh it draws is a kWh of heat. */
  record Electric() implements HeatSource {}

  /**
   * Propane.
   *
   * @param price $/m³ of liquid
   * @param efficiency part of its gross heat that reaches the room
   */
  record Propane(
      @Say(
              label = "Price",
              kind = Kind.LIQUID_PRICE,
              max = 30 / Units.CUBIC_METRES_PER_GALLON,
              usualMin = 1 / Units.CUBIC_METRES_PER_GALLON,
              usualMax = 7 / Units.CUBIC_METRES_PER_GALLON)
          double price,
      @Say(
              label = "Heater gives",
              help = "Part of the fuel's heat; 80 % is usual with a flue.",
              kind = Kind.FRACTION,
              min = 0.3,
              max = 1,
              otherwise = "80 %")
          double efficiency)
      implements HeatSource {}

  /**
   * Natural gas.
   *
   * @param price $/kWh of gross heat
   * @param efficiency part of its gross heat that reaches the room
   */
  record NaturalGas(
      @Say(
              label = "Price",
              kind = Kind.HEAT_PRICE,
              max = 20 / HeatSource.KWH_PER_THERM,
              usualMin = 0.5 / HeatSource.KWH_PER_THERM,
              usualMax = 4 / HeatSource.KWH_PER_THERM)
          double price,
      @Say(
              label = "Heater gives",
              help = "Part of the fuel's heat; 80 % is usual with a flue.",
              kind = Kind.FRACTION,
              min = 0.3,
              max = 1,
              otherwise = "80 %")
          double efficiency)
      implements HeatSource {}

  /**
   * Heating oil.
   *
   * @param price $/m³
   * @param efficiency part of its gross heat that reaches the room
   */
  record HeatingOil(
      @Say(
              label = "Price",
              kind = Kind.LIQUID_PRICE,
              max = 30 / Units.CUBIC_METRES_PER_GALLON,
              usualMin = 1.5 / Units.CUBIC_METRES_PER_GALLON,
              usualMax = 8 / Units.CUBIC_METRES_PER_GALLON)
          double price,
      @Say(
              label = "Heater gives",
              help = "Part of the fuel's heat; 80 % is usual with a flue.",
              kind = Kind.FRACTION,
              min = 0.3,
              max = 1,
              otherwise = "80 %")
          double efficiency)
      implements HeatSource {}

  /** kWh in a therm, which is 100,000 BTU. */
  double KWH_PER_THERM = 100_000 * Units.JOULES_PER_BTU / Units.JOULES_PER_KWH;
}
