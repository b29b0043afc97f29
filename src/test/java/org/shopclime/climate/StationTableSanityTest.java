package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every row of the table that travels with the program. Bounds are common knowledge of US weather.
 */
class StationTableSanityTest {
  static List<StationClimate> stations() {
    return Climates.load().all();
  }

  @Test
  void holdsTheChosenStationsOnce() {
    List<String> ids = stations().stream().map(one -> one.station().id()).toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(Set.copyOf(ids)).isEqualTo(ChosenStations.load().ids());
  }

  @Test
  void holdsEveryState() {
    Set<String> states =
        stations().stream().map(one -> one.station().state()).collect(Collectors.toSet());
    // 50 states and Puerto Rico; the station of the District of Columbia stands in Virginia
    assertThat(states).hasSize(51).contains("AK", "HI", "PR", "WY").doesNotContain("DC");
  }

  @ParameterizedTest
  @MethodSource("stations")
  void isPlausible(StationClimate climate) {
    String name = climate.station().name();
    HotPoint before = climate.at(Level.HOTTEST);
    for (Level level : List.of(Level.P0_4, Level.P1, Level.P2)) {
      HotPoint point = climate.at(level);
      assertThat(point.dryBulb()).as(name).isBetween(17.0, before.dryBulb());
      assertThat(point.wetBulb()).as(name).isBetween(8.0, 28.5);
      before = point;
    }
    assertThat(climate.dailyRange()).as(name).isBetween(5.0, 22.0);
    assertThat(climate.monthRange()).as(name).isBetween(4.5, 21.0);
    assertThat(climate.shape().min()).isZero();
    assertThat(climate.shape().max()).isEqualTo(1);
    int coldest = climate.shape().argMax();
    assertThat(coldest).as("%s, coldest hour", name).isBetween(3, 8);
    assertThat(climate.shape().map(value -> -value).argMax()).as(name).isBetween(12, 18);
    assertThat(climate.humid().dewPoint()).as(name).isBetween(11.0, 27.0);
    assertThat(climate.humid().dayRange()).as(name).isBetween(4.0, 22.0);
    assertThat(climate.winter().dryBulb99()).as(name).isBetween(-30.0, 23.0);
    assertThat(climate.winter().wind()).as(name).isBetween(0.5, 9.0);
    assertThat(climate.hotHourWind()).as(name).isBetween(1.0, 9.0);
    assertThat(climate.aerosol().depth().min()).as(name).isBetween(0.02, 0.2);
    assertThat(climate.aerosol().depth().max()).as(name).isBetween(0.05, 0.35);
    assertThat(climate.waterCm().max()).as(name).isBetween(1.2, 5.6);
    assertThat(climate.ground().annualMean()).as(name).isBetween(2.0, 28.0);
    assertThat(climate.ground().dayOfMinimum()).as(name).isBetween(8.0, 45.0);
    // The file of Boise gives 701 m for an airport at 875 m; its pressure is right.
    if (!climate.station().id().equals("726810")) {
      assertThat(climate.pressure())
          .as(name)
          .isBetween(0.985 * standard(climate), 1.012 * standard(climate));
    }
  }

  /** Standard atmosphere (1976), Pa. */
  private static double standard(StationClimate climate) {
    return 101_325 * Math.pow(1 - 2.25577e-5 * climate.station().elevationM(), 5.2559);
  }

  @ParameterizedTest
  @MethodSource("stations")
  void makesDaysAtEveryLevel(StationClimate climate) {
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
