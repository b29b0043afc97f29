package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shopclime.leakage.BlowerDoor.Shielding;

class BasicLeakageTest {

  @Test
  void noDriveNoFlowAndColderInsideLeaksAsMuch() {
    assertThat(BasicLeakage.flow(0.1, 0, 0, 0.000145, 0.000104)).isZero();
    assertThat(BasicLeakage.flow(0.1, -12, 2, 0.000145, 0.000104))
        .isEqualTo(BasicLeakage.flow(0.1, 12, 2, 0.000145, 0.000104));
  }

  /**
   * Two ways to the same season: leakage area from the fan test through the hourly model, in
   * middling weather (15 K, 4 m/s, some shelter), and the published N of 14 to 26.
   */
  @Test
  void hourlyModelAgreesWithTheSeasonalRule() {
    double volume = 340;
    double area = BlowerDoor.leakageArea(10, volume);
    double flow =
        BasicLeakage.flow(
            area, 15, 4, BasicLeakage.stackCoefficient(1), BasicLeakage.windCoefficient(1, 3));
    assertThat(10 / (flow * 3600 / volume)).isBetween(14.0, 26.0);
  }

  /** Sums by hand from the grades of the handbook: a leaky garage of 150 m² of face. */
  @Test
  void gradeGivesAnArea() {
    assertThat(Tightness.LEAKY.leakageArea(150)).isCloseTo(0.084, within(1e-9));
  }

  @Test
  void pressureOfAFanReturnsTheFlowItCameFrom() {
    double area = BlowerDoor.leakageArea(20, 150);
    double flowAt50 = 20 * 150 / 3600.0;
    assertThat(BlowerDoor.pressure(area, flowAt50)).isCloseTo(50, within(1e-6));
    assertThat(BlowerDoor.pressure(area, BlowerDoor.flowAtReference(20, 150)))
        .isCloseTo(4, within(1e-9));
    assertThat(BlowerDoor.pressure(area, 0)).isZero();
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BasicLeakage.windCoefficient(1, 6))
        .withMessage("shelter class 6.0 is not in 1.0 to 5.0");
    assertThatIllegalArgumentException().isThrownBy(() -> BasicLeakage.windCoefficient(1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> BasicLeakage.windCoefficient(4, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> BasicLeakage.stackCoefficient(0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BasicLeakage.stackCoefficientAt(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> BasicLeakage.flow(-1, 1, 1, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> BasicLeakage.flow(1, 1, -1, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> BlowerDoor.leakageArea(-1, 100));
    assertThatIllegalArgumentException().isThrownBy(() -> BlowerDoor.pressure(0, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BlowerDoor.seasonalAirChanges(10, 20, 4, Shielding.NORMAL));
    assertThatIllegalArgumentException().isThrownBy(() -> Tightness.GOOD.leakageArea(-1));
  }
}
