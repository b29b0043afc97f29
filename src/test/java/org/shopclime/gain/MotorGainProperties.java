package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class MotorGainProperties {

  @Property
  void largerMotorsAreNoWorse(
      @ForAll @DoubleRange(max = 2e5) double one, @ForAll @DoubleRange(max = 2e5) double other) {
    assertThat(MotorGain.efficiency(Math.max(one, other)))
        .isGreaterThanOrEqualTo(MotorGain.efficiency(Math.min(one, other)));
  }

  @Property
  void neverLessHeatThanShaftPower(@ForAll @DoubleRange(max = 2e5) double watts) {
    assertThat(MotorGain.motorAndMachineInRoom(watts, 1, 1).total())
        .isGreaterThanOrEqualTo(watts)
        .isLessThanOrEqualTo(watts / 0.35 + 1e-6);
  }
}
