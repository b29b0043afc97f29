package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.TestShops;
import org.shopclime.shop.Face;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/** A hot loft warms the shop below through its floor, by conduction and by what that radiates. */
class HotLoftTest {

  private static final double OUTDOORS = 30;
  private static final double SIDE = 24 * TestShops.FOOT;

  private static LivedDay day(double loftWatts) {
    Room shop =
        TestShops.box("Shop", RoomUse.COOLED, TestShops.insulation(10), TestShops.insulation(10));
    List<Face> faces = new ArrayList<>(shop.faces());
    faces.removeIf(face -> face.part() == Part.ROOF);
    faces.add(
        TestShops.face("Ceiling", Part.CEILING, "Loft", 0, 0, SIDE, SIDE, TestShops.insulation(5)));
    Room loft =
        TestShops.box("Loft", RoomUse.FLOATING, TestShops.insulation(10), TestShops.insulation(10));
    List<Face> above = new ArrayList<>(loft.faces());
    above.removeIf(face -> face.part() == Part.FLOOR);
    Shop both =
        TestShops.shop(
            shop.withFaces(faces),
            loft.withFaces(above)
                .withGains(List.of(TestShops.gain("Machine", loftWatts, 0, 0, "always"))));
    return LivedDay.of(TestShops.dark(both, TestShops.constant(OUTDOORS, 3)), Optional.empty(), 0);
  }

  /**
   * By pencil, R in m²·K/W: walls and roof R-10, films 0.12 and 0.03: 1.91, so 80.3 m² of shop wall
   * carry 42 W/K and 133.8 m² of the loft's 70 W/K. Floor of the loft R-5 with 0.16 on both sides:
   * 1.20, 53.5 m² carry 44.4 W/K. 1500 W in the loft: 1500 / (70 + 44.4 · 42 / 86.4) = 16.4 K over
   * outdoors there, 8.4 K in the shop. The 355 W that come through the ceiling leave it half by
   * radiation, some 5 W/(m²·K): the ceiling's face is 0.9 K or so above the rest, and the mean
   * radiant temperature above the air.
   */
  @Test
  void itsFloorWarmsTheShopByAirAndRadiation() {
    // The sky cools roof and walls a little, with and without the heat alike.
    Trace cold = day(0).trace();
    Trace hot = day(1500).trace();
    double air = hot.air().mean() - cold.air().mean();
    assertThat(air).isCloseTo(8.4, within(0.8));
    double radiant = 2 * (hot.operative().mean() - cold.operative().mean()) - air;
    assertThat(radiant - air).isBetween(0.05, 0.9);
  }
}
