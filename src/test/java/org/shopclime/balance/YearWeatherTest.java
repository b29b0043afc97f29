package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.climate.GroundTemperature;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.MadeYear;
import org.shopclime.climate.Station;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Part;
import org.shopclime.shop.RoomUse;
import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.ClearSky;
import org.shopclime.sun.SkyTemperature;
import org.shopclime.sun.SunAngles;
import org.shopclime.sun.SunPosition;
import org.shopclime.sun.SunTimes;

/** A year made ready: means of hours, and the sun in its hour. */
class YearWeatherTest {

  private static YearWeather lit(Station place, double direct, double diffuse) {
    return YearWeather.of(new MadeYear().at(place).sun(hour -> direct, hour -> diffuse).year());
  }

  private static Skeleton skeleton() {
    return SkeletonMaker.of(
        TestShops.shop(
            TestShops.room(
                "Shop",
                RoomUse.COOLED,
                20,
                2.5,
                TestShops.WISHED,
                TestShops.wall("East", 90, 4, 2.5, TestShops.insulation(5)),
                TestShops.wall("West", 270, 4, 2.5, TestShops.insulation(5))
                    .withWindows(List.of(TestShops.window("Window", 1, 1, 2.8, 0.6))),
                TestShops.face(
                    "Roof", Part.ROOF, "outdoors", 0, 0, 4, 4, TestShops.insulation(5)))),
        Season.COOLING);
  }

  @Test
  void meansOfHoursWrapAroundTheYear() {
    YearWeather weather =
        YearWeather.of(
            new MadeYear()
                .dryBulb(hour -> hour == 8760 ? 0 : hour == 1 ? 10 : 20)
                .dewPoint(hour -> hour == 8760 ? -10 : 0)
                .wind(hour -> hour % 7)
                .cloud(hour -> hour % 2)
                .year());
    assertThat(weather.dryBulb(0)).isEqualTo(5);
    assertThat(weather.dryBulb(1)).isEqualTo(15);
    assertThat(weather.dryBulb(8759)).isEqualTo(10);
    assertThat(weather.air(0).humidityRatio())
        .isCloseTo(MoistAir.humidityRatioFromDewPoint(-5, 100_000), within(1e-12));
    assertThat(weather.air(9).wind()).as("the hour ending 10").isEqualTo(3);
    assertThat(weather.sky(8)).isCloseTo(SkyTemperature.clarkAllen(20, 0, 10), within(1e-9));
    assertThat(weather.sky(9)).isCloseTo(SkyTemperature.clarkAllen(20, 0, 0), within(1e-9));
    assertThat(weather.pressure()).isCloseTo(100_000, within(1e-6));
    assertThat(weather.station()).isEqualTo(MadeYear.PLACE);
    assertThat(YearWeather.monthOf(0)).isEqualTo(1);
    assertThat(YearWeather.monthOf(31 * 24 - 1)).isEqualTo(1);
    assertThat(YearWeather.monthOf(31 * 24)).isEqualTo(2);
    assertThat(YearWeather.monthOf(8759)).isEqualTo(12);
  }

  /** A made cosine comes back: coldest on the 20th day, at noon. */
  @Test
  void theGroundSwingsAsTheAir() {
    GroundTemperature wave =
        YearWeather.of(
                new MadeYear()
                    .dryBulb(hour -> 12 - 9 * Math.cos(2 * Math.PI * (hour - 19.5 * 24) / 8760.0))
                    .dewPoint(hour -> -10)
                    .year())
            .ground();
    assertThat(wave.annualMean()).isCloseTo(12, within(1e-9));
    assertThat(wave.amplitude()).isCloseTo(9, within(1e-9));
    assertThat(wave.dayOfMinimum()).isCloseTo(20.5, within(1e-6));
  }

  /** The sun stands in the middle of its hour, or of the part of it after sunrise. */
  @Test
  void theSunStandsInTheLitPart() {
    YearWeather weather = lit(MadeYear.PLACE, 500, 50);
    for (int day = 0; day < YearWeather.DAYS; day += 13) {
      SunTimes times = SunPosition.times(2025, day + 1, -6, 35, -90);
      for (int of = 0; of < 24; of++) {
        SunAngles sun = weather.sun(day * 24 + of);
        double from = Math.max(of, times.sunriseHour());
        double to = Math.min(of + 1.0, times.sunsetHour());
        if (to <= from) {
          assertThat(sun.isUp()).as("day %s hour %s", day, of).isFalse();
        } else {
          SunAngles expected =
              SunPosition.atStandardTime(2025, day + 1, (from + to) / 2, -6, 35, -90, 100);
          assertThat(sun.altitudeDeg()).isCloseTo(expected.altitudeDeg(), within(1e-9));
          assertThat(sun.azimuthDeg()).isCloseTo(expected.azimuthDeg(), within(1e-9));
          assertThat(sun.altitudeDeg()).isGreaterThan(-0.9);
        }
      }
    }
    YearWeather dark = lit(MadeYear.PLACE, 0, 0);
    assertThat(dark.sun(12).isUp()).isFalse();
  }

