package org.shopclime.unit;

/** The unit that labels and size tables print, for tables of this room only. */
final class Btuh {

  /** W in a BTU/h (International Table): 2326 J/kg times the 0.45359237 kg pound, each hour. */
  static final double WATTS = 2326 * 0.45359237 / 3600;

  private Btuh() {}

  static double toWatts(double btuh) {
    return btuh * WATTS;
  }

  /** BTU/h as printed, a whole number, so that a size typed and converted finds its class. */
  static double printed(double watts) {
    return Math.rint(watts / WATTS);
  }
}
