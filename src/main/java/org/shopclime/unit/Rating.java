package org.shopclime.unit;

import org.shopclime.quantity.Units;

/**
 * Capacity and power of a unit in a stated test.
 *
 * @param capacity cooling or heating given, W, above 0
 * @param power power drawn there, W, above 0
 */
public record Rating(double capacity, double power) {

  /** Checks the ranges. */
  public Rating {
    Figures.requirePositive("rated capacity", capacity, "W");
    Figures.requirePositive("rated power", power, "W");
  }

  /**
   * By coefficient of performance.
   *
   * @param capacity W, above 0
   * @param cop heat moved for each watt drawn, W/W, above 0
   * @return the rating
   * @throws IllegalArgumentException if an argument is not above 0, infinite or NaN
   */
  public static Rating ofCop(double capacity, double cop) {
    Figures.requirePositive("COP", cop, "W/W");
    return new Rating(capacity, capacity / cop);
  }

  /**
   * By energy efficiency ratio.
   *
   * @param capacity W, above 0
   * @param eer BTU/Wh, above 0
   * @return the rating
   * @throws IllegalArgumentException if an argument is not above 0, infinite or NaN
   */
  public static Rating ofEer(double capacity, double eer) {
    return ofCop(capacity, Units.wattsPerWattFromEer(eer));
  }

  /**
   * Heat moved for each watt drawn.
   *
   * @return W/W
   */
  public double cop() {
    return capacity / power;
  }
}
