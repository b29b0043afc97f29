package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.shop.Door;
import org.shopclime.shop.DoorType;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanUse;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.FlueKind;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

class AirBookTest {

  private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;
  private static final double BTUH = 3.412141633;

  private static Fan fan(
      String name, FanWay way, double cfm, FanUse use, double minutes, double led) {
    return new Fan(name, way, cfm * CFM, TestShops.when("work"), use, minutes * 60, led);
  }

  private static Room room(Leakage leakage, Fan... fans) {
    return TestShops.box("Shop", RoomUse.COOLED, TestShops.insulation(13), TestShops.insulation(30))
        .withLeakage(leakage)
        .withFans(List.of(fans));
  }

  /** Wind still, 98 °F at a dew point of 75 °F, 0.0189 kg/kg; inside 78 °F and 50 %, 0.0102. */
  private static AirBook book(Room room) {
    return book(TestShops.shop(room));
  }

  private static AirBook book(Shop shop) {
    return ShopModel.cooling(
            shop, TestShops.constant(TestShops.celsius(98), 0, 0.0189), ShopModel.Holding.HELD)
        .airBook(0);
  }

  private static AirPath path(AirBook book, String name) {
    return book.paths().stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * By pencil, no leak of its own: 800 CFM out all the hour. 800 · 4.4 lb/h (13.7 ft³/lb dry air of
   * humid 98 °F air) = 3,390 lb/h of dry air; heat 3,390 · 0.245 · 20 = 16,600 BTU/h; water 3,390 ·
   * 0.0087 = 29.5 lb/h, by some 1,105 BTU/lb 32,600 BTU/h.
   */
  @Test
  void collectorByPencil() {
    Leakage none = new Leakage.AirChanges(Span.known(0));
    AirBook book = book(room(none, fan("Dust", FanWay.OUT, 800, FanUse.DUST_COLLECTOR, 60, 0)));
    assertThat(book.in()).isCloseTo(800 * CFM, within(1e-12));
    assertThat(book.out()).isCloseTo(800 * CFM, within(1e-12));
    assertThat(book.sensible() * BTUH).isCloseTo(16_600, within(400.0));
    assertThat(book.latent() * BTUH).isCloseTo(32_600, within(1000.0));
    assertThat(book.water() * 3600 / 0.45359237).isCloseTo(29.5, within(0.8));
    assertThat(path(book, "Leakage").in()).isCloseTo(800 * CFM, within(1e-12));
    assertThat(path(book, "Leakage").total()).isZero();
    assertThat(book.byFans()).isCloseTo(book.total(), within(1e-9));
    assertThat(book.suction().pascals()).isNaN();
    assertThat(book.suction().fans()).containsExactly("Dust");
  }

  /**
   * Returned air costs nothing; three quarters led leave a quarter; a third of the hour a third.
   */
  @Test
  void returnedLedAndPausingAir() {
    Leakage none = new Leakage.AirChanges(Span.known(0));
    double whole =
        book(room(none, fan("Dust", FanWay.OUT, 600, FanUse.DUST_COLLECTOR, 60, 0))).total();
    AirBook returned =
        book(room(none, fan("Dust", FanWay.FILTERED_RETURN, 600, FanUse.DUST_COLLECTOR, 60, 0)));
    assertThat(returned.total()).isZero();
    assertThat(path(returned, "Dust").returned()).isCloseTo(600 * CFM, within(1e-12));
    assertThat(returned.suction().fans()).isEmpty();
    AirBook led = book(room(none, fan("Dust", FanWay.OUT, 600, FanUse.DUST_COLLECTOR, 60, 0.75)));
    assertThat(led.total()).isCloseTo(whole / 4, within(1e-9 * whole));
    assertThat(path(led, "Dust").led()).isCloseTo(450 * CFM, within(1e-12));
    AirBook third = book(room(none, fan("Dust", FanWay.OUT, 600, FanUse.DUST_COLLECTOR, 20, 0)));
    assertThat(third.total()).isCloseTo(whole / 3, within(1e-9 * whole));
  }

  /**
   * 0.05 m² at 4 Pa let 0.05 · 2.58 m/s = 0.129 m³/s through; 1000 CFM, 0.472 m³/s, need 4 ·
   * (0.472/0.129)^(1/0.65) = 29.4 Pa. On a leaf of 0.9 by 2 m with its handle at 0.83 m: 0.9² · 2 ·
   * 29.4 / (2 · 0.83) = 28.7 N.
   */
  @Test
  void suctionByPencil() {
    Leakage area = new Leakage.Area(Span.known(0.05));
    Room plain = room(area, fan("Dust", FanWay.OUT, 1000, FanUse.DUST_COLLECTOR, 10, 0));
    AirBook book = book(TestShops.shop(withDoor(plain)).withFlue(FlueKind.WATER_HEATER));
    AirSuction suction = book.suction();
    assertThat(suction.pascals()).isCloseTo(29.4, within(0.3));
    assertThat(suction.place()).isEqualTo("rooms[0].fans[0]");
    assertThat(suction.flueLimit()).isEqualTo(2);
    assertThat(suction.endangersFlue()).isTrue();
    AirSuction.HardDoor door = suction.door().orElseThrow();
    assertThat(door.newtons()).isCloseTo(28.7, within(0.3));
    assertThat(door.isTooHard()).isFalse();
  }

  private static Room withDoor(Room room) {
    return room.withFaces(
        room.faces().stream()
            .map(
                face ->
                    face.name().equals(room.faces().get(0).name())
                        ? face.withDoors(List.of(entry(TestShops.door("Door", 0.9, 2, 0))))
                        : face)
            .toList());
  }

  private static Door entry(Door door) {
    return new Door(
        door.name(),
        DoorType.ENTRY,
        door.width(),
        door.height(),
        door.leaf(),
        door.boards(),
        door.coverage(),
        door.seal(),
        door.openMinutes(),
        door.openWhen(),
        door.screen(),
        door.absorptance());
  }

  /** A fan that blows in as much takes the suction away. */
  @Test
  void supplyTakesTheSuctionAway() {
    Leakage area = new Leakage.Area(Span.known(0.05));
    AirBook book =
        book(
            room(
                area,
                fan("Dust", FanWay.OUT, 500, FanUse.DUST_COLLECTOR, 60, 0),
                fan("Fresh", FanWay.IN, 500, FanUse.OTHER, 60, 0)));
    assertThat(book.suction().pascals()).isZero();
    assertThat(path(book, "Fresh").in()).isCloseTo(500 * CFM, within(1e-12));
    assertThat(path(book, "Leakage").in()).isCloseTo(path(book, "Leakage").out(), within(1e-12));
  }

  /** On drawn shops in is out, and the costs are those of the load's own air streams. */
  @Property(tries = 40)
  void inIsOutOnAnyShop(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    ShopModel model = ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD);
    AirBook book = model.airBook(0);
    double density = model.streams().density(book.hour());
    double all =
        model
                .streams()
                .total(
                    0,
                    book.indoor(),
                    DayKind.WORKING,
                    (book.hour() - 1) * DaySlots.PER_HOUR,
                    DaySlots.PER_HOUR)
            / density;
    double scale = Math.max(1e-3, all);
    assertThat((book.in() - book.out()) / scale).isCloseTo(0, within(1e-9));
    assertThat((book.in() - all) / scale).isCloseTo(0, within(1e-9));
    double reference = model.wishedHumidityRatio(0);
    double cost =
        all
            * density
            * (MoistAir.enthalpy(
                    model.outdoor(book.hour()), model.outdoorHumidityRatio(book.hour()))
                - MoistAir.enthalpy(book.indoor(), reference));
    assertThat(book.total()).isCloseTo(cost, within(1e-9 * Math.max(1000, Math.abs(cost))));
    for (AirPath path : book.paths()) {
      assertThat(path.in()).isNotNegative();
      assertThat(path.out()).isNotNegative();
    }
  }
}
