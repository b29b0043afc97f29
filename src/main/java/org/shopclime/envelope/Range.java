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

  /** The same of a thing with a name, which is put together only for the message. */
  static double require(
      String what, String name, String unit, double value, double low, double high) {
    return value >= low && value <= high ? value : require(what + name + unit, value, low, high);
  }

  /** The same of a thing with a name. */
  static double requireAbove(
      String what, String name, String unit, double value, double low, double high) {
    return value > low && value <= high
        ? value
        : requireAbove(what + name + unit, value, low, high);
  }

  static double requireAbove(String what, double value, double low, double high) {
    if (!(value > low && value <= high)) {
      throw new IllegalArgumentException(
          what + " is " + value + "; takes more than " + low + ", up to " + high);
    }
    return value;
  }
}
