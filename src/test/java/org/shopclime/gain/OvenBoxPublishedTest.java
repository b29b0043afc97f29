package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The oven against the handbook, a standard and arithmetic. */
class OvenBoxPublishedTest {

  private static final double FOOT = 0.3048;
  private static final double R_VALUE = 0.17611018; // m²·K/W in h·ft²·°F/BTU, NIST SP 811
  private static final double POUND = 0.45359237;
  private static final double ROOM = (80 - 32) / 1.8;

  private static OvenBox box(double rValue, double poundsAnHour) {
    return new OvenBox(
        4 * FOOT,
        4 * FOOT,
        6 * FOOT,
        rValue * R_VALUE,
        (400 - 32) / 1.8,
        20_000,
        poundsAnHour * POUND);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/oven.csv", useHeadersInDisplayName = true)
  void fullHoodLeavesTheRadiation(String id, double usage, double share, double tolerance) {
    OvenBox oven = box(8, 50);
    double averageInput = oven.input(ROOM);
    double ratedInput = averageInput / usage;
    assertThat(oven.inRoom(ROOM, 1).total() / ratedInput)
        .as(id)
        .isCloseTo(share, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/oven-box.csv", useHeadersInDisplayName = true)
  void agreesWithArithmetic(
      String id, String what, double rValue, double expected, double low, double high) {
    double watts;
    if (what.equals("shell")) {
      watts = box(rValue, 0).shellLoss(ROOM);
    } else {
      assertThat(what).isEqualTo("steel");
      watts = box(rValue, 100).partsHeat(ROOM) / 0.29307107;
    }
    assertThat(watts).as(id).isBetween(expected * low, expected * high);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/steel.csv", useHeadersInDisplayName = true)
  void steelIsTheMeanOfTheStandard(String id, double from, double to, double tolerance) {
    double mean = (integral(to) - integral(from)) / (to - from);
    assertThat(OvenBox.STEEL_SPECIFIC_HEAT)
        .as(id)
        .isCloseTo(mean, withinPercentage(100 * tolerance));
  }

  private static double integral(double t) {
    return 425 * t + 0.773 / 2 * t * t - 1.69e-3 / 3 * t * t * t + 2.22e-6 / 4 * t * t * t * t;
  }
}
