package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.load.RoomLoad;
import org.shopclime.run.UnitPoint;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** The unit of an answer against outdoor temperature, and the days of its cases. */
class UnitSightTest {

  private static final Climates CLIMATES = Climates.load();
  private static SizeAnswer answer;
  private static UnitSight sight;

  @BeforeAll
  static void reckon() {
    answer = answer(Examples.shop(Examples.USUAL));
    sight = UnitSight.of(answer).orElseThrow();
  }

  private static SizeAnswer answer(Shop shop) {
    return new Sizing(shop, CLIMATES).answer(List.of(), Progress.silent());
  }

  private static double fahrenheit(double celsius) {
    return celsius * 1.8 + 32;
  }

  @Test
  void isDrawnInTheRoomsWishedAir() {
    assertThat(fahrenheit(sight.room())).isCloseTo(78, within(1e-9));
    assertThat(sight.dewPoint()).isLessThan(sight.room());
    assertThat(fahrenheit(sight.curve().get(0).outdoor())).isCloseTo(65, within(1e-9));
    assertThat(fahrenheit(sight.curve().get(57).outdoor())).isCloseTo(122, within(1e-9));
    assertThat(sight.curve()).hasSize(58);
    assertThat(sight.at(answer.core().hotDay().peak()).outdoor())
        .isCloseTo(answer.core().hotDay().peak(), within(0.5 / 1.8));
  }

  /** The range printed with the curves: 75 to 115 °F. */
  @Test
  void edgesAreThoseTested() {
    assertThat(fahrenheit(sight.coolEdge().orElseThrow())).isCloseTo(75, within(1e-9));
    assertThat(fahrenheit(sight.hotEdge().orElseThrow())).isCloseTo(115, within(1e-9));
  }

  /** At the hot day itself the load is that of the answer, in its worst judged hour. */
  @Test
  void theLoadOfTheHotDayIsThatOfTheAnswer() {
    RoomLoad load = answer.core().load().rooms().get(0);
    double worst = 0;
    for (int hour : answer.core().unit().orElseThrow().judged()) {
      worst = Math.max(worst, load.sensible().at(hour));
    }
    UnitSight.LoadPoint now = sight.loads().get(sight.hotDay());
    assertThat(now.sensible()).isCloseTo(worst, within(1e-6));
    for (int i = 1; i < sight.loads().size(); i++) {
      assertThat(sight.loads().get(i).outdoor()).isGreaterThan(sight.loads().get(i - 1).outdoor());
      assertThat(sight.loads().get(i).sensible())
          .isGreaterThan(sight.loads().get(i - 1).sensible());
    }
  }

  /** Where the lines meet, the one is as high as the other. */
  @Test
  void meetsWhereBothAreAlike() {
    double meets = sight.meets().orElseThrow();
    UnitPoint unit = sight.at(meets);
    for (int i = 1; i < sight.loads().size(); i++) {
      UnitSight.LoadPoint low = sight.loads().get(i - 1);
      UnitSight.LoadPoint high = sight.loads().get(i);
      if (low.outdoor() <= meets && meets < high.outdoor()) {
        double way = (meets - low.outdoor()) / (high.outdoor() - low.outdoor());
        double load = low.sensible() + way * (high.sensible() - low.sensible());
        assertThat(load).isCloseTo(unit.sensible(), within(0.02 * load));
      }
    }
    // What walls keep and the 1 °F allowed move it by some degrees, not by many.
    assertThat(fahrenheit(meets))
        .isCloseTo(fahrenheit(answer.unit().orElseThrow().keepsUpTo().orElseThrow()), within(6.0));
  }

  @Test
  void withoutUnitThereIsNone() {
    assertThat(UnitSight.of(answer(Examples.shop(Examples.USUAL).withUnit(Optional.empty()))))
        .isEmpty();
  }

  @Test
  void everyCaseKeepsItsDay() {
    for (Scenario each : answer.scenarios()) {
      CaseDay day = each.day().orElseThrow();
      assertThat(day.lived().peakTemperature()).as(each.name()).isEqualTo(each.indoorPeak());
      assertThat(day.load().rooms()).as(each.name()).hasSize(1);
      assertThat(day.weather().equals(answer.core().hotDay()))
          .as(each.name())
          .isEqualTo(!each.name().contains("day"));
    }
    List<CaseDay> asItIs =
        answer.scenarios().stream()
            .map(each -> each.day().orElseThrow())
            .filter(CaseDay::asItIs)
            .toList();
    assertThat(asItIs).hasSize(1);
    assertThat(asItIs.get(0).lived()).isEqualTo(answer.core().unit().orElseThrow());
  }
}
