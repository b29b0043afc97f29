package org.shopclime.envelope;

/** A closed air space between two faces. */
public final class AirSpace {

  /** Mean temperature for which ISO 6946 prints its table, °C. */
  private static final double MEAN = 10;

  private AirSpace() {}

  /**
   * Resistance of an air space that no wind passes through, at a mean of 10 °C and 5 K across it.
   *
   * <p>Source: ISO 6946:2017, annex D (conduction and convection) and the combined emittance 1 /
   * (1/ε₁ + 1/ε₂ - 1). Error: gives the standard's table to its two digits at ε 0.9; at 35 °C the
   * space resists about a fifth less. Foil counts only while clean and facing the space.
   *
   * @param thickness thickness, m, 0.001 to 0.3
   * @param flow which way heat passes
   * @param emittanceOne emittance of one face, 0.02 to 1
   * @param emittanceTwo emittance of the other face, 0.02 to 1
   * @return m²·K/W
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double resistance(
      double thickness, HeatFlow flow, double emittanceOne, double emittanceTwo) {
    Range.require("thickness of the air space, m,", thickness, 0.001, 0.3);
    Range.require("emittance", emittanceOne, 0.02, 1);
    Range.require("emittance", emittanceTwo, 0.02, 1);
    double moving =
        switch (flow) {
          case HORIZONTAL -> 1.25;
          case UP -> 1.95;
          case DOWN -> 0.12 * Math.pow(thickness, -0.44);
        };
    double air = Math.max(moving, 0.025 / thickness);
    double combined = 1 / (1 / emittanceOne + 1 / emittanceTwo - 1);
    return 1 / (air + Films.radiative(combined, MEAN));
  }
}
