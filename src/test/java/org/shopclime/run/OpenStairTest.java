package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.TestShops;
import org.shopclime.balance.YearWeather;
import org.shopclime.climate.MadeYear;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Face;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Part;
import org.shopclime.shop.Passage;
import org.shopclime.shop.PassageKind;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;

/** A shop and its loft with an open stair between them through lived days. */
class OpenStairTest {

  private static final double OUTDOORS = 20;

  private static Face lid(String name) {
    return TestShops.face(name, Part.WALL, "nothing", 0, 90, 8, 2.5, TestShops.concrete());
  }

  /** Shop and loft, tight but for outdoor air in the loft; heat and water of a machine below. */
  private static Shop both(Optional<Passage> passage, double watts, double wet) {
    Face parting =
        TestShops.face("Between", Part.CEILING, "Loft", 0, 0, 8, 2.5, TestShops.insulation(500))
            .withPassage(passage);
    Room below =
        TestShops.room("Shop", RoomUse.COOLED, 20, 2.5, TestShops.WISHED, parting, lid("Shop lid"))
            .withGains(List.of(TestShops.gain("Machine", watts, 0, wet, "always")));
    Room above =
        TestShops.room("Loft", RoomUse.FLOATING, 40, 2.5, TestShops.WISHED, lid("Loft lid"))
            .withLeakage(new Leakage.AirChanges(Span.known(5)));
    return TestShops.shop(below, above);
  }

  private static Optional<Passage> stair(String when) {
    return Optional.of(
        new Passage("Stair", PassageKind.FLOOR_OPENING, 0.9, 1, 0.25, TestShops.when(when)));
  }

  private static Trace day(Shop shop, Optional<Cooling> unit) {
    ShopModel model = TestShops.dark(shop, TestShops.constant(OUTDOORS, 3, 0.008));
    DayRunner runner = new DayRunner(new ShopDays(model), unit, 0);
    runner.startSteady();
    RepeatingDay.find(runner, DayKind.IDLE);
    return runner.trace();
  }

  /**
   * All of 750 W, and of 500 W in steam, 0.1952 g/s at 2.561 MJ/kg, leave the shop by the stair,
   * and the loft by its 5 air changes: 0.13889 m³/s of 1.189 kg/m³, 0.16514 kg/s with 1020.9
   * J/(kg·K), 168.6 W/K: the loft is 4.45 K warmer than outdoors, 24.45 °C, and 0.1952 / 0.16514 =
   * 1.182 g/kg moister, 9.18 g/kg. The stair moves 0.271340 √(ΔT / T) m³/s. 30 °C below: ΔT 5.55 K,
   * T 300.4 K: 0.03688 m³/s of 1.1568 kg/m³ (humidity 0.01): 0.04267 kg/s, 43.56 W/K, 242 W. By the
   * power of 2/3 of what is missing: ΔT 5.55 · (750 / 242)^(2/3) = 11.80 K; there T 303.5 K, so
   * 0.05350 m³/s of 1.145: 62.53 W/K, 738 W; ΔT 11.93 K. The shop: 36.4 °C. Water: 0.1952 g/s /
   * 0.0614 kg/s = 3.18 g/kg more than the loft: 12.4 g/kg.
   */
  @Test
  void whatIsGivenOffLeavesByTheStair() {
    Trace trace = day(both(stair("always"), 750, 500), Optional.empty());
    // Some 2 W/K pass the ceiling besides.
    assertThat(trace.air().mean()).isCloseTo(36.3, within(0.4));
    double water = trace.dewPoint().mean();
    double ratio = MoistAir.saturationHumidityRatio(water, TestShops.PRESSURE);
    assertThat(ratio).isCloseTo(0.0124, withinPercentage(2));
  }

