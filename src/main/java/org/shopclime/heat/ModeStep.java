package org.shopclime.heat;

/**
 * What one length of step makes of one mode z' = -rate z + w, where w is constant or grows straight
 * from -w to w over the step (a Legendre polynomial P1 of the time in the step, -1 to 1).
 *
 * <p>All are integrals over the step in units of its length, exact; x is rate times length. For
 * small x they are summed as series, as their closed forms lose all digits there.
 *
 * @param decay what is left of z at the end, exp(-x)
 * @param mean ∫ exp(-x t) dt: mean of a mode that starts at 1, and end of one driven by w = 1
 * @param tilt ∫ P1 exp(-x t) dt; its negative is the end of one driven by w = P1
 * @param meanOfSteady mean of a mode that starts at 0 and is driven by w = 1
 * @param meanOfTilted mean of one driven by w = P1; its negative is the tilt under w = 1
 * @param tiltOfTilted ∫ P1 z of one driven by w = P1
 */
record ModeStep(
    double decay,
    double mean,
    double tilt,
    double meanOfSteady,
    double meanOfTilted,
    double tiltOfTilted) {

  private static final int TERMS = 18;

  /**
   * The integrals.
   *
   * @param x rate times length of the step, 0 or more
   */
  static ModeStep of(double x) {
    if (x < 1) {
      return series(x);
    }
    double decay = Math.exp(-x);
    double mean = (1 - decay) / x;
    double tilt = 2 * (1 - decay * (1 + x)) / (x * x) - mean;
    double meanOfTilted = tilt / x;
    return new ModeStep(
        decay, mean, tilt, (1 - mean) / x, meanOfTilted, (1 / 3.0 + tilt + 2 * meanOfTilted) / x);
  }

  private static ModeStep series(double x) {
    double mean = 0;
    double tilt = 0;
    double meanOfSteady = 0;
    double meanOfTilted = 0;
    double tiltOfTilted = 0;
    double term = 1; // (-x)^n / n!
    for (int n = 0; n < TERMS; n++) {
      mean += term / (n + 1);
      tilt += term * n / ((n + 1.0) * (n + 2));
      meanOfSteady += term / ((n + 1.0) * (n + 2));
      meanOfTilted -= term / ((n + 2.0) * (n + 3));
      tiltOfTilted -= term * n / ((n + 1.0) * (n + 2) * (n + 4));
      term *= -x / (n + 1);
    }
    return new ModeStep(Math.exp(-x), mean, tilt, meanOfSteady, meanOfTilted, tiltOfTilted);
  }
}
