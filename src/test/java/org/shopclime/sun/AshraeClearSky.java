package org.shopclime.sun;

/**
 * The handbook's clear sky from two pseudo optical depths of a station; a second opinion for the
 * checks.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals, ch. 14: 2009 (eqs. 16 to 31); exponents also of 2013.
 */
final class AshraeClearSky {

  /** Coefficients of an air-mass exponent. */
  record Exponent(double constant, double beam, double diffuse, double product) {
    double of(double beamDepth, double diffuseDepth) {
      return constant
          + beam * beamDepth
          + diffuse * diffuseDepth
          + product * beamDepth * diffuseDepth;
    }
  }

  static final Exponent BEAM_2009 = new Exponent(1.219, -0.043, -0.151, -0.204);
  static final Exponent DIFFUSE_2009 = new Exponent(0.202, 0.852, -0.007, -0.357);
  static final Exponent BEAM_2013 = new Exponent(1.454, -0.406, -0.268, 0.021);
  static final Exponent DIFFUSE_2013 = new Exponent(0.507, 0.205, -0.080, -0.190);

  private AshraeClearSky() {}

  static double airMass(double altitudeDeg) {
    return 1
        / (Math.sin(Math.toRadians(altitudeDeg))
            + 0.50572 * Math.pow(6.07995 + altitudeDeg, -1.6364));
  }

  static ClearSky at(
      double altitudeDeg,
      int dayOfYear,
      double beamDepth,
      double diffuseDepth,
      Exponent beamExponent,
      Exponent diffuseExponent) {
    double outside = new AstronomicalDay(dayOfYear).extraterrestrialNormal();
    double mass = airMass(altitudeDeg);
    double beam =
        outside * Math.exp(-beamDepth * Math.pow(mass, beamExponent.of(beamDepth, diffuseDepth)));
    double diffuse =
        outside
            * Math.exp(-diffuseDepth * Math.pow(mass, diffuseExponent.of(beamDepth, diffuseDepth)));
    return new ClearSky(beam, diffuse, diffuse + beam * Math.sin(Math.toRadians(altitudeDeg)));
  }

  /** Sky on a wall as a part of the sky on the level. */
  static double verticalRatio(double cosine) {
    return Math.max(0.45, 0.55 + 0.437 * cosine + 0.313 * cosine * cosine);
  }
}
