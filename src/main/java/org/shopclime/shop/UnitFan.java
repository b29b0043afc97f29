package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * The indoor fan of a unit, where it goes on blowing while the compressor rests.
 *
 * @param power power of the fan, W; absent: by the capacity
 */
public record UnitFan(
    @Say(
            label = "Fan draws",
            help = "Leave empty for {6 W for each 1,000 BTU/h|20 W for each kW} of capacity.",
            kind = Kind.POWER,
            min = 1,
            max = 2000,
            usualMin = 10,
            usualMax = 250,
            otherwise = "none")
        Optional<Double> power) {

  /** Power for each watt of capacity: 70 W for 12,000 BTU/h; from memory. */
  private static final double USUAL_POWER = 0.02;

  /**
   * Power drawn.
   *
   * @param capacity rated total capacity of the unit, W
   * @return of the fan, W
   */
  public double watts(double capacity) {
    return power.orElse(USUAL_POWER * capacity);
  }
}
