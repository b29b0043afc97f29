package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Air that a dust collector moves, from the size of its duct.
 *
 * <p>Source: area times velocity. Wood dust needs 3500 to 4000 ft/min (17.8 to 20.3 m/s) to stay
 * up: ACGIH, Industrial Ventilation, from memory.
 *
 * <p>Error: figures on collectors are for no duct at all, often twice this; with a clogged filter
 * half of it.
 */
public final class ExhaustDuct {

  /** Velocity that keeps wood dust moving, 4000 ft/min, m/s. */
  public static final double WOOD_DUST_VELOCITY = 4000 * 0.3048 / 60;

  private ExhaustDuct() {}

  /**
   * Flow in a round duct.
   *
   * @param diameter inside, m, 0.01 to 2
   * @param velocity mean, m/s, 0 to 60
   * @return m³/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double flow(double diameter, double velocity) {
    Range.check("duct diameter, m,", diameter, 0.01, 2);
    Range.check("duct velocity, m/s,", velocity, 0, 60);
    return Math.PI / 4 * diameter * diameter * velocity;
  }
}
