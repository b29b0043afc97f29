package org.shopclime.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.air.MoistAir.saturationPressure;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Saturation pressure against the steam and ice tables. */
class SaturatedVapourPublishedTest {

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/air/saturation-pressure.csv",
      useHeadersInDisplayName = true)
  void agreesWithSteamAndIceTables(String id, double celsius, double pascals, double tolerance) {
    assertThat(saturationPressure(celsius))
        .as("%s, saturation-pressure.csv", id)
        .isCloseTo(pascals, withinPercentage(100 * tolerance));
  }

  /** The error told in the Javadoc, narrower than the tolerance of the collection. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/air/saturation-pressure.csv",
      useHeadersInDisplayName = true)
  void isAsNearAsTheJavadocSays(String id, double celsius, double pascals) {
    assertThat(saturationPressure(celsius)).as(id).isCloseTo(pascals, withinPercentage(0.05));
  }
}
