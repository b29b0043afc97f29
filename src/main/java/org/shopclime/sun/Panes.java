package org.shopclime.sun;

/**
 * Equal panes of uncoated glass, one behind the other.
 *
 * @param count number of panes, 1 to 4
 * @param transmittance sun passed by one pane at normal incidence, 0.01 to 0.97
 * @param reflectance sun thrown back by one pane at normal incidence, 0.01 to 0.3
 * @param paneResistance thermal resistance of one pane, m²·K/W, 0 to 0.1 (3 mm of glass: 0.003)
 * @param gapResistance thermal resistance of one gap between panes, m²·K/W, 0 to 2; not used by a
 *     single pane
 */
public record Panes(
    int count,
    double transmittance,
    double reflectance,
    double paneResistance,
    double gapResistance) {

  /** Refuses figures outside their ranges, and more light than came. */
  public Panes {
    Range.check("number of panes", count, 1, 4);
    Range.check("pane transmittance", transmittance, 0.01, 0.97);
    Range.check("pane reflectance", reflectance, 0.01, Math.min(0.3, 1 - transmittance));
    Range.check("pane resistance, m²·K/W", paneResistance, 0, 0.1);
    Range.check("gap resistance, m²·K/W", gapResistance, 0, 2);
  }

  /**
   * Panes by index and extinction, at normal incidence by Fresnel and Bouguer.
   *
   * @param count number of panes, 1 to 4
   * @param index refractive index, 1.3 to 2.2
   * @param opticalDepth extinction coefficient times thickness, 0 to 4
   * @param paneResistance thermal resistance of one pane, m²·K/W, 0 to 0.1
   * @param gapResistance thermal resistance of one gap, m²·K/W, 0 to 2
   * @return the panes
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static Panes ofIndex(
      int count, double index, double opticalDepth, double paneResistance, double gapResistance) {
    Range.check("refractive index", index, 1.3, 2.2);
    Range.check("optical depth of a pane", opticalDepth, 0, 4);
    double surface = Math.pow((index - 1) / (index + 1), 2);
    double through = Math.exp(-opticalDepth);
    double bounce = surface * through;
    double transmittance = (1 - surface) * (1 - surface) * through / (1 - bounce * bounce);
    double reflectance = surface * (1 + through * transmittance);
    return new Panes(count, transmittance, reflectance, paneResistance, gapResistance);
  }

  /**
   * Resistance of all panes and gaps, surface to surface.
   *
   * @return m²·K/W
   */
  public double resistance() {
    return count * paneResistance + (count - 1) * gapResistance;
  }

  /**
   * Where a pane lies in the resistance of the whole, taken at its middle.
   *
   * @param pane 0 for the outermost
   * @return 0 at the outer surface to 1 at the inner one; one half where nothing resists
   */
  double depth(int pane) {
    double whole = resistance();
    double before = pane * (paneResistance + gapResistance) + paneResistance / 2;
    return whole > 0 ? before / whole : 0.5;
  }
}
