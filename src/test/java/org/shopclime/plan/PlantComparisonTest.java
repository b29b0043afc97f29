package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.bill.Course;
import org.shopclime.bill.Fuel;
import org.shopclime.bill.Outlook;
import org.shopclime.bill.Tariff;
import org.shopclime.bill.Use;
import org.shopclime.bill.YearClock;

/** A window unit with its heater against a heat pump, by pencil. */
class PlantComparisonTest {

  private static PriceBook prices(Optional<Fuel> fuel, Outlook outlook) {
    return new PriceBook(
        Tariff.flat(0.15),
        Optional.empty(),
        "",
        0,
        fuel,
        new YearClock(DayOfWeek.WEDNESDAY, true),
        outlook,
        0.2);
  }

  private static Use year(double energy) {
    return Use.monthly(month -> energy / 12);
  }

  /** $400 and $80; 1,000 kWh to cool and 2,000 to heat at 15 c: $450 a year. */
  private static final PlantChoice WINDOW =
      new PlantChoice(
          "window unit and electric heater",
          List.of(new Course.Purchase(400, 10), new Course.Purchase(80, 15)),
          year(1000),
          year(2000),
          0);

  /** $1,900; 700 kWh to cool and 700 to heat: $210 a year. */
  private static final PlantChoice PUMP =
      new PlantChoice("heat pump", List.of(new Course.Purchase(1900, 15)), year(700), year(700), 0);

  /**
   * 1,420 more to buy, 240 less a year: 5.9 years, so the sixth. Prices 20 % lower: 192 a year, 7.4
   * years; higher: 288 a year, 4.9 years. Over 15 years the window unit is bought twice: 480 + 400
   * + 6,750 = 7,630 against 1,900 + 3,150 = 5,050.
   */
  @Test
  void theHeatPumpWinsInTheSixthYear() {
    PlantComparison both =
        PlantComparison.of(prices(Optional.empty(), Outlook.plain(15)), PUMP, WINDOW);
    assertThat(both.cheaper().name()).isEqualTo("window unit and electric heater");
    assertThat(both.cheaper().firstCost()).isEqualTo(480);
    assertThat(both.cheaper().yearlyCost()).isCloseTo(450, offset(1e-8));
    assertThat(both.dearer().yearlyCost()).isCloseTo(210, offset(1e-8));
    assertThat(both.firstYearAhead(1)).hasValue(6);
    assertThat(both.firstYearAheadLow()).hasValue(8);
    assertThat(both.firstYearAheadHigh()).hasValue(5);
    assertThat(both.gain(1)).isCloseTo(7630 - 5050, offset(1e-7));
  }

  @Test
  void withinFewYearsItNeverWins() {
    PlantComparison both =
        PlantComparison.of(prices(Optional.empty(), Outlook.plain(5)), WINDOW, PUMP);
    assertThat(both.firstYearAhead(1)).isEmpty();
    assertThat(both.firstYearAheadHigh()).hasValue(5);
    assertThat(both.gain(1)).isCloseTo(480 + 5 * 450 - 1900 - 5 * 210, offset(1e-7));
  }

  /** Gas at 1.20 $/therm and 80 % gives a kWh for 5.1 c: 2,000 kWh for $102, $252 a year in all. */
  @Test
  void aCheapFuelTakesAwayTheGain() {
    Fuel gas = Fuel.naturalGas(1.2 / 29.3071070172, 0.8);
    PlantChoice withGas =
        new PlantChoice(
            "window unit and gas heater",
            List.of(new Course.Purchase(400, 10), new Course.Purchase(600, 15)),
            year(1000),
            Use.none(),
            2000);
    PriceBook book = prices(Optional.of(gas), Outlook.plain(15));
    PlantComparison both = PlantComparison.of(book, withGas, PUMP);
    assertThat(both.cheaper().yearlyCost()).isCloseTo(150 + 102.36, offset(0.01));
    // 900 more to buy, 42.36 less a year; the window unit is bought again after ten
    assertThat(both.firstYearAhead(1)).hasValue(12);
    assertThat(both.gain(1)).isCloseTo(400 + 15 * 42.36 - 900, offset(0.1));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> PlantComparison.of(prices(Optional.empty(), Outlook.plain(15)), withGas, PUMP))
        .withMessageContaining("no price of its fuel");
  }
}
