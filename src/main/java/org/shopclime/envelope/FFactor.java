package org.shopclime.envelope;

/**
 * Winter loss of a slab by the length of its edge: the figure for a pencil check, beside {@link
 * Ground}.
 *
 * <p>Source: ASHRAE 90.1, Table A6.3 (6 in slab, soil 0.75 BTU/(h·ft·°F)), as adopted by the
 * Washington State Energy Code, Table A106.1; the reaches of 2 ft down and 4 ft level and the fully
 * insulated slab are confirmed, the others from memory. Between its rows and columns the figure
 * runs straight; beyond R-15 or 4 ft it is held, which is on the safe side.
 */
public final class FFactor {

  private static final double BARE = 0.73;
  private static final double LAST_R = 15;

  /** Rows: reach 0, 1, 2, 3, 4 ft; columns; BTU/(h·ft·°F). */
  private static final double[][] VERTICAL = {
    {BARE, BARE, BARE, BARE},
    {BARE, 0.61, 0.58, 0.57},
    {BARE, 0.58, 0.54, 0.52},
    {BARE, 0.56, 0.51, 0.49},
    {BARE, 0.54, 0.48, 0.45}
  };

  private static final double[][] HORIZONTAL = {
    {BARE, BARE, BARE, BARE},
    {BARE, 0.72, 0.71, 0.71},
    {BARE, 0.70, 0.70, 0.69},
    {BARE, 0.68, 0.66, 0.66},
    {BARE, 0.67, 0.64, 0.63}
  };

  /** Fully insulated: resistance under the slab, F-factor. */
  private static final double[][] FULL = {{10, 0.36}, {15, 0.31}, {20, 0.26}, {30, 0.21}};

  private FFactor() {}

  /**
   * Loss per length of edge.
   *
   * @param edge insulation at the edge
   * @return W/(m·K)
   */
  public static double of(EdgeInsulation edge) {
    double[][] table =
        edge.placement() == EdgeInsulation.Placement.VERTICAL ? VERTICAL : HORIZONTAL;
    double row = Math.min(edge.reach() / (12 * InchPound.INCH), table.length - 1.0);
    double column = Math.min(edge.resistance() / InchPound.R, LAST_R) / 5;
    int i = Math.min((int) row, table.length - 2);
    int j = Math.min((int) column, table[0].length - 2);
    double near = between(table[i][j], table[i][j + 1], column - j);
    double far = between(table[i + 1][j], table[i + 1][j + 1], column - j);
    return between(near, far, row - i) * InchPound.PER_FOOT;
  }

  /**
   * Loss per length of edge of a slab insulated under its whole area and, with R-10, at its edge.
   *
   * @param underSlab resistance under the slab, m²·K/W, R-10 to R-30 (1.76 to 5.29)
   * @return W/(m·K)
   * @throws IllegalArgumentException if outside that range
   */
  public static double fullyInsulated(double underSlab) {
    double r =
        Range.require(
            "insulation under the slab, R,", underSlab / InchPound.R, 10 - 1e-6, 30 + 1e-6);
    int i = 1;
    while (i < FULL.length - 1 && r > FULL[i][0]) {
      i++;
    }
    double part = (r - FULL[i - 1][0]) / (FULL[i][0] - FULL[i - 1][0]);
    return between(FULL[i - 1][1], FULL[i][1], part) * InchPound.PER_FOOT;
  }

  /**
   * Heat lost: F-factor times edge times difference.
   *
   * @param fFactor loss per length, W/(m·K), 0 to 10
   * @param exposedPerimeter length of the edge along outdoors, m, 0 to 100000
   * @param difference indoor less outdoor temperature, K, -100 to 100
   * @return W
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double loss(double fFactor, double exposedPerimeter, double difference) {
    return Range.require("F-factor, W/(m·K),", fFactor, 0, 10)
        * Range.require("exposed perimeter, m,", exposedPerimeter, 0, 1e5)
        * Range.require("temperature difference, K,", difference, -100, 100);
  }

  private static double between(double first, double second, double part) {
    return first + (second - first) * part;
  }
}
