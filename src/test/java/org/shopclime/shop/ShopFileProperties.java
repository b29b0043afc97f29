package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.shopclime.quantity.UnitSystem;

/** What holds for every shop and every text. */
class ShopFileProperties {

  @Property
  void whatIsWrittenReadsBackEqual(@ForAll long number) throws JsonProcessingException {
    Shop shop = new RandomShops(number).shop();
    String text = ShopFile.write(shop);
    ShopReader reader = new ShopReader(UnitSystem.INCH_POUND);
    Shop back = reader.read("", tree(text), Shop.class);
    assertThat(reader.problems()).as(text).isEmpty();
    assertThat(back).isEqualTo(shop);
  }

  @Property
  void checkingNeverThrows(@ForAll long number) {
    Shop shop = new RandomShops(number).shop();
    assertThatCode(() -> ShopCheck.check(shop, Stations.any())).doesNotThrowAnyException();
  }

  @Property
  void noTextMakesItThrow(@ForAll String text) {
    assertThatCode(() -> ShopFile.read(text, Stations.any())).doesNotThrowAnyException();
  }

  @Property
  void noDamageMakesItThrow(@ForAll long number) {
    Random random = new Random(number);
    StringBuilder text = new StringBuilder(ShopFile.write(new RandomShops(number).shop()));
    String signs = "{}[]\",:0159.-e \\unot%' ";
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(text.length());
      switch (random.nextInt(3)) {
        case 0 -> text.deleteCharAt(at);
        case 1 -> text.insert(at, signs.charAt(random.nextInt(signs.length())));
        default -> text.setCharAt(at, signs.charAt(random.nextInt(signs.length())));
      }
    }
    assertThatCode(() -> ShopFile.read(text.toString(), Stations.any())).doesNotThrowAnyException();
  }

  @Property
  void nothingIsUnknownOnceChosen(@ForAll long number, @ForAll Choice choice) {
    Shop shop = new RandomShops(number).shop();
    Shop chosen = Unknowns.choose(shop, choice);
    assertThat(Unknowns.of(chosen)).isEmpty();
    for (SpanPlace place : Unknowns.of(shop)) {
      shop = Unknowns.chooseOne(shop, place, choice);
    }
    assertThat(shop).isEqualTo(chosen);
  }

  /** In this shop tools decide how long the compressor runs, whatever the owner does not know. */
  @Example
  void whatToolsDecideIsNotChosen() {
    for (Choice choice : Choice.values()) {
      nothingIsUnknownOnceChosen(-1689, choice);
    }
  }

  private static JsonNode tree(String text) throws JsonProcessingException {
    return new ObjectMapper().readTree(text);
  }
}
