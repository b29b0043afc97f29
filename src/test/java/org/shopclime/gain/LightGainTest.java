package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.shopclime.gain.LightGain.Lamp;

class LightGainTest {

  /** ASHRAE Fundamentals (2005), ch. 30, Table 16, from memory; LED: common practice. */
  @Test
  void radiantShares() {
    assertThat(Lamp.INCANDESCENT.radiantShare()).isEqualTo(0.80);
    assertThat(Lamp.OLD_FLUORESCENT.radiantShare()).isEqualTo(0.67);
    assertThat(Lamp.LED.radiantShare()).isBetween(0.4, 0.6);
    assertThat(Lamp.OLD_FLUORESCENT.allowance()).isEqualTo(1.2);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> LightGain.of(Lamp.LED, -1, 40));
    assertThatIllegalArgumentException().isThrownBy(() -> LightGain.of(Lamp.LED, 1, Double.NaN));
  }
}
