package org.shopclime.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.balance.ShopYear;
import org.shopclime.climate.Climates;
import org.shopclime.plan.Progress;
import org.shopclime.plan.YearAnswer;
import org.shopclime.plan.Yearly;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.shop.Shop;

/**
 * Cases of the standard on Denver's built-in day types, so that something is held without any
 * weather file. Regression, not a published check: the figures are those measured here when the
 * hourly years lay in their published ranges.
 */
class FabricTwinsTest {

  @ParameterizedTest
  @CsvSource({"600, 4319, 5794, 24.87", "900, 1653, 2465, 25.06", "960, 2737, 839, 19.88"})
  void staysWhereItWas(String name, double heating, double cooling, double mean) {
    Shop shop = FabricRun.shop(name);
    YearAnswer answer =
        new Yearly(shop, Climates.load()).ofDayTypes(List.of(), Progress.silent()).orElseThrow();
    Map<Figure, Double> found =
        Map.of(
            Figure.HEATING, answer.described().kilowattHours(Figure.HEATING, 0),
            Figure.COOLING, answer.described().kilowattHours(Figure.COOLING, 0),
            Figure.AIR, answer.alone().mean(Figure.AIR, 0));
    assertThat(found.get(Figure.HEATING)).as("heating").isCloseTo(heating, withinPercentage(1));
    assertThat(found.get(Figure.COOLING)).as("cooling").isCloseTo(cooling, withinPercentage(1));
    assertThat(found.get(Figure.AIR)).as("left alone").isCloseTo(mean, withinPercentage(1));
  }

  /** The set point of case 640: 10 °C by night, from 7 to 8 straight to 20 °C, 10 again from 23. */
  @Test
  void theSetBackRises() {
    YearAnswer answer =
        new Yearly(FabricRun.shop("640"), Climates.load())
            .ofDayTypes(List.of(), Progress.silent())
            .orElseThrow();
    ShopYear year = answer.described().year();
    assertThat(year.plants().heatedTo(0, 6, 1)).isEqualTo(10);
    assertThat(year.plants().heatedTo(0, 24 + 7, 0.25)).isCloseTo(12.5, within(1e-9));
    assertThat(year.plants().heatedTo(0, 7, 0.5)).isCloseTo(15, within(1e-9));
    assertThat(year.plants().heatedTo(0, 7, 1)).isCloseTo(20, within(1e-9));
    assertThat(year.plants().heatedTo(0, 12, 0.25)).isEqualTo(20);
    assertThat(year.plants().heatedTo(0, 22, 1)).isEqualTo(20);
    assertThat(year.plants().heatedTo(0, 23, 0.25)).isEqualTo(10);
  }
}
