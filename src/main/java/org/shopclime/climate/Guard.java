package org.shopclime.climate;

/** The one form of a refused figure in this room. */
final class Guard {
  private Guard() {}

  /** Returns the value if it lies within the range; NaN never does. */
  static double within(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          what + ": " + value + " is outside " + low + " to " + high);
    }
    return value;
  }

  /** Returns the whole number if it lies within the range. */
  static int within(String what, int value, int low, int high) {
    if (value < low || value > high) {
      throw new IllegalArgumentException(
          what + ": " + value + " is outside " + low + " to " + high);
    }
    return value;
  }
}
