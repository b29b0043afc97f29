package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Problem;

/** Where the unit is set back to, in the shop file. */
class SetBackFileTest {

  private static ShopReading read(String more) {
    String text = ShopFile.write(Examples.shop("insulated"));
    String work = "\"work\": {";
    assertThat(text).contains(work);
    return ShopFile.read(text.replace(work, work + more), Stations.any());
  }

  private static Shop shop(ShopReading reading) {
    return ((ShopReading.Good) reading).shop();
  }

  /** 85 °F is 29.44 °C. */
  @Test
  void itIsReadWrittenAndReadAgain() {
    assertThat(shop(read("")).work().setBackTo()).isCloseTo(29.444, within(1e-3));
    assertThat(ShopFile.write(shop(read("")))).doesNotContain("setBackTo");
    Shop told = shop(read("\"setBackTo\": \"82 °F\","));
    assertThat(told.work().setBackTo()).isCloseTo(27.778, within(1e-3));
    assertThat(shop(ShopFile.read(ShopFile.write(told), Stations.any()))).isEqualTo(told);
  }

  @Test
  void whatCannotBeIsRefused() {
    for (String wrong : List.of("5 °F", "200 °F", "10 K", "cool")) {
      List<Problem> problems =
          ((ShopReading.Bad) read("\"setBackTo\": \"" + wrong + "\",")).problems();
      assertThat(problems).hasSize(1);
      assertThat(problems.get(0).sentence()).startsWith("work.setBackTo").contains(wrong);
    }
  }
}
