package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The rules of the code. */
class SupplyPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/shop/supply.csv", useHeadersInDisplayName = true)
  void rules(String id, String what, double of, double limit) {
    double ours =
        switch (what) {
          case "alone" -> SupplyRules.unitLimit(of, false);
          case "shared" -> SupplyRules.unitLimit(of, true);
          case "most amps" -> SupplyRules.MOST_AMPS;
          case "most volts" -> SupplyRules.MOST_VOLTS;
          case "cord" -> SupplyRules.longestCordFeet(of);
          case "wire" -> SupplyRules.breakerLimit(Supply.Wire.valueOf("AWG_" + (int) of));
          case "continuous" -> SupplyRules.continuousCircuit(of);
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(ours).as(id).isEqualTo(limit);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/shop/motors.csv", useHeadersInDisplayName = true)
  void motors(String id, double horsepower, double amps) {
    assertThat(SupplyRules.motorAmps(horsepower)).as(id).isCloseTo(amps, offset(1e-9));
  }

  @Test
  void betweenAndBeyond() {
    assertThat(SupplyRules.motorAmps(4)).isCloseTo(22.5, offset(1e-9));
    assertThat(SupplyRules.motorAmps(20)).isEqualTo(100);
    assertThat(SupplyRules.motorAmps(0)).isZero();
    assertThat(SupplyRules.continuousCircuit(12)).isEqualTo(15);
    assertThat(SupplyRules.continuousCircuit(12.01)).isEqualTo(20);
    assertThat(SupplyRules.continuousCircuit(49)).isInfinite();
  }

  @Test
  void sillyInputIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SupplyRules.unitLimit(0, true))
        .withMessage("breaker 0.0 A is not above 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SupplyRules.breakerLimit(Supply.Wire.UNKNOWN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SupplyRules.continuousCircuit(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> SupplyRules.longestCordFeet(-120));
    assertThatIllegalArgumentException().isThrownBy(() -> SupplyRules.motorAmps(-1));
  }
}
