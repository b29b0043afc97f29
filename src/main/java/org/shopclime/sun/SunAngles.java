package org.shopclime.sun;

/**
 * Where the sun stands.
 *
 * @param altitudeDeg height above the horizon, degrees, -90 to 90; negative below it
 * @param azimuthDeg compass direction, degrees clockwise from north, 0 to 360 (east is 90)
 */
public record SunAngles(double altitudeDeg, double azimuthDeg) {

  /** Refuses angles outside their ranges. */
  public SunAngles {
    Range.check("sun altitude, degrees", altitudeDeg, -90, 90);
    Range.check("sun azimuth, degrees", azimuthDeg, 0, 360);
  }

  /**
   * Whether the middle of the sun is above the horizon.
   *
   * @return true if the altitude is above zero
   */
  public boolean isUp() {
    return altitudeDeg > 0;
  }

  /**
   * Cosine of the angle between the sun and the line that stands out square from a face.
   *
   * <p>Source: spherical geometry; ASHRAE Handbook - Fundamentals (2009), ch. 14, eq. 22.
   *
   * @param tiltDeg tilt of the face, degrees, 0 (facing up) over 90 (wall) to 180 (facing down)
   * @param azimuthDeg compass direction the face looks to, degrees from north, 0 to 360
   * @return cosine, -1 to 1; zero or less when the sun is behind the face
   * @throws IllegalArgumentException if an angle is outside its range
   */
  public double cosineOn(double tiltDeg, double azimuthDeg) {
    double tilt = Math.toRadians(Range.check("tilt, degrees", tiltDeg, 0, 180));
    Range.check("face azimuth, degrees", azimuthDeg, 0, 360);
    double altitude = Math.toRadians(altitudeDeg);
    double between = Math.toRadians(this.azimuthDeg - azimuthDeg);
    double cosine =
        Math.sin(altitude) * Math.cos(tilt)
            + Math.cos(altitude) * Math.sin(tilt) * Math.cos(between);
    // Rounding may leave the last digit beyond one.
    return Math.max(-1, Math.min(1, cosine));
  }
}
