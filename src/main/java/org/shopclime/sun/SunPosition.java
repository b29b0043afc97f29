package org.shopclime.sun;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.e175.klaus.solarpositioning.SunriseResult;

/**
 * Place of the sun in the sky, as seen from a place on the ground, refraction included.
 *
 * <p>Source: I. Reda and A. Andreas, Solar Position Algorithm, NREL/TP-560-34302 (rev. 2008), by
 * the library solarpositioning; the difference between uniform and Earth's time is the library's
 * estimate for the date.
 *
 * <p>Error: 0.0003 degrees by its report, far below what a building needs.
 */
public final class SunPosition {

  /** Air temperature of the standard atmosphere at sea level, °C; it only bends the light. */
  private static final double STANDARD_CELSIUS = 15;

  private SunPosition() {}

  /**
   * Sun at a moment.
   *
   * @param moment the moment
   * @param latitudeDeg latitude, degrees, north positive, -90 to 90
   * @param longitudeDeg longitude, degrees, east positive, -180 to 180
   * @param elevationM height above the sea, m, -500 to 9000
   * @param pressurePa air pressure there, Pa, 30000 to 110000
   * @param celsius air temperature there, °C, -90 to 60
   * @return altitude and azimuth
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static SunAngles at(
      Instant moment,
      double latitudeDeg,
      double longitudeDeg,
      double elevationM,
      double pressurePa,
      double celsius) {
    checkPlace(latitudeDeg, longitudeDeg);
    Range.check("elevation, m", elevationM, -500, 9000);
    Range.check("pressure, Pa", pressurePa, 30_000, 110_000);
    Range.check("temperature, °C", celsius, -90, 60);
    ZonedDateTime time = moment.atZone(ZoneOffset.UTC);
    SolarPosition sun =
        SPA.calculateSolarPosition(
            time,
            latitudeDeg,
            longitudeDeg,
            elevationM,
            DeltaT.estimate(time.toLocalDate()),
            pressurePa / 100,
            celsius);
    return new SunAngles(90 - sun.zenithAngle(), sun.azimuth());
  }

  /**
   * Sun at a moment told with its zone.
   *
   * @param moment the moment
   * @param latitudeDeg latitude, degrees, north positive, -90 to 90
   * @param longitudeDeg longitude, degrees, east positive, -180 to 180
   * @param elevationM height above the sea, m, -500 to 9000
   * @param pressurePa air pressure there, Pa, 30000 to 110000
   * @param celsius air temperature there, °C, -90 to 60
   * @return altitude and azimuth
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static SunAngles at(
      ZonedDateTime moment,
      double latitudeDeg,
      double longitudeDeg,
      double elevationM,
      double pressurePa,
      double celsius) {
    return at(moment.toInstant(), latitudeDeg, longitudeDeg, elevationM, pressurePa, celsius);
  }

  /**
   * Sun at an hour of local standard time, in standard air. For the mean of an hour give its
   * middle.
   *
   * @param year calendar year, 1900 to 2200
   * @param dayOfYear day of that year, from 1
   * @param hour hours after local standard midnight, 0 to 24; 12.5 is half past noon
   * @param timeZoneHours local standard time less universal time, h, -12 to 14
   * @param latitudeDeg latitude, degrees, north positive, -90 to 90
   * @param longitudeDeg longitude, degrees, east positive, -180 to 180
   * @param elevationM height above the sea, m, -500 to 9000
   * @return altitude and azimuth
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static SunAngles atStandardTime(
      int year,
      int dayOfYear,
      double hour,
      double timeZoneHours,
      double latitudeDeg,
      double longitudeDeg,
      double elevationM) {
    Range.check("elevation, m", elevationM, -500, 9000);
    // Standard atmosphere (1976); enters through refraction only.
    double pressure = 101_325 * Math.pow(1 - 2.25577e-5 * elevationM, 5.2559);
    return at(
        moment(year, dayOfYear, hour, timeZoneHours),
        latitudeDeg,
        longitudeDeg,
        elevationM,
        pressure,
        STANDARD_CELSIUS);
  }

  /**
   * Sunrise, transit and sunset (upper edge of the sun, 34 minutes of arc of refraction).
   *
   * @param year calendar year, 1900 to 2200
   * @param dayOfYear day of that year, from 1
   * @param timeZoneHours local standard time less universal time, h, -12 to 14
   * @param latitudeDeg latitude, degrees, north positive, -90 to 90
   * @param longitudeDeg longitude, degrees, east positive, -180 to 180
   * @return hours after local standard midnight
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static SunTimes times(
      int year, int dayOfYear, double timeZoneHours, double latitudeDeg, double longitudeDeg) {
    checkPlace(latitudeDeg, longitudeDeg);
    Instant midnight = moment(year, dayOfYear, 0, timeZoneHours);
    ZonedDateTime start = midnight.atZone(offset(timeZoneHours));
    SunriseResult day =
        SPA.calculateSunriseTransitSet(
            start, latitudeDeg, longitudeDeg, DeltaT.estimate(start.toLocalDate()));
    double transit = hoursAfter(start, day.transit());
    if (day instanceof SunriseResult.RegularDay regular) {
      // The library tells what happens on this date: far north and west in a zone, a sun that sets
      // after midnight did so this morning too, a few minutes sooner or later.
      double sunrise = hoursAfter(start, regular.sunrise());
      double sunset = hoursAfter(start, regular.sunset());
      return new SunTimes(
          sunrise > transit ? sunrise - 24 : sunrise,
          transit,
          sunset < transit ? sunset + 24 : sunset);
    }
    double half = day instanceof SunriseResult.AllDay ? 12 : 0;
    return new SunTimes(transit - half, transit, transit + half);
  }

  /**
   * Angle of the sun above the plane of the equator: its altitude at the North Pole, without
   * refraction.
   *
   * @param moment the moment
   * @return degrees, -23.5 to 23.5
   */
  public static double declination(Instant moment) {
    return 90 - atPole(moment).zenithAngle();
  }

