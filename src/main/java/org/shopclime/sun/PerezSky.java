package org.shopclime.sun;

/**
 * Sun on a tilted face from beam and sky on the level: an even sky, a bright part around the sun,
 * and a band at the horizon that may be brighter or darker.
 *
 * <p>Source: R. Perez, P. Ineichen, R. Seals, J. Michalsky, R. Stewart, Modeling daylight
 * availability and irradiance components from direct and global irradiance, Solar Energy 44(5),
 * 1990: eqs. 1, 2 and 9, Table 6 (coefficients for irradiance). The bright part is treated as lying
 * at the sun's middle; below 5 degrees of sun its weight is held as in the paper, so there a level
 * face reads a little less than it was given.
 *
 * <p>Departures: the bright part is a share and never more than the whole; where the horizon band
 * would make the sky less than nothing it is nothing; with the sun down what is left of the sky is
 * even.
 *
 * <p>Error: some 10 to 15 W/m² of one hour on a wall, by the paper.
 */
public final class PerezSky {

  /** Upper ends of the clearness bins 1 to 7; the eighth is open. */
  private static final double[] CLEARNESS = {1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2};

  /** Rows: clearness bins 1 to 8; columns: F11, F12, F13, F21, F22, F23. */
  private static final double[][] COEFFICIENTS = {
    {-0.008, 0.588, -0.062, -0.060, 0.072, -0.022},
    {0.130, 0.683, -0.151, -0.019, 0.066, -0.029},
    {0.330, 0.487, -0.221, 0.055, -0.064, -0.026},
    {0.568, 0.187, -0.295, 0.109, -0.152, -0.014},
    {0.873, -0.392, -0.362, 0.226, -0.462, 0.001},
    {1.132, -1.237, -0.412, 0.288, -0.823, 0.056},
    {1.060, -1.600, -0.359, 0.264, -1.127, 0.131},
    {0.678, -0.327, -0.250, 0.156, -1.377, 0.251},
  };

  private static final double LOWEST_COSINE = Math.cos(Math.toRadians(85));

  private PerezSky() {}

  /**
   * Sun on a face.
   *
   * @param tiltDeg tilt of the face, degrees, 0 (facing up) over 90 (wall) to 180 (facing down)
   * @param azimuthDeg compass direction the face looks to, degrees from north, 0 to 360
   * @param sun where the sun stands
   * @param directNormal beam on a face turned to the sun, W/m², 0 to 1500; left out when the sun is
   *     down
   * @param diffuseHorizontal light of the sky on level ground, W/m², 0 to 1500
   * @param dayOfYear day of the year, 1 to 366
   * @param groundReflectance part of the light that the ground throws back, 0 to 1
   * @return beam, sky and ground on the face
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static FaceSun on(
      double tiltDeg,
      double azimuthDeg,
      SunAngles sun,
      double directNormal,
      double diffuseHorizontal,
      int dayOfYear,
      double groundReflectance) {
    Range.check("direct normal, W/m²", directNormal, 0, 1500);
    Range.check("diffuse horizontal, W/m²", diffuseHorizontal, 0, 1500);
    Range.check("ground reflectance", groundReflectance, 0, 1);
    double outside = new AstronomicalDay(dayOfYear).extraterrestrialNormal();
    double cosine = sun.cosineOn(tiltDeg, azimuthDeg);
    double vertical = Math.sin(Math.toRadians(sun.altitudeDeg()));
    double tilt = Math.toRadians(tiltDeg);

    double beam = sun.isUp() ? directNormal * Math.max(0, cosine) : 0;
    double level = diffuseHorizontal + (sun.isUp() ? directNormal * vertical : 0);
    double ground = groundReflectance * level * (1 - Math.cos(tilt)) / 2;

    double around = 0;
    double horizon = 0;
    if (sun.isUp() && diffuseHorizontal > 0) {
      double zenith = Math.toRadians(90 - sun.altitudeDeg());
      double cube = 1.041 * Math.pow(zenith, 3);
      double clearness = // eq. 1
          ((diffuseHorizontal + directNormal) / diffuseHorizontal + cube) / (1 + cube);
      double mass = 1 / (vertical + 0.15 * Math.pow(3.885 + sun.altitudeDeg(), -1.253));
      double brightness = diffuseHorizontal * mass / outside; // eq. 2
      double[] f = COEFFICIENTS[bin(clearness)];
      around = Math.max(0, Math.min(1, f[0] + f[1] * brightness + f[2] * zenith));
      horizon = f[3] + f[4] * brightness + f[5] * zenith;
    }
    double bright =
        diffuseHorizontal * around * Math.max(0, cosine) / Math.max(LOWEST_COSINE, vertical);
    double sky = // eq. 9
        Math.max(
            0,
            diffuseHorizontal * ((1 - around) * (1 + Math.cos(tilt)) / 2 + horizon * Math.sin(tilt))
                + bright);
    return new FaceSun(beam, sky, ground, Math.toDegrees(Math.acos(cosine)), Math.min(bright, sky));
  }

  private static int bin(double clearness) {
    int bin = 0;
    while (bin < CLEARNESS.length && clearness >= CLEARNESS[bin]) {
      bin++;
    }
    return bin;
  }
}
