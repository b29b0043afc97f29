package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Behaviour of sun position, where no table is needed. */
class SunPositionTest {

  @Test
  void standardTimeIsTheSameMoment() {
    SunAngles byHour = SunPosition.atStandardTime(2003, 290, 12.5, -7, 39.74, -105.18, 0);
    SunAngles byMoment =
        SunPosition.at(Instant.parse("2003-10-17T19:30:00Z"), 39.74, -105.18, 0, 101_325, 15);
    assertThat(byHour.altitudeDeg()).isCloseTo(byMoment.altitudeDeg(), within(1e-9));
    assertThat(byHour.azimuthDeg()).isCloseTo(byMoment.azimuthDeg(), within(1e-9));
  }

  @Test
  void highGroundBendsLightLess() {
    // Standard air at 3000 m has 70.1 kPa (ICAO, 1976): refraction falls with it.
    SunAngles high = SunPosition.atStandardTime(2021, 79, 7, 0, 40, 0, 3000);
    SunAngles same = SunPosition.at(Instant.parse("2021-03-20T07:00:00Z"), 40, 0, 3000, 70_109, 15);
    SunAngles sea = SunPosition.atStandardTime(2021, 79, 7, 0, 40, 0, 0);
    assertThat(high.altitudeDeg()).isCloseTo(same.altitudeDeg(), within(1e-5));
    assertThat(high.altitudeDeg()).isLessThan(sea.altitudeDeg());
  }

  @Test
  void midnightSunAndPolarNight() {
    SunTimes summer = SunPosition.times(2021, 172, 0, 75, 0);
    assertThat(summer.dayLengthHours()).isEqualTo(24);
    assertThat(summer.transitHour()).isCloseTo(12, within(0.1));
    assertThat(summer.sunriseHour()).isEqualTo(summer.transitHour() - 12);
    SunTimes winter = SunPosition.times(2021, 355, 0, 75, 0);
    assertThat(winter.dayLengthHours()).isZero();
    assertThat(winter.sunriseHour()).isEqualTo(winter.transitHour());
  }

  @Test
  void equationOfTimeOverTheYear() {
    // Extremes of the equation of time: -14.2 min about 11 February, +16.4 about 3 November
    // (memory).
    assertThat(SunPosition.equationOfTime(Instant.parse("2021-02-11T00:00:30Z")))
        .isCloseTo(-14.2, within(0.1));
    assertThat(SunPosition.equationOfTime(Instant.parse("2021-11-03T23:59:30Z")))
        .isCloseTo(16.4, within(0.1));
  }

  @Test
  void simpleDayAgreesWithTheAlgorithm() {
    AstronomicalDay day = new AstronomicalDay(202);
    for (int hour = 6; hour <= 18; hour++) {
      SunAngles exact = SunPosition.atStandardTime(2021, 202, hour, -5, 33.64, -84.43, 300);
      SunAngles simple = day.sunAt(33.64, day.solarHour(hour, -5, -84.43));
      // The simple equations are good to half a degree of place in July.
      assertThat(simple.altitudeDeg()).isCloseTo(exact.altitudeDeg(), within(0.6));
    }
  }

  @ParameterizedTest
  @CsvSource({"90,90,1", "90,270,-1", "0,0,0", "45,90,0.70710678", "180,90,0", "90,0,0"})
  void cosineOnAFaceWhenTheSunRisesInTheEast(double tilt, double azimuth, double cosine) {
    assertThat(new SunAngles(0, 90).cosineOn(tilt, azimuth)).isCloseTo(cosine, within(1e-8));
  }

  @Test
  void theSunIsUpOnlyAboveTheHorizon() {
    assertThat(new SunAngles(0.01, 0).isUp()).isTrue();
    assertThat(new SunAngles(0, 0).isUp()).isFalse();
  }

  @Test
  void refusesWhatIsNoPlaceOrTime() {
    assertThatThrownBy(() -> SunPosition.atStandardTime(2021, 366, 0, 0, 0, 0, 0))
        .hasMessage("day of year is 366.0, must be from 1.0 to 365.0");
    assertThatThrownBy(() -> SunPosition.atStandardTime(2021, 1, 24.1, 0, 0, 0, 0))
        .hasMessageContaining("hour is 24.1");
    assertThatThrownBy(() -> SunPosition.atStandardTime(2021, 1, 0, 15, 0, 0, 0))
        .hasMessageContaining("time zone");
    assertThatThrownBy(() -> SunPosition.atStandardTime(2021, 1, 0, 0, 91, 0, 0))
        .hasMessageContaining("latitude");
    assertThatThrownBy(() -> SunPosition.times(2021, 1, 0, 0, Double.NaN))
        .hasMessageContaining("longitude");
    assertThatThrownBy(() -> SunPosition.atStandardTime(2021, 1, 0, 0, 0, 0, 9001))
        .hasMessageContaining("elevation");
    assertThatThrownBy(() -> SunPosition.at(Instant.EPOCH, 0, 0, 0, 1013, 15))
        .hasMessageContaining("pressure");
    assertThatThrownBy(() -> SunPosition.at(Instant.EPOCH, 0, 0, 0, 101_325, 100))
        .hasMessageContaining("temperature");
    assertThatThrownBy(() -> SunPosition.atStandardTime(1800, 1, 0, 0, 0, 0, 0))
        .hasMessageContaining("year");
    assertThatThrownBy(() -> new AstronomicalDay(0)).hasMessageContaining("day of year");
    assertThatThrownBy(() -> new SunTimes(7, 6, 8)).hasMessageContaining("must follow");
    assertThatThrownBy(() -> new SunAngles(91, 0)).hasMessageContaining("altitude");
    assertThatThrownBy(() -> new SunAngles(0, -1)).hasMessageContaining("azimuth");
  }
}
