package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;

class ShopPartsTest {

  private static final Place PLACE = ShopParts.create(Place.class, Map.of("station", "722230"));

  @Test
  void tellsWhatEachComponentIs() {
    List<ShopParts.Entry> entries = ShopParts.of(Shop.class);
    assertThat(entries)
        .extracting(ShopParts.Entry::name)
        .containsExactly(
            "name", "note", "units", "place", "work", "rooms", "unit", "prices", "air", "flue");
    assertThat(entries.get(0).held()).isEqualTo(String.class);
    assertThat(entries.get(5).type()).isEqualTo(List.class);
    assertThat(entries.get(5).held()).isEqualTo(Room.class);
    assertThat(entries.get(6).type()).isEqualTo(Optional.class);
    assertThat(entries.get(6).held()).isEqualTo(CoolingUnit.class);
    assertThat(entries.get(6).say().label()).isEqualTo("Cooling unit");
  }

  @Test
  void readsAndChangesOneValue() {
    Record changed = ShopParts.with(PLACE, "groundReflectance", 0.5);
    assertThat(ShopParts.value(changed, "groundReflectance")).isEqualTo(0.5);
    assertThat(ShopParts.value(PLACE, "groundReflectance")).isEqualTo(0.2);
    assertThat(ShopParts.value(changed, "station")).isEqualTo("722230");
    assertThatThrownBy(() -> ShopParts.value(PLACE, "state"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Place has no \"state\"");
    assertThatThrownBy(() -> ShopParts.with(PLACE, "state", "AL"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void makesRecordsAsIfReadFromAFile() {
    assertThat(PLACE.level()).isEqualTo(HotDayLevel.P1);
    assertThat(PLACE.typedPeak()).isEmpty();
    assertThatThrownBy(() -> ShopParts.create(Place.class, Map.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Place without \"station\"");
    assertThatThrownBy(() -> ShopParts.create(Place.class, Map.of("state", "AL")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void tellsWhatAbsentAndUnknownMean() {
    assertThat(ShopParts.absent(Place.class, "level")).contains(HotDayLevel.P1);
    assertThat(ShopParts.absent(Place.class, "station")).isEmpty();
    assertThat(ShopParts.unknown(entry(CoolingUnit.class, "airflow").say()))
        .contains(new Span(0.6, 0.85, 1));
    assertThat(ShopParts.unknown(entry(CoolingUnit.class, "capacity").say())).isEmpty();
  }

  @Test
  void holdsFiguresAgainstTheirBounds() {
    Say peak = entry(Place.class, "typedPeak").say();
    assertThat(ShopParts.read(peak, "50 °F", UnitSystem.SI)).isEqualTo(new Reading.Good(10.0));
    assertThat(ShopParts.read(peak, "-0 °C", UnitSystem.SI)).isInstanceOf(Reading.Bad.class);
    assertThat(((Reading.Bad) ShopParts.read(peak, "70 °C", UnitSystem.SI)).sentence())
        .startsWith("found \"70 °C\"; takes a temperature")
        .endsWith("from 10 °C to 60 °C");
    assertThat(((Reading.Bad) ShopParts.read(peak, "hot", UnitSystem.INCH_POUND)).sentence())
        .startsWith("found \"hot\"")
        .endsWith("from 50 °F to 140 °F");
  }

  @Test
  void alikeIsWhatEqualIs() {
    List<Shop> shops = new ArrayList<>();
    for (String name : Examples.names()) {
      Shop shop = Examples.shop(name);
      shops.addAll(List.of(shop, Examples.shop(name), shop.withUnit(Optional.empty())));
      shops.addAll(List.of(ShopEdit.leakageHalved(shop), ShopEdit.windowsShaded(shop)));
      shops.addAll(List.of(ShopEdit.doorBoards(shop, List.of()), ShopEdit.compressorOut(shop)));
    }
    for (Shop one : shops) {
      for (Shop other : shops) {
        assertThat(ShopParts.alike(one, other)).isEqualTo(one.equals(other));
      }
    }
  }

  @Test
  void listsTheKindsOfAPart() {
    assertThat(ShopParts.kinds(Build.class))
        .containsExactly(Build.Layers.class, Build.Framed.class, Build.Slab.class);
    assertThat(ShopParts.kind(Leakage.BlowerDoor.class)).isEqualTo("blower door");
  }

  private static ShopParts.Entry entry(Class<?> record, String name) {
    return ShopParts.of(record).stream()
        .filter(entry -> entry.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
