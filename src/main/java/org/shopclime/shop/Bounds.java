package org.shopclime.shop;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

/** The bounds that {@link Say} sets, and the words for them. */
final class Bounds {

  /** Digits of a bound in a complaint. */
  private static final int ROUND = 2;

  private static final Pattern FIGURE = Pattern.compile("(R-|\\$)?(\\d[\\d,]*(?:\\.\\d+)?)(.*)");

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
   * What is taken, for a complaint. A bound that is round in the other system alone is moved inward
   * to a round one: "12 in" in place of 11.81 in, so that all it names is taken.
   *
   * @param say annotation
   * @param units system in which the bounds are named
   * @return kind, example and bounds
   */
  static String takes(Say say, UnitSystem units) {
    return takes(
        say,
        inward(say, say.min(), RoundingMode.CEILING, units),
        inward(say, say.max(), RoundingMode.FLOOR, units));
  }

  /**
   * The same with the bounds as they are.
   *
   * @param say annotation
   * @param units system in which the bounds are named
   * @return kind, example and bounds
   */
  static String takesExactly(Say say, UnitSystem units) {
    return takes(
        say,
        Quantities.show(say.kind(), say.min(), units),
        say.max() == Double.MAX_VALUE ? "" : Quantities.show(say.kind(), say.max(), units));
  }

  private static String takes(Say say, String low, String high) {
    String kind =
        Quantities.read(say.kind(), "?") instanceof Reading.Bad bad ? bad.takes() : "a number";
    return say.max() == Double.MAX_VALUE
        ? kind + ", at least " + low
        : kind + ", from " + low + " to " + high;
  }

  private static String inward(Say say, double bound, RoundingMode way, UnitSystem units) {
    if (bound == Double.MAX_VALUE) {
      return "";
    }
    String shown = Quantities.show(say.kind(), bound, units);
    Matcher parts = FIGURE.matcher(shown);
    if (!parts.matches()) {
      return shown;
    }
    BigDecimal figure = new BigDecimal(parts.group(2).replace(",", ""));
    int digits = figure.stripTrailingZeros().precision();
    boolean whole = figure.stripTrailingZeros().scale() <= 0;
    if (digits <= ROUND || (whole && digits <= ROUND + 1)) {
      return shown;
    }
    double step = figure.round(new MathContext(ROUND, way)).doubleValue();
    String rounded =
        (parts.group(1) == null ? "" : parts.group(1))
            + String.format(Locale.ROOT, step == Math.rint(step) ? "%,.0f" : "%s", step);
    String inward = rounded + parts.group(3);
    boolean taken =
        Quantities.read(say.kind(), inward) instanceof Reading.Good good && holds(say, good.si());
    return taken ? inward : shown;
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
