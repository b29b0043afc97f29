package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StationStatisticsTest {
  private static final Aerosol CLEAN =
      new Aerosol(Months.from(month -> 0.1), new AerosolSource.Own());

  private static StationClimate of(MadeYear year) {
    return StationStatistics.of(year.year(), CLEAN);
  }

  /**
   * Every day alike but its mean: 0 °C on day 1, 0.1 K more each day; within a day 6 K up and down.
   */
  private static double dryBulb(int hour) {
    int day = WeatherYear.dayOf(hour);
    int ending = WeatherYear.hourEnding(hour);
    return 0.1 * (day - 1) + (ending <= 12 ? ending : 24 - ending) - 6;
  }

  @Test
  void countsTheHoursAboveALevel() {
    StationClimate climate = of(new MadeYear().with(WeatherColumn.DRY_BULB, hour -> hour / 200.0));
    assertThat(climate.at(Level.HOTTEST).dryBulb()).isEqualTo(43.8);
    // 35, 87 and 175 hours lie above, or below in winter
    assertThat(climate.at(Level.P0_4).dryBulb()).isEqualTo(8725 / 200.0);
    assertThat(climate.at(Level.P1).dryBulb()).isEqualTo(8673 / 200.0);
    assertThat(climate.at(Level.P2).dryBulb()).isEqualTo(8585 / 200.0);
    assertThat(climate.winter().dryBulb99()).isEqualTo(88 / 200.0);
    assertThat(climate.winter().dryBulb996()).isEqualTo(36 / 200.0);
    assertThat(climate.at(Level.P2).month()).isEqualTo(12);
  }

  @Test
  void takesRangeAndShapeFromHotDays() {
    StationClimate climate =
        of(new MadeYear().with(WeatherColumn.DRY_BULB, StationStatisticsTest::dryBulb));
    // highest 12 - 6 at hour 12; lowest -6 at hour 24
    assertThat(climate.dailyRange()).isCloseTo(12, within(1e-9));
    assertThat(climate.monthRange()).isCloseTo(12, within(1e-9));
    // means of hours: 11.5 at 12 and 13, lowest 0.45 at hour 1 (the night before lay 0.1 lower) and
    // 0.5 at 24
    assertThat(climate.shape().at(12)).isEqualTo(0);
    assertThat(climate.shape().at(13)).isCloseTo(0, within(1e-9));
    assertThat(climate.shape().at(1)).isEqualTo(1);
    assertThat(climate.shape().at(24)).isCloseTo(11 / 11.05, within(1e-9));
    assertThat(climate.shape().at(6)).isCloseTo(6 / 11.05, within(1e-9));
  }

  @Test
  void takesWindFromTheHoursItBelongsTo() {
    StationClimate climate =
        of(
            new MadeYear()
                .with(WeatherColumn.DRY_BULB, StationStatisticsTest::dryBulb)
                .with(
                    WeatherColumn.WIND_SPEED,
                    hour -> dryBulb(hour) > 30 ? WeatherYear.hourEnding(hour) : 2));
    assertThat(climate.winter().wind()).isEqualTo(2);
    assertThat(climate.hotHourWind()).isBetween(10.0, 14.0);
    assertThat(climate.hotDayWind().at(12)).isEqualTo(12);
    assertThat(climate.hotDayWind().at(1)).as("a night at 30.4 °C or less").isLessThan(2.01);
  }

  @Test
  void findsTheHumidDays() {
    // 40 hours of 24 °C dew point on eight afternoons of May, 10 °C else
    StationClimate climate =
        of(
            new MadeYear()
                .with(WeatherColumn.DRY_BULB, hour -> WeatherYear.hourEnding(hour) > 12 ? 28 : 20)
                .with(
                    WeatherColumn.DEW_POINT,
                    hour -> {
                      int day = WeatherYear.dayOf(hour);
                      int ending = WeatherYear.hourEnding(hour);
                      return day > 125 && day <= 133 && ending > 14 && ending < 20 ? 24 : 10;
                    }));
    assertThat(climate.humid()).isEqualTo(new HumidPoint(24, 28, 5, 28, 8));
  }

  /**
   * Pencil, at 20 °C and 100 kPa: 10 °C dew point is 1228 Pa or 0.007732 kg/kg; a wet bulb of 14.1
   * °C, 1609 Pa, gives ((2501 - 2.326 14.1) 0.010171 - 1.006 5.9) / (2501 + 1.86 20 - 4.186 14.1) =
   * 0.00773.
   */
  @Test
  void takesTheWetBulbFromTheDewPoint() {
    StationClimate climate =
        of(
            new MadeYear()
                .with(WeatherColumn.DRY_BULB, hour -> WeatherYear.hourEnding(hour) > 12 ? 20 : 19));
    assertThat(climate.at(Level.P1).wetBulb()).isCloseTo(14.1, within(0.02));
    assertThat(climate.pressure()).isEqualTo(100_000);
    assertThat(climate.waterCm()).isEqualTo(Months.from(month -> 2));
  }

  @Test
  void findsTheWaveOfTheYear() {
    StationClimate climate =
        of(
            new MadeYear()
                .with(
                    WeatherColumn.DRY_BULB,
                    // coldest at the end of day 31
                    hour -> 12 - 9 * Math.cos(2 * Math.PI * (hour - 31 * 24) / 8760.0)));
    assertThat(climate.ground().annualMean()).isCloseTo(12, within(1e-9));
    assertThat(climate.ground().amplitude()).isCloseTo(9, within(1e-9));
    assertThat(climate.ground().dayOfMinimum()).isCloseTo(32, within(1e-6));
    assertThat(climate.monthDryBulb().at(2)).isLessThan(climate.monthDryBulb().at(12));
    assertThat(climate.monthDryBulb().argMax()).isIn(7, 8);
  }
}
