package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.run.MadeShops.btuh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.shop.Choice;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Unknowns;

/** The day as it is lived: what it must hold on to whatever the shop. */
class LivedDayTest {

  private static final Shop FOAM = Examples.shop("insulated-foam-door");
  private static final double PER_FAHRENHEIT = 1 / 1.8;

  /** Conservation of energy and water, from the sums of every five minutes. */
  @ParameterizedTest
  @CsvSource({
    "bare-studs, 722230, 12000",
    "insulated-foam-door, 722230, 24000",
    "oven-day, 722430, 8000",
    "insulated, 722780, 15000"
  })
  void heatAndWaterOfADayAddUp(String example, String station, double capacity) {
    ShopDays days = new ShopDays(MadeShops.model(MadeShops.example(example, station)));
    DayRunner runner = new DayRunner(days, Optional.of(MadeShops.window(btuh(capacity))), 0);
    runner.restore(LivedDay.idle(days, 0));
    for (int day = 0; day < 2; day++) {
      DayLedger ledger = DayBooks.closed(runner, DayKind.WORKING, days.model().rooms());
      assertThat(ledger.removed).isGreaterThan(1e6);
      assertThat(ledger.waterGiven).isGreaterThan(0.1);
    }
  }

  /** Water beyond saturation falls out and is counted. */
  @Test
  void waterFallsOutOfAColdAttic() {
    Shop shop = MadeShops.example("insulated", MadeShops.MOBILE);
    ShopDays days =
        new ShopDays(ShopModel.cooling(shop, MadeShops.day(shop), ShopModel.Holding.FREE));
    Moisture moisture = Moisture.of(days.model());
    DayLedger ledger = new DayLedger(2);
    double before = moisture.held();
    Moisture.Around around =
        new Moisture.Around(
            days.model().outdoorHumidityRatio(1),
            0.05,
            days.latentGains(DayKind.IDLE)[0],
            days.model().pressure(),
            300);
    moisture.step(0, around, 10, 0, Optional.of(ledger));
    assertThat(moisture.humidityRatio(0))
        .isCloseTo(MoistAir.saturationHumidityRatio(10, days.model().pressure()), within(1e-12));
    assertThat(ledger.waterFallen).isGreaterThan(0.5);
    assertThat(moisture.held() - before)
        .isCloseTo(ledger.waterIn - ledger.waterFallen, within(1e-12 * before));
  }

  /**
   * In hours that are held the unit takes out what an ideal plant would, from a separate run in
   * which the room is held at its set point while somebody is there, and floats otherwise.
   */
  @Test
  void aUnitThatHoldsTakesOutTheLoad() {
    ShopDays days = new ShopDays(MadeShops.model(MadeShops.unit(FOAM, 0)));
    ShopModel model = days.model();
    DayRunner runner = new DayRunner(days, Optional.of(MadeShops.window(btuh(36000))), 0);
    runner.restore(LivedDay.idle(days, 0));
    RepeatingDay.find(runner, DayKind.WORKING);
    March march = new March(model.network(), DaySlots.SECONDS);
    march.start(26);
    Drivers drivers = new Drivers(model.network());
    double[] plant = new double[25];
    for (int day = 0; day < 60; day++) {
      for (int slot = 0; slot < DaySlots.COUNT; slot++) {
        int hour = slot / 12 + 1;
        days.drivers(DayKind.WORKING).fill(drivers, slot, 1);
        for (int room = 0; room < model.rooms(); room++) {
          drivers.inflow(
              room,
              model.streams().total(room, march.air(room), DayKind.WORKING, slot, 1)
                  * MoistAir.humidHeat(model.outdoorHumidityRatio(hour)),
              model.outdoor(hour));
        }
        drivers.release(0);
        if (days.attended(slot)) {
          drivers.hold(0, model.setPoint(0));
        }
        march.step(drivers);
        plant[hour] = slot % 12 == 0 ? march.plant(0) : plant[hour] + march.plant(0);
      }
    }
    Trace trace = runner.trace();
    for (int hour : days.judged()) {
      assertThat(trace.running().at(hour)).isBetween(0.05, 0.95);
      assertThat(trace.sensible().at(hour))
          .as("hour %s", hour)
          .isCloseTo(-plant[hour] / 12, within(0.01 * Math.abs(plant[hour] / 12)));
      double share = trace.sensible().at(hour) / trace.canGive().at(hour);
      assertThat(trace.running().at(hour))
          .as("starts cost running, hour %s", hour)
          .isBetween(1.02 * share, 1.7 * share);
    }
  }

