package org.shopclime.shop;

/**
 * A figure an owner may not know: low, likely and high. A known figure has all three equal.
 *
 * @param low low end, SI, at most {@code likely}
 * @param likely most likely value, SI
 * @param high high end, SI, at least {@code likely}
 */
public record Span(double low, double likely, double high) {

  /** Checks the order. */
  public Span {
    if (!(low <= likely && likely <= high)) {
      throw new IllegalArgumentException(
          "low " + low + ", likely " + likely + ", high " + high + " must rise");
    }
  }

  /**
   * A known figure.
   *
   * @param value SI value
   * @return a span of no width
   */
  public static Span known(double value) {
    return new Span(value, value, value);
  }

  /**
   * Whether there is nothing to doubt.
   *
   * @return true if low and high are equal
   */
  public boolean isKnown() {
    return low == high;
  }
}
