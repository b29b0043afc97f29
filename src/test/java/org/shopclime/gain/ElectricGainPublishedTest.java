package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Electric tools: what goes in comes out. */
class ElectricGainPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/electric.csv", useHeadersInDisplayName = true)
  void allInputBecomesHeat(String id, double watts, double btuPerHour, double tolerance) {
    HeatGain gain = ElectricGain.toolInRoom(watts);
    assertThat(gain.total() / 0.29307107)
        .as(id)
        .isCloseTo(btuPerHour, withinPercentage(100 * tolerance));
    assertThat(gain.radiant()).as(id).isCloseTo(0.3 * watts, within(1e-9));
  }
}
