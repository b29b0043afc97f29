package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Strips and air doors in the shop file. */
class DoorScreenTest {

  private static final String OPEN = "\"openMinutes\": \"2 min\"";

  private static ShopReading read(String after) {
    String text = Examples.text("insulated-foam-door");
    assertThat(text).contains(OPEN);
    return ShopFile.read(text.replace(OPEN, after), Stations.any());
  }

  private static List<String> said(String after, String end) {
    return ((ShopReading.Good) read(after))
        .warnings().stream().filter(each -> each.path().endsWith(end)).map(Warning::text).toList();
  }

  @Test
  void aFileKeepsIt() {
    Shop shop = ((ShopReading.Good) read(OPEN + ", \"screen\": \"air door\"")).shop();
    String file = ShopFile.write(shop);
    assertThat(file).contains("\"screen\": \"air door\"");
    assertThat(((ShopReading.Good) ShopFile.read(file, Stations.any())).shop()).isEqualTo(shop);
    assertThat(ShopFile.write(Examples.shop("insulated-foam-door"))).doesNotContain("screen");
    assertThat(read(OPEN + ", \"screen\": \"plastic\"")).isInstanceOf(ShopReading.Bad.class);
  }

  @Test
  void anAirDoorIsNoInsulation() {
    assertThat(said(OPEN + ", \"screen\": \"air door\"", ".screen"))
        .singleElement()
        .asString()
        .contains("not insulation");
    assertThat(said(OPEN + ", \"screen\": \"strips\"", ".screen")).isEmpty();
    assertThat(said("\"openMinutes\": \"0 min\", \"screen\": \"strips\"", ".screen"))
        .singleElement()
        .asString()
        .contains("no effect");
  }

  /** Strips go into big doors that are opened; entry doors and what hangs already stay. */
  @Test
  void stripsAreHungWhereThereIsNothing() {
    Shop shop = Examples.shop("insulated-foam-door");
    Shop strips = ShopEdit.stripsInOpenDoors(shop);
    assertThat(ShopParts.alike(strips, shop)).isFalse();
    assertThat(ShopParts.alike(ShopEdit.stripsInOpenDoors(strips), strips)).isTrue();
    assertThat(ShopFile.write(strips).split("\"screen\": \"strips\"", -1)).hasSize(2);
    Shop shut = ((ShopReading.Good) read("\"openMinutes\": \"0 min\"")).shop();
    assertThat(ShopParts.alike(ShopEdit.stripsInOpenDoors(shut), shut)).isTrue();
  }
}
