package org.shopclime.unit;

/**
 * The form all generic unit curves are printed in: a + b w + c w² + d T + e T² + f w T.
 *
 * @param a constant
 * @param b of the wet bulb
 * @param c of its square
 * @param d of the outdoor dry bulb
 * @param e of its square
 * @param f of their product
 */
record Biquadratic(double a, double b, double c, double d, double e, double f) {

  /**
   * The value of the curve.
   *
   * @param wetBulb entering wet bulb, in the scale of the coefficients
   * @param outdoor outdoor dry bulb, in the same scale
   * @return fraction of the rating
   */
  double at(double wetBulb, double outdoor) {
    return a + (b + c * wetBulb) * wetBulb + (d + e * outdoor + f * wetBulb) * outdoor;
  }

  /**
   * The same curve for temperatures in °C.
   *
   * <p>With F = 1.8 C + 32 in both arguments, multiplied out.
   *
   * @return the curve, this one being for temperatures in °F
   */
  Biquadratic fromFahrenheit() {
    return new Biquadratic(
        at(32, 32),
        1.8 * (b + 2 * c * 32 + f * 32),
        1.8 * 1.8 * c,
        1.8 * (d + 2 * e * 32 + f * 32),
        1.8 * 1.8 * e,
        1.8 * 1.8 * f);
  }
}