  /**
   * How far a sundial is ahead of the clock: at the pole the compass direction of the sun is the
   * hour angle of Greenwich.
   *
   * @param moment the moment
   * @return apparent less mean solar time, minutes, -15 to 17
   */
  public static double equationOfTime(Instant moment) {
    double clockDeg = moment.atZone(ZoneOffset.UTC).toLocalTime().toNanoOfDay() / 1e9 / 240;
    // Both run through the circle once a day: take the difference nearest to none.
    return 4 * Math.IEEEremainder(atPole(moment).azimuth() - clockDeg, 360);
  }

  static Instant moment(int year, int dayOfYear, double hour, double timeZoneHours) {
    Range.check("year", year, 1900, 2200);
    LocalDate first = LocalDate.of(year, 1, 1);
    Range.check("day of year", dayOfYear, 1, first.lengthOfYear());
    Range.check("hour", hour, 0, 24);
    return first
        .plusDays(dayOfYear - 1L)
        .atStartOfDay(offset(timeZoneHours))
        .toInstant()
        .plusMillis(Math.round(hour * 3_600_000));
  }

  private static ZoneOffset offset(double timeZoneHours) {
    Range.check("time zone, h", timeZoneHours, -12, 14);
    return ZoneOffset.ofTotalSeconds((int) Math.round(timeZoneHours * 3600));
  }

  private static double hoursAfter(ZonedDateTime start, ZonedDateTime moment) {
    return Duration.between(start, moment).toMillis() / 3.6e6;
  }

  private static SolarPosition atPole(Instant moment) {
    ZonedDateTime time = moment.atZone(ZoneOffset.UTC);
    return SPA.calculateSolarPosition(time, 90, 0, 0, DeltaT.estimate(time.toLocalDate()));
  }

  private static void checkPlace(double latitudeDeg, double longitudeDeg) {
    Range.check("latitude, degrees", latitudeDeg, -90, 90);
    Range.check("longitude, degrees", longitudeDeg, -180, 180);
  }
}
