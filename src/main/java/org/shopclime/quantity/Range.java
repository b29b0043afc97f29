package org.shopclime.quantity;

/** The one way figures outside their range are refused. */
public final class Range {

  private Range() {}

  /**
   * The value, if it lies in its range; NaN never does.
   *
   * @param what name and unit of the figure, for the message
   * @param value the figure
   * @param low least value taken
   * @param high greatest value taken
   * @return the value
   * @throws IllegalArgumentException if outside; the message holds the value and the range
   */
  public static double check(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(what + " " + value + " is not in " + low + " to " + high);
    }
    return value;
  }
}
