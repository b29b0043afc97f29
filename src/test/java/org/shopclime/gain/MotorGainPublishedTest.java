package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Motors against the handbook's table and equations. */
class MotorGainPublishedTest {

  private static final double BTU_PER_HOUR = 0.29307107; // W, NIST SP 811
  private static final double HORSEPOWER = 745.69987; // W, NIST SP 811

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/motors.csv", useHeadersInDisplayName = true)
  void agreesWithTheTable(
      String id,
      double horsepower,
      double both,
      double machine,
      double motor,
      double efficiency,
      double tolerance) {
    double watts = horsepower * HORSEPOWER;
    double percent = 100 * tolerance;
    assertThat(MotorGain.efficiency(watts)).as(id).isCloseTo(efficiency, within(1e-6));
    assertThat(MotorGain.motorAndMachineInRoom(watts, 1, 1).total() / BTU_PER_HOUR)
        .as(id)
        .isCloseTo(both, withinPercentage(percent));
    assertThat(MotorGain.machineOnly(watts, 1, 1).total() / BTU_PER_HOUR)
        .as(id)
        .isCloseTo(machine, withinPercentage(percent));
    assertThat(MotorGain.motorOnly(watts, 1, 1).total() / BTU_PER_HOUR)
        .as(id)
        .isCloseTo(motor, withinPercentage(percent));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/gain/motor-equations.csv", useHeadersInDisplayName = true)
  void followsTheEquations(
      String id,
      String place,
      double rated,
      double efficiency,
      double load,
      double use,
      double radiantShare) {
    HeatGain gain;
    double expected;
    if (place.equals("both")) {
      gain = MotorGain.motorAndMachineInRoom(rated, load, use);
      expected = rated / efficiency * use * load;
    } else if (place.equals("machine")) {
      gain = MotorGain.machineOnly(rated, load, use);
      expected = rated * use * load;
    } else {
      assertThat(place).isEqualTo("motor");
      gain = MotorGain.motorOnly(rated, load, use);
      expected = rated * (1 / efficiency - 1) * use * load;
    }
    assertThat(gain.total()).as(id).isCloseTo(expected, within(1e-6));
    assertThat(gain.radiant()).as(id).isCloseTo(expected * radiantShare, within(1e-6));
    assertThat(gain.latent()).as(id).isZero();
  }
}
