package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.SteadyState;
import org.shopclime.shop.Shop;

/** Shops so plain that their day is known by pencil: one store of heat, one of water. */
class LumpedShopTest {

  /**
   * One lumped capacity C behind a conductance K warms as T = Te - (Te - T0) exp(-K t / C), by
   * elementary calculus. The conductance is told by a steady solution.
   */
  @Test
  void airAloneFollowsTheExponential() {
    ShopModel model = MadeShops.steady(MadeShops.box("400 m3", "0.5 /h", ""), 40, 0.008);
    ShopDays days = new ShopDays(model);
    DayLedger ledger = new DayLedger(1);
    DayRunner runner = new DayRunner(days, Optional.empty(), 0, 1);
    DayRunner.State state = runner.state();
    java.util.Arrays.fill(state.heat(), 20);
    runner.restore(state);
    runner.audit(ledger);
    runner.run(DayKind.IDLE);
    double conductance = conductance(model);
    double capacity = model.roomWater(0).dryAir() * MoistAir.humidHeat(0.01);
    double perSlot = conductance * DaySlots.SECONDS / capacity;
    double end = end(days);
    // The walls see a cool clear sky, so that the end lies a little below the outdoor air.
    assertThat(end).isBetween(36.0, 40.0);
    assertThat(perSlot).isBetween(0.01, 0.2);
    for (int slot = 1; slot < 5 / perSlot && slot < DaySlots.COUNT; slot++) {
      double from = Math.exp(-perSlot * slot);
      double left = (end - 20) * from * (1 - Math.exp(-perSlot)) / perSlot;
      assertThat(end - ledger.air[0][slot]).isCloseTo(left, within(0.01 * left));
    }
  }

