package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.LineChange;
import org.shopclime.climate.Climates;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/** What a line has already is no change of it; how long the machine runs and stays hot is told. */
class OwnedPartsTest {

  private static final Climates CLIMATES = Climates.load();

  private static Shop with(Shop shop, String field, Object value) {
    return shop.withAir((CompressedAir) ShopParts.with(shop.air(), field, value));
  }

  @Test
  void whatIsThereIsNotAdded() {
    Shop shop = Examples.shop("powder-day");
    assertThat(shop.air().aftercooler()).isEqualTo(CompressedAir.YesNo.YES);
    shop = with(shop, "intake", CompressedAir.AirIntake.ROOM);
    shop = with(shop, "dryer", CompressedAir.AirDryer.REFRIGERATED);
    AirlineAnswer answer = AirlineAsk.answer(shop, CLIMATES).orElseThrow();
    assertThat(answer.changes())
        .extracting(LineChange::kind)
        .containsExactly(
            LineChange.Kind.AS_IT_IS,
            LineChange.Kind.DROP_LEG,
            LineChange.Kind.DESICCANT_DRYER,
            LineChange.Kind.OUTDOOR_INTAKE);
    // A drop leg behind the dryer has nothing left to catch, and says so.
    assertThat(answer.changes().get(1).lineWater())
        .isLessThanOrEqualTo(answer.changes().get(0).lineWater() + 1e-9);
  }

  /**
   * 5 hp: 8 kg of iron each x 500 J/(kg·K) x 100 K are 2.0 MJ, 1,900 BTU, 560 Wh; half of it leaves
   * in 1,800 s x ln 2, 21 min.
   */
  @Test
  void runningTimeAndHotPumpAreTold() {
    AirlineAnswer answer =
        AirlineAsk.answer(Examples.shop("insulated-foam-door"), CLIMATES).orElseThrow();
    String all = String.join(" ", new AirlineWords(answer, UnitSystem.INCH_POUND).cautions());
    assertThat(all)
        .contains("It runs up to 33 % of a working hour; such machines are made for 75 %.")
        .contains("about 1,900 BTU and gives off half of it in 21 min");
    assertThat(String.join(" ", new AirlineWords(answer, UnitSystem.SI).cautions()))
        .contains("about 560 Wh");
  }
}
