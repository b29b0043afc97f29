package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.AirState;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Profile;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.TestShops;
import org.shopclime.run.PlacedMachine;
import org.shopclime.run.PlacedRun;
import org.shopclime.run.RoomHours;
import org.shopclime.shop.Build;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Face;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopCheck;
import org.shopclime.shop.Stations;

/** A closet in a run of the whole shop, in steady heat, against the pencil closet. */
class PlacedClosetTest {

  private static final double ROOM = 25;
  private static final double WATTS = 600;
  private static final double RADIANT = 0.25;
  private static final Profile NONE = Profile.of(hour -> 0);

  private static Shop box() {
    Build build = TestShops.layers(TestShops.resisting(2));
    List<Face> faces = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      faces.add(TestShops.face("Wall " + side, Part.WALL, "nothing", 90 * side, 90, 6, 3, build));
    }
    faces.add(TestShops.face("Ceiling", Part.CEILING, "nothing", 0, 0, 6, 6, build));
    faces.add(TestShops.face("Floor", Part.FLOOR, "nothing", 0, 180, 6, 6, build));
    Room room = TestShops.room("Shop", RoomUse.COOLED, 36, 3, ROOM, faces.toArray(Face[]::new));
    return TestShops.shop(room.withGains(Examples.shop("insulated").rooms().get(0).gains()));
  }

  private static PlacedRun run(PlacedShop placed) {
    ShopModel model = TestShops.dark(placed.shop(), TestShops.constant(35, 0));
    return new PlacedRun(model, 0);
  }

  private static PlacedMachine machine(
      PlacedShop placed, Venting venting, double watts, double radiant) {
    return new PlacedMachine(
        0,
        placed.place(),
        new DraughtThrough(venting, Side.ROOM),
        -1,
        DaySlots.constant(1),
        DaySlots.constant(1),
        Profile.of(hour -> watts),
        radiant,
        NONE,
        NONE,
        NONE,
        NONE);
  }

  private static PlacedShop stair() {
    Shop shop = box();
    OwnedLine owned = OwnedLine.of(shop).orElseThrow();
    PlacedShop placed = PlacedShop.of(shop, owned, 0, PlacedShop.Walls.STAIR).orElseThrow();
    return new PlacedShop(
        placed
            .shop()
            .withRooms(placed.shop().rooms().stream().map(r -> r.withGains(List.of())).toList()),
        placed.place());
  }

  /**
   * By pencil, U of the partition: films 2 × 0.121, drywall 2 × 0.079, air 0.16 m²·K/W: 1.79; studs
   * 0.74 in place of the air, a quarter: 0.88; together 1.56 W/(m²·K), 17.5 W/K of 121 ft². 600 W,
   * vents 1.83 m apart, m = 0.65 A/√2 (353/T) √(2 · 9.81 · 1.83 ΔT/T), 1015 J/(kg·K). 0.0232 m²
   * (1/4 ft²): at 42.4 °C 0.0168 kg/s take 296 W, faces 304. 0.0929 m² (1 ft²): at 33.8 °C 0.0498
   * kg/s take 445 W, faces 154. 0.279 m² (3 ft²): at 29.6 °C 0.1107 kg/s take 519 W, faces 81.
   */
  @ParameterizedTest
  @CsvSource({"0.0232, 42.4", "0.0929, 33.8", "0.279, 29.6"})
  void threeVentsInARunAndByPencil(double area, double pencil) {
    Venting grilles = Venting.openings(Side.ROOM, Side.ROOM, area, 1.83);
    PlacedShop placed = stair();
    double found =
        run(placed).held(machine(placed, grilles, WATTS, RADIANT), ROOM).get(1).air().at(15);
    AirState room = AirState.ofRelativeHumidity(ROOM, 0.5, TestShops.PRESSURE);
    ClosetBalance balance =
        ClosetBalance.of(
            Closet.underStair(1.56),
            grilles,
            new PlaceAround(room, AirState.ofRelativeHumidity(35, 0.4, TestShops.PRESSURE)),
            WATTS);
    assertThat(balance.celsius()).isCloseTo(pencil, within(0.2));
    assertThat(found).isCloseTo(balance.celsius(), within(2 / 1.8));
  }

  /** All heat of a closet inside the room reaches the room, by partitions or by air. */
  @ParameterizedTest
  @CsvSource({"0", "0.02", "0.1"})
  void theRoomGetsAllOfIt(double area) {
    PlacedShop placed = stair();
    Venting grilles = Venting.openings(Side.ROOM, Side.ROOM, area, 1.83);
    PlacedRun run = run(placed);
    double with = run.held(machine(placed, grilles, WATTS, RADIANT), ROOM).get(0).plant().mean();
    double without = run.held(machine(placed, grilles, 0, 0), ROOM).get(0).plant().mean();
    assertThat(without - with).isCloseTo(WATTS, within(0.05));
  }

  /**
   * A fan of 0.1 m³/s from the room to outdoors takes 1.165 kg/m³ · 1025 J/(kg·K) · 0.1 = 119 W/K;
   * with faces 17.5 W/K the closet is 600/137 = 4.4 K above the room. The room gets 17.5 · 4.4 = 77
   * W by its faces and 119 · 10 = 1194 W by outdoor air in place of its own, as its leaks are none
   * with the fan off.
   */
  @Test
  void aFanToOutdoorsCostsTheRoomItsMakeUpAir() {
    PlacedShop placed = stair();
    Venting fan = Venting.fan(Side.ROOM, Side.OUTDOORS, 0.1);
    PlacedRun run = run(placed);
    List<RoomHours> with = run.held(machine(placed, fan, WATTS, 0), ROOM);
    double without = run.held(machine(placed, Venting.CLOSED, 0, 0), ROOM).get(0).plant().mean();
    assertThat(with.get(1).air().mean() - ROOM).isCloseTo(4.4, within(0.1));
    assertThat(without - with.get(0).plant().mean()).isCloseTo(77 + 1194, within(15.0));
  }

  /** A fan to the room makes the closet as damp as the room. */
  @Test
  void waterGoesRound() {
    PlacedShop placed = stair();
    List<RoomHours> rooms =
        run(placed).held(machine(placed, Venting.fan(Side.ROOM, Side.ROOM, 0.1), WATTS, 0), ROOM);
    assertThat(rooms.get(1).water().mean()).isCloseTo(rooms.get(0).water().mean(), within(1e-6));
  }

  /** Up while warm inside, down the stack while cold, by the same pencil flow. */
  @Test
  void aStackTurnsRound() {
    Venting stack = Venting.openings(Side.ROOM, Side.OUTDOORS, 0.05, 3);
    DraughtThrough through = new DraughtThrough(stack, Side.ROOM);
    AirState room = AirState.ofRelativeHumidity(25, 0.5, TestShops.PRESSURE);
    AirState out = AirState.ofRelativeHumidity(35, 0.4, TestShops.PRESSURE);
    // 0.65 · 0.05/√2 · √(2 · 9.80665 · 3 · 10/318.15) = 0.0313 m³/s of 1.10 kg/m³ at 45 °C.
    assertThat(through.dryAir(45, room, out, 0)).isCloseTo(0.0313 * 1.10, within(0.0005));
    // 8 K colder than outdoors: 0.0284 m³/s of outdoor air, 1.12 kg/m³.
    assertThat(through.dryAir(27, room, out, 0)).isCloseTo(-0.0284 * 1.12, within(0.0005));
    DraughtThrough fan = new DraughtThrough(Venting.fan(Side.ROOM, Side.ROOM, 0.1), Side.ROOM);
    assertThat(fan.dryAir(45, room, out, 0)).isZero();
    assertThat(fan.dryAir(45, room, out, 0.5)).isCloseTo(0.05 * 1.17, within(0.001));
  }

  /** Whatever the place, the shop with it passes the checks of a shop file, and keeps its area. */
  @Test
  void everyPlacedShopIsAShop() {
    for (String name : Examples.names()) {
      Shop shop = Examples.shop(name);
      OwnedLine owned = OwnedLine.of(shop).orElseThrow();
      for (PlacedShop.Walls walls : PlacedShop.Walls.values()) {
        Optional<PlacedShop> placed = PlacedShop.of(shop, owned, 0, walls);
        assertThat(placed).as(walls.name()).isPresent();
        assertThat(ShopCheck.check(placed.get().shop(), Stations.any()).problems()).isEmpty();
        assertThat(outer(placed.get().shop()) - outer(shop))
            .as(name + walls)
            .isCloseTo(walls == PlacedShop.Walls.LEAN_TO ? 64 * 0.3048 * 0.3048 : 0, within(0.01));
      }
    }
  }

  /** Outer walls and roof and floor, m². */
  private static double outer(Shop shop) {
    return shop.rooms().stream()
        .flatMap(room -> room.faces().stream())
        .filter(face -> !face.behind().equals("Shop") && !face.name().contains("artition"))
        .mapToDouble(Face::grossArea)
        .sum();
  }
}
