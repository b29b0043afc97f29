package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.ShopModel;

/** Air that flows into the rooms and between them in a step of a day. */
class DayAirTest {

  private static final int NOON = 144;

  /** It flows as in the air the rooms stand in, then as in that of the step. */
  @Test
  void theFlowFollowsTheAir() {
    ShopModel model = MadeShops.model(MadeShops.example("insulated", MadeShops.MOBILE));
    DayParts parts = DayParts.of(model, Optional.empty());
    parts.march().start(10);
    parts.look(NOON);
    double cold = model.streams().total(0, 10, DayKind.WORKING, NOON, 1);
    assertThat(parts.outdoors().inflow(0)).isEqualTo(cold);
    parts.air().flowAgain(60);
    double hot = model.streams().total(0, 60, DayKind.WORKING, NOON, 1);
    assertThat(parts.outdoors().inflow(0)).isEqualTo(hot);
    assertThat(Math.abs(hot - cold)).isGreaterThan(1e-4);
  }

  /**
   * A run begins with the means of an idle day: the box is as warm as outdoors, but for the sky,
   * which takes its walls 0.65 K lower: 0.7 W/K of walls (18 m², 25 m²·K/W) beside 33 of leaks make
   * 0.014 K of it.
   */
  @Test
  void itBeginsAtRest() {
    ShopModel box = MadeShops.steady(MadeShops.box("25", "100 m3", "1 /h", ""), 20, 0.008);
    assertThat(DayParts.of(box, Optional.empty()).march().air(0))
        .isCloseTo(20 - 0.014, within(0.005));
  }

  /** Where rooms stand open to each other, the air between them is brought near to the step's. */
  @Test
  void airBetweenRoomsIsFound() {
    int open = 0;
    for (long lot = 1; open < 3; lot++) {
      DrawnShop drawn = new DrawnShop(lot);
      var shop = drawn.opened(drawn.shop());
      ShopModel model = ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD);
      if (model.passages().count() > 0) {
        DayParts parts = DayParts.of(model, Optional.empty());
        parts.look(NOON);
        parts.air().settle();
        assertThat(parts.air().isFound()).as("lot %s", lot).isTrue();
        open++;
      }
    }
  }
}
