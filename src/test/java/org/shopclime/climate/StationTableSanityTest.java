package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.SoftAssertions.assertSoftly;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * Every row of the table that travels with the program. Bounds are common knowledge of US weather.
 */
class StationTableSanityTest {
  private static final Climates CLIMATES = Climates.load();

  private static List<StationClimate> stations() {
    return CLIMATES.all();
  }

  @Test
  void holdsEveryStationOnce() {
    List<String> ids = stations().stream().map(one -> one.station().id()).toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(ids).hasSize(1020);
  }

  @Test
  void holdsEveryState() {
    Set<String> states =
        stations().stream().map(one -> one.station().state()).collect(Collectors.toSet());
    // 50 states, Puerto Rico, the Virgin Islands and Guam; the station of the District of Columbia
    // stands in Virginia
    assertThat(states).hasSize(53).contains("AK", "HI", "PR", "VI", "GU").doesNotContain("DC");
  }

  @Test
  void isPlausible() {
    assertSoftly(softly -> stations().forEach(climate -> isPlausible(softly, climate)));
  }

  private static void isPlausible(SoftAssertions softly, StationClimate climate) {
    Station station = climate.station();
    String name = station.id() + " " + station.name();
    HotPoint before = climate.at(Level.HOTTEST);
    for (Level level : List.of(Level.P0_4, Level.P1, Level.P2)) {
      HotPoint point = climate.at(level);
      // Shemya in the Aleutians; Death Valley has no station
      softly.assertThat(point.dryBulb()).as(name).isBetween(8.0, Math.min(48.0, before.dryBulb()));
      softly.assertThat(point.wetBulb()).as(name).isBetween(6.0, 35.0);
      before = point;
    }
    softly.assertThat(climate.dailyRange()).as(name).isBetween(2.5, 29.0);
    softly.assertThat(climate.monthRange()).as(name).isBetween(2.5, 26.0);
    softly.assertThat(climate.shape().min()).isZero();
    softly.assertThat(climate.shape().max()).isEqualTo(1);
    int coldest = climate.shape().argMax();
    softly.assertThat(coldest % 24).as("%s, coldest hour", name).isBetween(0, 9);
    softly.assertThat(climate.shape().map(value -> -value).argMax()).as(name).isBetween(10, 22);
    softly.assertThat(climate.humid().dewPoint()).as(name).isBetween(7.0, 29.0);
    softly.assertThat(climate.humid().dayRange()).as(name).isBetween(2.0, 26.0);
    softly.assertThat(climate.winter().dryBulb99()).as(name).isBetween(-47.0, 25.0);
    softly.assertThat(climate.winter().dryBulb996()).as(name).isLessThanOrEqualTo(25.0);
    softly.assertThat(climate.winter().wind()).as(name).isBetween(0.0, 30.0);
    softly.assertThat(climate.hotHourWind()).as(name).isBetween(1.0, 10.0);
    softly.assertThat(climate.aerosol().depth().min()).as(name).isBetween(0.0, 0.2);
    softly.assertThat(climate.aerosol().depth().max()).as(name).isBetween(0.03, 0.4);
    softly.assertThat(climate.waterCm().max()).as(name).isBetween(0.9, 6.0);
    softly.assertThat(climate.ground().annualMean()).as(name).isBetween(-13.0, 29.0);
    softly.assertThat(climate.ground().dayOfMinimum()).as(name).isBetween(1.0, 60.0);
    // Barrow; Key West and the islands
    softly.assertThat(climate.degreeDays().heating()).as(name).isBetween(0.0, 12_000.0);
    softly.assertThat(climate.degreeDays().cooling()).as(name).isBetween(0.0, 4_000.0);
    double mean = climate.monthDryBulb().mean();
    softly
        .assertThat(climate.degreeDays().cooling() - climate.degreeDays().heating())
        .as("%s, degree-days against the mean", name)
        .isCloseTo(365 * (mean - DegreeDays.BASE), within(500.0));
    // Some files give an elevation that is not the station's: Rock Springs 1,000 m instead of
    // 2,060.
    softly
        .assertThat(climate.pressure())
        .as(name)
        .isBetween(0.88 * standard(climate), 1.03 * standard(climate));
  }

  /** Standard atmosphere (1976), Pa. */
  private static double standard(StationClimate climate) {
    return 101_325 * Math.pow(1 - 2.25577e-5 * climate.station().elevationM(), 5.2559);
  }

  @Test
  void makesDaysAtEveryLevel() {
    stations().forEach(StationTableSanityTest::makesDaysAtEveryLevel);
  }

  private static void makesDaysAtEveryLevel(StationClimate climate) {
    for (Level level : Level.values()) {
      HotDay day = DesignDays.hotDay(climate, level);
      HotPoint point = climate.at(level);
      assertThat(day.peak()).isEqualTo(point.dryBulb());
      assertThat(day.wetBulb().at(day.dryBulb().argMax())).isCloseTo(point.wetBulb(), within(0.01));
      for (int hour = 1; hour <= 24; hour++) {
        assertThat(day.wetBulb().at(hour)).isLessThanOrEqualTo(day.dryBulb().at(hour) + 1e-6);
      }
    }
    assertThat(DesignDays.humidDay(climate).peak()).isEqualTo(climate.humid().dayPeak());
  }
}
