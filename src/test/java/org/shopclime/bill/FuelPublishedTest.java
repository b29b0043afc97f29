package org.shopclime.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Fuels and the price of the heat they give. */
class FuelPublishedTest {

  private static final double KWH_PER_BTU = 0.000293071070172;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/bill/fuel-heat.csv", useHeadersInDisplayName = true)
  void grossHeat(String id, String name, String unit, double btu) {
    Fuel fuel =
        switch (name) {
          case "propane" -> Fuel.propane(3, 1);
          case "heating oil" -> Fuel.heatingOil(3, 1);
          case "natural gas" -> Fuel.naturalGas(3, 1);
          default -> throw new IllegalArgumentException(name);
        };
    assertThat(fuel.name()).as(id).isEqualTo(name);
    assertThat(fuel.unit()).as(id).isEqualTo(unit);
    assertThat(fuel.heat() / KWH_PER_BTU).as(id).isCloseTo(btu, offset(1e-3));
  }

  /**
   * A million BTU by pencil: propane at 3 $/gal and 80 %: 1,000,000 / 91,452 / 0.8 = 13.67 gal,
   * $41; gas at 1.20 $/therm and 80 %: 10 / 0.8 = 12.5 therms, $15; electricity at 15 c: 293 kWh,
   * $44.
   */
  @Test
  void aMillionBtu() {
    double million = 1e6 * KWH_PER_BTU;
    Fuel propane = Fuel.propane(3 / 0.003785411784, 0.8); // 3 $/gal
    assertThat(propane.amount(million)).isCloseTo(13.668, offset(0.001));
    assertThat(propane.amount(million) * propane.price()).isCloseTo(41.0, offset(0.01));
    Fuel gas = Fuel.naturalGas(1.2 / 29.3071070172, 0.8); // 1.20 $/therm
    assertThat(gas.amount(million)).isCloseTo(12.5, offset(1e-6));
    assertThat(gas.usefulPrice() * million).isCloseTo(15, offset(1e-6));
    assertThat(0.15 * million).isCloseTo(43.96, offset(0.01));
    assertThat(gas.times(2).usefulPrice()).isCloseTo(2 * gas.usefulPrice(), offset(1e-12));
  }

  @Test
  void sillyFuelsAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Fuel.propane(-1, 0.8));
    assertThatIllegalArgumentException().isThrownBy(() -> Fuel.propane(3, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Fuel.naturalGas(1, 1.01));
    assertThatIllegalArgumentException().isThrownBy(() -> Fuel.naturalGas(1, 0.8).amount(-1));
  }
}
