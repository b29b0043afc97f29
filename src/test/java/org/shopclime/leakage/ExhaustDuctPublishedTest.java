package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Collector ducts against area times velocity. */
class ExhaustDuctPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/duct.csv", useHeadersInDisplayName = true)
  void areaTimesVelocity(
      String id, double inches, double feetPerMinute, double cfm, double tolerance) {
    double velocity = feetPerMinute * 0.3048 / 60;
    assertThat(ExhaustDuct.WOOD_DUST_VELOCITY).as(id).isCloseTo(velocity, within(1e-9));
    assertThat(ExhaustDuct.flow(inches * 0.0254, velocity) / (0.3048 * 0.3048 * 0.3048 / 60))
        .as(id)
        .isCloseTo(cfm, withinPercentage(100 * tolerance));
  }
}
