package org.shopclime.bench;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.analysis.solvers.UnivariateSolver;

/**
 * Moist air the plain way, to compare with: the equations as printed, each one that has no closed
 * form handed to a root finder of a library of mathematics. Temperatures in °C, pressures in Pa.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2017, SI), ch. 1, eq. 5, 6 (Hyland and Wexler), 20,
 * 30, 33 and 35, split at the triple point.
 */
final class PlainMoistAir {

  /** The root finders compared. */
  enum Finder {
    /** Brent's method. */
    BRENT {
      @Override
      UnivariateSolver solver() {
        return new BrentSolver(ACCURACY);
      }
    },

    /** Brent's method with inverse polynomials of order 5. */
    NTH_ORDER_BRENT {
      @Override
      UnivariateSolver solver() {
        return new BracketingNthOrderBrentSolver(ACCURACY, 5);
      }
    };

    abstract UnivariateSolver solver();
  }

  /** What the root finders are asked for, K. */
  static final double ACCURACY = 1e-9;

  private static final double COLDEST = -100;

  private static final double HOTTEST = 200;

  private static final int MOST_EVALUATIONS = 200;

  private final UnivariateSolver solver;

  PlainMoistAir(Finder finder) {
    solver = finder.solver();
  }

  static double saturationPressure(double celsius) {
    double t = celsius + 273.15;
    if (celsius <= 0.01) {
      return Math.exp(
          -5.6745359e3 / t
              + 6.3925247
              - 9.6778430e-3 * t
              + 6.2215701e-7 * t * t
              + 2.0747825e-9 * t * t * t
              - 9.4840240e-13 * t * t * t * t
              + 4.1635019 * Math.log(t));
    }
    return Math.exp(
        -5.8002206e3 / t
            + 1.3914993
            - 4.8640239e-2 * t
            + 4.1764768e-5 * t * t
            - 1.4452093e-8 * t * t * t
            + 6.5459673 * Math.log(t));
  }

  static double saturationHumidityRatio(double celsius, double pressure) {
    double vapour = saturationPressure(celsius);
    return 0.621945 * vapour / (pressure - vapour);
  }

  static double humidityRatioFromWetBulb(double dryBulb, double wetBulb, double pressure) {
    double saturated = saturationHumidityRatio(wetBulb, pressure);
    if (wetBulb < 0) {
      return ((2_830_000 - 240 * wetBulb) * saturated - 1006 * (dryBulb - wetBulb))
          / (2_830_000 + 1860 * dryBulb - 2100 * wetBulb);
    }
    return ((2_501_000 - 2326 * wetBulb) * saturated - 1006 * (dryBulb - wetBulb))
        / (2_501_000 + 1860 * dryBulb - 4186 * wetBulb);
  }

  static double enthalpy(double dryBulb, double humidityRatio) {
    return 1006 * dryBulb + humidityRatio * (2_501_000 + 1860 * dryBulb);
  }

  double wetBulb(double dryBulb, double humidityRatio, double pressure) {
    return root(bulb -> humidityRatioFromWetBulb(dryBulb, bulb, pressure) - humidityRatio, dryBulb);
  }

  double dewPoint(double humidityRatio, double pressure) {
    double vapour = pressure * humidityRatio / (0.621945 + humidityRatio);
    return root(celsius -> saturationPressure(celsius) - vapour, HOTTEST);
  }

  /** Saturated air of this enthalpy, not warmer than a temperature. */
  double saturatedTemperature(double enthalpy, double pressure, double warmest) {
    return root(
        celsius -> enthalpy(celsius, saturationHumidityRatio(celsius, pressure)) - enthalpy,
        warmest);
  }

  double dryBulb(double enthalpy, double humidityRatio) {
    return root(celsius -> enthalpy(celsius, humidityRatio) - enthalpy, HOTTEST);
  }

  /** The wettest ratio tried is that of air saturated at the wet bulb. */
  double humidityRatio(double dryBulb, double wetBulb, double pressure) {
    return solver.solve(
        MOST_EVALUATIONS,
        ratio -> humidityRatioFromWetBulb(dryBulb, wetBulb, pressure) - ratio,
        -1,
        1);
  }

  private double root(UnivariateFunction rising, double warmest) {
    return solver.solve(MOST_EVALUATIONS, rising, COLDEST, warmest);
  }
}