  /** As many watts in the loft do not come down: it stays above. */
  @Test
  void aHotLoftDoesNotWarmTheShopByAFlatOpening() {
    Shop shop = both(stair("always"), 0, 0);
    Room loft =
        shop.rooms().get(1).withGains(List.of(TestShops.gain("Machine", 1500, 0, 0, "always")));
    Shop hot = shop.withRooms(List.of(shop.rooms().get(0), loft));
    Shop shut = both(stair("never"), 0, 0);
    Trace open = day(hot, Optional.empty());
    Trace closed = day(shut.withRooms(List.of(shut.rooms().get(0), loft)), Optional.empty());
    assertThat(open.air().mean()).isCloseTo(closed.air().mean(), within(1e-6));
  }

  /**
   * By a doorway at its foot it does, as all its air were as hot as on top: held at its set point,
   * the shop's unit has more to do by m cp ΔT.
   */
  @Test
  void aUnitCoolsTheLoftThroughADoorwayToo() {
    Passage doorway =
        new Passage("Stair", PassageKind.DOORWAY, 0.9, 2, 0, TestShops.when("always"));
    Shop shop =
        both(Optional.of(doorway), 500, 0)
            .withWork(TestShops.work("daily 0:00-24:00", Clock.STANDARD));
    ShopModel model = TestShops.dark(shop, TestShops.constant(40, 3, 0.01));
    DayRunner runner = new DayRunner(new ShopDays(model), Optional.of(MadeShops.window(6000)), 0);
    runner.startSteady();
    RepeatingDay.find(runner, DayKind.WORKING);
    // Held 25.56 °C. Loft at T: 0.16514 kg/s · 0.935 (density at 40 °C) · 1025 = 158 W/K · (40 - T)
    // against 0.39 √(ΔT / T · 9.80665 · 2) m³/s · 1.15 · 1025 ΔT: 8.2 K makes 0.286 m³/s, 2760 W
    // against 985; 4.3 K 0.207 · 1208 · 4.3 = 1048 against 1600; 5.4 K 1473 against 1427.
    double open = 0.39 * Math.sqrt(5.35 / 301.4 * 9.80665 * 2) * 1.15 * 1025 * 5.35;
    assertThat(open).isCloseTo(1440, withinPercentage(2));
    assertThat(runner.trace().sensible().mean()).isCloseTo(500 + open, withinPercentage(3));
  }

