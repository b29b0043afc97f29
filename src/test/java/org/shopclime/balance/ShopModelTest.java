package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.face;
import static org.shopclime.balance.TestShops.gain;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.sunny;
import static org.shopclime.balance.TestShops.swinging;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.MoistAir;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.SteadyState;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.sun.SkyTemperature;

/** A shop on a day as numbers. */
class ShopModelTest {

  private static final double SIGMA = 5.670374419e-8;

  /**
   * A room under a single roof, shut, without any heat: it settles where the roof's outer face
   * loses as much to the sky as it takes from the air: 17.0 (Ta - T) + 0.9 σ (s Ts⁴ + (1 - s) Ta⁴ -
   * T⁴) = 0, the sky's share s = ((1 + cos tilt) / 2)^1.5, solved by halving.
   */
  @ParameterizedTest
  @CsvSource({"0, 1", "60, 0.6495190528383290", "90, 0.3535533905932738"})
  void roofUnderTheSkyByTheFourthPower(double tilt, double share) {
    double air = celsius(95);
    Room room =
        room(
            "Box",
            RoomUse.FLOATING,
            20,
            2,
            WISHED,
            face("Roof", Part.ROOF, "outdoors", 0, tilt, 5, 4, insulation(2)));
    ShopModel model = dark(shop(room), constant(air, 0));
    Drivers drivers = new Drivers(model.network());
    model.drivers(DayKind.WORKING, line -> true, 0).fillMeans(drivers);
    double settled = SteadyState.solve(model.network(), drivers).air(0);

    double dewPoint = MoistAir.dewPoint(TestShops.wished(), TestShops.PRESSURE);
    double sky = SkyTemperature.clarkAllen(air, dewPoint, 0);
    double convective = 1 / (0.25 * TestShops.R) - 4 * 0.9 * SIGMA * Math.pow(303.15, 3);
    double low = -50;
    double high = 100;
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      double gained =
          convective * (air - middle)
              + 0.9
                  * SIGMA
                  * (share * Math.pow(sky + 273.15, 4)
                      + (1 - share) * Math.pow(air + 273.15, 4)
                      - Math.pow(middle + 273.15, 4));
      low = gained > 0 ? middle : low;
      high = gained > 0 ? high : middle;
    }
    assertThat(air - settled).isGreaterThan(1);
    assertThat(settled).isCloseTo(low, within(0.002));
  }

  @Test
  void dayAsTold() {
    Room plain = box("Shop", RoomUse.COOLED, insulation(5), insulation(5));
    ShopModel model = sunny(shop(plain), swinging());
    assertThat(model.outdoorPeak()).isCloseTo(celsius(100), within(1e-9));
    assertThat(model.outdoor(15)).isCloseTo(celsius(100), within(1e-9));
    assertThat(model.meanOutdoor()).isCloseTo(celsius(89), within(1e-9));
    assertThat(model.outdoorHumidityRatio(3)).isEqualTo(0.015);
    assertThat(model.pressure()).isEqualTo(TestShops.PRESSURE);
    assertThat(model.wishedHumidityRatio(0)).isCloseTo(TestShops.wished(), within(1e-12));
    assertThat(model.setPoint(0)).isEqualTo(WISHED);
    assertThat(model.pullDown()).isEqualTo(3600);
    assertThat(model.roomName(0)).isEqualTo("Shop");
    assertThat(model.isCooled(0)).isTrue();
    assertThat(model.rooms()).isEqualTo(1);
    assertThat(model.working().hours()).isCloseTo(9, within(1e-9));
    ShopModel hotter = model.shifted(5);
    assertThat(hotter.outdoorPeak()).isCloseTo(celsius(109), within(1e-9));
    assertThat(hotter.network()).isSameAs(model.network());
  }

  /** 200 W of latent heat in each working hour; 200 / 2.45e6 kg/s (HeatGain's heat of vapour). */
  @Test
  void waterFromGains() {
    Room room =
        box("Shop", RoomUse.COOLED, insulation(5), insulation(5))
            .withGains(
                List.of(
                    gain("Steam", 400, 0.3, 200, "work"),
                    gain("Pot", 100, 0.3, 60, "daily 8:30-9:00")));
    ShopModel model = sunny(shop(room), swinging());
    int steam = index(model, "Steam");
    int pot = index(model, "Pot");
    assertThat(model.latentGain(steam, DayKind.WORKING).at(9)).isCloseTo(200, within(1e-9));
    assertThat(model.latentGain(steam, DayKind.WORKING).at(8)).isZero();
    assertThat(model.latentGain(steam, DayKind.IDLE).at(9)).isZero();
    assertThat(model.latentGain(pot, DayKind.WORKING).at(9)).isCloseTo(30, within(1e-9));
    assertThat(model.latentGain(pot, DayKind.IDLE).at(9)).isCloseTo(30, within(1e-9));
    assertThat(model.latentGain(index(model, "Roof"), DayKind.WORKING).at(9)).isZero();
    double[] water = model.latentGains(DayKind.WORKING);
    assertThat(water).hasSize(DaySlots.COUNT);
    assertThat(water[8 * 12]).isCloseTo(200 / 2.45e6, withinPercentage(3));
    assertThat(water[8 * 12 + 6]).isCloseTo(260 / 2.45e6, withinPercentage(3));
    assertThat(water[0]).isZero();
  }

  private static int index(ShopModel model, String name) {
    return model.components().stream()
        .filter(c -> c.name().equals(name))
        .mapToInt(Component::index)
        .findFirst()
        .orElseThrow();
  }

  /** 1000 W, 30 % of it radiant, half the hour. */
  @Test
  void heatFromGainsBySlot() {
    Room room =
        box("Shop", RoomUse.COOLED, insulation(5), insulation(5))
            .withGains(List.of(gain("Lamp", 1000, 0.3, 0, "daily 8:30-9:00")));
    ShopModel model = sunny(shop(room), swinging());
    DayDrivers day = model.drivers(DayKind.IDLE, line -> true, 0);
    assertThat(day.airGain(0, 8 * 12)).isZero();
    assertThat(day.airGain(0, 8 * 12 + 6)).isCloseTo(700, within(1e-9));
    DayDrivers without = model.drivers(DayKind.IDLE, line -> line != index(model, "Lamp"), 0);
    assertThat(without.airGain(0, 8 * 12 + 6)).isZero();
  }

  /** The ground below a slab drives its line, outdoor air all others. */
  @Test
  void whatLiesBehind() {
    Room room =
        room(
            "Shop",
            RoomUse.COOLED,
            25,
            2.5,
            WISHED,
            face("Floor", Part.FLOOR, "ground", 0, 180, 5, 5, TestShops.slab(20)),
            TestShops.wall("North", 0, 5, 2.5, insulation(5)));
    ShopModel model = sunny(shop(room), swinging());
    assertThat(model.behindTemperature(index(model, "Floor")).at(15))
        .isCloseTo(celsius(89), within(1e-6));
    assertThat(model.behindTemperature(index(model, "North")).at(15))
        .isCloseTo(celsius(100), within(1e-9));
  }

  /** Held rooms keep faces cooler than rooms left to float, and radiate by less. */
  @Test
  void radiationFollowsHowTheShopIsHeld() {
    Room room = box("Shop", RoomUse.COOLED, insulation(1), insulation(1));
    ShopModel held = ShopModel.cooling(shop(room), swinging(), ShopModel.Holding.HELD);
    ShopModel free = ShopModel.cooling(shop(room), swinging(), ShopModel.Holding.FREE);
    assertThat(lift(free)).isGreaterThan(lift(held));
  }

  /**
   * Air temperature that 1 kW more makes, in the steady state: less where radiation is stronger.
   */
  private static double lift(ShopModel model) {
    Drivers drivers = new Drivers(model.network());
    drivers.airSource(0, 1000);
    return 1 / SteadyState.solve(model.network(), drivers).air(0);
  }
}
