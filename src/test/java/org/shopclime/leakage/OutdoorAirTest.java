package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OutdoorAirTest {

  /** A right triangle of 3, 4, 5: the root of squares. */
  @Test
  void leaksAndAFan() {
    assertThat(OutdoorAir.combined(0.3, 0.4)).isCloseTo(0.5, within(1e-12));
    assertThat(OutdoorAir.combined(0.3, -0.4)).isCloseTo(0.5, within(1e-12));
    OutdoorAir air = OutdoorAir.of(0.3, 0.4, 0);
    assertThat(air.leakage()).isEqualTo(0.3);
    assertThat(air.fans()).isCloseTo(0.2, within(1e-12));
    assertThat(air.balanced()).isZero();
  }

  @Test
  void balancedFlowsAdd() {
    OutdoorAir air = OutdoorAir.of(0.3, 0.5, 0.1);
    assertThat(air.balanced()).isEqualTo(0.1);
    assertThat(air.fans()).isCloseTo(0.2, within(1e-12));
    assertThat(air.total()).isCloseTo(0.6, within(1e-12));
    assertThat(OutdoorAir.of(0.3, 0.1, 0.5).total()).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> OutdoorAir.of(-0.1, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> OutdoorAir.of(0, Double.NaN, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> OutdoorAir.of(0, 0, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> OutdoorAir.combined(0, 1001));
  }
}
