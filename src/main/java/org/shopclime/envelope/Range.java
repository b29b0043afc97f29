package org.shopclime.envelope;

/** Ranges of input, refused with the value and the range. */
final class Range {

  private Range() {}

  static double require(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(what + " is " + value + "; takes " + low + " to " + high);
    }
    return value;
  }

  static double requireAbove(String what, double value, double low, double high) {
    if (!(value > low && value <= high)) {
      throw new IllegalArgumentException(
          what + " is " + value + "; takes more than " + low + ", up to " + high);
    }
    return value;
  }
}
