package org.shopclime.bill;

import org.shopclime.quantity.Units;

/**
 * A fuel that heats a room.
 *
 * @param name such as "propane"
 * @param unit what it is sold by, such as "gal"
 * @param heat gross heat of one such unit, kWh, above 0
 * @param price $ for one such unit, 0 or more
 * @param efficiency part of that heat that reaches the room, above 0 to 1
 */
public record Fuel(String name, String unit, double heat, double price, double efficiency) {

  /** Refuses amounts that make no sense. */
  public Fuel {
    Amount.positive("heat, kWh,", heat);
    Amount.notNegative("price, $,", price);
    if (!(efficiency > 0 && efficiency <= 1)) {
      throw new IllegalArgumentException("efficiency " + efficiency + " is not above 0 to 1");
    }
  }

  /**
   * Propane.
   *
   * <p>Source: US Energy Information Administration, British thermal units, 91,452 BTU a gallon
   * (gross).
   *
   * @param dollarsPerCubicMetre $/m³ of liquid, 0 or more
   * @param efficiency of the heater, above 0 to 1
   * @return the fuel
   */
  public static Fuel propane(double dollarsPerCubicMetre, double efficiency) {
    return new Fuel(
        "propane", "gal", kilowattHours(91_452), perGallon(dollarsPerCubicMetre), efficiency);
  }

  /**
   * Natural gas, sold by its heat.
   *
   * <p>Source: a therm is 100,000 BTU by definition (here of the International Table; the US therm
   * is 0.02 % less).
   *
   * @param dollarsPerKilowattHour $/kWh of gross heat, 0 or more
   * @param efficiency of the heater, above 0 to 1
   * @return the fuel
   */
  public static Fuel naturalGas(double dollarsPerKilowattHour, double efficiency) {
    double therm = kilowattHours(100_000);
    return new Fuel("natural gas", "therm", therm, dollarsPerKilowattHour * therm, efficiency);
  }

  /**
   * Heating oil.
   *
   * <p>Source: US Energy Information Administration, British thermal units, 138,500 BTU a gallon
   * (gross).
   *
   * @param dollarsPerCubicMetre $/m³ of liquid, 0 or more
   * @param efficiency of the heater, above 0 to 1
   * @return the fuel
   */
  public static Fuel heatingOil(double dollarsPerCubicMetre, double efficiency) {
    return new Fuel(
        "heating oil", "gal", kilowattHours(138_500), perGallon(dollarsPerCubicMetre), efficiency);
  }

  private static double perGallon(double perCubicMetre) {
    return perCubicMetre * Units.CUBIC_METRES_PER_GALLON;
  }

  private static double kilowattHours(double btu) {
    return Units.kilowattHours(Units.joulesFromBtu(btu));
  }

  /**
   * The same at another price.
   *
   * @param factor what the price is multiplied by, 0 or more
   * @return the fuel
   */
  public Fuel times(double factor) {
    return new Fuel(name, unit, heat, factor * price, efficiency);
  }

  /**
   * How much of it some heat takes.
   *
   * @param useful heat that reaches the room, kWh, 0 or more
   * @return units in which it is sold
   */
  public double amount(double useful) {
    return Amount.notNegative("heat, kWh,", useful) / (heat * efficiency);
  }

  /**
   * Cost of a year's heat.
   *
   * @param useful heat that reaches the room
   * @return cost by months
   */
  public MonthlyCost cost(Use useful) {
    return MonthlyCost.of(month -> usefulPrice() * useful.of(month));
  }

  /**
   * Price of the heat that reaches the room, to hold against the price of electricity.
   *
   * @return $/kWh
   */
  public double usefulPrice() {
    return price / (heat * efficiency);
  }
}
