package org.shopclime.airline;

/** The guards of this room: each message holds the value and the range. */
final class Check {

  private Check() {}

  /** The value, if it lies in its range; NaN never does. */
  static double within(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(what + " " + value + " is not in " + low + " to " + high);
    }
    return value;
  }
}
