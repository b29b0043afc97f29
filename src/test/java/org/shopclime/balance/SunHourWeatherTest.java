package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.climate.Station;
import org.shopclime.climate.WeatherFile;
import org.shopclime.climate.WeatherReading;
import org.shopclime.climate.WeatherYear;
import org.shopclime.sun.PerezSky;
import org.shopclime.sun.SunAngles;
import org.shopclime.sun.SunPosition;
import org.shopclime.sun.SunTimes;

/**
 * The modelled sun in the hours of recorded light (TMY3, NREL/TP-581-43156: irradiance is the mean
 * of the hour before its time, standard time): at six stations from 4.9 degrees east to 11.9
 * degrees west of the middle of their time zones, Boston, Atlanta, Amarillo, Denver, Boise and Las
 * Vegas. Each check is made again with the sun half an hour early and late, and must then fail.
 *
 * <p>A clear day: at most one hour between sunrise and sunset with any cloud, and sky light no more
 * than a quarter of the whole in all hours but the first and last (cloud and light are of different
 * origin and do not always agree). Detroit was first among the six: it has no such day.
 */
@EnabledIfSystemProperty(named = "shopclime.weather", matches = ".+")
class SunHourWeatherTest {

  private static final double HALF_AN_HOUR = 0.5;

  /** A station's year and how the program places its sun. */
  private record Place(WeatherYear year, YearWeather weather) {

    static Place of(String station) {
      Path file = Path.of(System.getProperty("shopclime.weather"), "hourly", station + ".csv.xz");
      WeatherYear year = ((WeatherReading.Good) WeatherFile.read(file)).year();
      return new Place(year, YearWeather.of(year));
    }

    SunTimes times(int day) {
      Station at = year.station();
      return SunPosition.times(
          YearWeather.YEAR, day, at.timeZoneHours(), at.latitudeDeg(), at.longitudeDeg());
    }

    boolean isLit(int day, int hour) {
      return year.globalHorizontal(number(day, hour)) > 0;
    }

    List<Integer> clearDays() {
      List<Integer> clear = IntStream.rangeClosed(1, 365).filter(this::isClear).boxed().toList();
      assertThat(clear).hasSizeGreaterThan(5);
      return clear;
    }

    private boolean isClear(int day) {
      SunTimes times = times(day);
      int cloudy = 0;
      for (int hour = 1; hour <= 24; hour++) {
        int number = number(day, hour);
        if (hour > times.sunriseHour()
            && hour - 1 < times.sunsetHour()
            && year.totalCloud(number) > 0) {
          cloudy++;
        }
        if (hour - 2 > times.sunriseHour()
            && hour + 1 < times.sunsetHour()
            && year.diffuseHorizontal(number) > 0.25 * year.globalHorizontal(number)) {
          return false;
        }
      }
      return cloudy <= 1;
    }

    /** Light on a wall through a day with the program's sun, or one so many hours off. */
    double wall(int day, double azimuth, double shift) {
      double sum = 0;
      for (int hour = 1; hour <= 24; hour++) {
        int number = number(day, hour);
        if (isLit(day, hour)) {
          sum +=
              PerezSky.on(
                      90,
                      azimuth,
                      shift == 0 ? weather.sun(number - 1) : shifted(day, hour, shift),
                      year.directNormal(number),
                      year.diffuseHorizontal(number),
                      day,
                      0.2)
                  .total();
        }
      }
      return sum;
    }

    private SunAngles shifted(int day, int hour, double shift) {
      Station at = year.station();
      return SunPosition.atStandardTime(
          YearWeather.YEAR,
          day,
          hour - 0.5 + shift,
          at.timeZoneHours(),
          at.latitudeDeg(),
          at.longitudeDeg(),
          at.elevationM());
    }
  }

  private static int number(int day, int hour) {
    return 24 * (day - 1) + hour;
  }

  private static double median(List<Integer> days, ToDoubleFunction<Integer> figure) {
    double[] sorted = days.stream().mapToDouble(figure).sorted().toArray();
    return sorted[sorted.length / 2];
  }

  /** Middle of the recorded beam of a day, h. */
  private static double middleOfBeam(WeatherYear year, int day) {
    double sum = 0;
    double moment = 0;
    for (int hour = 1; hour <= 24; hour++) {
      double beam = year.directNormal(number(day, hour));
      sum += beam;
      moment += beam * (hour - 0.5);
    }
    return moment / sum;
  }

  /**
   * On clear days the recorded beam is as strong before the modelled solar noon as after it: its
   * middle lies within 2 minutes of it in the median (measured: 0.7 minutes at most).
   */
  @ParameterizedTest
  @ValueSource(strings = {"725090", "722190", "723630", "725650", "726810", "723860"})
  void beamIsSymmetricAboutNoon(String station) {
    Place place = Place.of(station);
    double minutes =
        median(
            place.clearDays(),
            day -> 60 * (middleOfBeam(place.year(), day) - place.times(day).transitHour()));
    assertThat(minutes).isCloseTo(0, within(2.0));
    assertThat(Math.abs(minutes - 60 * HALF_AN_HOUR)).isGreaterThan(25);
    assertThat(Math.abs(minutes + 60 * HALF_AN_HOUR)).isGreaterThan(25);
  }

