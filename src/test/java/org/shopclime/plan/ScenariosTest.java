package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.Climates;
import org.shopclime.climate.HotDay;
import org.shopclime.run.Cooling;
import org.shopclime.run.UnitSearch;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Place;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopEdit;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;
import org.shopclime.unit.StandardSizes;

/** Other work and other days: which there are, and that each is the whole shop run again. */
class ScenariosTest {

  private static final Climates CLIMATES = Climates.load();

  private static List<Scenarios.Case> cases(Shop shop) {
    return Scenarios.of(shop, HotDays.of(shop.place(), CLIMATES), CLIMATES);
  }

  private static List<Scenario> told(Shop shop) {
    return new Sizing(shop, CLIMATES).answer(List.of(), Progress.silent()).scenarios();
  }

  @Test
  void aShopTellsWhatItHas() {
    assertThat(cases(Examples.shop("oven-day")))
        .extracting(Scenarios.Case::name)
        .containsExactly(
            "work",
            "work + compressor",
            "work + compressor + oven",
            "dusty coil and filter",
            "most humid day");
    Shop bare = ShopEdit.withoutGains(Examples.shop("insulated"), Gain.Compressor.class);
    Shop noUnit = bare.withUnit(Optional.empty());
    assertThat(cases(noUnit))
        .extracting(Scenarios.Case::name)
        .containsExactly("work", "most humid day");
    Shop usualDay =
        noUnit.withPlace((Place) ShopParts.with(noUnit.place(), "typedPeak", Optional.empty()));
    assertThat(cases(usualDay))
        .extracting(Scenarios.Case::name)
        .containsExactly("work", "hottest day of a typical year", "most humid day");
  }

  @Test
  void dustIsTheWorstOfWhoDoesNotKnowAndAThirdOfWhoDoes() {
    Shop shop = Examples.shop("insulated");
    assertThat(dusty(shop, new Span(0.6, 0.85, 1))).isEqualTo(0.6);
    assertThat(dusty(shop, Span.known(1))).isEqualTo(2 / 3.0);
    assertThat(dusty(shop, Span.known(0.5))).isEqualTo(0.5);
  }

  private static double dusty(Shop shop, Span airflow) {
    Shop with = shop.withUnit(shop.unit().map(unit -> unit.withAirflow(airflow)));
    return cases(with).stream()
        .filter(each -> each.name().startsWith("dusty"))
        .findFirst()
        .orElseThrow()
        .shop()
        .unit()
        .orElseThrow()
        .airflow()
        .likely();
  }

  /** More work and more dust never leave the room cooler, and never let a smaller unit do. */
  @ParameterizedTest
  @ValueSource(strings = {"insulated-foam-door", "oven-day", "bare-studs"})
  void moreWorkAndDustAreNeverEasier(String name) {
    List<Scenario> told = told(Examples.shop(name));
    List<Scenario> work = told.stream().filter(each -> each.name().startsWith("work")).toList();
    for (int i = 1; i < work.size(); i++) {
      notEasier(work.get(i - 1), work.get(i));
    }
    Scenario dusty =
        told.stream().filter(each -> each.name().startsWith("dusty")).findFirst().orElseThrow();
    notEasier(work.get(work.size() - 1), dusty);
  }

  private static void notEasier(Scenario one, Scenario other) {
    assertThat(other.indoorPeak()).isGreaterThanOrEqualTo(one.indoorPeak());
    assertThat(other.recommended().orElse(Double.POSITIVE_INFINITY))
        .isGreaterThanOrEqualTo(one.recommended().orElse(Double.POSITIVE_INFINITY));
  }

  /** The size told holds on a day run by itself, and the next smaller one does not. */
  @Test
  void sizesHoldAndSmallerOnesDoNot() {
    Shop shop = Examples.shop("oven-day");
    List<Scenario> told = told(shop);
    List<Scenarios.Case> cases = cases(shop);
    for (int i = 0; i < told.size(); i++) {
      Scenario scenario = told.get(i);
      assertThat(scenario.name()).isEqualTo(cases.get(i).name());
      Scenarios.Case on = cases.get(i);
      HotDay day = on.day().orElse(HotDays.of(shop.place(), CLIMATES));
      int room = Sizing.room(shop);
      UnitSearch search =
          new UnitSearch(ShopModel.cooling(on.shop(), day, ShopModel.Holding.HELD), room);
      double airflow = on.shop().unit().orElseThrow().airflow().likely();
      double efficiency = on.shop().unit().orElseThrow().efficiency();
      double size = scenario.recommended().orElseThrow();
      double smaller =
          StandardSizes.watts().stream().filter(each -> each < size - 1).reduce((a, b) -> b).get();
      assertThat(holds(search, room, size, efficiency, airflow)).as(scenario.name()).isTrue();
      assertThat(holds(search, room, smaller, efficiency, airflow)).as(scenario.name()).isFalse();
    }
  }

  private static boolean holds(
      UnitSearch search, int room, double size, double efficiency, double airflow) {
    return search
        .day(Optional.of(Cooling.window(room, size, efficiency, Cooling.Label.CEER, airflow)))
        .holds();
  }

  /** The case that is the shop as it stands tells what the answer tells. */
  @Test
  void theShopAsItStandsIsOneOfThem() {
    Shop shop = Examples.shop("oven-day");
    SizeAnswer answer = new Sizing(shop, CLIMATES).answer(List.of(), Progress.silent());
    Scenario same = answer.scenarios().get(2);
    assertThat(same.name()).isEqualTo("work + compressor + oven");
    assertThat(same.indoorPeak()).isEqualTo(answer.core().indoorPeak());
    assertThat(same.recommended()).isEqualTo(answer.recommended());
  }
}
