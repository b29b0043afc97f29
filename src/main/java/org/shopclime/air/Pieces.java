package org.shopclime.air;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function laid out in pieces of equal width, in each the polynomial through its values at
 * the Chebyshev points of that piece: as true as the function itself where the pieces are narrow,
 * and several times as fast.
 *
 * <p>Source: Newton's divided differences, as in any textbook of numerical analysis.
 */
final class Pieces {

  /** Of each polynomial; the degree is one less. */
  private static final int COEFFICIENTS = 6;

  private final double low;
  private final double high;
  private final double perUnit;
  private final int last;

  /** Of piece after piece, by rising power of the distance from its middle in widths. */
  private final double[] coefficients;

  private Pieces(double low, double high, int pieces) {
    this.low = low;
    this.high = high;
    perUnit = pieces / (high - low);
    last = pieces - 1;
    coefficients = new double[pieces * COEFFICIENTS];
  }

  /**
   * Lays a function out.
   *
   * @param function smooth from low to high
   * @param low where the first piece begins
   * @param high where the last piece ends
   * @param width widest piece
   */
  static Pieces of(DoubleUnaryOperator function, double low, double high, double width) {
    int pieces = (int) Math.ceil((high - low) / width);
    Pieces laidOut = new Pieces(low, high, pieces);
    for (int i = 0; i < pieces; i++) {
      double[] coefficients = laidOut.polynomial(function, i);
      System.arraycopy(
          coefficients, 0, laidOut.coefficients, i * COEFFICIENTS, coefficients.length);
    }
    return laidOut;
  }

  private double[] polynomial(DoubleUnaryOperator function, int piece) {
    double[] point = new double[COEFFICIENTS];
    double[] difference = new double[COEFFICIENTS];
    for (int j = 0; j < COEFFICIENTS; j++) {
      point[j] = 0.5 * Math.cos(Math.PI * (j + 0.5) / COEFFICIENTS);
      difference[j] = function.applyAsDouble(low + (piece + 0.5 + point[j]) / perUnit);
    }
    for (int order = 1; order < COEFFICIENTS; order++) {
      for (int j = COEFFICIENTS - 1; j >= order; j--) {
        difference[j] = (difference[j] - difference[j - 1]) / (point[j] - point[j - order]);
      }
    }
    double[] powers = new double[COEFFICIENTS];
    for (int j = COEFFICIENTS - 1; j >= 0; j--) {
      double[] before = Arrays.copyOf(powers, COEFFICIENTS);
      for (int power = 0; power < COEFFICIENTS; power++) {
        double shifted = power > 0 ? before[power - 1] : difference[j];
        powers[power] = shifted - point[j] * before[power];
      }
    }
    return powers;
  }

  /** Whether the pieces reach there. */
  boolean hold(double x) {
    return x >= low && x <= high;
  }

  /** The value at a place that the pieces hold. */
  double at(double x) {
    double place = (x - low) * perUnit;
    int piece = Math.min(last, (int) place);
    double u = place - (piece + 0.5);
    double uu = u * u;
    double[] c = coefficients;
    int k = piece * COEFFICIENTS;
    return c[k] + u * c[k + 1] + uu * (c[k + 2] + u * c[k + 3] + uu * (c[k + 4] + u * c[k + 5]));
  }

  /** The first derivative there; less true than the value, by several digits. */
  double slope(double x) {
    double place = (x - low) * perUnit;
    int piece = Math.min(last, (int) place);
    double u = place - (piece + 0.5);
    double uu = u * u;
    double[] c = coefficients;
    int k = piece * COEFFICIENTS;
    return perUnit
        * (c[k + 1]
            + u * (2 * c[k + 2])
            + uu * (3 * c[k + 3] + u * (4 * c[k + 4]) + uu * (5 * c[k + 5])));
  }

  /** The second derivative there, good for a step of a search only. */
  double curvature(double x) {
    double place = (x - low) * perUnit;
    int piece = Math.min(last, (int) place);
    double u = place - (piece + 0.5);
    double[] c = coefficients;
    int k = piece * COEFFICIENTS;
    return perUnit * perUnit * (2 * c[k + 2] + u * (6 * c[k + 3] + u * (12 * c[k + 4])));
  }

  /** The third derivative there, likewise. */
  double third(double x) {
    double place = (x - low) * perUnit;
    int piece = Math.min(last, (int) place);
    double u = place - (piece + 0.5);
    int k = piece * COEFFICIENTS;
    return perUnit * perUnit * perUnit * (6 * coefficients[k + 3] + u * (24 * coefficients[k + 4]));
  }
}
