package org.shopclime.plan;

import java.util.OptionalDouble;

/**
 * Heat lost in the cold.
 *
 * @param design outdoor temperature taken, °C: the one the owner typed or, without it, the typical
 *     year's less what such years leave out
 * @param typicalYear outdoor temperature passed in 99 % of the hours of the typical year, °C; empty
 *     where the owner typed the cold
 * @param indoor temperature held, °C
 * @param loss steady loss without sun and work, W
 * @param heater smallest usual electric heater that covers it, W
 * @param pump heat the shop's heat pump can give in that cold, W; empty where none heats
 */
public record WinterAnswer(
    double design,
    OptionalDouble typicalYear,
    double indoor,
    double loss,
    double heater,
    OptionalDouble pump) {

  /**
   * A shop without a heat pump.
   *
   * @param design outdoor temperature taken, °C
   * @param typicalYear outdoor temperature passed in 99 % of the hours of the typical year, °C
   * @param indoor temperature held, °C
   * @param loss steady loss without sun and work, W
   * @param heater smallest usual electric heater that covers it, W
   */
  public WinterAnswer(
      double design, OptionalDouble typicalYear, double indoor, double loss, double heater) {
    this(design, typicalYear, indoor, loss, heater, OptionalDouble.empty());
  }

  /**
   * What a heater beside the heat pump has to give.
   *
   * @return W; the whole loss without a heat pump
   */
  public double beside() {
    return Math.max(0, loss - pump.orElse(0));
  }
}
