package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.run.MadeShops.btuh;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shopclime.balance.ShopModel;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopEdit;

/** What is searched for is what asking about every day or size would find. */
class UnitSearchTest {

  private static final double FAHRENHEIT = 1 / 1.8;

  static Stream<Arguments> shopsThatKeepUp() {
    return Stream.of(
        Arguments.of("insulated", Examples.shop("insulated"), 12000),
        Arguments.of("foam", Examples.shop("insulated-foam-door"), 12000),
        Arguments.of(
            "compressor out", ShopEdit.compressorOut(Examples.shop("insulated-foam-door")), 12000),
        Arguments.of(
            "attached",
            preset("Attached two-car garage, bare attic, steel door", MadeShops.HOUSTON),
            18000),
        Arguments.of(
            "finished",
            preset("Detached stud shop, R-13 walls, R-38 ceiling", MadeShops.PHOENIX),
            12000),
        Arguments.of("shed", preset("Shed", MadeShops.MOBILE), 12000),
        Arguments.of(
            "post frame",
            preset("Post-frame metal shop with foil bubble wrap", MadeShops.MOBILE),
            36000));
  }

  private static Shop preset(String shell, String station) {
    return MadeShops.preset(shell, "Hand tools and radio", station, 0, Optional.empty());
  }

  /** As its owner would ask: the same shop, a day typed half a degree below and above. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("shopsThatKeepUp")
  void holdsJustBelowAndFailsJustAbove(String name, Shop shop, double capacity) {
    Cooling unit = MadeShops.window(btuh(capacity));
    OptionalDouble keepsUpTo = new UnitSearch(MadeShops.model(shop), 0).keepsUpTo(unit);
    assertThat(keepsUpTo).isPresent();
    double peak = keepsUpTo.getAsDouble();
    assertThat(typed(shop, peak - 0.5 * FAHRENHEIT, unit).holds())
        .as("%s °F", MadeShops.fahrenheit(peak))
        .isTrue();
    assertThat(typed(shop, peak + 0.5 * FAHRENHEIT, unit).holds())
        .as("%s °F", MadeShops.fahrenheit(peak))
        .isFalse();
  }

  private static LivedDay typed(Shop shop, double peak, Cooling unit) {
    ShopModel fresh = MadeShops.model(MadeShops.typed(shop, peak));
    return LivedDay.of(fresh, Optional.of(unit), 0);
  }

  /** Every tenth of a degree around the answer, and every five degrees of the range. */
  @Test
  void keepsUpToIsWhatAScanFinds() {
    UnitSearch search = new UnitSearch(MadeShops.model(Examples.shop("insulated-foam-door")), 0);
    Cooling unit = MadeShops.window(btuh(12000));
    double found = search.keepsUpTo(unit).orElseThrow();
    double peak = MadeShops.model(Examples.shop("insulated-foam-door")).outdoorPeak();
    double last = Double.NaN;
    for (int tenth = -6; tenth <= 6; tenth++) {
      double at = found + (tenth * 0.1 + 0.001) * FAHRENHEIT;
      if (search.shifted(unit, at - peak).holds()) {
        last = at;
        assertThat(tenth).as("holds above the answer").isLessThanOrEqualTo(0);
      } else {
        assertThat(tenth).as("fails below the answer").isGreaterThanOrEqualTo(0);
      }
    }
    assertThat(last).isCloseTo(found, within(0.11 * FAHRENHEIT));
    for (double f = 60; f <= 130; f += 10) {
      double at = MadeShops.celsius(f);
      assertThat(search.shifted(unit, at - peak).holds()).as("%s °F", f).isEqualTo(at <= found);
    }
  }

