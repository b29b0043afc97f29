package org.shopclime.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.quantity.Units;

/** Prices that ship, and the label's year. */
class PricePublishedTest {

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/bill/electricity-prices.csv",
      useHeadersInDisplayName = true)
  void meansOfStates(String id, String area, int year, double cents, double tolerance) {
    KnownPrice ours = KnownPrice.of(area);
    assertThat(ours.area()).as(id).isEqualTo(area);
    assertThat(ours.year()).as(id).isEqualTo(year);
    assertThat(100 * ours.price()).as(id).isCloseTo(cents, offset(tolerance));
    assertThat(ours.source()).as(id).contains("Energy Information Administration");
  }

  @Test
  void aStateWithoutAFigureTakesTheNations() {
    KnownPrice alabama = KnownPrice.of("AL");
    assertThat(alabama).isEqualTo(KnownPrice.of("US"));
    assertThat(alabama.isOfState()).isFalse();
    assertThat(KnownPrice.of("GA").isOfState()).isTrue();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/bill/label-year.csv", useHeadersInDisplayName = true)
  void yearOfTheLabel(
      String id, double btuh, double ceer, double cents, double kWh, double dollars, double slack) {
    double used =
        LabelYear.kilowattHours(Units.wattsFromBtuh(btuh), Units.wattsPerWattFromEer(ceer));
    assertThat(used).as(id).isCloseTo(kWh, withinPercentage(100 * slack));
    double cost =
        Tariff.flat(cents / 100).cost(Use.monthly(month -> used / 12), TariffTest.CLOCK).total();
    assertThat(cost).as(id).isCloseTo(dollars, withinPercentage(100 * slack));
  }
}
