package org.shopclime.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * A unit in which a kind of quantity may be written. Conversion is decimal, so that the double that
 * comes out is the one nearest to what was written: 12 in and 1 ft are the same number.
 *
 * @param before sign before the number, such as "R-", usually empty
 * @param after name after the number, with its space if it wants one
 * @param numerator SI units in {@code denominator} of this unit, above 0
 * @param denominator see {@code numerator}, above 0
 * @param offset figure of this unit at SI zero
 * @param least smallest magnitude, in this unit, at which a person would use it
 * @param decimals decimals shown to people
 * @param spellings what may be written, as {@link UnitText#plain} leaves it
 */
record Unit(
    String before,
    String after,
    BigDecimal numerator,
    BigDecimal denominator,
    BigDecimal offset,
    BigDecimal least,
    int decimals,
    List<String> spellings) {

  /** Far more digits than a double has, so that its last digit is right. */
  private static final MathContext DIGITS = new MathContext(60);

  /** Copies the list. */
  Unit {
    spellings = List.copyOf(spellings);
  }

  /**
   * A figure in this unit, in SI.
   *
   * @param figure figure in this unit
   * @return SI value, to 60 digits
   */
  BigDecimal toSi(BigDecimal figure) {
    return figure.subtract(offset).multiply(numerator).divide(denominator, DIGITS);
  }

  /**
   * An SI value in this unit.
   *
   * @param si SI value
   * @return figure in this unit, to 60 digits
   */
  BigDecimal fromSi(BigDecimal si) {
    return si.multiply(denominator).divide(numerator, DIGITS).add(offset, DIGITS);
  }

  /**
   * The name of the unit alone.
   *
   * @return name without spaces round it
   */
  String name() {
    return after.strip();
  }

  /**
   * A number with this unit: its name after it or, for a positive number, its sign before it.
   *
   * @param number number as text
   * @return text as a person writes it
   */
  String with(String number) {
    return before.isEmpty() || number.startsWith("-") ? number + after : before + number;
  }
}
