package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.concrete;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.when;
import static org.shopclime.load.SteadyShopTest.line;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.ShopModel;
import org.shopclime.shop.Face;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.Passage;
import org.shopclime.shop.PassageKind;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

/** Air through what stands open between rooms in the load of held rooms, by pencil. */
class OpenStairLoadTest {

  private static final String NAME = "Stair: air from Loft";

  private static Face parting(Part part, double tilt, String behind, Passage passage) {
    return face("Between", part, behind, 0, tilt, 8, 2.5, insulation(500))
        .withPassage(Optional.of(passage));
  }

  private static Passage stair(String when) {
    return new Passage("Stair", PassageKind.FLOOR_OPENING, 0.9, 1, 0.25, when(when));
  }

  private static Passage doorway() {
    return new Passage("Stair", PassageKind.DOORWAY, 0.9, 2, 0, when("always"));
  }

  private static Face lid(String name) {
    return face(name, Part.WALL, "nothing", 0, 90, 8, 2.5, concrete());
  }

  /** A held shop, and beside or over it a loft of 100 m³ into which only outdoor air comes. */
  private static Shop both(Face parting, double airChanges) {
    Room below = room("Shop", RoomUse.COOLED, 20, 2.5, WISHED, parting, lid("Shop lid"));
    Room above =
        room("Loft", RoomUse.FLOATING, 40, 2.5, WISHED, lid("Loft lid"))
            .withLeakage(new Leakage.AirChanges(Span.known(airChanges)));
    return shop(below, above);
  }

  private static RoomLoad load(Shop shop, double outdoors, double humidityRatio) {
    return PeakLoad.of(dark(shop, constant(outdoors, 3, humidityRatio))).rooms().get(0);
  }

  /**
   * 10 °C and 0.005 kg/kg outdoors, 5 air changes of 100 m³: 0.13889 m³/s of 1.2369 kg/m³ of dry
   * air, 0.17179 kg/s, with 1015.3 J/(kg·K) 174.42 W/K. The hatch of 0.9 m², 0.25 m deep, moves
   * 0.0730838 D² √(D g ΔT / T), D = 1.07047 m: 0.271340 √(ΔT / T) m³/s. Shop 25.56 °C: a loft of
   * 11.9 °C has ΔT 13.66 K, T 291.88 K: 0.058700 m³/s of 1.1912 kg/m³, 0.069923 kg/s, with the
   * shop's 0.0103 kg/kg 1025.1 J/(kg·K): 71.68 W/K, 979 W; out of the loft 174.42 · 1.9 = 331 W.
   * Warmer: 14.5 °C has 11.06 K, 293.18 K: 0.052701 m³/s of 1.186, 0.062503 kg/s, 64.07 W/K, 709 W
   * against 785 W. Between them at 14.31 °C: 11.25 K, 720.5 W to 751; 14.22 °C: 11.34 K, 746 W
   * against 736.
   */
  @Test
  void aColdLoftCoolsTheShopByPencil() {
    Shop shop = both(parting(Part.CEILING, 0, "Loft", stair("always")), 5);
    ShopModel model = dark(shop, constant(10, 3, 0.005));
    ShopLoad load = PeakLoad.of(model);
    double loft = load.airTemperature().get(1).at(3);
    assertThat(loft).isCloseTo(14.24, within(0.06));
    Line line = line(load.rooms().get(0), NAME);
    assertThat(line.kind()).isEqualTo(ComponentKind.ROOM_AIR);
    assertThat(line.sensible().at(3)).isCloseTo(-740, within(8.0));
    assertThat(line.drive().at(3)).isCloseTo(loft - WISHED, within(1e-9));
    assertThat(load.rooms().get(0).sensible().at(3)).isCloseTo(-740, withinPercentage(3));
    // Water: the loft gets 0.1718 kg/s of 0.005 and 0.0633 kg/s of 0.0103 kg/kg: 0.00643.
    double latent = 0.0633 * (0.00643 - 0.0103) * (2_501_000 + 1860 * 14.24);
    assertThat(line.latent().at(3)).isCloseTo(latent, withinPercentage(3));
  }

