package org.shopclime.envelope;

/** Cold-formed steel studs: what is left of the insulation between them. */
public final class SteelStuds {

  /** Label, effective at 16 in, effective at 24 in; R. */
  private static final double[][] EFFECTIVE = {
    {0, 0.79, 0.91},
    {11, 5.5, 6.6},
    {13, 6.0, 7.2},
    {15, 6.4, 7.8},
    {19, 7.1, 8.6},
    {21, 7.4, 9.0}
  };

  private SteelStuds() {}

  /**
   * Resistance of the stud layer as a whole, bridged by the studs, for use in series with the other
   * layers.
   *
   * <p>Source: ASHRAE 90.1-2007, Table A9.2B (from memory), straight between its rows
   * are for 3 1/2 in studs, R-19 and R-21 for 6 in.
   *
   * @param label resistance of the batt on its label, m²·K/W, 0 to 3.7
   * @param spacing centre to centre, m, 0.40 to 0.61 (16 to 24 in)
   * @return m²·K/W
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double effectiveCavityResistance(double label, double spacing) {
    Range.require("batt between steel studs, m²·K/W,", label, 0, 21 * InchPound.R * (1 + 1e-9));
    Range.require("spacing of steel studs, m,", spacing, 0.40, 0.61);
    double r = Math.min(label / InchPound.R, 21);
    double wide = Math.max(0, Math.min(1, (spacing / InchPound.INCH - 16) / 8));
    int i = 1;
    while (r > EFFECTIVE[i][0]) {
      i++;
    }
    double part = (r - EFFECTIVE[i - 1][0]) / (EFFECTIVE[i][0] - EFFECTIVE[i - 1][0]);
    double close = EFFECTIVE[i - 1][1] + part * (EFFECTIVE[i][1] - EFFECTIVE[i - 1][1]);
    double far = EFFECTIVE[i - 1][2] + part * (EFFECTIVE[i][2] - EFFECTIVE[i - 1][2]);
    return (close + wide * (far - close)) * InchPound.R;
  }
}
