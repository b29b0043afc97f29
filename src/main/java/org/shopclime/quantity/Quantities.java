package org.shopclime.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;

/** Quantities as people write them, to and from SI numbers. */
public final class Quantities {

  /** A figure with more digits than this is looked for in a neighbouring unit first. */
  private static final int FEW_DIGITS = 6;

  /** No decimal of this many digits lies nearer to another double, whatever the unit. */
  private static final int ENOUGH_DIGITS = 20;

  /** Longest number written without a power of ten. */
  private static final int LONGEST_PLAIN = 24;

  /** Figures smaller than their usual decimals still show this many digits. */
  private static final int LEAST_DIGITS = 2;

  /**
   * But not by more than this many decimals more than usual: the rest is rounding, not a figure.
   */
  private static final int MOST_MORE_DECIMALS = 3;

  private static final BigDecimal THOUSANDS_FROM = BigDecimal.valueOf(1000);

  private Quantities() {}

  /**
   * Reads a quantity written by a person: a number, a unit of either system, in any of the usual
   * spellings ("24 ft", "7' 6\"", "1-1/2 in", "R-15", "12,000 BTU/h", "2.6 m²·K/W"). Upper and
   * lower case are alike; commas may only part thousands. Only counts, fractions and angles may
   * stand without a unit. Ranges are not checked here, but the number is finite.
   *
   * <p>Error: none but the rounding to the nearest double; "12 in" and "1 ft" give the same number.
   *
   * @param kind what is measured
   * @param text text as written
   * @return {@link Reading.Good} in the SI unit of the kind, or {@link Reading.Bad} with the text
   *     and what is taken instead
   */
  public static Reading read(Kind kind, String text) {
    return QuantityReader.read(kind, text);
  }

  /**
   * A quantity for people, rounded to what is worth saying, with its unit: "24 ft", "1.5 in",
   * "12,000 BTU/h", "R-15". Thousands are parted by commas.
   *
   * @param kind what is measured
   * @param si value in the SI unit of the kind
   * @param system system of units to show
   * @return text
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String show(Kind kind, double si, UnitSystem system) {
    BigDecimal value = decimal(si);
    Unit unit = fitting(UnitTable.of(kind).usual(system), value);
    BigDecimal figure = unit.fromSi(value);
    int scale = unit.decimals();
    if (figure.signum() != 0) {
      int firstDigit = figure.scale() - figure.precision() + 1;
      int wanted = Math.min(firstDigit + LEAST_DIGITS - 1, scale + MOST_MORE_DECIMALS);
      scale = Math.max(scale, wanted);
    }
    BigDecimal rounded = figure.setScale(scale, RoundingMode.HALF_EVEN);
    DecimalFormat format = new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT));
    format.setMaximumFractionDigits(Math.max(scale, 0));
    format.setGroupingSize(3);
    format.setGroupingUsed(rounded.abs().compareTo(THOUSANDS_FROM) >= 0);
    return unit.with(format.format(rounded));
  }

  /**
   * The shortest text in a usual unit of the system that {@link #read} turns back into exactly this
   * number, for files and fields. Where no text of that system does (a temperature a hair from 0
   * °C, in °F), it is in the other system. Negative zero is written as zero.
   *
   * @param kind what is measured
   * @param si value in the SI unit of the kind
   * @param system system of units to write
   * @return text
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String exact(Kind kind, double si, UnitSystem system) {
    BigDecimal value = decimal(si);
    List<Unit> usual = UnitTable.of(kind).usual(system);
    Unit fitting = fitting(usual, value);
    String best = exactIn(fitting, value, si, FEW_DIGITS);
    for (int digits = FEW_DIGITS; best == null && digits <= ENOUGH_DIGITS; digits++) {
      for (Unit unit : usual) {
        String text = exactIn(unit, value, si, digits);
        if (text != null && (best == null || text.length() < best.length())) {
          best = text;
        }
      }
    }
    if (best == null) {
      return exact(kind, si, system == UnitSystem.SI ? UnitSystem.INCH_POUND : UnitSystem.SI);
    }
    return best;
  }

  /**
   * The unit of a kind that stands for it in headings, such as "ft" or "BTU/h".
   *
   * @param kind what is measured
   * @param system system of units
   * @return the unit's name; empty for a count
   */
  public static String unit(Kind kind, UnitSystem system) {
    return UnitTable.of(kind).usual(system).get(0).name();
  }

  /** The first unit that a person would use for this much; for nothing, the first of all. */
  private static Unit fitting(List<Unit> usual, BigDecimal si) {
    for (Unit unit : usual) {
      if (si.signum() == 0 || unit.fromSi(si).abs().compareTo(unit.least()) >= 0) {
        return unit;
      }
    }
    return usual.get(usual.size() - 1);
  }

  /** The shortest text in one unit of at most so many digits that reads as the same double. */
  private static String exactIn(Unit unit, BigDecimal value, double si, int mostDigits) {
    BigDecimal figure = unit.fromSi(value);
    for (int digits = 1; digits <= mostDigits; digits++) {
      BigDecimal rounded = figure.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (unit.toSi(rounded).doubleValue() == si) {
        String plain = rounded.stripTrailingZeros().toPlainString();
        return unit.with(
            plain.length() <= LONGEST_PLAIN ? plain : rounded.stripTrailingZeros().toString());
      }
    }
    return null;
  }

  private static BigDecimal decimal(double si) {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException("a quantity must be finite, was " + si);
    }
    return new BigDecimal(si);
  }
}
