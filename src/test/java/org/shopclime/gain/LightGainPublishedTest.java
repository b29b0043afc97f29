package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.gain.LightGain.Lamp;

/** Lights against the handbook's equation. */
class LightGainPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/lights.csv", useHeadersInDisplayName = true)
  void agreesWithTheHandbook(String id, Lamp lamp, double count, double watts, double btuPerHour) {
    HeatGain gain = LightGain.of(lamp, count, watts);
    assertThat(gain.total() / 0.29307107).as(id).isCloseTo(btuPerHour, withinPercentage(1));
    assertThat(gain.latent()).as(id).isZero();
    assertThat(gain.radiant() / gain.total()).as(id).isCloseTo(lamp.radiantShare(), within(1e-12));
  }
}
