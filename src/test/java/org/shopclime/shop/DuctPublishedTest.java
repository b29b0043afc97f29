package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Collector ducts against area times velocity. */
class DuctPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/duct.csv", useHeadersInDisplayName = true)
  void areaTimesVelocity(
      String id, double inches, double feetPerMinute, double cfm, double tolerance) {
    double velocity = feetPerMinute * 0.3048 / 60;
    assertThat(Duct.WITH_DUST).as(id).isCloseTo(velocity, within(1e-9));
    Duct duct = new Duct(inches * 0.0254, Optional.empty());
    double flow = duct.flow(FanUse.DUST_COLLECTOR);
    assertThat(flow / (0.3048 * 0.3048 * 0.3048 / 60))
        .as(id)
        .isCloseTo(cfm, withinPercentage(100 * tolerance));
  }
}
