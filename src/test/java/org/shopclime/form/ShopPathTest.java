package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;

class ShopPathTest {

  private static final Shop SHOP = Examples.shop(Examples.USUAL);

  @ParameterizedTest
  @ValueSource(strings = {"", "place", "rooms[0].faces[2].height", "unit.airflow"})
  void readsWhatItWrites(String text) {
    assertThat(ShopPath.parse(text)).hasToString(text);
  }

  @Test
  void everyPlaceOfAShopCanBeReadAndSetAlone() {
    List<ShopPath> places = new ArrayList<>();
    gather(ShopPath.SHOP, places);
    assertThat(places).hasSizeGreaterThan(150);
    for (ShopPath place : places) {
      Object value = place.value(SHOP).orElseThrow();
      assertThat(place.with(SHOP, value)).as(place.toString()).isEqualTo(SHOP);
      if (value instanceof Double number) {
        Shop changed = place.with(SHOP, number + 1);
        assertThat(place.value(changed)).as(place.toString()).contains(number + 1);
        assertThat(place.with(changed, number)).isEqualTo(SHOP);
      }
    }
  }

  private static void gather(ShopPath at, List<ShopPath> places) {
    places.add(at);
    Object value = at.value(SHOP).orElseThrow();
    if (value instanceof Span || value instanceof Schedule) {
      return;
    }
    at.record(SHOP)
        .ifPresent(
            record -> {
              for (ShopParts.Entry entry : ShopParts.of(record.getClass())) {
                gather(at.child(entry.name()), places);
                if (ShopParts.value(record, entry.name()) instanceof List<?> list) {
                  for (int i = 0; i < list.size(); i++) {
                    gather(at.child(entry.name(), i), places);
                  }
                }
              }
            });
  }

  @Test
  void whatIsNotThereIsNothing() {
    assertThat(ShopPath.parse("rooms[9]").value(SHOP)).isEmpty();
    assertThat(ShopPath.parse("rooms[0].chimney").value(SHOP)).isEmpty();
    Shop bare = SHOP.withUnit(Optional.empty());
    assertThat(ShopPath.parse("unit").value(bare)).contains(Optional.empty());
    assertThat(ShopPath.parse("unit.capacity").value(bare)).isEmpty();
  }

  @Test
  void knowsItsListAndSiblings() {
    ShopPath face = ShopPath.parse("rooms[0].faces[2]");
    assertThat(face.list()).hasToString("rooms[0].faces");
    assertThat(face.sibling(0)).hasToString("rooms[0].faces[0]");
    assertThat(face.isElement()).isTrue();
    assertThat(ShopPath.parse("unit").isElement()).isFalse();
    assertThat(face.child("height").isWithin(face)).isTrue();
    assertThat(face.isWithin(face.sibling(1))).isFalse();
  }
}
