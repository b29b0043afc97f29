package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;

/** Gaps of a year in which each figure tells its hour. */
class WeatherGapsTest {
  private final Map<WeatherColumn, double[]> values = new EnumMap<>(WeatherColumn.class);

  WeatherGapsTest() {
    for (WeatherColumn column : WeatherColumn.values()) {
      double[] hours = new double[WeatherYear.COUNT];
      Arrays.setAll(hours, WeatherGapsTest::figure);
      values.put(column, hours);
    }
  }

  /** Rises through the day and from day to day. */
  private static double figure(int at) {
    int day = at / 24;
    return 10 + 0.1 * (at % 24) + 0.01 * day;
  }

  private double[] of(WeatherColumn column) {
    return values.get(column);
  }

  private void drop(WeatherColumn column, int from, int count) {
    for (int i = 0; i < count; i++) {
      of(column)[(from + i) % WeatherYear.COUNT] = Double.NaN;
    }
  }

  @Test
  void leavesAWholeYearAlone() {
    double[] before = of(WeatherColumn.DRY_BULB).clone();
    WeatherGaps gaps = new WeatherGaps(values);
    assertThat(gaps.notes()).isEmpty();
    assertThat(gaps.tooMany()).isEmpty();
    assertThat(of(WeatherColumn.DRY_BULB)).isEqualTo(before);
  }

  @Test
  void goesStraightOverAShortGapAndSaysSo() {
    double[] wind = of(WeatherColumn.WIND_SPEED);
    wind[99] = 2;
    wind[103] = 6;
    drop(WeatherColumn.WIND_SPEED, 100, 3);
    drop(WeatherColumn.WIND_SPEED, 500, 1);
    assertThat(new WeatherGaps(values).notes())
        .containsExactly(
            "Wspd (m/s): 4 hours missing or impossible, the longest gap 3 hours; filled from the"
                + " hours and days around");
    assertThat(Arrays.copyOfRange(wind, 99, 104)).containsExactly(2, 3, 4, 5, 6);
  }

  @Test
  void theYearIsACircle() {
    double[] water = of(WeatherColumn.WATER);
    water[8758] = 1;
    water[1] = 4;
    drop(WeatherColumn.WATER, 8759, 2);
    assertThat(new WeatherGaps(values).notes()).singleElement().asString().contains("gap 2 hours");
    assertThat(water[8759]).isCloseTo(2, within(1e-12));
    assertThat(water[0]).isCloseTo(3, within(1e-12));
    drop(WeatherColumn.WATER, 8750, 73);
    assertThat(new WeatherGaps(values).tooMany())
        .containsExactly("Pwat (cm): 73 hours missing or impossible, the longest gap 73 hours");
  }

  /** Noon of day 6 is the mean of noon of days 5 and 7, whatever the hours beside. */
  @Test
  void takesTheSunFromTheDaysBeside() {
    double[] sun = of(WeatherColumn.GLOBAL);
    double noon = (sun[4 * 24 + 12] + sun[6 * 24 + 12]) / 2;
    drop(WeatherColumn.GLOBAL, 5 * 24 + 12, 1);
    new WeatherGaps(values);
    assertThat(sun[5 * 24 + 12]).isCloseTo(noon, within(1e-12));
  }

  @Test
  void takesALongGapFromTheDaysBeside() {
    double[] dewPoint = of(WeatherColumn.DEW_POINT);
    double[] before = dewPoint.clone();
    drop(WeatherColumn.DEW_POINT, 20 * 24, 24);
    new WeatherGaps(values);
    assertThat(dewPoint).containsExactly(before, within(1e-9));
  }

  @Test
  void refusesMoreThanAFewInAHundred() {
    for (int i = 0; i < 439; i++) {
      drop(WeatherColumn.PRESSURE, 19 * i, 1);
    }
    WeatherGaps gaps = new WeatherGaps(values);
    assertThat(gaps.tooMany()).hasSize(1);
    assertThat(gaps.notes()).isEmpty();
    assertThat(WeatherGaps.takes()).isEqualTo("at most 438 such hours (5 %) and 72 in a row");
  }

