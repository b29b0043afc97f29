package org.shopclime.envelope;

import java.util.Map;

/** Fibre batts by their label: how thick they are, and what is left when squeezed. */
public final class Batt {

  /** Usual thickness by label, in. Common practice; R-19 is sold at 6 1/4 in and rated at 6. */
  private static final Map<Integer, Double> LABELS =
      Map.of(
          11, 3.5, 13, 3.5, 15, 3.5, 19, 6.0, 21, 5.5, 22, 6.75, 25, 8.0, 30, 9.5, 38, 12.0, 49,
          15.5);

  /** How far a typed figure may lie from a label to be taken as that batt, R. */
  private static final double LABEL_CLOSE = 0.05;

  /** Conductivity of loose fibre fill whose thickness no label tells, W/(m·K); an inch. */
  private static final double LOOSE = 0.045;

  private Batt() {}

  /**
   * What a fill of this label resists between members of that depth. A batt thicker than the space
   * is squeezed: it loses thickness, but the denser fibre conducts less.
   *
   * <p>Source: ASHRAE 90.1-2007, Table A3.4 (R-19 in 5 1/2 in counts R-18); the rule R × (depth /
   * usual thickness)^0.6 meets that and the trade's compression charts within 5 % (from memory).
   * Only R-11, 13, 15, 19, 21, 22, 25, 30, 38 and 49 are taken as batts; any other figure is taken
   * as installed, so foam and blown fill of another figure are not squeezed.
   *
   * @param label resistance on the label, m²·K/W, 0 to 20
   * @param depth depth of the space, m, above 0 to 3
   * @return m²·K/W, at most the label's
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double installedResistance(double label, double depth) {
    Range.require("resistance of the fill, m²·K/W,", label, 0, 20);
    Range.requireAbove("depth of the space, m,", depth, 0, 3);
    double usual = isLabel(label) ? usualThickness(label) : depth;
    return usual > depth ? label * Math.pow(depth / usual, 0.6) : label;
  }

  /**
   * How thick a fill of this label is when not squeezed: by label for low-density batts, else at
   * 0.045 W/(m·K).
   *
   * @param label resistance on the label, m²·K/W, 0 to 20
   * @return m
   * @throws IllegalArgumentException if the resistance is outside its range
   */
  public static double usualThickness(double label) {
    Range.require("resistance of the fill, m²·K/W,", label, 0, 20);
    return isLabel(label)
        ? LABELS.get((int) Math.rint(label / InchPound.R)) * InchPound.INCH
        : label * LOOSE;
  }

  private static boolean isLabel(double label) {
    double r = label / InchPound.R;
    return LABELS.containsKey((int) Math.rint(r)) && Math.abs(r - Math.rint(r)) <= LABEL_CLOSE;
  }
}
