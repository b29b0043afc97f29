package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.R;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.concrete;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.outside;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.wall;
import static org.shopclime.load.SteadyShopTest.line;

import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.TestShops;
import org.shopclime.shop.Face;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Span;

/**
 * Rooms beside and above each other in steady heat, each against a circuit written out by hand:
 * printed films without their radiation (upright 3.21, downwards 1.03, upwards 4.17, outside 17.0
 * W/(m²·K)), and radiation 4 σ T³ / (1/9 + 1/F) from each face to the radiant point of its room, F
 * = 2 between two equal planes that face each other. 4 σ T³ is taken at a round temperature; that
 * and the rounding of the films make 1 %.
 */
class SeveralRoomsTest {

  private static final double UPRIGHT = 3.21;
  private static final double DOWN = 1.03;
  private static final double UP = 4.17;
  private static final double OUTSIDE = 17.0;
  private static final double OUTDOORS = celsius(100);

  /** Two planes of 20 m² that face each other. */
  private static double radiation(double celsius) {
    return 20 * 4 * 5.670374e-8 * Math.pow(celsius + 273.15, 3) / (1.0 / 9 + 1.0 / 2);
  }

  private static Face back(String name, double azimuth) {
    return face(name, Part.WALL, "nothing", azimuth, 90, 8, 2.5, concrete());
  }

  /** Two rooms parted by a wall of R-5, each with one more wall that passes no heat. */
  @Test
  void partitionBetweenTwoCooledRooms() {
    Face parting = face("Partition", Part.WALL, "Cold", 90, 90, 8, 2.5, insulation(5));
    Room warm = room("Warm", RoomUse.COOLED, 8, 2.5, WISHED, parting, back("Warm back", 270));
    Room cold = room("Cold", RoomUse.COOLED, 8, 2.5, celsius(70), back("Cold back", 90));
    ShopLoad load = PeakLoad.of(dark(shop(warm, cold), constant(OUTDOORS, 3)));

    double heat =
        beside(new Circuit())
            .hold("warm air", WISHED)
            .hold("cold air", celsius(70))
            .solve()
            .into("cold air");
    RoomLoad inCold = load.rooms().get(1);
    RoomLoad inWarm = load.rooms().get(0);
    assertThat(heat).isBetween(65.0, 75.0);
    assertThat(line(inCold, "from Warm").sensible().at(7)).isCloseTo(heat, withinPercentage(1));
    assertThat(line(inWarm, "from Cold").sensible().at(7)).isCloseTo(-heat, withinPercentage(1));
    assertThat(inCold.sensible().at(7)).isCloseTo(heat, withinPercentage(1));
    assertThat(inWarm.sensible().at(7)).isCloseTo(-heat, withinPercentage(1));
    assertThat(line(inCold, "from Warm").drive().at(7)).isCloseTo(8 / 1.8, within(1e-9));
    assertThat(line(inCold, "from Warm").kind()).isEqualTo(ComponentKind.FROM_ROOM);
    assertThat(inWarm.lines()).extracting(Line::name).doesNotContain("Partition");
  }

  private static Circuit beside(Circuit circuit) {
    return circuit
        .tie("warm air", "warm back", 20 * UPRIGHT)
        .tie("warm back", "warm star", radiation(25))
        .tie("warm air", "warm side", 20 * UPRIGHT)
        .tie("warm side", "warm star", radiation(25))
        .tie("warm side", "cold side", 20 / (5 * R))
        .tie("cold side", "cold star", radiation(22))
        .tie("cold side", "cold air", 20 * UPRIGHT)
        .tie("cold star", "cold back", radiation(22))
        .tie("cold back", "cold air", 20 * UPRIGHT);
  }

  /** The second room floats: its back wall is R-3 to outdoors, and 1 air change an hour enters. */
  @Test
  void floatingRoomBesideACooledOne() {
    Face parting = face("Partition", Part.WALL, "Lean-to", 90, 90, 8, 2.5, insulation(5));
    Room held = room("Shop", RoomUse.COOLED, 8, 2.5, WISHED, parting, back("Back", 270));
    Room floating =
        room(
                "Lean-to",
                RoomUse.FLOATING,
                8,
                2.5,
                WISHED,
                outside(wall("Far wall", 90, 8, 2.5, insulation(3)), 0.6, 0))
            .withLeakage(new Leakage.AirChanges(Span.known(1)));
    ShopModel model = dark(shop(held, floating), constant(OUTDOORS, 3));
    ShopLoad load = PeakLoad.of(model);

    Circuit circuit =
        new Circuit()
            .tie("held air", "back", 20 * UPRIGHT)
            .tie("back", "held star", radiation(25.5))
            .tie("held air", "side", 20 * UPRIGHT)
            .tie("side", "held star", radiation(25.5))
            .tie("side", "far side", 20 / (5 * R))
            .tie("far side", "free star", radiation(34))
            .tie("far side", "free air", 20 * UPRIGHT)
            .tie("free star", "wall", radiation(34))
            .tie("wall", "free air", 20 * UPRIGHT)
            .tie("wall", "outdoors", 20 / (3 * R + 1 / OUTSIDE))
            .tie("free air", "outdoors", air(1, 20))
            .hold("held air", WISHED)
            .hold("outdoors", OUTDOORS)
            .solve();
    RoomLoad room = load.rooms().get(0);
    assertThat(load.airTemperature().get(1).at(3)).isCloseTo(circuit.at("free air"), within(0.05));
    assertThat(line(room, "Partition").sensible().at(3))
        .isCloseTo(circuit.into("held air"), withinPercentage(1));
    assertThat(line(room, "Partition").drive().at(3))
        .isCloseTo(circuit.at("free air") - WISHED, within(0.05));
    assertThat(load.rooms()).hasSize(1);

    RoomLoad second = PeakLoad.of(dark(shop(floating, held), constant(OUTDOORS, 3))).rooms().get(0);
    assertThat(second.room()).as("the order of the rooms means nothing").isEqualTo(1);
    assertThat(line(second, "Partition").drive().at(3))
        .isCloseTo(line(room, "Partition").drive().at(3), within(1e-6));
    assertThat(line(second, "Partition").sensible().at(3))
        .isCloseTo(line(room, "Partition").sensible().at(3), within(1e-6));
  }

