package org.shopclime.gain;

/** The unit of the printed tables of this room. */
final class BtuPerHour {

  /** J in a BTU (International Table), exact: 1 BTU/lb is 2326 J/kg, 1 lb is 0.45359237 kg. */
  private static final double JOULES = 2326 * 0.45359237;

  private BtuPerHour() {}

  static double toWatts(double btuPerHour) {
    return btuPerHour * JOULES / 3600;
  }
}
