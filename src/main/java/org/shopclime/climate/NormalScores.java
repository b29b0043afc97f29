package org.shopclime.climate;

import java.util.Arrays;

/** How some alike days spread about their mean: as the normal distribution does. */
final class NormalScores {

  private NormalScores() {}

  /**
   * Scores of some days, rising, their mean 0 and their spread 1.
   *
   * <p>Source: G. Blom (1958), (i - 3/8)/(n + 1/4); inverse of the error function after S. Winitzki
   * (2008), within 0.2 %, which the scaling to spread 1 makes good.
   */
  static double[] of(int days) {
    double[] scores = new double[days];
    double square = 0;
    for (int i = 0; i < days; i++) {
      scores[i] = inverseErf(2 * (i + 0.625) / (days + 0.25) - 1);
      square += scores[i] * scores[i] / days;
    }
    double spread = Math.sqrt(square);
    return Arrays.stream(scores).map(score -> score / spread).toArray();
  }

  private static double inverseErf(double x) {
    double logarithm = Math.log(1 - x * x);
    double a = 2 / (Math.PI * 0.147) + logarithm / 2;
    return Math.signum(x) * Math.sqrt(Math.sqrt(a * a - logarithm / 0.147) - a);
  }
}