  /**
   * No hour of the year is lit while the modelled sun is down all of it; with the sun half an hour
   * off some fifty to two hundred are. On clear days the first lit hour is that of the modelled
   * sunrise, or the next where a hill or an instrument holds back the lowest sun.
   */
  @ParameterizedTest
  @ValueSource(strings = {"725090", "722190", "723630", "725650", "726810", "723860"})
  void lightBeginsAndEndsWithTheSun(String station) {
    Place place = Place.of(station);
    assertThat(litInTheDark(place, 0)).isZero();
    assertThat(litInTheDark(place, HALF_AN_HOUR)).isGreaterThan(40);
    assertThat(litInTheDark(place, -HALF_AN_HOUR)).isGreaterThan(40);
    for (int day : place.clearDays()) {
      int first = 1;
      while (!place.isLit(day, first)) {
        first++;
      }
      double sunrise = place.times(day).sunriseHour();
      assertThat(first - sunrise).as("day %d", day).isBetween(0.0, 2.0);
    }
  }

  private static int litInTheDark(Place place, double shift) {
    int count = 0;
    for (int day = 1; day <= 365; day++) {
      SunTimes times = place.times(day);
      for (int hour = 1; hour <= 24; hour++) {
        boolean isDown =
            hour <= times.sunriseHour() + shift || hour - 1 >= times.sunsetHour() + shift;
        if (isDown && place.isLit(day, hour)) {
          count++;
        }
      }
    }
    return count;
  }

  /**
   * On clear days east and west walls get the same within 1 % in the median (measured: 0.6 % at
   * most); with the sun half an hour off, 16 % or more apart.
   */
  @ParameterizedTest
  @ValueSource(strings = {"725090", "722190", "723630", "725650", "726810", "723860"})
  void eastAndWestShareAClearDay(String station) {
    Place place = Place.of(station);
    List<Integer> clear = place.clearDays();
    assertThat(split(place, clear, 0)).isCloseTo(1, within(0.01));
    assertThat(split(place, clear, HALF_AN_HOUR)).isLessThan(0.84);
    assertThat(split(place, clear, -HALF_AN_HOUR)).isGreaterThan(1.16);
  }

  private static double split(Place place, List<Integer> days, double shift) {
    return median(days, day -> place.wall(day, 90, shift) / place.wall(day, 270, shift));
  }

  /**
   * Light of the year on level ground and walls against the same record laid on the faces by {@link
   * SpencerSun} in steps of five minutes: within 1 % with the same model of the sky (measured: 0.3
   * %), and on level ground within 0.5 % of the recorded whole (0.13 %). An evenly bright sky (Liu
   * and Jordan 1963), which knows no bright part around the sun, gives 0 to 10 % less on lit walls
   * and more on the north wall. With the sun half an hour off east and west walls stray by 9 %.
   */
  @ParameterizedTest
  @ValueSource(strings = {"725090", "722190", "723630", "725650", "726810", "723860"})
  void lightOfTheYear(String station) {
    Place place = Place.of(station);
    double level = YearSunSums.engine(place.weather(), 0, 180);
    double recorded = 0;
    for (int hour = 1; hour <= YearWeather.HOURS; hour++) {
      recorded += place.year().globalHorizontal(hour) / 1000;
    }
    assertThat(level).isCloseTo(recorded, within(0.005 * recorded));
    YearSunSums sums = new YearSunSums(place.year());
    assertThat(sums.withSameSky(0, 180, 0)).isCloseTo(level, within(0.01 * level));
    List<Double> evenSky = new ArrayList<>();
    for (double azimuth : new double[] {0, 90, 180, 270}) {
      double wall = YearSunSums.engine(place.weather(), 90, azimuth);
      assertThat(sums.withSameSky(90, azimuth, 0))
          .as("wall %s", azimuth)
          .isCloseTo(wall, within(0.01 * wall));
      evenSky.add(sums.withEvenSky(90, azimuth) / wall);
    }
    assertThat(evenSky.get(0)).isBetween(1.0, 1.2);
    assertThat(evenSky.subList(1, 4)).allSatisfy(share -> assertThat(share).isBetween(0.9, 1.0));
    double east = YearSunSums.engine(place.weather(), 90, 90);
    double west = YearSunSums.engine(place.weather(), 90, 270);
    assertThat(sums.withSameSky(90, 90, HALF_AN_HOUR) / east).isLessThan(0.93);
    assertThat(sums.withSameSky(90, 270, HALF_AN_HOUR) / west).isGreaterThan(1.07);
    assertThat(sums.withSameSky(90, 90, -HALF_AN_HOUR) / east).isGreaterThan(1.07);
    assertThat(sums.withSameSky(90, 270, -HALF_AN_HOUR) / west).isLessThan(0.93);
  }
}
