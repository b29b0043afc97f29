package org.shopclime.air;

/**
 * Saturated air of an enthalpy at a pressure, coarsely and at once: where the search for a {@link
 * SaturatedBalance} begins. Straight between the corners of a grid, within 0.01 K of the answer
 * inside it.
 */
final class FirstGuess {

  private static final double LEAST_ENTHALPY = -60_000;

  private static final double ENTHALPY_STEP = 2000;

  private static final int ENTHALPIES = 231;

  private static final double LEAST_PRESSURE = 45_000;

  private static final double PRESSURE_STEP = 5000;

  private static final int PRESSURES = 14;

  /** Temperature at each corner, °C, enthalpy after enthalpy of one pressure. */
  private static final double[] TEMPERATURE = corners();

  private FirstGuess() {}

  private static double[] corners() {
    double[] corners = new double[ENTHALPIES * PRESSURES];
    for (int p = 0; p < PRESSURES; p++) {
      for (int h = 0; h < ENTHALPIES; h++) {
        corners[p * ENTHALPIES + h] =
            SaturatedBalance.ofEnthalpy(
                    LEAST_ENTHALPY + h * ENTHALPY_STEP, LEAST_PRESSURE + p * PRESSURE_STEP)
                .saturation(Phase.TRIPLE_POINT);
      }
    }
    return corners;
  }

  /**
   * Where a balance holds, °C: close inside the grid, else the fallback.
   *
   * @param enthalpy of the air that is brought to saturation, J/kg
   * @param balance what then holds
   * @param fallback °C
   */
  static double of(double enthalpy, SaturatedBalance balance, double fallback) {
    double x = (enthalpy - LEAST_ENTHALPY) * (1 / ENTHALPY_STEP);
    double y = (balance.pressure() - LEAST_PRESSURE) * (1 / PRESSURE_STEP);
    if (!(x >= 0 && x < ENTHALPIES - 1 && y >= 0 && y < PRESSURES - 1)) {
      return fallback;
    }
    int column = (int) x;
    int row = (int) y;
    int corner = row * ENTHALPIES + column;
    double across = x - column;
    double rise = TEMPERATURE[corner + 1] - TEMPERATURE[corner];
    double low = TEMPERATURE[corner] + across * rise;
    double above = TEMPERATURE[corner + ENTHALPIES];
    double high = above + across * (TEMPERATURE[corner + ENTHALPIES + 1] - above);
    double celsius = low + (y - row) * (high - low);
    double slope = rise * (1 / ENTHALPY_STEP);
    double missed = balance.enthalpy(celsius) - enthalpy;
    return celsius + slope * missed * (1 + slope * balance.enthalpySlope());
  }
}
