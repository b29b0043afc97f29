package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.BTUH;
import static org.shopclime.balance.TestShops.FOOT;
import static org.shopclime.balance.TestShops.R;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.fan;
import static org.shopclime.balance.TestShops.gain;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.outside;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.TestShops;
import org.shopclime.shop.Build;
import org.shopclime.shop.Face;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Span;

/** Steady loss in the cold, by hand with the films of the heating season. */
class WinterLossTest {

  private static final double COLD = celsius(20);
  private static final double WARM = celsius(65);

  private static Room plain() {
    Room room = box("Shop", RoomUse.COOLED, insulation(13), insulation(30));
    Room shiny = room.withFaces(room.faces().stream().map(f -> outside(f, 0.6, 0)).toList());
    return TestShops.withContents(shiny, 0, 0, 500);
  }

  private static double loss(Room... rooms) {
    return WinterLoss.of(ShopModel.heating(shop(rooms), constant(celsius(90), 2), COLD, 0), WARM);
  }

  /**
   * 65 °F inside, 20 °F outside: walls 864 ft² x 45 / (0.17 + 13 + 0.68), roof 576 ft² x 45 / (0.17
   * + 30 + 0.61), BTU/h; printed outside counts radiation, left out here: R-0.194 (29.2
   * W/(m²·K)).
   */
  @Test
  void shellByHand() {
    double foot = FOOT * FOOT;
    double hand = 864 * foot * 25 / (13.874 * R) + 576 * foot * 25 / (30.804 * R);
    assertThat(loss(plain())).isCloseTo(hand, withinPercentage(1.5));
  }

  /** 0.5 air changes of 146.8 m³ of air of -6.7 °C, nearly dry: 1.325 kg/m³ x 1007 J/(kg·K). */
  @Test
  void airByHand() {
    double air = 146.8 * 0.5 / 3600 * 1.321 * 1010 * 25;
    double with = loss(plain().withLeakage(new Leakage.AirChanges(Span.known(0.5))));
    assertThat(with - loss(plain())).isCloseTo(air, withinPercentage(1));
  }

  /** What gives off heat and what is switched off in idle hours do not count. */
  @Test
  void gainsAndIdleFansDoNotCount() {
    Room busy =
        plain()
            .withGains(List.of(gain("Oven", 5000, 0.5, 0, "always")))
            .withFans(List.of(fan("Fan", FanWay.OUT, 0.3, "work")));
    assertThat(loss(busy)).isCloseTo(loss(plain()), withinPercentage(1));
    Room drawn = plain().withFans(List.of(fan("Fan", FanWay.OUT, 0.3, "always")));
    assertThat(loss(drawn)).isGreaterThan(loss(plain()) + 5000);
  }

  /**
   * A room below a vented attic: its leakage at the attic's own temperature is found; the ceiling
   * loses more than if the attic stayed halfway between.
   */
  @Test
  void floatingAtticFindsItsOwnTemperature() {
    double tight = below(new Leakage.AirChanges(Span.known(0)));
    double vented = below(new Leakage.Area(Span.known(0.15)));
    double open = below(new Leakage.AirChanges(Span.known(1000)));
    assertThat(tight).isPositive().isLessThan(vented);
    assertThat(vented).isLessThan(open);
    double hand = 20 * 25 / ((0.61 + 10) * R + 1 / (4.17 + 1.9));
    assertThat(open).isCloseTo(hand, withinPercentage(6));
  }

  private static double below(Leakage leakage) {
    Room held =
        room(
            "Shop",
            RoomUse.COOLED,
            20,
            2.5,
            WISHED,
            face("Ceiling", Part.CEILING, "Attic", 0, 0, 5, 4, insulation(10)));
    Room attic =
        room(
                "Attic",
                RoomUse.FLOATING,
                20,
                1,
                WISHED,
                outside(face("Roof", Part.ROOF, "outdoors", 0, 0, 5, 4, insulation(2)), 0.6, 0))
            .withLeakage(leakage);
    return loss(TestShops.withContents(held, 0, 0, 300), attic);
  }

  /**
   * A bare slab of 96 ft of edge: 0.73 BTU/(h·ft·°F) x 96 ft x 45 °F = 3,154 BTU/h; with R-10 down
   * 2 ft 0.54 (ASHRAE 90.1, Table A6.3). Only the floor: nothing else loses. The ground below, here
   * at 90 °F, does not matter.
   */
  @Test
  void slabByItsEdge() {
    double bare = 0.73 * 96 * 45 * BTUH;
    assertThat(loss(onSlab(RoomUse.COOLED, 0, 0))).isCloseTo(bare, withinPercentage(0.1));
    double insulated = 0.54 * 96 * 45 * BTUH;
    assertThat(loss(onSlab(RoomUse.COOLED, 10 * R, 2 * FOOT)))
        .isCloseTo(insulated, withinPercentage(0.1));
  }

  /** Walls and slab add; what the ground takes in the network shows only as colder faces. */
  @Test
  void shellAndSlabAdd() {
    Room shell = plain();
    List<Face> faces = new ArrayList<>(shell.faces());
    faces.addAll(onSlab(RoomUse.COOLED, 0, 0).faces());
    double hand = loss(shell) + 0.73 * 96 * 45 * BTUH;
    assertThat(loss(shell.withFaces(faces))).isCloseTo(hand, withinPercentage(1));
  }

  /**
   * The slab of a room that floats stays in the network: nothing else touches the garage, so heat
   * of the ground at 90 °F comes through slab (0.943 W/(m²·K), ISO 13370, by hand in {@code
   * SlabPathTest}) and partition in a row.
   */
  @Test
  void slabOfAFloatingRoomStaysInTheNetwork() {
    Room held =
        room(
            "Shop",
            RoomUse.COOLED,
            20,
            2.5,
            WISHED,
            face("Partition", Part.WALL, "Garage", 0, 90, 8, 2.5, insulation(10)));
    Room garage = onSlab(RoomUse.FLOATING, 0, 0);
    double row = (0.68 + 10 + 0.68) * R / 20 + 1 / (0.943 * 53.51);
    double hand = (65 - 90) / 1.8 / row;
    assertThat(loss(TestShops.withContents(held, 0, 0, 300), garage))
        .isCloseTo(hand, withinPercentage(2));
  }

  private static Room onSlab(RoomUse use, double insulation, double depth) {
    double side = 24 * FOOT;
    Build.Slab bare = (Build.Slab) TestShops.slab(96 * FOOT);
    Build.Slab slab =
        new Build.Slab(
            bare.layers(), bare.exposedPerimeter(), insulation, depth, bare.soilConductivity());
    Room room =
        room(
            use == RoomUse.COOLED ? "Shop" : "Garage",
            use,
            side * side,
            9 * FOOT,
            WISHED,
            face("Floor", Part.FLOOR, "ground", 0, 180, side, side, slab));
    return TestShops.withContents(room, 0, 0, 800);
  }

  @Test
  void noDifferenceNoLoss() {
    double same =
        WinterLoss.of(ShopModel.heating(shop(plain()), constant(celsius(90), 2), COLD, 3), COLD);
    assertThat(same).isCloseTo(0, within(1e-6));
  }
}
