package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * A round duct that tells how much air a fan moves: area times velocity.
 *
 * <p>Source: velocities that keep a duct clean, ACGIH, Industrial Ventilation, from memory: wood
 * dust 3500 to 4000 ft/min, heavier dust no less, fumes and vapour 1000 to 2000 ft/min.
 *
 * <p>Error: this is the flow for which such a duct is made. Figures on collectors are for no duct
 * at all, often twice this; with a clogged filter it is half of it.
 *
 * @param diameter inside, m
 * @param velocity mean velocity in it, m/s; absent: the usual one of what the fan is for
 */
public record Duct(
    @Say(
            label = "Diameter",
            help = "Inside, of the main duct or the hose.",
            kind = Kind.LENGTH,
            min = 0.02,
            max = 1,
            usualMax = 0.4)
        double diameter,
    @Say(
            label = "Air in it",
            help =
                "Leave empty for what keeps it clean: {45 mph (4000 ft/min)|20.3 m/s} with dust, half of that"
                    + " otherwise.",
            kind = Kind.SPEED,
            min = 0.5,
            max = 60,
            usualMin = 2.5,
            usualMax = 30,
            otherwise = "none")
        Optional<Double> velocity) {

  /** Velocity that keeps wood dust moving, 4000 ft/min, m/s. */
  public static final double WITH_DUST = 4000 * 0.3048 / 60;

  /** Velocity of fumes and plain air, 2000 ft/min, m/s. */
  public static final double WITHOUT_DUST = 2000 * 0.3048 / 60;

  /**
   * Velocity taken.
   *
   * @param use what its fan is for
   * @return m/s
   */
  public double velocity(FanUse use) {
    boolean dust = use == FanUse.DUST_COLLECTOR || use == FanUse.BLAST_CABINET;
    return velocity.orElse(dust ? WITH_DUST : WITHOUT_DUST);
  }

  /**
   * Air that passes.
   *
   * @param use what its fan is for
   * @return m³/s
   */
  public double flow(FanUse use) {
    return Math.PI / 4 * diameter * diameter * velocity(use);
  }
}
