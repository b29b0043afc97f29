package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A compressor that comes to its capacity. */
class StartUpTest {

  /**
   * By pencil: the default C_D of 0.25 and 6 minutes on, 24 off. The run gives a part g of steady
   * capacity, the load factor is 0.2 g, and (1 - g) = 0.25 (1 - 0.2 g) gives g = 0.75 / 0.95 =
   * 0.7895. A rise with 76.5 s loses 76.5 (1 - exp(-4.71)) = 75.8 of 360 s: 0.2105. AHRI 210/240,
   * the default from memory.
   */
  @Test
  void theDefaultDegradation() {
    StartUp usual = StartUp.ofDegradation(0.25);
    assertThat(usual.seconds()).isCloseTo(76.5, within(0.1));
    assertThat(usual.share(0, 360)).isCloseTo(0.75 / 0.95, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.1, 0.25, 0.5, 0.8})
  void degradationThereAndBack(double degradation) {
    assertThat(StartUp.ofDegradation(degradation).degradation())
        .isCloseTo(degradation, within(1e-9));
  }

  /** Parts of a run add up to the whole. */
  @Test
  void minutesMakeUpTheRun() {
    StartUp start = new StartUp(76);
    double sum = 0;
    for (int minute = 0; minute < 7; minute++) {
      sum += start.share(minute * 60.0, minute * 60.0 + 60) / 7;
    }
    assertThat(sum).isCloseTo(start.share(0, 420), within(1e-12));
    assertThat(start.share(0, Double.POSITIVE_INFINITY)).isEqualTo(1);
    assertThatIllegalArgumentException().isThrownBy(() -> new StartUp(0));
    assertThatIllegalArgumentException().isThrownBy(() -> StartUp.ofDegradation(0.95));
  }
}
