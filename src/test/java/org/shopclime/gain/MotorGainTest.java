package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MotorGainTest {

  private static final double HORSEPOWER = 745.69987158;

  @Test
  void liesOnAStraightLineBetweenRows() {
    assertThat(MotorGain.efficiency(1.25 * HORSEPOWER)).isCloseTo(0.76, within(1e-9));
    assertThat(MotorGain.efficiency(0.205 * HORSEPOWER)).isCloseTo(0.445, within(1e-9));
  }

  @Test
  void holdsTheEndsOfTheTableAndSaysSo() {
    assertThat(MotorGain.efficiency(0)).isEqualTo(0.35);
    assertThat(MotorGain.efficiency(300 * HORSEPOWER)).isEqualTo(0.91);
    assertThat(MotorGain.isInTable(0.04 * HORSEPOWER)).isFalse();
    assertThat(MotorGain.isInTable(0.06 * HORSEPOWER)).isTrue();
    assertThat(MotorGain.isInTable(249 * HORSEPOWER)).isTrue();
    assertThat(MotorGain.isInTable(251 * HORSEPOWER)).isFalse();
  }

  @Test
  void machineAndMotorMakeTheWhole() {
    HeatGain parts =
        MotorGain.machineOnly(2000, 0.7, 0.3).plus(MotorGain.motorOnly(2000, 0.7, 0.3));
    assertThat(parts.total())
        .isCloseTo(MotorGain.motorAndMachineInRoom(2000, 0.7, 0.3).total(), within(1e-9));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MotorGain.machineOnly(1000, 1, 1.2))
        .withMessageContaining("use 1.2 is not in 0.0 to 1.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MotorGain.motorOnly(1000, Double.NaN, 1))
        .withMessageContaining("load NaN");
    assertThatIllegalArgumentException().isThrownBy(() -> MotorGain.efficiency(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> MotorGain.electricInput(1000, 1.6));
  }
}
