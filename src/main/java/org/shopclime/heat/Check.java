package org.shopclime.heat;

/** The guards of this room: each message holds the value and the range. */
final class Check {

  private Check() {}

  static void index(String what, int index) {
    if (index < 0) {
      throw new IllegalArgumentException(what + " " + index + " is not 0 or more");
    }
  }

  static void index(String what, int index, int count) {
    if (index < 0 || index >= count) {
      throw new IllegalArgumentException(
          what + " " + index + " is not in 0 to " + (count - 1) + " of this network");
    }
  }

  static double notNegative(String what, double value) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + ": " + value + " is not 0 or more and finite");
    }
    return value;
  }

  static double positive(String what, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + ": " + value + " is not above 0 and finite");
    }
    return value;
  }

  static double finite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + ": " + value + " is not finite");
    }
    return value;
  }
}
