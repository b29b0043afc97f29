package org.shopclime.sun;

/**
 * A day of the year by the simple equations of the handbook: strength of the sun outside the air,
 * equation of time, declination. Good where only the day matters, not the year; where the sun
 * stands is told by {@link SunPosition}.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2009), ch. 14, eqs. 4 to 10.
 *
 * <p>Error: up to 1 degree of declination (autumn), 1 minute of time, 0.3 % of strength.
 *
 * @param dayOfYear day, 1 (1 January) to 366
 */
public record AstronomicalDay(int dayOfYear) {

  /** Strength of the sun outside the air at the mean distance, W/m², as in the handbook. */
  public static final double SOLAR_CONSTANT = 1367;

  /** Refuses a day outside 1 to 366. */
  public AstronomicalDay {
    Range.checkDay(dayOfYear);
  }

  /**
   * Strength of the sun outside the air on a face turned to it.
   *
   * @return W/m², 1322 to 1412
   */
  public double extraterrestrialNormal() {
    return SOLAR_CONSTANT // eq. 4
        * (1 + 0.033 * Math.cos(Math.toRadians(360.0 * (dayOfYear - 3) / 365)));
  }

  /**
   * How far a sundial is ahead of the clock.
   *
   * @return apparent less mean solar time, minutes
   */
  public double equationOfTimeMinutes() {
    double angle = Math.toRadians(360.0 * (dayOfYear - 1) / 365); // eq. 6
    return 2.2918 // eq. 5
        * (0.0075
            + 0.1868 * Math.cos(angle)
            - 3.2077 * Math.sin(angle)
            - 1.4615 * Math.cos(2 * angle)
            - 4.089 * Math.sin(2 * angle));
  }

  /**
   * Angle of the sun above the plane of the equator.
   *
   * @return degrees, -23.45 to 23.45
   */
  public double declinationDeg() {
    return 23.45 * Math.sin(Math.toRadians(360.0 * (dayOfYear + 284) / 365)); // eq. 10
  }

  /**
   * Apparent solar time.
   *
   * @param standardHour local standard time, h, 0 to 24
   * @param timeZoneHours local standard time less universal time, h, -12 to 14
   * @param longitudeDeg longitude, degrees, east positive, -180 to 180
   * @return hours; may fall below 0 or above 24
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public double solarHour(double standardHour, double timeZoneHours, double longitudeDeg) {
    Range.check("hour", standardHour, 0, 24);
    Range.check("time zone, h", timeZoneHours, -12, 14);
    Range.check("longitude, degrees", longitudeDeg, -180, 180);
    return standardHour // eq. 7
        + equationOfTimeMinutes() / 60
        + (longitudeDeg - 15 * timeZoneHours) / 15;
  }

  /**
   * Sun at an hour of solar time, this day's declination.
   *
   * @param latitudeDeg latitude, degrees, north positive, -90 to 90
   * @param solarHour apparent solar time, h; 12 when the sun is highest
   * @return altitude without refraction, and azimuth
   * @throws IllegalArgumentException if the latitude is outside its range
   */
  public SunAngles sunAt(double latitudeDeg, double solarHour) {
    return sunAt(declinationDeg(), latitudeDeg, solarHour);
  }

  /**
   * Sun at an hour of solar time for a given declination.
   *
   * @param declinationDeg declination, degrees, -23.5 to 23.5
   * @param latitudeDeg latitude, degrees, north positive, -90 to 90
   * @param solarHour apparent solar time, h; 12 when the sun is highest
   * @return altitude without refraction, and azimuth
   * @throws IllegalArgumentException if an angle is outside its range
   */
  public static SunAngles sunAt(double declinationDeg, double latitudeDeg, double solarHour) {
    double declination =
        Math.toRadians(Range.check("declination, degrees", declinationDeg, -23.5, 23.5));
    double latitude = Math.toRadians(Range.check("latitude, degrees", latitudeDeg, -90, 90));
    double hourAngle = Math.toRadians(15 * (Range.check("solar hour", solarHour, -48, 48) - 12));
    double up = // eq. 12
        Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle)
            + Math.sin(latitude) * Math.sin(declination);
    double east = -Math.cos(declination) * Math.sin(hourAngle); // eq. 14
    double north = // eq. 15
        Math.sin(declination) * Math.cos(latitude)
            - Math.cos(declination) * Math.sin(latitude) * Math.cos(hourAngle);
    double azimuth = Math.toDegrees(Math.atan2(east, north));
    return new SunAngles(
        Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, up)))),
        azimuth < 0 ? azimuth + 360 : azimuth);
  }
}