  /** On its zone's meridian mornings are as evenings, if the year's clouds are. */
  @Test
  void eastIsAsWest() {
    double[] lit = new double[8760];
    for (int hour = 0; hour < 8760; hour++) {
      SunTimes times = SunPosition.times(2025, hour / 24 + 1, -6, 35, -90);
      double from = Math.max(hour % 24, times.sunriseHour());
      double to = Math.min(hour % 24 + 1.0, times.sunsetHour());
      lit[hour] = Math.max(0, to - from);
    }
    YearWeather weather =
        YearWeather.of(new MadeYear().sun(h -> 700 * lit[h - 1], h -> 80 * lit[h - 1]).year());
    Skeleton skeleton = skeleton();
    YearSun sun = new YearSun(skeleton.pieces(), weather, 0.2);
    double east = sun.incident((Piece.Outdoors) skeleton.pieces().get(0).outside());
    double west = sun.incident((Piece.Outdoors) skeleton.pieces().get(1).outside());
    assertThat(east).isCloseTo(west, withinPercentage(0.5));
    assertThat(east).isBetween(600.0, 1500.0);
    double through = 0;
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      through = Math.max(through, sun.transmitted(chain));
    }
    assertThat(through).isBetween(0.3 * west, 0.6 * west);
  }

  /** Barrow, Alaska, 71.3° north: no sun at Christmas, no night at midsummer. */
  @Test
  void polarDayAndNight() {
    Station barrow = new Station("700260", "Far north", "AK", -9, 71.32, -156.62, 10);
    YearWeather weather = lit(barrow, 100, 20);
    for (int of = 0; of < 24; of++) {
      assertThat(weather.sun(171 * 24 + of).isUp()).as("midsummer %s", of).isTrue();
      assertThat(weather.sun(358 * 24 + of).isUp()).as("Christmas %s", of).isFalse();
    }
    YearSun sun = new YearSun(skeleton().pieces(), weather, 0.2);
    assertThat(sun.incident((Piece.Outdoors) skeleton().pieces().get(0).outside()))
        .isPositive()
        .isFinite();
  }

  /** A year that repeats the sky of a clear day puts the same sun on a shop that day. */
  @Test
  void aDayOfTheYearIsTheClearDay() {
    HotDay day = TestShops.on(TestShops.swinging(), LocalDate.of(2025, 7, 21));
    ClearSky[] sky = new ClearSky[24];
    for (int of = 0; of < 24; of++) {
      SunAngles sun = SunPosition.atStandardTime(2025, 202, of + 0.5, -6, 31, -90, 0);
      sky[of] =
          sun.isUp()
              ? BirdClearSky.at(sun.altitudeDeg(), 202, TestShops.PRESSURE, 0.3, 4, 0.1, 0.2)
              : null;
    }
    YearWeather weather =
        YearWeather.of(
            new MadeYear()
                .at(TestShops.PLACE)
                .sun(
                    hour -> sky[(hour - 1) % 24] == null ? 0 : sky[(hour - 1) % 24].directNormal(),
                    hour ->
                        sky[(hour - 1) % 24] == null ? 0 : sky[(hour - 1) % 24].diffuseHorizontal())
                .year());
    List<Piece> pieces = skeleton().pieces();
    SunOnShop clear = SunOnShop.clear(pieces, day, 0.2);
    SunOnShop year = new YearSun(pieces, weather, 0.2).onShop();
    // The year looks at the sun four times an hour, the day once: hours differ, sums hardly.
    for (int chain = 0; chain < pieces.size(); chain++) {
      double[] sums = new double[6];
      for (int of = 6; of < 18; of++) {
        int hour = 201 * 24 + of;
        sums[0] += year.absorbed(chain, hour);
        sums[1] += clear.absorbed(chain, of);
        sums[2] += year.beam(chain, hour);
        sums[3] += clear.beam(chain, of);
        sums[4] += year.diffuse(chain, hour);
        sums[5] += clear.diffuse(chain, of);
      }
      for (int i = 0; i < sums.length; i += 2) {
        assertThat(sums[i]).as("chain %s", chain).isCloseTo(sums[i + 1], withinPercentage(2));
      }
    }
  }

  @Test
  void seasonsGoByTheMonthsMean() {
    YearWeather weather =
        YearWeather.of(
            new MadeYear()
                .dryBulb(hour -> hour > 181 * 24 ? 15.001 : hour > 59 * 24 ? 14.999 : 30)
                .dewPoint(hour -> 0)
                .year());
    Season[] seasons = SeasonOfMonth.of(weather);
    assertThat(seasons).hasSize(12);
    assertThat(seasons[0]).isEqualTo(Season.COOLING);
    assertThat(seasons[3]).isEqualTo(Season.HEATING);
    assertThat(seasons[5]).isEqualTo(Season.HEATING);
    assertThat(seasons[7]).isEqualTo(Season.COOLING);
  }
}
