package org.shopclime.unit;

import org.shopclime.quantity.Units;

/**
 * What frost on the outdoor coil, and melting it, costs a heat pump.
 *
 * <p>Source: 10 CFR 430 subpart B appendix M (AHRI Standard 210/240), the figures allowed in place
 * of a frost test at 35 °F: 0.90 of the capacity and 0.985 of the power that lie between those of
 * the steady tests at 17 and 47 °F; from memory. Away from 35 °F we let the loss fall off straight
 * to nothing at 17 and at 47 °F; the standard keeps its line to 45 °F and steps there. Dry cold air
 * frosts less: humidity is not looked at.
 */
final class Defrost {

  private static final double CAPACITY_LOST = 0.10;
  private static final double POWER_LOST = 0.015;
  private static final double COLD = Units.celsius(17);
  private static final double WORST = Units.celsius(35);
  private static final double MILD = Units.celsius(47);

  private Defrost() {}

  /** Capacity with frost as a part of that without, at °C outdoors. */
  static double capacityFactor(double outdoor) {
    return 1 - CAPACITY_LOST * frost(outdoor);
  }

  /** Power with frost as a part of that without. */
  static double powerFactor(double outdoor) {
    return 1 - POWER_LOST * frost(outdoor);
  }

  /** 1 at 35 °F, 0 at and beyond 17 and 47 °F. */
  private static double frost(double outdoor) {
    double way =
        outdoor < WORST ? (outdoor - COLD) / (WORST - COLD) : (MILD - outdoor) / (MILD - WORST);
    return Math.max(0, way);
  }
}
