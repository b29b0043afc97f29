package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.gain.PeopleGain.Activity;

/** People against the handbook's table and an older one. */
class PeopleGainPublishedTest {

  private static final double BTU_PER_HOUR = 0.29307107; // W, NIST SP 811

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/people.csv", useHeadersInDisplayName = true)
  void agreesWithTheHandbook(
      String id,
      Activity activity,
      double total,
      double sensible,
      double latent,
      Double radiantStill,
      Double radiantMoving) {
    HeatGain still = PeopleGain.of(activity, 2);
    HeatGain moving = PeopleGain.inMovingAir(activity, 2);
    assertThat(still.total() / 2 / BTU_PER_HOUR).as(id).isCloseTo(total, within(5.0));
    assertThat(still.sensible() / 2 / BTU_PER_HOUR).as(id).isCloseTo(sensible, within(5.0));
    assertThat(still.latent() / 2 / BTU_PER_HOUR).as(id).isCloseTo(latent, within(5.0));
    assertThat(moving.sensible()).as(id).isCloseTo(still.sensible(), within(1e-9));
    assertThat(moving.latent()).as(id).isCloseTo(still.latent(), within(1e-9));
    if (radiantStill != null) {
      assertThat(still.radiant() / still.sensible()).as(id).isCloseTo(radiantStill, within(0.05));
      assertThat(moving.radiant() / moving.sensible())
          .as(id)
          .isCloseTo(radiantMoving, within(0.05));
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/people-older.csv", useHeadersInDisplayName = true)
  void agreesWithTheOlderTableAt78(String id, Activity activity, double sensible, double latent) {
    HeatGain gain = PeopleGain.at(activity, 1, (78 - 32) / 1.8);
    assertThat(gain.sensible() / BTU_PER_HOUR).as(id).isCloseTo(sensible, within(5.0));
    assertThat(gain.latent() / BTU_PER_HOUR).as(id).isCloseTo(latent, within(5.0));
  }
}