  /**
   * A quarter of the step tells the same: air within 0.03 K (measured). Dew points are means over
   * the ends of steps, so that 0.3 K part them in the hour in which the stair is opened and the
   * humidity falls by a third.
   */
  @Test
  void shorterStepsTellTheSame() {
    Shop shop = both(stair("daily 6:00-12:10, 13:00-19:00 50 %"), 300, 200);
    ShopModel model = TestShops.sunny(shop, TestShops.swinging());
    Trace[] traces = new Trace[2];
    for (int i = 0; i < 2; i++) {
      ShopDays days = new ShopDays(model);
      DayRunner runner =
          i == 0
              ? new DayRunner(days, Optional.empty(), 0)
              : new DayRunner(days, Optional.empty(), 0, 4);
      runner.startSteady();
      RepeatingDay.find(runner, DayKind.WORKING);
      traces[i] = runner.trace();
    }
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(traces[0].air().at(hour)).isCloseTo(traces[1].air().at(hour), within(0.05));
      assertThat(traces[0].dewPoint().at(hour))
          .isCloseTo(traces[1].dewPoint().at(hour), within(0.4));
    }
  }

  /** Minute by minute with a unit that goes on and off. */
  @Test
  void byTheMinuteItIsTheSameDay() {
    Passage doorway =
        new Passage("Stair", PassageKind.DOORWAY, 0.9, 2, 0, TestShops.when("always"));
    Shop shop = both(Optional.of(doorway), 500, 200);
    ShopModel model = TestShops.sunny(shop, TestShops.swinging());
    double[] heat = new double[2];
    for (int i = 0; i < 2; i++) {
      ShopDays days = new ShopDays(model);
      DayRunner runner =
          i == 0
              ? new DayRunner(days, Optional.of(MadeShops.window(5000)), 0)
              : DayRunner.byTheMinute(days, MadeShops.window(5000), 0);
      runner.startSteady();
      for (int day = 0; day < 3; day++) {
        runner.run(DayKind.WORKING);
      }
      heat[i] = runner.trace().sensible().mean();
    }
    assertThat(heat[1]).isCloseTo(heat[0], withinPercentage(4));
  }

  /** A year of that one air comes to the same: 36.3 °C and 12.4 g/kg, by the same pencil. */
  @Test
  void aYearOfOneAirIsThatDay() {
    Shop shop =
        MadeYears.plants(
            both(stair("always"), 750, 500), RoomCooling.NONE, RoomHeating.NONE, "always");
    double dewPoint = MoistAir.dewPoint(0.008, TestShops.PRESSURE);
    YearWeather weather =
        YearWeather.of(
            new MadeYear()
                .at(TestShops.PLACE)
                .pressure(TestShops.PRESSURE)
                .dryBulb(hour -> OUTDOORS)
                .dewPoint(hour -> dewPoint)
                .wind(hour -> 3)
                .year());
    YearResult year = YearRun.of(ShopYear.of(shop, weather), Optional.empty());
    assertThat(year.at(Figure.AIR, 0, 4000)).isCloseTo(36.3, within(0.4));
    assertThat(year.at(Figure.HUMIDITY_RATIO, 0, 4000)).isCloseTo(0.0124, withinPercentage(2));
    Trace day = day(both(stair("always"), 750, 500), Optional.empty());
    assertThat(year.at(Figure.AIR, 0, 4000)).isCloseTo(day.air().mean(), within(0.05));
  }

  /**
   * A heated shop under a cold loft. -10 °C outdoors, nearly dry, 18.33 °C inside: 1.70 kW go up
   * through the hatch, by the pencil of {@code OpenStairLoadTest}, and some 50 W through the
   * ceiling.
   */
  @Test
  void aHeaterWarmsTheColdLoftToo() {
    Shop shop =
        MadeYears.plants(
            both(stair("always"), 0, 0), RoomCooling.NONE, RoomHeating.IDEAL, "always");
    Room heated = (Room) ShopParts.with(shop.rooms().get(0), "heatedTo", Optional.of(18.33));
    Shop cold = shop.withRooms(List.of(heated, shop.rooms().get(1)));
    YearResult year = YearRun.of(ShopYear.of(cold, MadeYears.constant(-10, -25)), Optional.empty());
    assertThat(year.at(Figure.HEATING, 0, 4000)).isCloseTo(1700, withinPercentage(3));
  }

  /** Two rooms with plants of their own and a doorway: none works against the other's air. */
  @Test
  void plantsOnBothSidesOfADoorwayHoldTheirRooms() {
    Passage doorway =
        new Passage("Doorway", PassageKind.DOORWAY, 0.9, 2, 0, TestShops.when("always"));
    Shop shop =
        MadeYears.plants(
            both(Optional.of(doorway), 300, 0), RoomCooling.IDEAL, RoomHeating.IDEAL, "always");
    Record loft = ShopParts.with(shop.rooms().get(1), "use", RoomUse.COOLED);
    loft = ShopParts.with(loft, "cooling", RoomCooling.IDEAL);
    loft = ShopParts.with(loft, "setPoint", 22.0);
    loft = ShopParts.with(loft, "cooledWhen", TestShops.when("always"));
    Shop two = shop.withRooms(List.of(shop.rooms().get(0), (Room) loft));
    YearResult year = YearRun.of(ShopYear.of(two, MadeYears.constant(30, 15)), Optional.empty());
    assertThat(year.at(Figure.AIR, 1, 4000)).isCloseTo(22, within(1e-6));
    // The shop stays below its 25.56 °C by the loft's air: 300 W by 0.39 √(2 · 9.807 ΔT / T) m³/s
    // · 1.186 · 1025 ΔT: ΔT 1.92 K makes 300 W.
    assertThat(year.at(Figure.AIR, 0, 4000)).isCloseTo(23.9, within(0.1));
    assertThat(year.at(Figure.COOLING, 0, 4000)).isZero();
    // Outdoor air of 100 m³ five times an hour: 0.1597 kg/s · 1025 · 8 K.
    assertThat(year.at(Figure.COOLING, 1, 4000)).isCloseTo(300 + 1310, withinPercentage(3));
  }
}
