package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.FOOT;
import static org.shopclime.balance.TestShops.R;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.load.SteadyShopTest.line;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.TestShops;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.climate.StationClimate;
import org.shopclime.shop.Build;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;

/** What slabs and floors on the ground do to the load. */
class GroundLineTest {

  private static Room on(String behind, Build build) {
    double side = 24 * FOOT;
    Room room =
        room(
            "Shop",
            RoomUse.COOLED,
            side * side,
            9 * FOOT,
            WISHED,
            face("Floor", Part.FLOOR, behind, 0, 180, side, side, build));
    return TestShops.withContents(room, 0, 0, 800);
  }

  /**
   * Ground at 60 °F under a slab of U = 0.943 W/(m²·K) (ISO 13370, by hand in {@code
   * SlabPathTest}): 53.5 m² x 10 K x 0.943 = 504 W lost. The room is full of things as warm as its
   * air, as the standard's film supposes.
   */
  @Test
  void steadySlabByTheStandard() {
    RoomLoad load =
        PeakLoad.of(dark(shop(on("ground", TestShops.slab(96 * FOOT))), constant(celsius(60), 0)))
            .rooms()
            .get(0);
    assertThat(line(load, "Floor").pencil(12)).isCloseTo(-504, withinPercentage(0.5));
    assertThat(line(load, "Floor").sensible().at(12)).isCloseTo(-504, withinPercentage(2));
    assertThat(line(load, "Floor").drive().at(12)).isCloseTo(-10, within(1e-9));
  }

  @Test
  void slabInsideOtherSlabsLosesNothing() {
    RoomLoad load =
        PeakLoad.of(dark(shop(on("ground", TestShops.slab(0))), constant(celsius(60), 0)))
            .rooms()
            .get(0);
    assertThat(line(load, "Floor").sensible().at(12)).isCloseTo(0, within(1e-6));
    assertThat(line(load, "Floor").pencil(12)).isZero();
  }

  /** Boards of R-5 right on ground of 60 °F: 53.5 m² x 10 K / (R-5 + R-0.92) = 513 W lost. */
  @Test
  void plainFloorInTouchWithTheGround() {
    RoomLoad load =
        PeakLoad.of(dark(shop(on("ground", insulation(5))), constant(celsius(60), 0)))
            .rooms()
            .get(0);
    double hand = -53.51 * 10 / (5.92 * R);
    assertThat(line(load, "Floor").pencil(12)).isCloseTo(hand, withinPercentage(0.1));
    assertThat(line(load, "Floor").sensible().at(12)).isCloseTo(hand, withinPercentage(2));
  }

  @Test
  void nothingBehindBringsNothing() {
    RoomLoad load =
        PeakLoad.of(dark(shop(on("nothing", insulation(5))), constant(celsius(60), 0)))
            .rooms()
            .get(0);
    assertThat(line(load, "Floor").sensible().at(12)).isCloseTo(0, within(1e-6));
    assertThat(line(load, "Floor").pencil(12)).isZero();
  }

  /**
   * The ground under a shop is cool in Minneapolis, milder in Mobile, and in Phoenix warmer than 78
   * °F.
   */
  @Test
  void slabCoolsLessTowardsTheSouth() {
    double north = floor("Minneapolis");
    double gulf = floor("Mobile");
    double desert = floor("Phoenix");
    assertThat(north).isLessThan(gulf);
    assertThat(gulf).isLessThan(desert);
    assertThat(north).isBetween(-600.0, -150.0);
    assertThat(desert).isBetween(0.0, 300.0);
  }

  /**
   * At 78 °F the floor takes up heat on the hot day of Minneapolis, less from airport to airport
   * southwards (Des Moines, Kansas City, Oklahoma City, Dallas), and least in Phoenix, whose ground
   * is warmer than the room. Measured: 359, 272, 229, 89, 30 and -170 W.
   */
  @Test
  void lossShrinksFromStationToStation() {
    double before = Double.POSITIVE_INFINITY;
    for (String station : List.of("726580", "725460", "724460", "723530", "722590", "722780")) {
      double loss = -floor(station);
      assertThat(loss).as(station).isLessThan(before - 10);
      assertThat(loss > 0).as(station).isEqualTo(!station.equals("722780"));
      before = loss;
    }
  }

  private static double floor(String name) {
    StationClimate climate = Climates.load().find(name).orElseThrow();
    HotDay day = DesignDays.hotDay(climate, Level.P1);
    ShopModel model = ShopModel.cooling(Examples.shop("insulated"), day, ShopModel.Holding.HELD);
    RoomLoad load = PeakLoad.of(model).rooms().get(0);
    return line(load, "Floor").sensible().mean();
  }
}
