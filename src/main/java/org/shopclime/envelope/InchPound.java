package org.shopclime.envelope;

/** Handbook figures are printed in inch-pound units; these constants bring them to SI. */
final class InchPound {

  /** m in an inch, exact. */
  static final double INCH = 0.0254;

  /** J in a BTU (International Table), exact: 1 BTU/lb is defined as 2326 J/kg. */
  private static final double BTU = 2326 * 0.45359237;

  /** m²·K/W in one h·ft²·°F/BTU ("R-1"). */
  static final double R = 3600 * (12 * INCH) * (12 * INCH) / (1.8 * BTU);

  /** W/(m²·K) in one BTU/(h·ft²·°F). */
  static final double U = 1 / R;

  /** W/(m·K) in one BTU/(h·ft·°F), also of an F-factor. */
  static final double PER_FOOT = 12 * INCH / R;

  private InchPound() {}
}
