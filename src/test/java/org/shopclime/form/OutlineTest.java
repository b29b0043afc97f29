package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Build;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.ShellPreset;
import org.shopclime.shop.ShellPresets;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopCheck;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Stations;
import org.shopclime.shop.WorkPreset;
import org.shopclime.shop.WorkPresets;

class OutlineTest {

  private final Shop shop = SmallShop.shop();

  private static List<String> names(Outline.Node node) {
    List<String> names = new ArrayList<>(List.of(node.toString()));
    node.parts().forEach(part -> names.addAll(names(part)));
    return names;
  }

  @Test
  void listsThePartsInOrder() {
    assertThat(names(Outline.of(shop, UnitSystem.INCH_POUND)))
        .containsExactly(
            "Small shop",
            "Place and hot day  (722230)",
            "Working time  (Mon-Fri 8:00-17:00)",
            "Cooling unit  (12,000 BTU/h)",
            "Prices  (state average)",
            "Compressed air",
            "Shop  (cooled, 200 ft²)",
            "West wall  (20 × 8 ft)",
            "Window  (3 × 3 ft)",
            "Entry door  (3 × 6.75 ft)",
            "Roof  (20 × 10 ft)",
            "Floor  (20 × 10 ft)",
            "Fan  (50 cfm out)",
            "People  (1)",
            "Grinder  (1 hp)",
            "Contents");
  }

  @Test
  void whateverIsAddedOrDoubledPassesTheChecks() {
    for (String selected : List.of("place", "rooms[0]", "rooms[0].faces[0]")) {
      List<Outline.Addition> additions = Outline.additions(shop, ShopPath.parse(selected));
      assertThat(additions).hasSizeGreaterThan(8);
      for (Outline.Addition addition : additions) {
        List<?> list = (List<?>) addition.list().value(shop).orElseThrow();
        Shop more =
            addition.list().with(shop, Starts.inserted(list, list.size(), addition.element()));
        // a window more may be too much for the wall, but nothing else may be wrong
        assertThat(ShopCheck.check(more, Stations.any()).problems()).as(addition.words()).isEmpty();
      }
    }
  }

  @Test
  void onlyElementsAreRemovedAndNeverTheLastRoom() {
    assertThat(Outline.canRemove(shop, ShopPath.parse("rooms[0]"))).isFalse();
    assertThat(Outline.canRemove(shop, ShopPath.parse("rooms[0].faces[1]"))).isTrue();
    assertThat(Outline.canRemove(shop, ShopPath.parse("place"))).isFalse();
  }

  @Test
  void everyKindCanTakeThePlaceOfEveryOther() {
    for (Class<?> part : List.of(Gain.class, Build.class, Leakage.class)) {
      for (Class<?> from : ShopParts.kinds(part)) {
        for (Class<?> to : ShopParts.kinds(part)) {
          assertThat(Starts.swapped((Record) Starts.of(from), to)).isInstanceOf(to);
        }
      }
    }
    Gain.Motor motor = (Gain.Motor) Starts.of(Gain.Motor.class);
    Gain.Other other = (Gain.Other) Starts.swapped(motor, Gain.Other.class);
    assertThat(other.name()).isEqualTo(motor.name());
    assertThat(other.power()).isEqualTo(motor.power());
  }

  @Test
  void everyPresetMakesAShopWithoutProblems() {
    for (ShellPreset shell : ShellPresets.all()) {
      for (WorkPreset work : WorkPresets.all()) {
        Shop made =
            StartShop.of(
                shell,
                shell.usual(),
                work,
                "722230",
                OptionalDouble.of(StartShop.USUAL_UNIT),
                UnitSystem.SI);
        assertThat(ShopCheck.check(made, Stations.any()).problems()).as(shell.name()).isEmpty();
        assertThat(made.units()).isEqualTo(UnitSystem.SI);
        assertThat(StartShop.assumptions(shell, work)).contains(shell.assumptions().get(0));
      }
    }
  }

  @Test
  void everyStationOfferedIsFoundAgain() {
    Climates climates = Climates.load();
    Answering answering = Answering.of(climates);
    List<String> stations = KnownNames.of(climates).stations();
    assertThat(stations).doesNotHaveDuplicates().hasSameSizeAs(climates.all());
    assertThat(stations).allMatch(name -> answering.stations().known().test(name));
    KnownNames names = KnownNames.of(climates);
    assertThat(names.spelled("722230")).isEqualTo("Mobile Regional AP, AL");
    assertThat(names.spelled("Mobile")).isEqualTo("Mobile");
    assertThat(names.spelled(shop).rooms()).isEqualTo(shop.rooms());
  }
}
