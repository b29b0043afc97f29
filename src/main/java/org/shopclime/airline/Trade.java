package org.shopclime.airline;

/**
 * SI figures of the units in which the trade names its usual sizes, for the defaults of this room.
 */
final class Trade {

  /** m in an inch. */
  static final double INCH = 0.0254;

  /** m in a foot. */
  static final double FOOT = 0.3048;

  /** m³/s in a cubic foot a minute. */
  static final double CFM = FOOT * FOOT * FOOT / 60;

  /** Pa in a pound-force per square inch. */
  static final double PSI = 0.45359237 * 9.80665 / (INCH * INCH);

  /** W in a mechanical horsepower. */
  static final double HORSEPOWER = 550 * FOOT * 0.45359237 * 9.80665;

  /** m³ in a US gallon. */
  static final double GALLON = 231 * INCH * INCH * INCH;

  private Trade() {}

  /** Temperature of the Fahrenheit scale, °C. */
  static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }
}
