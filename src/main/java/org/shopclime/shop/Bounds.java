package org.shopclime.shop;

import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

/** The bounds that {@link Say} sets, and the words for them. */
final class Bounds {

  private Bounds() {}

  /**
   * Whether a value may be taken.
   *
   * @param say annotation
   * @param si value, SI
   * @return false if outside its bounds or NaN
   */
  static boolean holds(Say say, double si) {
    return si >= say.min() && si <= say.max();
  }

  /**
   * What is taken.
   *
   * @param say annotation
   * @param units system in which the bounds are named
   * @return kind, example and bounds
   */
  static String takes(Say say, UnitSystem units) {
    String kind =
        Quantities.read(say.kind(), "?") instanceof Reading.Bad bad ? bad.takes() : "a number";
    String low = Quantities.show(say.kind(), say.min(), units);
    return say.max() == Double.MAX_VALUE
        ? kind + ", at least " + low
        : kind + ", from " + low + " to " + Quantities.show(say.kind(), say.max(), units);
  }

  /**
   * Whether a value is outside what is usual.
   *
   * @param say annotation
   * @param si value, SI
   * @return true if unusual
   */
  static boolean unusual(Say say, double si) {
    return si < say.usualMin() || si > say.usualMax();
  }

  /**
   * What is usual.
   *
   * @param say annotation
   * @param units system in which the bounds are named
   * @return such as "at most 8 ft"
   */
  static String usual(Say say, UnitSystem units) {
    if (Double.isInfinite(say.usualMin())) {
      return "at most " + Quantities.show(say.kind(), say.usualMax(), units);
    }
    String low = Quantities.show(say.kind(), say.usualMin(), units);
    return Double.isInfinite(say.usualMax())
        ? "at least " + low
        : low + " to " + Quantities.show(say.kind(), say.usualMax(), units);
  }
}
