package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Vents against the handbook's older pencil equation and figure. */
class VentStackPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/stack-flow.csv", useHeadersInDisplayName = true)
  void agreesWithThePencilEquation(
      String id,
      double area,
      double height,
      double inside,
      double outside,
      double litresPerSecond,
      double tolerance) {
    assertThat(new VentStack(area, area, height).stackFlow(inside, outside) * 1000)
        .as(id)
        .isCloseTo(litresPerSecond, withinPercentage(100 * tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/stack-unequal.csv", useHeadersInDisplayName = true)
  void agreesWithTheFigureOfUnequalOpenings(String id, double ratio, double percent) {
    double equal = new VentStack(0.2, 0.2, 3).stackFlow(35, 25);
    double larger = new VentStack(0.2, 0.2 * ratio, 3).stackFlow(35, 25);
    assertThat(100 * (larger / equal - 1)).as(id).isCloseTo(percent, within(1.0));
  }
}
