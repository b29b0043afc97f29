package org.shopclime.sun;

/**
 * Clear sky of the older handbooks, 21 July, in Btu/(h·ft²), with the reference glass by which they
 * told solar heat gain.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (1977 to 1997), fenestration chapter.
 */
final class OlderClearSky {

  static final double JULY_DECLINATION = 20.6;
  private static final double APPARENT = 344;
  private static final double EXTINCTION = 0.207;
  private static final double DIFFUSE = 0.136;
  private static final double GROUND = 0.2;
  private static final double INWARD = 0.267;
  private static final double[] TRANSMITTED = {
    -0.00885, 2.71235, -0.62062, -7.07329, 9.75995, -3.89922
  };
  private static final double[] ABSORBED = {0.01154, 0.77674, -3.94657, 8.57881, -8.38135, 3.01188};

  private OlderClearSky() {}

  static double normal(SunAngles sun) {
    return sun.isUp()
        ? APPARENT * Math.exp(-EXTINCTION / Math.sin(Math.toRadians(sun.altitudeDeg())))
        : 0;
  }

  /** Sun on a face, W/m² or Btu/(h·ft²) alike: here Btu/(h·ft²). */
  static FaceSun on(double tilt, double azimuth, SunAngles sun) {
    double normal = normal(sun);
    double cosine = sun.cosineOn(tilt, azimuth);
    double beam = normal * Math.max(0, cosine);
    double ratio = tilt == 0 ? 1 : cosine > -0.2 ? AshraeClearSky.verticalRatio(cosine) : 0.45;
    double level = normal * (DIFFUSE + Math.sin(Math.toRadians(sun.altitudeDeg())));
    double ground = sun.isUp() ? GROUND * level * (tilt == 0 ? 0 : 0.5) : 0;
    return new FaceSun(beam, normal * DIFFUSE * ratio, ground, Math.toDegrees(Math.acos(cosine)));
  }

  /** Solar heat gain factor: through single reference glass. */
  static double heatGain(double tilt, double azimuth, SunAngles sun) {
    FaceSun face = on(tilt, azimuth, sun);
    double cosine = sun.cosineOn(tilt, azimuth);
    return face.beam() * (transmitted(cosine) + INWARD * absorbed(cosine))
        + (face.sky() + face.ground()) * (diffuseTransmitted() + INWARD * diffuseAbsorbed());
  }

  static double transmitted(double cosine) {
    return polynomial(TRANSMITTED, cosine);
  }

  static double absorbed(double cosine) {
    return polynomial(ABSORBED, cosine);
  }

  static double diffuseTransmitted() {
    return mean(TRANSMITTED);
  }

  static double diffuseAbsorbed() {
    return mean(ABSORBED);
  }

  private static double polynomial(double[] c, double x) {
    double sum = 0;
    for (int j = c.length - 1; j >= 0; j--) {
      sum = sum * x + c[j];
    }
    return sum;
  }

  /** Over an even half sphere: twice the integral of the polynomial times the cosine. */
  private static double mean(double[] c) {
    double sum = 0;
    for (int j = 0; j < c.length; j++) {
      sum += 2 * c[j] / (j + 2);
    }
    return sum;
  }
}