  /** Heat carried by each kelvin of outdoor air, W/K. */
  private static double air(double changes, double volume) {
    double ratio = TestShops.wished();
    double density = MoistAir.dryAirDensity(OUTDOORS, ratio, TestShops.PRESSURE);
    return changes * volume / 3600 * density * (1006 + 1860 * ratio);
  }

  /** Shop, attic (2 air changes) and loft one above the other; between. */
  @Test
  void loftAboveAtticAboveShop() {
    Face floor = face("Floor", Part.FLOOR, "nothing", 0, 180, 5, 4, concrete());
    Face ceiling = face("Ceiling", Part.CEILING, "Attic", 0, 0, 5, 4, insulation(10));
    Face lid = face("Lid", Part.CEILING, "Loft", 0, 0, 5, 4, insulation(2));
    Face roof = outside(face("Roof", Part.ROOF, "outdoors", 0, 0, 5, 4, insulation(1)), 0.6, 0);
    Room held = room("Shop", RoomUse.COOLED, 20, 2.5, WISHED, floor, ceiling);
    Room attic =
        room("Attic", RoomUse.FLOATING, 20, 1, WISHED, lid)
            .withLeakage(new Leakage.AirChanges(Span.known(2)));
    Room loft = room("Loft", RoomUse.FLOATING, 20, 1, WISHED, roof);
    ShopLoad load = PeakLoad.of(dark(shop(held, attic, loft), constant(OUTDOORS, 3)));

    Circuit circuit =
        new Circuit()
            .tie("held air", "floor", 20 * UP)
            .tie("floor", "held star", radiation(25.7))
            .tie("held air", "ceiling", 20 * DOWN)
            .tie("ceiling", "held star", radiation(25.7))
            .tie("ceiling", "top", 20 / (10 * R))
            .tie("top", "attic air", 20 * DOWN)
            .tie("top", "attic star", radiation(35.5))
            .tie("attic star", "lid", radiation(35.5))
            .tie("lid", "attic air", 20 * DOWN)
            .tie("attic air", "outdoors", air(2, 20))
            .tie("lid", "lid top", 20 / (2 * R))
            .tie("lid top", "loft air", 20 * DOWN)
            .tie("lid top", "loft star", radiation(37))
            .tie("loft star", "roof", radiation(37))
            .tie("roof", "loft air", 20 * DOWN)
            .tie("roof", "outdoors", 20 / (1 * R + 1 / OUTSIDE))
            .hold("held air", WISHED)
            .hold("outdoors", OUTDOORS)
            .solve();
    RoomLoad room = load.rooms().get(0);
    assertThat(load.airTemperature().get(1).at(20))
        .isCloseTo(circuit.at("attic air"), within(0.05));
    assertThat(load.airTemperature().get(2).at(20)).isCloseTo(circuit.at("loft air"), within(0.05));
    assertThat(line(room, "Ceiling").sensible().at(20))
        .isCloseTo(circuit.into("held air"), withinPercentage(1));
    assertThat(room.lines())
        .as("what drives attic and loft counts in the ceiling")
        .extracting(Line::name)
        .containsExactly("Floor", "Ceiling", "Leakage");
  }

  /**
   * The floor of a loft listed in the loft is the same partition as a ceiling listed in the shop:
   * same films, same load.
   */
  @Test
  void partitionCountsTheSameFromWhicheverRoomItIsListed() {
    Face floor = face("Floor", Part.FLOOR, "nothing", 0, 180, 5, 4, concrete());
    Face roof = face("Roof", Part.ROOF, "outdoors", 0, 0, 5, 4, insulation(1));
    Face ceiling = face("Between", Part.CEILING, "Loft", 0, 0, 5, 4, insulation(4));
    Face boards = face("Between", Part.FLOOR, "Shop", 0, 180, 5, 4, insulation(4));
    RoomLoad below =
        PeakLoad.of(
                dark(
                    shop(
                        room("Shop", RoomUse.COOLED, 20, 2.5, WISHED, floor, ceiling),
                        room("Loft", RoomUse.FLOATING, 20, 1, WISHED, roof)),
                    constant(OUTDOORS, 3)))
            .rooms()
            .get(0);
    RoomLoad above =
        PeakLoad.of(
                dark(
                    shop(
                        room("Shop", RoomUse.COOLED, 20, 2.5, WISHED, floor),
                        room("Loft", RoomUse.FLOATING, 20, 1, WISHED, roof, boards)),
                    constant(OUTDOORS, 3)))
            .rooms()
            .get(0);
    assertThat(line(above, "Between").sensible().at(5))
        .isCloseTo(line(below, "Between").sensible().at(5), withinPercentage(1e-6));
    assertThat(line(above, "Between").pencil(5))
        .isCloseTo(line(below, "Between").pencil(5), withinPercentage(1e-6));
  }
}
