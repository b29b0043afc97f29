package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class LeakageProperties {

  @Property
  void combinedIsNeverLessThanEitherNorMoreThanBoth(
      @ForAll @DoubleRange(max = 10) double leak,
      @ForAll @DoubleRange(max = 10) double exhaust,
      @ForAll @DoubleRange(max = 10) double supply) {
    OutdoorAir air = OutdoorAir.of(leak, exhaust, supply);
    double most = Math.max(exhaust, supply);
    assertThat(air.total())
        .isGreaterThanOrEqualTo(Math.max(leak, most) - 1e-12)
        .isLessThanOrEqualTo(leak + most + 1e-12);
    assertThat(air.leakage()).isEqualTo(leak);
  }

  @Property(edgeCases = EdgeCasesMode.NONE) // their combinations outnumber the tries
  void leakageRisesWithWindAndDifferenceAndFallsWithShelter(
      @ForAll @DoubleRange(min = 0.01, max = 1) double area,
      @ForAll @DoubleRange(max = 40) double difference,
      @ForAll @DoubleRange(min = 0.1, max = 15) double wind,
      @ForAll @DoubleRange(min = 2, max = 8) double height,
      @ForAll @IntRange(min = 1, max = 4) int shelter) {
    double stack = BasicLeakage.stackCoefficientAt(height);
    double open = BasicLeakage.windCoefficientAt(height, shelter);
    double sheltered = BasicLeakage.windCoefficientAt(height, shelter + 1);
    double flow = BasicLeakage.flow(area, difference, wind, stack, open);
    assertThat(BasicLeakage.flow(area, difference + 1, wind, stack, open)).isGreaterThan(flow);
    assertThat(BasicLeakage.flow(area, difference, wind + 1, stack, open)).isGreaterThan(flow);
    assertThat(BasicLeakage.flow(area, difference, wind, stack, sheltered)).isLessThan(flow);
    assertThat(BasicLeakage.flow(2 * area, difference, wind, stack, open))
        .isCloseTo(2 * flow, within(1e-9));
  }

  @Property
  void doorFlowDoesNotCareWhichSideIsWarmAndGrowsWithTheDifference(
      @ForAll @DoubleRange(min = 0.9, max = 1.3) double one,
      @ForAll @DoubleRange(min = 0.9, max = 1.3) double other) {
    double flow = DoorExchange.flow(3, 2.4, one, other);
    assertThat(flow).isEqualTo(DoorExchange.flow(3, 2.4, other, one)).isGreaterThanOrEqualTo(0);
    assertThat(DoorExchange.flow(3, 2.4, Math.min(one, other) - 0.05, Math.max(one, other)))
        .isGreaterThan(flow);
  }

  /** Pressures of the two openings, from the flow through each, add up to the stack's. */
  @Property
  void pressuresOfAStackAddUp(
      @ForAll @DoubleRange(min = 0.01, max = 1) double lower,
      @ForAll @DoubleRange(min = 0.01, max = 1) double upper,
      @ForAll @DoubleRange(min = 1, max = 40) double difference) {
    double flow = new VentStack(lower, upper, 2.5).stackFlow(20 + difference, 20);
    double density = 1.2;
    double atLower = density / 2 * Math.pow(flow / (0.65 * lower), 2);
    double atUpper = density / 2 * Math.pow(flow / (0.65 * upper), 2);
    double stack = density * 9.80665 * 2.5 * difference / (293.15 + difference);
    assertThat(atLower + atUpper).isCloseTo(stack, within(1e-9));
  }
}