  @Test
  void aHotLoftStaysAboveItsHatch() {
    Shop shop = both(parting(Part.CEILING, 0, "Loft", stair("always")), 5);
    assertThat(line(load(shop, 40, 0.015), NAME).sensible().at(3)).isZero();
    // Listed from above it is the same hatch.
    Room below = room("Shop", RoomUse.COOLED, 20, 2.5, WISHED, lid("Shop lid"));
    Room above =
        room(
                "Loft",
                RoomUse.FLOATING,
                40,
                2.5,
                WISHED,
                lid("Loft lid"),
                parting(Part.FLOOR, 180, "Shop", stair("always")))
            .withLeakage(new Leakage.AirChanges(Span.known(5)));
    assertThat(line(load(shop(below, above), 40, 0.015), NAME).sensible().at(3)).isZero();
    assertThat(line(load(shop(below, above), 10, 0.005), NAME).sensible().at(3))
        .isCloseTo(line(load(shop, 10, 0.005), NAME).sensible().at(3), withinPercentage(0.1));
  }

  @Test
  void aShutStairPassesNothing() {
    Shop shop = both(parting(Part.CEILING, 0, "Loft", stair("never")), 5);
    assertThat(line(load(shop, 10, 0.005), NAME).sensible().at(3)).isZero();
    Shop half = both(parting(Part.CEILING, 0, "Loft", stair("daily 0:00-24:00 50 %")), 1e-9);
    assertThat(line(load(half, 10, 0.005), NAME).sensible().at(3)).isCloseTo(0, within(1.0));
  }

  /**
   * Two held rooms, 25.56 °C and 21.11 °C, mean 296.48 K: through 0.9 m by 2 m go 0.65 / 3 · 1.8
   * √(9.80665 · 2 · 4.4444 / 296.48) = 0.21147 m³/s of 1.1726 kg/m³ of dry air: 0.24797 kg/s; of
   * heat 1025 · 4.4444 · 0.24797 = 1130 W. As wet as each other by 50 %: 0.0103 against 0.0078.
   */
  @Test
  void aDoorwayBetweenTwoHeldRooms() {
    Face parting = parting(Part.WALL, 90, "Cold", doorway());
    Room warm = room("Warm", RoomUse.COOLED, 20, 2.5, WISHED, parting, lid("Warm lid"));
    Room cold = room("Cold", RoomUse.COOLED, 20, 2.5, celsius(70), lid("Cold lid"));
    ShopLoad load = PeakLoad.of(dark(shop(warm, cold), constant(30, 3)));
    Line out = line(load.rooms().get(0), "Stair: air from Cold");
    Line in = line(load.rooms().get(1), "Stair: air from Warm");
    assertThat(out.sensible().at(5)).isCloseTo(-1130, withinPercentage(0.5));
    assertThat(in.sensible().at(5)).isCloseTo(1130, withinPercentage(1));
    assertThat(in.latent().at(5)).isBetween(1450.0, 1650.0);
    double both =
        out.sensible().at(5) + out.latent().at(5) + in.sensible().at(5) + in.latent().at(5);
    assertThat(both).as("what one gains the other loses").isCloseTo(0, within(1e-9 * 1130));
  }

  /**
   * In the cold the heater warms the loft through the hatch too. By pencil as above with 18.33 °C
   * inside, -10 °C outdoors, dry: 5 air changes of 100 m³ of 1.34 kg/m³ at 1008 J/(kg·K), 187.6
   * W/K. A loft of -3.8 °C: ΔT 22.13 K, T 280.4 K: 0.07623 m³/s of 1.24, 95.3 W/K, 2108 W in; out
   * 187.6 · 6.2 = 1163. At 0.1 °C: 18.23 K, 282.4 K: 0.06894, 1.231 kg/m³: 85.5 W/K, 1559 W; out
   * 1895. At -0.7 °C: 19.03, 282.0: 0.07049 m³/s, 1.233: 87.6 W/K, 1667; out 1745. At -0.9 °C 1695
   * and 1707.
   */
  @Test
  void aColdLoftCountsInTheWinterLoss() {
    Shop shop = both(parting(Part.CEILING, 0, "Loft", stair("always")), 5);
    ShopModel model = ShopModel.heating(shop, constant(30, 3), -10, 0);
    assertThat(WinterLoss.of(model, 18.33)).isCloseTo(1700, withinPercentage(2.5));
    Shop shut = both(parting(Part.CEILING, 0, "Loft", stair("never")), 5);
    assertThat(WinterLoss.of(ShopModel.heating(shut, constant(30, 3), -10, 0), 18.33))
        .isBetween(0.0, 20.0);
  }
}
