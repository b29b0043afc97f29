package org.shopclime.gain;

/** The one way this room refuses a number. */
final class Range {

  private Range() {}

  /** Returns the value if it lies in the range; NaN never does. */
  static double check(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(what + " " + value + " is not in " + low + " to " + high);
    }
    return value;
  }
}
