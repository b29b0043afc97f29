package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class RatingPublishedTest {

  /** W in a BTU/h, NIST SP 811. */
  private static final double BTUH = 0.29307107;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/rating-point.csv", useHeadersInDisplayName = true)
  void ratesInThePublishedState(String id, String what, double fahrenheit) {
    double celsius =
        switch (what) {
          case "indoor dry bulb" -> RatingPoint.INDOOR_DRY_BULB;
          case "indoor wet bulb" -> RatingPoint.INDOOR_WET_BULB;
          case "outdoor dry bulb" -> RatingPoint.OUTDOOR_DRY_BULB;
          case "outdoor wet bulb" -> RatingPoint.OUTDOOR_WET_BULB;
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(celsius * 1.8 + 32)
        .as("%s, rating-point.csv", id)
        .isCloseTo(fahrenheit, within(1e-12));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/label-efficiency.csv", useHeadersInDisplayName = true)
  void labelsAgree(String id, String what, Double btuh, double expected, double tolerance) {
    double actual =
        switch (what) {
          case "running hours" -> Ceer.RUNNING_HOURS;
          case "standby hours" -> Ceer.STANDBY_HOURS;
          case "ceer of 1100 W with 1 W standby" -> Ceer.of(btuh * BTUH, 1100, 1) / BTUH;
          case "ceer of 1100 W without standby" -> Ceer.of(btuh * BTUH, 1100, 0) / BTUH;
          case "least ceer" -> Ceer.leastFrom2014(btuh * BTUH) / BTUH;
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(actual).as("%s, label-efficiency.csv", id).isCloseTo(expected, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/room-size.csv", useHeadersInDisplayName = true)
  void sizesByArea(String id, double lowFt2, double highFt2, double btuh) {
    double footSquared = 0.09290304;
    for (double ft2 : new double[] {lowFt2, (lowFt2 + highFt2) / 2, highFt2 - 0.1}) {
      assertThat(RoomSizeGuide.btuhForArea(ft2 * footSquared))
          .as("%s, room-size.csv", id)
          .isEqualTo(btuh);
    }
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/unit/room-size-corrections.csv",
      useHeadersInDisplayName = true)
  void correctsSizes(String id, RoomSizeGuide.Sun sun, int people, String kitchen, double btuh) {
    double extra = kitchen.equals("yes") ? RoomSizeGuide.BTUH_KITCHEN : 0;
    assertThat(RoomSizeGuide.corrected(10000, sun, people) + extra)
        .as("%s, room-size-corrections.csv", id)
        .isCloseTo(btuh, within(1e-9));
  }
}
