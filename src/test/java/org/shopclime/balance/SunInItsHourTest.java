package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.climate.MadeYear;
import org.shopclime.climate.Station;
import org.shopclime.climate.WeatherYear;

/**
 * A made record of clear days all year, symmetric about the solar noon of {@link SpencerSun}: the
 * program must find that symmetry and its sums again, wherever in its time zone the place lies.
 */
class SunInItsHourTest {

  private static Station place(double longitude) {
    return new Station("999991", "Testing Ridge", "ZZ", -6, 38, longitude, 0);
  }

  /** Hourly means of a clear sky over {@code real}, put down to a place of other longitude. */
  private static WeatherYear record(Station real, Station toldOf) {
    SpencerSun sun = new SpencerSun(real);
    double[] height = new double[YearWeather.HOURS];
    double[] direct = new double[YearWeather.HOURS];
    for (int hour = 0; hour < height.length; hour++) {
      for (int minute = 0; minute < 60; minute++) {
        double at = hour % 24 + (minute + 0.5) / 60;
        double up = Math.sin(Math.toRadians(sun.at(hour / 24 + 1, at).altitudeDeg()));
        if (up > 0) {
          height[hour] += up / 60;
          direct[hour] += 950 * Math.exp(-0.1 / (up + 0.02)) / 60;
        }
      }
    }
    return new MadeYear()
        .at(toldOf)
        .sun(hour -> direct[hour - 1], hour -> 110 * height[hour - 1])
        .year();
  }

  /**
   * East and west within 0.5 % of each other over the year; told of a place half an hour (7.5
   * degrees) away, 15 % or more apart.
   */
  @ParameterizedTest
  @CsvSource({"-78", "-90", "-102"})
  void eastAndWestAreAlike(double longitude) {
    Station real = place(longitude);
    assertThat(split(record(real, real))).isCloseTo(1, within(0.005));
    assertThat(split(record(real, place(longitude + 7.5)))).isLessThan(0.85);
    assertThat(split(record(real, place(longitude - 7.5)))).isGreaterThan(1.15);
  }

  private static double split(WeatherYear year) {
    YearWeather weather = YearWeather.of(year);
    return YearSunSums.engine(weather, 90, 90) / YearSunSums.engine(weather, 90, 270);
  }

  /**
   * Sums of the year on five faces within 1 % of the sums by the other algorithm (measured: 0.5 %
   * on level ground: the sun's height in the middle of an hour is 0.3 % above its mean).
   */
  @ParameterizedTest
  @CsvSource({"-78", "-90", "-102"})
  void sumsOfTheYear(double longitude) {
    WeatherYear year = record(place(longitude), place(longitude));
    YearWeather weather = YearWeather.of(year);
    YearSunSums own = new YearSunSums(year);
    for (double azimuth : List.of(0.0, 90.0, 180.0, 270.0)) {
      double wall = YearSunSums.engine(weather, 90, azimuth);
      assertThat(own.withSameSky(90, azimuth, 0)).isCloseTo(wall, within(0.01 * wall));
    }
    double level = YearSunSums.engine(weather, 0, 180);
    assertThat(own.withSameSky(0, 180, 0)).isCloseTo(level, within(0.01 * level));
  }
}
