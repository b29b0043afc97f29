package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VentStackTest {

  @Test
  void oneOpeningAloneHasNoThroughFlow() {
    assertThat(new VentStack(0, 0.5, 3).stackFlow(50, 30)).isZero();
    assertThat(new VentStack(0.5, 0, 3).windFlow(3, 0.5)).isZero();
    assertThat(new VentStack(0, 0, 3).effectiveArea()).isZero();
  }

  @Test
  void colderInsideFlowsDownAsMuch() {
    VentStack vents = new VentStack(0.1, 0.2, 3);
    assertThat(vents.stackFlow(20, 30)).isEqualTo(vents.stackFlow(30, 20)).isPositive();
    assertThat(vents.stackFlow(20, 20)).isZero();
    assertThat(new VentStack(0.1, 0.2, 0).stackFlow(40, 20)).isZero();
  }

  /** The handbook's Q = Cv A U for equal inlets and outlets, by hand: 0.55 · 0.2 · 3. */
  @Test
  void windThroughEqualOpenings() {
    assertThat(new VentStack(0.2, 0.2, 0).windFlow(3, VentStack.WIND_STRAIGHT))
        .isCloseTo(0.33, within(1e-12));
    assertThat(VentStack.WIND_SLANTED).isBetween(0.25, 0.35);
  }

  @Test
  void stackAndWindAddAsPressures() {
    assertThat(VentStack.together(0.3, 0.4)).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> new VentStack(-1, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new VentStack(1, Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new VentStack(1, 1, -1));
    VentStack vents = new VentStack(1, 1, 1);
    assertThatIllegalArgumentException().isThrownBy(() -> vents.stackFlow(200, 20));
    assertThatIllegalArgumentException().isThrownBy(() -> vents.stackFlow(20, -61));
    assertThatIllegalArgumentException().isThrownBy(() -> vents.windFlow(-1, 0.5));
    assertThatIllegalArgumentException().isThrownBy(() -> vents.windFlow(1, 1.5));
    assertThatIllegalArgumentException().isThrownBy(() -> VentStack.together(-1, 0));
  }
}
