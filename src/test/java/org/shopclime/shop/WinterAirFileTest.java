package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;

/** Air in winter in the shop file. */
class WinterAirFileTest {

  private static ShopReading read(String more) {
    String text = ShopFile.write(Examples.shop("insulated"));
    String use = "\"use\": \"cooled\",";
    assertThat(text).contains(use);
    return ShopFile.read(text.replace(use, use + more), Stations.any());
  }

  private static List<String> warnings(String more) {
    return ((ShopReading.Good) read(more)).warnings().stream().map(Warning::path).toList();
  }

  @Test
  void whatIsNotSaidIsClassTwo() {
    WinterAir air = ((ShopReading.Good) read("")).shop().rooms().get(0).winterAir();
    assertThat(air.moisture()).isEqualTo(HumidityClass.CLASS_2);
    assertThat(air.humidity()).isEmpty();
    assertThat(ShopFile.write(Examples.shop("insulated"))).doesNotContain("winterAir");
  }

  @Test
  void itIsReadWrittenAndReadAgain() {
    ShopReading.Good good =
        (ShopReading.Good)
            read("\"winterAir\": {\"moisture\": \"class 4\", \"humidity\": \"45 %\"},");
    WinterAir air = good.shop().rooms().get(0).winterAir();
    assertThat(air.moisture()).isEqualTo(HumidityClass.CLASS_4);
    assertThat(air.humidity().orElseThrow()).isCloseTo(0.45, within(1e-12));
    String written = ShopFile.write(good.shop());
    assertThat(((ShopReading.Good) ShopFile.read(written, Stations.any())).shop())
        .isEqualTo(good.shop());
  }

  @Test
  void whatCannotBeIsRefusedAndWhatHasNoEffectIsSaid() {
    assertThat(
            ((ShopReading.Bad) read("\"winterAir\": {\"moisture\": \"class 5\"},"))
                .problems().stream().map(Problem::sentence))
        .singleElement()
        .asString()
        .startsWith("rooms[0].winterAir.moisture")
        .contains("class 1");
    String humid = "\"winterAir\": {\"humidity\": \"45 %\"},";
    assertThat(warnings(humid)).doesNotContain("rooms[0].winterAir.humidity");
    assertThat(warnings(humid + "\"heating\": \"none\",")).contains("rooms[0].winterAir.humidity");
  }
}
