package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SizesTest {

  /** W in a BTU/h, NIST SP 811. */
  private static final double BTUH = 0.29307107;

  @Test
  void sizesRiseAndAreCopies() {
    double[] sizes = StandardSizes.btuh();
    assertThat(sizes).isSorted().hasSameSizeAs(StandardSizes.watts()).startsWith(5000, 6000);
    sizes[0] = 1;
    assertThat(StandardSizes.btuh()[0]).isEqualTo(5000);
    // NIST SP 811: 12,000 BTU/h is 3516.85 W
    assertThat(StandardSizes.watts().get(4)).isCloseTo(3516.85, within(0.005));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 5000",
    "5000, 5000",
    "5001, 6000",
    "12000, 12000",
    "12001, 15000",
    "36000, 36000"
  })
  void theNextSizeIsTheSmallestThatServes(double wished, double size) {
    assertThat(StandardSizes.atLeast(wished * BTUH).orElseThrow() / BTUH)
        .isCloseTo(size, within(0.01));
  }

  @Test
  void beyondTheLargestThereIsNone() {
    assertThat(StandardSizes.atLeast(36001 * BTUH)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesSenselessWatts(double watts) {
    assertThatIllegalArgumentException().isThrownBy(() -> StandardSizes.atLeast(watts));
    assertThatIllegalArgumentException().isThrownBy(() -> Heater.heaterWattsCovering(watts));
    assertThatIllegalArgumentException().isThrownBy(() -> new Heater(watts));
    assertThatIllegalArgumentException().isThrownBy(() -> Ceer.of(watts, 1000, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Ceer.of(3000, watts, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Ceer.of(3000, 1000, watts));
    assertThatIllegalArgumentException().isThrownBy(() -> Ceer.power(watts, 3, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Ceer.power(3000, watts, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Ceer.power(3000, 3, watts));
    assertThatIllegalArgumentException().isThrownBy(() -> Ceer.leastFrom2014(watts));
    assertThatIllegalArgumentException().isThrownBy(() -> PartLoad.loadFraction(watts, 3000));
    assertThatIllegalArgumentException().isThrownBy(() -> PartLoad.loadFraction(100, watts));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RoomSizeGuide.corrected(watts, RoomSizeGuide.Sun.USUAL, 1));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "1, 750",
    "750, 750",
    "751, 1000",
    "1500, 1500",
    "1501, 2000",
    "2500, 3000",
    "3500, 4000",
    "4100, 5000",
    "5001, 7500",
    "9000, 10000",
    "14000, 15000",
    "15000, 15000",
    "15001, 20000",
    "20001, 25000"
  })
  void theHeaterIsTheNextOneSold(double loss, double watts) {
    assertThat(Heater.heaterWattsCovering(loss)).isEqualTo(watts);
  }

  @Test
  void heaterSizesRise() {
    assertThat(Heater.sizes()).isSorted().contains(1500.0, 5000.0).hasSize(10);
  }

  @Test
  void powerFromALabelGivesTheLabelBack() {
    double power = Ceer.power(3516.85, 3.2, 1.5);
    assertThat(Ceer.of(3516.85, power, 1.5)).isCloseTo(3.2, within(1e-12));
    assertThat(power).isLessThan(3516.85 / 3.2);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Ceer.power(3516.85, 3.2, 1000))
        .withMessageContaining("standby 1000.0");
  }

  @Test
  void areasOutsideTheGuideAreRefused() {
    double footSquared = 0.3048 * 0.3048;
    assertThat(RoomSizeGuide.btuhForArea(2500 * footSquared)).isEqualTo(34000);
    assertThat(RoomSizeGuide.covers(99 * footSquared)).isFalse();
    assertThat(RoomSizeGuide.covers(100 * footSquared)).isTrue();
    assertThat(RoomSizeGuide.covers(2501 * footSquared)).isFalse();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RoomSizeGuide.btuhForArea(1))
        .withMessageContaining("area 1.0 m²");
    assertThatIllegalArgumentException().isThrownBy(() -> RoomSizeGuide.btuhForArea(Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RoomSizeGuide.corrected(5000, RoomSizeGuide.Sun.USUAL, -1));
  }

  @Test
  void theGuideNeverFallsWithArea() {
    double before = 0;
    for (double m2 = 9.3; m2 < 232; m2 += 0.5) {
      double now = RoomSizeGuide.btuhForArea(m2);
      assertThat(now).isGreaterThanOrEqualTo(before);
      before = now;
    }
  }

  @Test
  void cyclingCostsPowerOnly() {
    assertThat(PartLoad.loadFraction(1500, 3000)).isEqualTo(0.5);
    assertThat(PartLoad.loadFraction(0, 3000)).isZero();
    assertThat(PartLoad.loadFraction(4000, 3000)).isEqualTo(1);
    // 0.5 / (1 - 0.25 * 0.5), the default of AHRI 210/240
    assertThat(PartLoad.powerFraction(0.5)).isCloseTo(0.5 / 0.875, within(1e-15));
    assertThat(PartLoad.powerFraction(1)).isEqualTo(1);
    assertThat(PartLoad.powerFraction(0)).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> PartLoad.powerFraction(1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> PartLoad.powerFraction(-0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> PartLoad.powerFraction(Double.NaN));
  }
}
