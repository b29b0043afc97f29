package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A year laid out from day types holds what the types tell. */
class LaidOutYearTest {

  private static final StationClimate MOBILE = Climates.load().find("722230").orElseThrow();
  private static final TypicalYear TYPES =
      Climates.load().typicalYear(MOBILE.station()).orElseThrow();
  private static final WeatherYear YEAR = LaidOutYear.of(TYPES, MOBILE);

  private static double mean(int day, IntToDoubleFunction value) {
    return IntStream.rangeClosed(1, 24)
        .mapToDouble(of -> value.applyAsDouble(day * 24 + of))
        .average()
        .orElseThrow();
  }

  private static List<Integer> days(DayType type) {
    return IntStream.range(0, 365)
        .filter(day -> WeatherYear.dateOf(day + 1).getMonthValue() == type.month())
        .filter(
            day ->
                DaySequence.fifth(
                        WeatherYear.dateOf(day + 1).lengthOfMonth(), TYPES.sequence().warmth(day))
                    == type.fifth())
        .boxed()
        .toList();
  }

  @Test
  void eachTypeKeepsItsMeans() {
    for (DayType type : TYPES.types()) {
      List<Integer> days = days(type);
      assertThat(days).hasSize(type.days());
      double dryBulb = 0;
      double global = 0;
      double direct = 0;
      double wind = 0;
      for (int day : days) {
        dryBulb += mean(day, YEAR::dryBulb) / days.size();
        global += mean(day, YEAR::globalHorizontal) / days.size();
        direct += mean(day, YEAR::directNormal) / days.size();
        wind += mean(day, YEAR::windSpeed) / days.size();
      }
      String name = "month " + type.month() + ", fifth " + type.fifth();
      // The ends of hours lie half an hour late on the line from day to day.
      assertThat(dryBulb).as(name).isCloseTo(type.mean(), within(0.1));
      assertThat(global).as(name).isCloseTo(type.global(), within(1e-6));
      // Where dull and bright days mix, scores make the brightest brighter than the sun outside the
      // air; its beam is cut to that.
      assertThat(direct).as(name).isCloseTo(type.direct(), within(1.0));
      assertThat(wind).as(name).isCloseTo(type.wind(), within(0.01 * type.wind()));
    }
  }

  /** Types overlap a little at their ends; days of types two apart do not. */
  @Test
  void daysFollowEachOtherAsTheyDid() {
    int told = 0;
    for (int day = 1; day < 31; day++) {
      int before = DaySequence.fifth(31, TYPES.sequence().warmth(day - 1));
      int fifth = DaySequence.fifth(31, TYPES.sequence().warmth(day));
      if (Math.abs(fifth - before) >= 2) {
        assertThat(mean(day, YEAR::dryBulb) > mean(day - 1, YEAR::dryBulb))
            .isEqualTo(fifth > before);
        told++;
      }
    }
    assertThat(told).isGreaterThan(3);
  }

  @Test
  void waterNeverFallsOutAndTheSunKeepsToTheDay() {
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      assertThat(YEAR.dewPoint(hour)).isLessThanOrEqualTo(YEAR.dryBulb(hour));
      assertThat(YEAR.diffuseHorizontal(hour)).isBetween(0.0, YEAR.globalHorizontal(hour) + 1e-9);
      assertThat(YEAR.opaqueCloud(hour)).isBetween(0.0, 1.0);
      if (WeatherYear.hourEnding(hour) <= 4 || WeatherYear.hourEnding(hour) >= 22) {
        assertThat(YEAR.globalHorizontal(hour)).isZero();
      }
    }
  }

  /** A year made of one course and steady means comes out as it went in. */
  @Test
  void aPlainYearIsFoundAgain() {
    WeatherYear plain =
        new MadeYear()
            .with(
                WeatherColumn.DRY_BULB,
                hour -> 15 - 6 * Math.cos(2 * Math.PI * (WeatherYear.hourEnding(hour) - 4) / 24.0))
            .year();
    WeatherYear again = LaidOutYear.of(DayTypes.of(plain), MadeClimate.at(plain.station()));
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      assertThat(again.dryBulb(hour)).isCloseTo(plain.dryBulb(hour), within(1e-9));
    }
  }
}