  @Test
  void nothingIsToldBeyondTheRange() {
    String furnace =
        ", \"gains\": [{\"kind\": \"other\", \"name\": \"Furnace\", \"power\": \"800 W\"}]";
    UnitSearch hot = new UnitSearch(MadeShops.model(MadeShops.box("27 m3", "0.1 /h", furnace)), 0);
    assertThat(hot.keepsUpTo(MadeShops.window(btuh(1000)))).isEmpty();
    assertThat(hot.shifted(MadeShops.window(btuh(1000)), -15).holds()).isFalse();
    Shop box = MadeShops.box("27 m3", "0.1 /h", "");
    UnitSearch small = new UnitSearch(MadeShops.model(box), 0);
    assertThat(small.keepsUpTo(MadeShops.window(btuh(36000)))).isEmpty();
    assertThat(small.shifted(MadeShops.window(btuh(36000)), 20).holds()).isTrue();
  }

  static Stream<Arguments> someShops() {
    return shopsThatKeepUp().skip(2).limit(3);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("someShops")
  void theSmallestThatHoldsIsTheFirstOfAll(String name, Shop shop, double ignored) {
    UnitSearch search = new UnitSearch(MadeShops.model(shop), 0);
    OptionalDouble first = OptionalDouble.empty();
    for (double size : Cooling.sizes()) {
      boolean holds = search.day(Optional.of(MadeShops.window(size))).holds();
      if (holds && first.isEmpty()) {
        first = OptionalDouble.of(size);
      }
      assertThat(holds).as("%s W", size).isEqualTo(first.isPresent());
    }
    assertThat(search.smallestThatHolds(MadeShops::window)).isEqualTo(first);
  }

  /** Where the search begins, and what is known of a unit already, changes nothing. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("someShops")
  void anyGuessFindsTheSame(String name, Shop shop, double capacity) {
    UnitSearch search = new UnitSearch(MadeShops.model(shop), 0);
    OptionalDouble plain = search.smallestThatHolds(MadeShops::window);
    double none = Double.POSITIVE_INFINITY;
    for (double guess : List.of(0.0, btuh(10000), btuh(18000), btuh(99000))) {
      assertThat(search.smallestThatHolds(MadeShops::window, 0, none, guess)).isEqualTo(plain);
    }
    double own = btuh(capacity);
    boolean holds = search.day(Optional.of(MadeShops.window(own))).holds();
    assertThat(
            search.smallestThatHolds(
                MadeShops::window, holds ? 0 : own, holds ? own : none, btuh(15000)))
        .isEqualTo(plain);
  }

  /** Halving the range of peaks with whole lived days, nothing guessed and nothing cut short. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("shopsThatKeepUp")
  void keepsUpToIsWhatHalvingFinds(String name, Shop shop, double capacity) {
    Cooling unit = MadeShops.window(btuh(capacity));
    ShopModel model = MadeShops.model(shop);
    UnitSearch search = new UnitSearch(model, 0);
    double holds = MadeShops.celsius(60) - model.outdoorPeak();
    double fails = MadeShops.celsius(130) - model.outdoorPeak();
    while (fails - holds > 0.05 * FAHRENHEIT) {
      double middle = (holds + fails) / 2;
      if (LivedDay.of(model.shifted(middle), Optional.of(unit), 0).holds()) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    double found = search.keepsUpTo(unit).orElseThrow();
    assertThat(found).isCloseTo(model.outdoorPeak() + holds, within(0.1 * FAHRENHEIT));
    LivedDay day = search.day(Optional.of(unit));
    assertThat(search.keepsUpTo(unit, day).orElseThrow())
        .isCloseTo(found, within(0.1 * FAHRENHEIT));
  }

  @Test
  void aBiggerUnitKeepsUpToMore() {
    UnitSearch search = new UnitSearch(MadeShops.model(Examples.shop("insulated-foam-door")), 0);
    double before = 0;
    for (double size : List.of(btuh(10000), btuh(12000), btuh(15000), btuh(18000))) {
      double peak = search.keepsUpTo(MadeShops.window(size)).orElseThrow();
      assertThat(peak).isGreaterThan(before + 1);
      before = peak;
    }
  }
}
