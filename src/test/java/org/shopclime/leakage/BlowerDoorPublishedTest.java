package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.leakage.BlowerDoor.Shielding;

/** Fan test figures against the definition of leakage area and the rule of thumb. */
class BlowerDoorPublishedTest {

  private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/blower-door.csv", useHeadersInDisplayName = true)
  void agreesWithTheDefinition(
      String id, double cfm50, double cfm4, double areaIn2, double tolerance) {
    double volume = 250;
    double airChanges50 = cfm50 * CFM * 3600 / volume;
    assertThat(BlowerDoor.flowAtReference(airChanges50, volume) / CFM)
        .as(id)
        .isCloseTo(cfm4, withinPercentage(100 * tolerance));
    assertThat(BlowerDoor.leakageArea(airChanges50, volume) / (0.0254 * 0.0254))
        .as(id)
        .isCloseTo(areaIn2, withinPercentage(100 * tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/rule-of-thumb.csv", useHeadersInDisplayName = true)
  void agreesWithTheRuleOfThumb(
      String id,
      double airChanges50,
      double base,
      int storeys,
      Shielding shielding,
      double airChanges,
      double tolerance) {
    assertThat(BlowerDoor.seasonalAirChanges(airChanges50, base, storeys, shielding))
        .as(id)
        .isCloseTo(airChanges, withinPercentage(100 * tolerance));
  }
}