  @Test
  void aBigUnitHoldsToATenthOfADegree() {
    LivedDay day =
        LivedDay.of(MadeShops.model(FOAM), Optional.of(MadeShops.window(btuh(36000))), 0);
    assertThat(day.holds()).isTrue();
    assertThat(day.judged()).isNotEmpty();
    for (int hour : day.judged()) {
      assertThat(day.trace().air().at(hour))
          .as("hour %s", hour)
          .isCloseTo(day.setPoint(), within(0.1 * PER_FAHRENHEIT));
      assertThat(day.trace().running().at(hour)).isBetween(0.0, 1.0);
      assertThat(day.trace().power().at(hour)).isGreaterThan(0);
    }
    assertThat(day.flatOutHours()).isZero();
    assertThat(day.neverCatchesUp()).isFalse();
  }

  @Test
  void aUnitIsOffWhenNobodyIsThere() {
    LivedDay day =
        LivedDay.of(MadeShops.model(FOAM), Optional.of(MadeShops.window(btuh(12000))), 0);
    // 8:00 to 17:00 by the wall clock is 7:00 to 16:00 standard time, lunch included.
    for (int hour = 1; hour <= 24; hour++) {
      boolean on = hour >= 8 && hour <= 16;
      assertThat(day.trace().canGive().at(hour) > 0).as("hour %s", hour).isEqualTo(on);
      assertThat(day.trace().power().at(hour) > 0).as("hour %s", hour).isEqualTo(on);
    }
    // The first hour is allowed for cooling down; nobody works from noon to one.
    assertThat(day.judged()).containsExactly(9, 10, 11, 13, 14, 15, 16);
  }

  @Test
  void aMildDayAsksNothing() {
    Shop idle =
        MadeShops.typed(
            MadeShops.preset(
                "Detached stud shop, R-13 walls, R-38 ceiling",
                "Hand tools and radio",
                MadeShops.MOBILE,
                0,
                Optional.empty()),
            MadeShops.celsius(62));
    Shop empty =
        idle.withRooms(idle.rooms().stream().map(room -> room.withGains(List.of())).toList());
    LivedDay day =
        LivedDay.of(MadeShops.model(empty), Optional.of(MadeShops.window(btuh(12000))), 0);
    assertThat(day.trace().running().peak()).isZero();
    assertThat(day.trace().power().peak()).isZero();
    assertThat(day.trace().sensible().peak()).isZero();
    assertThat(day.beyond()).isEmpty();
    assertThat(day.holds()).isTrue();
  }

  /** In the desert the coil stays dry once the shop is; in damp heat it never does. */
  @Test
  void theCoilIsDryInTheDesertAndWetOnTheGulf() {
    Shop desert = MadeShops.example("insulated", MadeShops.PHOENIX);
    Shop dry =
        desert.withRooms(desert.rooms().stream().map(room -> room.withGains(List.of())).toList());
    LivedDay phoenix =
        LivedDay.of(MadeShops.model(dry), Optional.of(MadeShops.window(btuh(18000))), 0);
    LivedDay houston =
        LivedDay.of(
            MadeShops.model(MadeShops.example("insulated", MadeShops.HOUSTON)),
            Optional.of(MadeShops.window(btuh(18000))),
            0);
    int hour = 15;
    assertThat(phoenix.trace().latent().at(hour))
        .isLessThan(0.05 * phoenix.trace().sensible().at(hour));
    assertThat(phoenix.trace().relativeHumidity().at(hour)).isLessThan(0.45);
    assertThat(houston.trace().latent().at(hour))
        .isGreaterThan(0.2 * houston.trace().sensible().at(hour));
    assertThat(houston.trace().relativeHumidity().at(hour)).isBetween(0.4, 0.75);
    for (int each = 1; each <= 24; each++) {
      assertThat(houston.trace().dewPoint().at(each))
          .isLessThanOrEqualTo(houston.trace().air().at(each) + 1e-9);
    }
  }

