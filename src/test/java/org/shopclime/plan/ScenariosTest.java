package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.shopclime.shop.HotDayLevel;
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
            "dusty coil and filter, at best",
            "dusty coil and filter, at worst",
            "hottest day of a typical year",
            "most humid day");
    Shop bare = ShopEdit.withoutGains(Examples.shop("insulated"), Gain.Compressor.class);
    Shop noUnit = bare.withUnit(Optional.empty());
    assertThat(cases(noUnit))
        .extracting(Scenarios.Case::name)
        .containsExactly("work", "hottest day of a typical year", "most humid day");
    // asked for the hottest day itself, it is not told twice
    Place place = (Place) ShopParts.with(noUnit.place(), "typedPeak", Optional.empty());
    Shop hottest = noUnit.withPlace((Place) ShopParts.with(place, "level", HotDayLevel.HOTTEST));
    assertThat(cases(hottest))
        .extracting(Scenarios.Case::name)
        .containsExactly("work", "most humid day");
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

  @Test
  void aDustyUnitIsToldBrushedToo() {
    Shop shop = Examples.shop("insulated");
    Shop dusty = shop.withUnit(shop.unit().map(unit -> unit.withAirflow(Span.known(0.6))));
    Scenarios.Case brushed =
        cases(dusty).stream()
            .filter(each -> each.name().equals(Scenarios.BRUSHED))
            .findFirst()
            .orElseThrow();
    assertThat(brushed.shop().unit().orElseThrow().airflow().likely()).isEqualTo(1);
    assertThat(cases(shop)).extracting(Scenarios.Case::name).doesNotContain(Scenarios.BRUSHED);
    SizeAnswer answer = new Sizing(dusty, CLIMATES).answer(List.of(), Progress.silent());
    SizeAnswer clean = new Sizing(shop, CLIMATES).answer(List.of(), Progress.silent());
    DustAnswer told = DustAnswer.of(answer).orElseThrow();
    assertThat(told.clean()).isEqualTo(clean.core().indoorPeak());
    assertThat(told.best().indoorPeak()).isEqualTo(answer.core().indoorPeak());
  }

  /**
   * A third of the air lost: a clean coil gives 0.718605 + 0.410100 x 2/3 - 0.128705 x 4/9 = 0.9348
   * of its capacity (airflow curve of NREL/TP-5500-56354); the dirty ones a fifth less, drawing
   * 2.82 / 1.89 = 1.49 times as much (Ali and Ismail, 2008).
   */
  @Test
  void bothPublishedEndsOfDustAreTold() {
    SizeAnswer answer =
        new Sizing(Examples.shop("insulated-foam-door"), CLIMATES)
            .answer(List.of(), Progress.silent());
    DustAnswer dust = DustAnswer.of(answer).orElseThrow();
    assertThat(dust.lostAirflow()).isCloseTo(1.0 / 3, within(1e-12));
    assertThat(dust.worst().capacityLost()).isCloseTo(0.2, within(1e-9));
    assertThat(dust.worst().capacity()).isCloseTo(0.2 * 12000 * 0.29307107, within(1e-3));
    assertThat(dust.worst().extraEnergy()).isCloseTo(2.82 / 1.89 - 1, within(1e-9));
    assertThat(dust.best().capacityLost()).isCloseTo(1 - 0.9348, within(5e-5));
    assertThat(dust.best().indoorPeak()).isBetween(dust.clean(), dust.worst().indoorPeak());
    Shop noUnit = Examples.shop("insulated").withUnit(Optional.empty());
    assertThat(DustAnswer.of(new Sizing(noUnit, CLIMATES).answer(List.of(), Progress.silent())))
        .isEmpty();
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
    List<Scenario> dusty = told.stream().filter(each -> each.name().startsWith("dusty")).toList();
    notEasier(work.get(work.size() - 1), dusty.get(0));
    notEasier(dusty.get(0), dusty.get(1));
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
      Cooling.Dust dust = on.dust();
      assertThat(holds(search, room, size, efficiency, airflow, dust)).as(scenario.name()).isTrue();
      assertThat(holds(search, room, smaller, efficiency, airflow, dust))
          .as(scenario.name())
          .isFalse();
    }
  }

  private static boolean holds(
      UnitSearch search,
      int room,
      double size,
      double efficiency,
      double airflow,
      Cooling.Dust dust) {
    Cooling.Plate plate = new Cooling.Plate(size, efficiency, Cooling.Label.CEER, airflow, dust);
    return search.day(Optional.of(Cooling.of(Cooling.Kind.WINDOW, room, plate))).holds();
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