  /**
   * With a heat flow P out of it the same room falls toward Te - P / K along the same exponential,
   * from wherever it is; P is what the unit gives in each hour, which falls a little with the room.
   */
  @Test
  void aConstantUnitPullsDownAlongTheExponential() {
    Shop shop = MadeShops.hours(MadeShops.box("4000 m3", "0.02 /h", ""), "Mon-Sun 0:00-24:00", 0);
    ShopModel model = MadeShops.steady(shop, 35, 0.0005);
    ShopDays days = new ShopDays(model);
    DayRunner runner = new DayRunner(days, Optional.of(MadeShops.window(1500)), 0);
    DayLedger ledger = new DayLedger(1);
    DayRunner.State state = runner.state();
    double end = end(days);
    java.util.Arrays.fill(state.heat(), end);
    runner.restore(state);
    runner.audit(ledger);
    runner.run(DayKind.WORKING);
    Trace trace = runner.trace();
    double conductance = conductance(model);
    double capacity = model.roomWater(0).dryAir() * MoistAir.humidHeat(0.01);
    double perSlot = conductance * DaySlots.SECONDS / capacity;
    double fallen = 0;
    int held = 0;
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      int hour = slot / 12 + 1;
      double toward = trace.sensible().at(hour) / conductance;
      double mean = toward + (fallen - toward) * (1 - Math.exp(-perSlot)) / perSlot;
      fallen = toward + (fallen - toward) * Math.exp(-perSlot);
      if (trace.running().at(hour) == 1 && slot > 0) {
        held++;
        assertThat(end - ledger.air[0][slot]).isCloseTo(mean, within(0.01 * mean));
      }
    }
    assertThat(held).isGreaterThan(24);
  }

  /**
   * The same room, idle until 8 o'clock, comes down to what counts as held after t = -C / K ln(1 -
   * (Te - T) K / P); told to five minutes, and P by what the unit gives in the hours it takes.
   */
  @Test
  void aMorningLastsAsLongAsTheExponentialSays() {
    Shop shop = MadeShops.hours(MadeShops.box("4000 m3", "0.02 /h", ""), "Mon-Sun 8:00-20:00", 0);
    ShopModel model = MadeShops.steady(shop, 35, 0.0005);
    ShopDays days = new ShopDays(model);
    DayRunner.State idle = LivedDay.idle(days, 0);
    Cooling cooling = MadeShops.window(1500);
    PullDown morning = PullDown.of(days, idle, cooling, 0).orElseThrow();
    DayRunner runner = new DayRunner(days, Optional.of(cooling), 0);
    runner.restore(idle);
    runner.run(DayKind.WORKING);
    double end = end(days);
    assertThat(morning.start()).isCloseTo(end, within(0.02));
    double conductance = conductance(model);
    double capacity = model.roomWater(0).dryAir() * MoistAir.humidHeat(0.01);
    double minutes = morning.minutes().orElseThrow();
    double given = 0;
    int first = days.firstSlot() / DaySlots.PER_HOUR + 1;
    int hours = (int) Math.ceil(minutes / 60);
    for (int hour = first; hour < first + hours; hour++) {
      given += runner.trace().canGive().at(hour) / hours;
    }
    double down = end - (model.setPoint(0) + LivedDay.TOLERANCE);
    double exact = -capacity / conductance * Math.log(1 - down * conductance / given) / 60;
    assertThat(exact).isGreaterThan(60);
    assertThat(minutes).isCloseTo(exact, within(5 + 0.01 * exact));
  }

  /**
   * The same room, soaked at 100 °F on a day off and come to then: down to 79 °F after the same
   * time, P being what the unit gives in the hours it takes.
   */
  @Test
  void aSoakedShopComesDownAsLongAsTheExponentialSays() {
    Shop shop = MadeShops.hours(MadeShops.box("4000 m3", "0.02 /h", ""), "Mon-Fri 8:00-17:00", 0);
    ShopModel model = MadeShops.steady(shop, MadeShops.celsius(100), 0.0005);
    ShopDays days = new ShopDays(model);
    DayRunner.State idle = LivedDay.idle(days, 0);
    Cooling cooling = MadeShops.window(3000);
    PullDown.Soaked soaked =
        PullDown.of(days, idle, cooling, 0).orElseThrow().soaked().orElseThrow();
    assertThat(soaked.start()).isCloseTo(end(days), within(0.02));
    double minutes = soaked.minutes().orElseThrow();
    int first = soaked.hour() - 1;
    DayRunner runner =
        new DayRunner(days.visitedFrom(first * DaySlots.PER_HOUR), Optional.of(cooling), 0);
    runner.restore(idle);
    runner.run(DayKind.IDLE);
    double given = 0;
    int hours = (int) Math.ceil(minutes / 60);
    for (int hour = first + 1; hour <= first + hours; hour++) {
      given += runner.trace().canGive().at(hour) / hours;
    }
    double conductance = conductance(model);
    double capacity = model.roomWater(0).dryAir() * MoistAir.humidHeat(0.01);
    double down = end(days) - (model.setPoint(0) + LivedDay.TOLERANCE);
    double exact = -capacity / conductance * Math.log(1 - down * conductance / given) / 60;
    assertThat(exact).isGreaterThan(60);
    assertThat(minutes).isCloseTo(exact, within(5 + 0.02 * exact));
  }

  /** Temperature the room ends at, left alone. */
  private static double end(ShopDays days) {
    ShopModel model = days.model();
    Drivers drivers = new Drivers(model.network());
    days.drivers(DayKind.IDLE).fillMeans(drivers);
    drivers.inflow(
        0,
        model.streams().total(0, 30, DayKind.IDLE, 0, 12)
            * MoistAir.humidHeat(model.outdoorHumidityRatio(1)),
        model.outdoor(1));
    return SteadyState.solve(model.network(), drivers).air(0);
  }

  private static double conductance(ShopModel model) {
    Drivers drivers = new Drivers(model.network());
    for (int boundary = 0; boundary < model.network().boundaries(); boundary++) {
      drivers.boundary(boundary, 1);
    }
    drivers.inflow(
        0,
        model.streams().total(0, 30, DayKind.IDLE, 0, 12)
            * MoistAir.humidHeat(model.outdoorHumidityRatio(1)),
        1);
    drivers.hold(0, 0);
    return -SteadyState.solve(model.network(), drivers).plant(0);
  }

  private static final String STEAM =
      ", \"gains\": [{\"kind\": \"other\", \"name\": \"Steam\", \"power\": \"0 W\", \"moisture\":"
          + " \"1000 W\", \"when\": \"always\"}]";

  private static Shop damp(boolean wood) {
    Shop plain = MadeShops.box("80 m3", "1 /h", STEAM);
    if (!wood) {
      return plain;
    }
    return plain.withRooms(
        plain.rooms().stream()
            .map(
                room ->
                    new org.shopclime.shop.Room(
                        room.name(),
                        room.use(),
                        room.floorArea(),
                        room.height(),
                        room.volume(),
                        room.setPoint(),
                        room.wishedHumidity(),
                        room.faces(),
                        room.leakage(),
                        room.fans(),
                        room.gains(),
                        new org.shopclime.shop.Contents(
                            room.contents().iron(), org.shopclime.shop.Span.known(400), 0)))
            .toList());
  }

  /** In the end W = Wo + g/m, by the balance of water; a store changes when, not where. */
  @Test
  void moistureEndsWhereTheBalanceSays() {
    for (boolean wood : new boolean[] {false, true}) {
      ShopModel model = MadeShops.steady(damp(wood), 30, 0.008);
      ShopDays days = new ShopDays(model);
      DayRunner runner = new DayRunner(days, Optional.empty(), 0);
      runner.startSteady();
      RepeatingDay.find(runner, DayKind.IDLE);
      double flow = model.streams().total(0, 30, DayKind.IDLE, 0, 12);
      double gain = days.latentGains(DayKind.IDLE)[0];
      double expected = 0.008 + gain / flow;
      // 80 m3 of dry air of 1.15 kg/m3 each hour; 1 kW of steam is 0.4 g/s.
      assertThat(flow).isCloseTo(80 * 1.15 / 3600, within(0.02 * flow));
      assertThat(gain).isCloseTo(0.0004, within(0.00001));
      assertThat(runner.state().water()[0]).isCloseTo(expected, within(1e-6));
      assertThat(runner.state().water()[1]).isCloseTo(wood ? expected : 0.008, within(1e-6));
    }
  }

  /**
   * Without a store the rise goes as 1 - exp(-t m/M), M being the air in the room and m the air
   * that passes. With one of S kg that takes k kg/s, M a' = g - m a - k (a - s), S s' = k (a - s):
   * two exponentials, by elementary algebra.
   */
  @Test
  void aStoreOnlyTakesLonger() {
    double[] late = new double[2];
    for (boolean wood : new boolean[] {false, true}) {
      ShopModel model = MadeShops.steady(damp(wood), 30, 0.008);
      ShopDays days = new ShopDays(model);
      Moisture moisture = Moisture.of(model);
      double flow = model.streams().total(0, 30, DayKind.IDLE, 0, 12);
      double whole = days.latentGains(DayKind.IDLE)[0] / flow;
      double mass = model.roomWater(0).dryAir();
      double store = wood ? model.roomWater(0).store() : 1;
      double k = wood ? model.roomWater(0).exchange() : 0;
      assertThat(model.roomWater(0).exchange()).isEqualTo(k);
      double trace = -(flow + k) / mass - k / store;
      double determinant = flow * k / mass / store;
      double root = Math.sqrt(trace * trace / 4 - determinant);
      double fast = trace / 2 - root;
      double slow = trace / 2 + root;
      for (int minute = 1; minute <= 240; minute++) {
        for (int step = 0; step < 12; step++) {
          moisture.step(
              0,
              new Moisture.Around(
                  model.outdoorHumidityRatio(1),
                  flow,
                  days.latentGains(DayKind.IDLE)[0],
                  model.pressure(),
                  5),
              30,
              0,
              Optional.empty());
        }
        double t = 60.0 * minute;
        // a(0) = 0, a'(0) = g/M = whole flow/M
        double first = flow / mass;
        double ofSlow = (fast + first) / (slow - fast);
        double ofFast = -1 - ofSlow;
        double risen = 1 + ofSlow * Math.exp(slow * t) + ofFast * Math.exp(fast * t);
        assertThat((moisture.humidityRatio(0) - 0.008) / whole)
            .as("minute %s, wood %s", minute, wood)
            .isCloseTo(risen, within(0.01));
        late[wood ? 1 : 0] = risen;
      }
    }
    assertThat(late[0]).isGreaterThan(0.97);
    assertThat(late[1]).isBetween(0.5, 0.95);
  }
}
