package org.shopclime.shop;

import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

/** Numbers as if typed by a person, so that files made by the program read as well. */
final class Typed {

  private Typed() {}

  /**
   * A quantity from its text.
   *
   * @param kind what is measured
   * @param text text with its unit
   * @return SI value
   * @throws IllegalArgumentException if the text is no such quantity
   */
  static double si(Kind kind, String text) {
    Reading reading = Quantities.read(kind, text);
    if (reading instanceof Reading.Good good) {
      return good.si();
    }
    throw new IllegalArgumentException(((Reading.Bad) reading).sentence());
  }

  /**
   * Length.
   *
   * @param text such as "24 ft"
   * @return m
   */
  static double length(String text) {
    return si(Kind.LENGTH, text);
  }

  /**
   * Resistance.
   *
   * @param text such as "R-13"
   * @return m²·K/W
   */
  static double rValue(String text) {
    return si(Kind.R_VALUE, text);
  }

  /**
   * A reckoned quantity, rounded to what is worth saying in inch-pound units.
   *
   * @param kind what is measured
   * @param si SI value
   * @return SI value of the rounded figure
   */
  static double tidy(Kind kind, double si) {
    return si(kind, Quantities.show(kind, si, UnitSystem.INCH_POUND));
  }
}
