package org.shopclime.sun;

/** Refuses figures outside what a formula is good for, NaN among them. */
final class Range {

  private Range() {}

  static double check(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          what + " is " + value + ", must be from " + low + " to " + high);
    }
    return value;
  }

  static int checkDay(int dayOfYear) {
    return (int) check("day of year", dayOfYear, 1, 366);
  }
}
