package org.shopclime.bill;

/** The one way amounts that make no sense are refused. */
final class Amount {

  private Amount() {}

  /** The amount, if it is finite and 0 or more. */
  static double notNegative(String what, double amount) {
    if (!(amount >= 0 && amount < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " " + amount + " is not 0 or more");
    }
    return amount;
  }

  /** The amount, if it is finite and above 0. */
  static double positive(String what, double amount) {
    if (!(amount > 0 && amount < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " " + amount + " is not above 0");
    }
    return amount;
  }
}
