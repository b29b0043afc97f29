package org.shopclime.quantity;

/** System of units in which figures are shown and written. */
public enum UnitSystem {
  /** Feet, °F, BTU/h. */
  INCH_POUND,
  /** Metres, °C, W. */
  SI
}
