package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GroundTemperatureTest {
  private final GroundTemperature ground = new GroundTemperature(15, 10, 20);

  @Test
  void isTheSurfaceWaveAtNoDepth() {
    assertThat(ground.at(0, 20, 0.05)).isCloseTo(5, within(1e-9));
    assertThat(ground.at(0, 20 + 182.5, 0.05)).isCloseTo(25, within(1e-9));
  }

  /**
   * By pencil: sqrt(365 x 0.05 / pi) = 2.41023 m; at that depth the swing is 1/e and 365/2pi days
   * late.
   */
  @Test
  void isDampedAndLateAtDepth() {
    double depth = 2.41023;
    assertThat(ground.at(depth, 20 + 58.09, 0.05)).isCloseTo(15 - 10 / Math.E, within(1e-3));
    assertThat(ground.at(depth, 20 + 58.09 + 182.5, 0.05))
        .isCloseTo(15 + 10 / Math.E, within(1e-3));
    assertThat(ground.at(30, 100, 0.05)).isCloseTo(15, within(1e-4));
    assertThat(ground.at(1000, 100, 0.05)).isCloseTo(15, within(1e-9));
  }

  @Test
  void refusesWhatIsOutOfRange() {
    assertThatIllegalArgumentException().isThrownBy(() -> ground.at(-1, 1, 0.05));
    assertThatIllegalArgumentException().isThrownBy(() -> ground.at(1, 0, 0.05));
    assertThatIllegalArgumentException().isThrownBy(() -> ground.at(1, 1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new GroundTemperature(15, -1, 20));
  }
}
