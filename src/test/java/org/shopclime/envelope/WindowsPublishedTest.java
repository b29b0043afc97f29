package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Windows against codes and handbook. */
class WindowsPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/window-u.csv", useHeadersInDisplayName = true)
  void uFactor(String id, String window, double low, double high, double tolerance) {
    double rounding = 1e-9;
    assertThat(GlassTable.find(window).orElseThrow().uFactor() * InchPound.R)
        .as("%s, %s, window-u.csv", id, window)
        .isBetween(low - tolerance - rounding, high + tolerance + rounding);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/window-shgc.csv", useHeadersInDisplayName = true)
  void solarHeatGain(String id, String window, double shgc, double tolerance) {
    assertThat(GlassTable.find(window).orElseThrow().shgc())
        .as("%s, %s, window-shgc.csv", id, window)
        .isCloseTo(shgc, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/envelope/shading-coefficient.csv",
      useHeadersInDisplayName = true)
  void shading(String id, double shgc, double shadingCoefficient, double tolerance) {
    assertThat(GlassTable.shadingCoefficient(shgc))
        .as("%s, shading-coefficient.csv", id)
        .isCloseTo(shadingCoefficient, within(tolerance));
  }
}
