package org.shopclime.unit;

import org.shopclime.quantity.Units;

/**
 * A tested range.
 *
 * @param low lowest value tested
 * @param high highest value tested
 */
record Range(double low, double high) {

  static Range ofFahrenheit(double low, double high) {
    return new Range(Units.celsius(low), Units.celsius(high));
  }

  /**
   * Refuses what lies outside.
   *
   * @throws IllegalArgumentException if outside or NaN
   */
  void require(String what, double value, String unit) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          what + " " + value + " " + unit + " is not within " + low + " to " + high);
    }
  }

  /** The value itself inside the range, else the edge nearest to it; {@link #bits} tells. */
  double nearest(double value) {
    return Math.max(low, Math.min(high, value));
  }

  /** The bit of the edge that {@link #nearest} held, 0 inside the range. */
  int bits(double value, Limit below, Limit above) {
    if (value < low) {
      return below.bit();
    }
    return value > high ? above.bit() : 0;
  }
}
