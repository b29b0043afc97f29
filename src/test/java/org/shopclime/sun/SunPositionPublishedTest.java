package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Sun position against printed examples. */
class SunPositionPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/position.csv", useHeadersInDisplayName = true)
  void standsWhereTheReportSays(
      String id,
      String time,
      double latitude,
      double longitude,
      double elevation,
      double pressure,
      double celsius,
      double zenith,
      double azimuth,
      double tolerance) {
    SunAngles sun =
        SunPosition.at(
            ZonedDateTime.parse(time), latitude, longitude, elevation, pressure, celsius);
    assertThat(90 - sun.altitudeDeg()).as(id).isCloseTo(zenith, within(tolerance));
    assertThat(sun.azimuthDeg()).as(id).isCloseTo(azimuth, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/almanac.csv", useHeadersInDisplayName = true)
  void almanacFigures(
      String id,
      String quantity,
      int year,
      int dayOfYear,
      double hour,
      double zone,
      double expected,
      double tolerance) {
    Instant moment = SunPosition.moment(year, dayOfYear, hour, zone);
    double found =
        switch (quantity) {
          // Days since noon of 1 January 4713 BC; 1970 began at 2440587.5.
          case "julianDay" -> 2_440_587.5 + moment.toEpochMilli() / 86.4e6;
          case "equationOfTime" -> SunPosition.equationOfTime(moment);
          case "declination" -> SunPosition.declination(moment);
          case "distance" ->
              Math.sqrt(
                  AstronomicalDay.SOLAR_CONSTANT
                      / new AstronomicalDay(dayOfYear).extraterrestrialNormal());
          default -> throw new IllegalArgumentException(quantity);
        };
    assertThat(found).as("%s %s", id, quantity).isCloseTo(expected, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/sunrise.csv", useHeadersInDisplayName = true)
  void risesAndSetsWhenTheReportSays(
      String id,
      int year,
      int dayOfYear,
      double zone,
      double latitude,
      double longitude,
      String sunrise,
      String transit,
      String sunset,
      double seconds) {
    SunTimes times = SunPosition.times(year, dayOfYear, zone, latitude, longitude);
    assertThat(times.sunriseHour() * 3600).as(id).isCloseTo(secondOfDay(sunrise), within(seconds));
    assertThat(times.sunsetHour() * 3600).as(id).isCloseTo(secondOfDay(sunset), within(seconds));
    if (transit != null) {
      assertThat(times.transitHour() * 3600)
          .as(id)
          .isCloseTo(secondOfDay(transit), within(seconds));
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/day-length.csv", useHeadersInDisplayName = true)
  void dayLength(
      String id, int year, int dayOfYear, double latitude, double hours, double tolerance) {
    assertThat(SunPosition.times(year, dayOfYear, 0, latitude, 0).dayLengthHours())
        .as(id)
        .isCloseTo(hours, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/noon-altitude.csv", useHeadersInDisplayName = true)
  void noonAltitude(
      String id, int year, int dayOfYear, double latitude, double altitude, double tolerance) {
    SunTimes times = SunPosition.times(year, dayOfYear, 0, latitude, 0);
    SunAngles noon =
        SunPosition.atStandardTime(year, dayOfYear, times.transitHour(), 0, latitude, 0, 0);
    assertThat(noon.altitudeDeg()).as(id).isCloseTo(altitude, within(tolerance));
    assertThat(noon.azimuthDeg()).as(id).isCloseTo(180, within(0.1));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/astronomical-day.csv", useHeadersInDisplayName = true)
  void astronomicalDay(
      String id, int dayOfYear, double outside, double equationOfTime, double declination) {
    AstronomicalDay day = new AstronomicalDay(dayOfYear);
    assertThat(day.extraterrestrialNormal()).as(id).isCloseTo(outside, within(2.0));
    assertThat(day.equationOfTimeMinutes()).as(id).isCloseTo(equationOfTime, within(0.4));
    assertThat(day.declinationDeg()).as(id).isCloseTo(declination, within(0.4));
  }

  private static double secondOfDay(String time) {
    return LocalTime.parse(time).toNanoOfDay() / 1e9;
  }
}