  @Test
  void takesAColumnOfAerosolAsMissingRatherThanRefuse() {
    drop(WeatherColumn.AEROSOL, 0, WeatherYear.COUNT);
    drop(WeatherColumn.ALBEDO, 0, 80);
    WeatherGaps gaps = new WeatherGaps(values);
    assertThat(gaps.tooMany()).isEmpty();
    assertThat(gaps.notes())
        .hasSize(2)
        .first()
        .asString()
        .endsWith("gap 8760 hours; the column is taken as missing");
    assertThat(of(WeatherColumn.AEROSOL)).containsOnly(0);
    assertThat(of(WeatherColumn.ALBEDO)).containsOnly(0);
  }

  @Test
  void fillsALoneHourThatCannotBe() {
    double[] dryBulb = of(WeatherColumn.DRY_BULB);
    double before = dryBulb[1000];
    dryBulb[1000] = -20;
    assertThat(new WeatherGaps(values).notes())
        .containsExactly(
            "Dry-bulb (C): 1 hour far from both hours beside, the longest gap 1 hour; filled from"
                + " the hours and days around");
    assertThat(dryBulb[1000]).isCloseTo(before, within(1e-9));
    dryBulb[1000] += 14.5;
    assertThat(new WeatherGaps(values).notes()).as("a storm").isEmpty();
  }

  @Test
  void fillsADayThatCannotBe() {
    double[] dryBulb = of(WeatherColumn.DRY_BULB);
    double[] before = dryBulb.clone();
    for (int at = 3000; at < 3009; at++) {
      dryBulb[at] -= 5 * Math.min(at - 2998, 3010 - at);
    }
    List<String> notes = new WeatherGaps(values).notes();
    assertThat(notes)
        .extracting(note -> note.substring(0, note.indexOf(':')))
        .containsExactly("Dry-bulb (C)", "Dew-point (C)", "RHum (%)");
    assertThat(notes.get(0)).contains("24 hours on days far hotter or colder than both beside");
    assertThat(dryBulb).containsExactly(before, within(1e-9));
  }

  /** Air of 12 °C written as 53.6 is 12 °C again; at 45 it fits neither way and is filled. */
  @Test
  void putsRightWhatWasWrittenInFahrenheit() {
    double[] dryBulb = of(WeatherColumn.DRY_BULB);
    double[] before = dryBulb.clone();
    double[] dewPoint = of(WeatherColumn.DEW_POINT);
    Arrays.fill(dewPoint, 5);
    for (int at = 1000; at < 1480; at++) {
      dryBulb[at] = 32 + 1.8 * before[at];
    }
    dryBulb[4000] = 75;
    WeatherGaps gaps = new WeatherGaps(values);
    assertThat(gaps.notes()).first().asString().contains("480 hours far too hot", "taken so");
    assertThat(Arrays.copyOfRange(dryBulb, 1000, 1480))
        .containsExactly(Arrays.copyOfRange(before, 1000, 1480), within(1e-9));
    assertThat(dryBulb[4000]).isCloseTo(before[4000], within(0.2));
    assertThat(of(WeatherColumn.RELATIVE_HUMIDITY)[1001])
        .isCloseTo(
            MoistAir.relativeHumidity(
                before[1001], MoistAir.humidityRatioFromDewPoint(5, 101325), 101325),
            within(1e-6));
  }

  /** Where the hot days are as many as the others nobody can tell which are false. */
  @Test
  void leavesAMonthInFahrenheitToTheOtherChecks() {
    double[] dryBulb = of(WeatherColumn.DRY_BULB);
    for (int at = 1000; at < 1744; at++) {
      dryBulb[at] = 32 + 1.8 * dryBulb[at];
    }
    assertThat(new WeatherGaps(values).notes()).noneMatch(note -> note.contains("°F"));
  }
}
