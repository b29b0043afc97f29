package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Compressors against the figures of the trade. */
class CompressorGainPublishedTest {

  private static final double BTU_PER_HOUR = 0.29307107; // W, NIST SP 811
  private static final double HORSEPOWER = 745.69987; // W, NIST SP 811

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/compressor-share.csv", useHeadersInDisplayName = true)
  void leavesAtTheMachine(String id, String shareWithAir, double atMachine) {
    double share =
        shareWithAir.equals("most")
            ? CompressorGain.MOST_SHARE_WITH_AIR
            : CompressorGain.LEAST_SHARE_WITH_AIR;
    HeatGain gain = CompressorGain.inRoom(3700, 0.4, share);
    assertThat(gain.total() / CompressorGain.electricInput(3700, 0.4))
        .as(id)
        .isCloseTo(atMachine, within(1e-9));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/gain/compressor-recovery.csv",
      useHeadersInDisplayName = true)
  void recoverableHeat(
      String id,
      double cfm,
      double cfmPerHorsepower,
      double share,
      double btuPerHour,
      double tolerance) {
    double watts = cfm / cfmPerHorsepower * HORSEPOWER;
    assertThat(CompressorGain.inRoom(watts, 1, 1 - share).total() / BTU_PER_HOUR)
        .as(id)
        .isCloseTo(btuPerHour, withinPercentage(100 * tolerance));
  }

  /** The rule counts shaft power; what we add to it is the loss of the motor. */
  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/compressor-rule.csv", useHeadersInDisplayName = true)
  void ruleOfThumbIsTheShaftPower(
      String id, double horsepower, double low, double high, double tolerance) {
    double watts = horsepower * HORSEPOWER;
    double motorLoss = MotorGain.motorOnly(watts, 1, 1).total();
    double withoutMotor = CompressorGain.inRoom(watts, 1).total() - motorLoss;
    assertThat(withoutMotor / BTU_PER_HOUR)
        .as(id)
        .isBetween(low * (1 - tolerance), high * (1 + tolerance));
    assertThat(motorLoss / withoutMotor).as(id).isBetween(0.15, 0.25);
  }

  @Test
  void allOfItStaysUnlessSaidAndHalfTheTimeIsHalfTheHeat() {
    HeatGain all = CompressorGain.inRoom(3728.5, 1);
    assertThat(all.total()).isCloseTo(MotorGain.electricInput(3728.5, 1), within(1e-9));
    assertThat(CompressorGain.inRoom(3728.5, 0.5).total()).isCloseTo(all.total() / 2, within(1e-9));
    assertThat(all.radiant()).isCloseTo(0.25 * all.total(), within(1e-9));
  }
}