  @Test
  void whatLiesBeyondTheCurvesIsTold() {
    Shop shop = MadeShops.example("bare-studs", MadeShops.PHOENIX);
    Shop hot = MadeShops.typed(shop, MadeShops.celsius(118));
    LivedDay phoenix =
        LivedDay.of(MadeShops.model(hot), Optional.of(MadeShops.window(btuh(18000))), 0);
    assertThat(phoenix.beyond()).contains("OUTDOOR_HIGH");
    // A shop left shut in Mobile is hotter and damper in the morning than any coil was tested in.
    LivedDay mobile =
        LivedDay.of(
            MadeShops.model(Examples.shop("bare-studs")),
            Optional.of(MadeShops.window(btuh(8000))),
            0);
    assertThat(mobile.beyond()).contains("WET_BULB_HIGH").doesNotContain("OUTDOOR_HIGH");
    LivedDay big =
        LivedDay.of(MadeShops.model(FOAM), Optional.of(MadeShops.window(btuh(36000))), 0);
    assertThat(big.beyond()).isSubsetOf(Set.of("WET_BULB_HIGH"));
  }

  /** Halving the steps: the peak moves by less than 0.1 °F, the heat taken out by 0.5 %. */
  @ParameterizedTest
  @CsvSource({"bare-studs, 12000", "insulated-foam-door, 12000", "oven-day, 24000"})
  void shorterStepsTellTheSame(String example, double capacity) {
    ShopDays days = new ShopDays(MadeShops.model(Examples.shop(example)));
    Optional<Cooling> cooling = Optional.of(MadeShops.window(btuh(capacity)));
    LivedDay coarse = LivedDay.of(days.model(), cooling, 0);
    LivedDay fine = withParts(days, cooling, 2);
    LivedDay finest = withParts(days, cooling, 8);
    for (LivedDay each : List.of(fine, finest)) {
      assertThat(each.peakTemperature())
          .isCloseTo(coarse.peakTemperature(), within(0.1 * PER_FAHRENHEIT));
      double energy = coarse.trace().sensible().mean();
      assertThat(each.trace().sensible().mean()).isCloseTo(energy, within(0.005 * energy));
      double power = coarse.trace().power().mean();
      assertThat(each.trace().power().mean()).isCloseTo(power, within(0.005 * power));
    }
  }

  /**
   * Long steps where nothing happens tell what five minutes all day tell: the peak to 0.001 °F,
   * every hour to 0.01 °F, dew points to 0.02 °F.
   */
  @ParameterizedTest
  @CsvSource({
    "bare-studs, 0",
    "bare-studs, 12000",
    "bare-studs, 36000",
    "insulated-foam-door, 12000",
    "insulated, 18000",
    "oven-day, 0",
    "oven-day, 24000"
  })
  void longStepsTellTheSame(String example, double capacity) {
    ShopDays days = new ShopDays(MadeShops.model(Examples.shop(example)));
    Optional<Cooling> cooling =
        capacity > 0 ? Optional.of(MadeShops.window(btuh(capacity))) : Optional.empty();
    LivedDay strided = LivedDay.of(days.model(), cooling, 0);
    LivedDay alike = withParts(days, cooling, 1);
    assertThat(strided.peakTemperature())
        .isCloseTo(alike.peakTemperature(), within(0.001 * PER_FAHRENHEIT));
    assertThat(strided.firstDay()).isEqualTo(alike.firstDay());
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(strided.trace().air().at(hour))
          .as("hour %s", hour)
          .isCloseTo(alike.trace().air().at(hour), within(0.01 * PER_FAHRENHEIT));
      assertThat(strided.trace().dewPoint().at(hour))
          .as("hour %s", hour)
          .isCloseTo(alike.trace().dewPoint().at(hour), within(0.02 * PER_FAHRENHEIT));
    }
  }

  /** Also where the air of an attic is saturated when the day ends. */
  @ParameterizedTest
  @CsvSource({"bare-studs, KIND", "bare-studs, UNKIND", "oven-day, KIND", "oven-day, UNKIND"})
  void idleDaysRepeatSoon(String example, Choice choice) {
    Shop shop = Examples.shop(example);
    List<Shop> shops = new ArrayList<>(List.of(Unknowns.choose(shop, choice)));
    Unknowns.of(shop).forEach(each -> shops.add(Unknowns.chooseOne(shop, each, choice)));
    for (Shop each : shops) {
      ShopDays days = new ShopDays(MadeShops.model(each));
      DayRunner idle = new DayRunner(days, Optional.empty(), 0);
      idle.startSteady();
      assertThat(RepeatingDay.find(idle, DayKind.IDLE)).isLessThan(15);
    }
  }

  private static LivedDay withParts(ShopDays days, Optional<Cooling> cooling, int parts) {
    DayRunner idle = new DayRunner(days, Optional.empty(), 0, parts);
    idle.startSteady();
    RepeatingDay.find(idle, DayKind.IDLE);
    return LivedDay.after(days, idle.state(), new DayRunner(days, cooling, 0, parts), cooling, 0);
  }

  /**
   * The days that are guessed are those that waiting would bring: within 0.02 °F after 200 days.
   */
  @Test
  void moreDaysChangeNothing() {
    ShopDays days = new ShopDays(MadeShops.model(FOAM));
    DayRunner idle = new DayRunner(days, Optional.empty(), 0);
    idle.startSteady();
    assertThat(RepeatingDay.find(idle, DayKind.IDLE)).isLessThan(15);
    DayRunner working = new DayRunner(days, Optional.of(MadeShops.window(btuh(12000))), 0);
    working.restore(idle.state());
    assertThat(RepeatingDay.find(working, DayKind.WORKING)).isLessThan(15);
    for (DayRunner runner : List.of(idle, working)) {
      DayKind kind = runner == idle ? DayKind.IDLE : DayKind.WORKING;
      Trace guessed = runner.trace();
      for (int day = 0; day < 200; day++) {
        runner.run(kind);
      }
      Trace waited = runner.trace();
      for (int hour = 1; hour <= 24; hour++) {
        assertThat(waited.air().at(hour))
            .isCloseTo(guessed.air().at(hour), within(0.02 * PER_FAHRENHEIT));
        assertThat(waited.dewPoint().at(hour))
            .isCloseTo(guessed.dewPoint().at(hour), within(0.02 * PER_FAHRENHEIT));
      }
    }
  }

  /** The worse of first and repeating day is told, whichever it is. */
  @Test
  void theWorseDayIsTold() {
    ShopDays days = new ShopDays(MadeShops.model(FOAM));
    for (double capacity : new double[] {5000, 12000, 24000}) {
      Optional<Cooling> cooling = Optional.of(MadeShops.window(btuh(capacity)));
      LivedDay told = LivedDay.of(days.model(), cooling, 0);
      DayRunner runner = new DayRunner(days, cooling, 0);
      runner.restore(LivedDay.idle(days, 0));
      runner.run(DayKind.WORKING);
      double first = runner.peak(days.judged());
      RepeatingDay.find(runner, DayKind.WORKING);
      double repeating = runner.peak(days.judged());
      assertThat(told.peakTemperature()).isCloseTo(Math.max(first, repeating), within(1e-9));
      assertThat(told.firstDay()).isEqualTo(first > repeating);
    }
    // Without a unit the heat of work piles up from day to day.
    assertThat(LivedDay.of(days.model(), Optional.empty(), 0).firstDay()).isFalse();
  }

  @Test
  void withoutAUnitTheWholeDayCounts() {
    LivedDay day = LivedDay.of(MadeShops.model(FOAM), Optional.empty(), 0);
    assertThat(day.judged()).hasSize(24);
    assertThat(day.peakTemperature()).isEqualTo(day.trace().air().peak());
    assertThat(day.operativePeak()).isEqualTo(day.trace().operative().peak());
    assertThat(day.peakHour()).isEqualTo(day.trace().air().peakHour());
  }

  /** What no room can be is refused in one line that names the room. */
  @Test
  void aFurnaceInABoxIsRefused() {
    String furnace =
        ", \"gains\": [{\"kind\": \"other\", \"name\": \"Furnace\", \"power\": \"9 kW\"}]";
    ShopModel box = MadeShops.model(MadeShops.box("27 m3", "0.1 /h", furnace));
    assertThatThrownBy(() -> LivedDay.of(box, Optional.empty(), 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"Box\" would get hotter than 80.0 °C");
  }

  @Test
  void noHoursOfWorkAskNothing() {
    Shop never = MadeShops.hours(FOAM, "never", 3600);
    UnitSearch search = new UnitSearch(MadeShops.model(never), 0);
    LivedDay day = search.day(Optional.of(MadeShops.window(btuh(12000))));
    assertThat(day.judged()).isEmpty();
    assertThat(day.holds()).isTrue();
    assertThat(day.neverCatchesUp()).isFalse();
    assertThat(day.trace().power().peak()).isZero();
    assertThat(day.peakTemperature()).isEqualTo(day.trace().air().peak());
    assertThat(search.keepsUpTo(MadeShops.window(btuh(12000)))).isEmpty();
    assertThat(search.smallestThatHolds(MadeShops::window)).isEmpty();
  }

  /** More time to cool down never asks more; more than the day has leaves its last hour. */
  @Test
  void moreTimeToCoolDownNeverAsksMore() {
    double before = Double.POSITIVE_INFINITY;
    for (double hours : new double[] {0, 1, 3, 7, 8, 9, 12}) {
      Shop shop = MadeShops.hours(FOAM, "Mon-Fri 8:00-17:00", hours * 3600);
      LivedDay day =
          LivedDay.of(MadeShops.model(shop), Optional.of(MadeShops.window(btuh(12000))), 0);
      assertThat(day.judged()).hasSize(Math.max(1, 9 - (int) hours));
      assertThat(day.judged()).contains(16);
      assertThat(day.peakTemperature()).isLessThanOrEqualTo(before + 1e-9);
      before = day.peakTemperature();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // standard time is an hour behind the wall clock
        "Mon-Fri 8:30-16:30            | 10 11 12 13 14 15",
        "Mon-Fri 18:10-18:50           | 18",
        "Mon-Fri 0:00-24:00            | 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20 21 22 23 24",
        "Mon-Fri 0:00-7:00,23:00-24:00 | 24 1 2 3 4 5 6",
        "Mon-Fri 8:00-12:00,13:30-17:00| 9 10 11 13 14 15 16"
      })
  void judgedHoursAreThoseThatWorkFills(String schedule, String expected) {
    Shop shop = MadeShops.hours(FOAM, schedule, 3600);
    Set<Integer> judged = new ShopDays(MadeShops.model(shop)).judged();
    assertThat(judged)
        .containsExactlyInAnyOrder(
            java.util.Arrays.stream(expected.split(" "))
                .map(Integer::valueOf)
                .toArray(Integer[]::new));
  }

  /** A night shift begins in the evening, not at midnight in the middle of it. */
  @Test
  void aNightShiftIsOneShift() {
    Shop night = MadeShops.hours(FOAM, "Mon-Sun 0:00-6:00,21:00-24:00", 3600);
    LivedDay day =
        LivedDay.of(MadeShops.model(night), Optional.of(MadeShops.window(btuh(12000))), 0);
    assertThat(day.judged()).containsExactlyInAnyOrder(22, 23, 24, 1, 2, 3, 4, 5);
    // Cooler nights ask less than hot days.
    LivedDay light =
        LivedDay.of(MadeShops.model(FOAM), Optional.of(MadeShops.window(btuh(12000))), 0);
    assertThat(day.peakTemperature()).isLessThan(light.peakTemperature());
    // The room is warmest when the shift begins and cools from there.
    assertThat(day.trace().running().at(21)).isEqualTo(1, within(1e-9));
    assertThat(day.trace().air().at(20)).isGreaterThan(day.trace().air().at(22));
  }
}
