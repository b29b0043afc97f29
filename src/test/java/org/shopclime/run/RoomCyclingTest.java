package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.AirState;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.Profile;
import org.shopclime.shop.Shop;
import org.shopclime.unit.StartUp;
import org.shopclime.unit.WetCoil;

/** The average of a unit that goes on and off, against control by the minute. */
class RoomCyclingTest {

  private static final double FAHRENHEIT = 1 / 1.8;

  private static final StartUp START = StartUp.ofDegradation(0.25);

  /**
   * Six shops, among them each insulated example with the smallest size that holds there: indoor
   * peak within 0.2 °F, energy within 2 %. First and second working day after days off.
   */
  @ParameterizedTest
  @CsvSource({
    "insulated, 722230, 18000",
    "insulated-foam-door, 722230, 12000",
    "insulated-foam-door, 722230, 18000",
    "insulated-foam-door, 722430, 24000",
    "oven-day, 722430, 18000",
    "oven-day, 722230, 24000"
  })
  void theAverageIsThatOfTheMinutes(String example, String station, double btuh) {
    agree(example, station, btuh, 0.2, 2);
  }

  /**
   * Six shops that have nothing in common but the work, each with the smallest size that holds
   * there, which is the hardest for the average: the same limits.
   */
  @ParameterizedTest
  @CsvSource({
    "'Detached stud shop, R-13 walls, bare ceiling', 722230, 15000",
    "'Detached stud shop, R-13 walls, R-38 ceiling', 722230, 8000",
    "'Post-frame metal shop with foil bubble wrap', 722230, 28000",
    "'Shed', 722230, 15000",
    "'Attached two-car garage, bare attic, steel door', 722430, 18000",
    "'Post-frame metal shop with foil bubble wrap', 722430, 36000"
  })
  void soItIsInShopsOfEveryShell(String shell, String station, double btuh) {
    Shop shop = MadeShops.preset(shell, "Hand tools and radio", station, 0, Optional.empty());
    agree(shop, MadeShops.window(MadeShops.btuh(btuh)), 0.2, 2);
  }

  /**
   * Where the air of a light or an overcooled shop swings by 4 °F, whole cycles make up an hour
   * only nearly; where a unit is all but enough, by the minute it runs on to the bottom of its
   * band, which the average does not know.
   */
  @ParameterizedTest
  @CsvSource({
    "bare-studs, 722230, 24000",
    "bare-studs, 722230, 36000",
    "insulated, 722230, 36000",
    "insulated-foam-door, 722230, 36000",
    "insulated, 722780, 24000",
    "insulated, 722780, 36000"
  })
  void atTheEdgeTheyAgreeLess(String example, String station, double btuh) {
    agree(example, station, btuh, 0.65, 2);
  }

  /** With a fan of 70 W that runs on; what hangs on the coil evaporates and condenses again. */
  @ParameterizedTest
  @CsvSource({
    "insulated-foam-door, 722230, 12000",
    "insulated-foam-door, 722230, 18000",
    "insulated-foam-door, 722430, 24000",
    "oven-day, 722430, 18000",
    "insulated, 722230, 24000",
    "insulated, 722430, 24000"
  })
  void withAFanThatRunsOnTheAverageIsThatOfTheMinutes(String example, String station, double btuh) {
    Cooling cooling = MadeShops.unitWithFan(Cooling.Kind.WINDOW, MadeShops.btuh(btuh), 70);
    agree(example, station, cooling, 0.2, 2);
  }

  private static void agree(
      String example, String station, double btuh, double fahrenheit, double percent) {
    agree(example, station, MadeShops.window(MadeShops.btuh(btuh)), fahrenheit, percent);
  }

  private static void agree(
      String example, String station, Cooling cooling, double fahrenheit, double percent) {
    agree(MadeShops.example(example, station), cooling, fahrenheit, percent);
  }

  private static void agree(Shop shop, Cooling cooling, double fahrenheit, double percent) {
    ShopDays days = new ShopDays(MadeShops.model(shop));
    DayRunner.State idle = LivedDay.idle(days, 0);
    DayRunner average = new DayRunner(days, Optional.of(cooling), 0);
    DayRunner minutes = DayRunner.byTheMinute(days, cooling, 0);
    average.restore(idle);
    minutes.restore(idle);
    for (int day = 1; day <= 2; day++) {
      average.run(DayKind.WORKING);
      minutes.run(DayKind.WORKING);
      assertThat(average.peak(days.judged()))
          .as("peak, working day %s", day)
          .isCloseTo(minutes.peak(days.judged()), within(fahrenheit * FAHRENHEIT));
      assertThat(sum(average.trace().power()))
          .as("energy, working day %s", day)
          .isCloseTo(sum(minutes.trace().power()), withinPercentage(percent));
      assertThat(sum(average.trace().starts()))
          .as("starts, working day %s", day)
          .isCloseTo(sum(minutes.trace().starts()), within(8.0));
    }
  }

  private static double sum(Profile of) {
    return IntStream.rangeClosed(1, 24).mapToDouble(of::at).sum();
  }

  /**
   * By pencil, a room so heavy that its air climbs in a straight line: 0.001 K for each kilojoule,
   * 3000 W of capacity of which half is asked. The air climbs and falls at 1.5 mK a second, the
   * band of 1.2 K and a look half a minute late at each end are 1.2 + 2 x 0.045 = 1.29 K and take
   * 860 s of rest. The run gives what 1500 W ask meanwhile, and what the start costs, 75 s of
   * running: run/2 = 430 + 75, 1010 s but for what the slower fall takes off.
   */
  @Test
  void cyclesByPencil() {
    double seconds = 1e7;
    RoomCycling heavy =
        new RoomCycling(1e-6 * seconds, seconds, new Thermostat(1.2, 180), new StartUp(75));
    RoomCycling.Cycle cycle = heavy.cycle(0.5, 3000);
    assertThat(cycle.rest()).isCloseTo(860, within(2.0));
    assertThat(cycle.run()).isCloseTo(1010, within(3.0));
    assertThat(cycle.starts()).isCloseTo(3600 / 1870.0, within(0.01));
    // Half of a third more of what is asked, no longer than the shortest run allows.
    RoomCycling light = new RoomCycling(0.003, 60, new Thermostat(1.2, 600), new StartUp(75));
    RoomCycling.Cycle bound = light.cycle(0.25, 3000);
    assertThat(bound.run()).isEqualTo(600);
    assertThat(600 - 75 * (1 - Math.exp(-8))).isCloseTo(0.25 * (600 + bound.rest()), within(1e-9));
    assertThat(heavy.cycle(0.99999, 3000).starts()).isZero();
  }

  /**
   * The same room with half a kilogram on the coil, of which 0.6 g evaporate a second at first: dry
   * after 1,667 s. A rest of t seconds takes 0.6 t - 0.00018 t² grams, and 2.5 kJ for each. By
   * pencil, t = 1,250: 469 g, 1,172 kJ of the 1,875 kJ asked meanwhile, so the air climbs by 0.70
   * K; at the end 0.15 g/s are left, 375 W, so it then climbs by 1.1 mK a second. In the run it
   * falls by 1.5 mK a second, as before. Half a minute late at each end that is 1.2 + 30 x 2.6 mK =
   * 1.28 K: more rest is needed. Dry, at t = 1,667, it has climbed by 2,500 - 1,250 = 1,250 kJ or
   * 1.25 K, and 30 x 3 mK are late: 1.29 K. So some 1,690 s, of 2,535 - 1,250 = 1,285 kJ; the run
   * gives that, and what the start costs: run / 2 = 428 + 75, 1,007 s.
   */
  @Test
  void cyclesUnderAFanThatRunsOnByPencil() {
    double seconds = 1e7;
    RoomCycling heavy =
        new RoomCycling(1e-6 * seconds, seconds, new Thermostat(1.2, 180), new StartUp(75));
    RoomCycling.Machine wet =
        new RoomCycling.Machine(3000, 0.001, new WetCoil(70, 0.5, 0.0006, 2.5e6));
    RoomCycling.Cycle cycle = heavy.cycle(0.5, wet);
    assertThat(cycle.rest()).isCloseTo(1694, within(10.0));
    assertThat(cycle.run()).isCloseTo(1010, within(10.0));
    assertThat(cycle.evaporated()).isEqualTo(0.5);
    assertThat(heavy.cycle(0.99999, wet).endless()).isTrue();
  }

  /** What a run and the rest after it give is what was asked; no more evaporates than condensed. */
  @ParameterizedTest
  @CsvSource({
    "0.001, 4000, 0.0004, 0.0003",
    "0.02, 4000, 0.0004, 0.0003",
    "0.2, 4000, 0.0004, 0.0003",
    "0.5, 2500, 0.0004, 0.0006",
    "0.5, 2500, 0.0001, 0.0006",
    "0.8, 2500, 0.0004, 0.0006",
    "0.99, 2500, 0.0004, 0.0006",
    "0.6, 2500, 0, 0.0006",
    "0.6, 2500, 0.0004, 0"
  })
  void whatIsAskedIsGivenWithAFan(
      double load, double sensible, double condensate, double evaporation) {
    RoomCycling cycling = new RoomCycling(0.0029, 530, Thermostat.USUAL, START);
    WetCoil coil = new WetCoil(70, 0.35, evaporation, 2.55e6);
    RoomCycling.Cycle cycle =
        cycling.cycle(load, new RoomCycling.Machine(sensible, condensate, coil));
    double useful = cycle.run() * START.share(0, cycle.run());
    assertThat(useful * sensible + cycle.evaporated() * coil.enthalpy())
        .isCloseTo(load * sensible * (cycle.run() + cycle.rest()), withinPercentage(1e-4));
    assertThat(cycle.run()).isGreaterThanOrEqualTo(180 - 1e-6);
    assertThat(cycle.rest()).isGreaterThanOrEqualTo(0);
    double condensed = useful * condensate;
    assertThat(cycle.evaporated())
        .isCloseTo(Math.min(condensed, coil.evaporated(cycle.rest())), within(1e-12));
  }

  /** By the minute: what leaves the air is what drips and what is on the coil, never more. */
  @Test
  void theCoilHoldsNoMoreThanItCan() {
    Cooling cooling = MadeShops.unitWithFan(Cooling.Kind.WINDOW, MadeShops.btuh(18000), 100);
    AirState air = new AirState(26, 0.011, 101325);
    Able able = cooling.at(35, 0.016, air);
    WetCoil coil = able.coil().orElseThrow();
    OnOff control = new OnOff(Thermostat.USUAL, START);
    double taken = 0;
    double most = 0;
    for (int minute = 0; minute < 600; minute++) {
      // half an hour above the set point, then one below
      control.begin(minute / 30 % 2 == 0 ? 2 : -2);
      double share = control.share(able, 1);
      double water = control.water(able, share);
      Control.Given given = control.given(able, share);
      double before = control.onCoil();
      control.end(able);
      taken += water * Thermostat.LOOK;
      // all that is not on the coil drips, and nothing comes back from the drain
      assertThat(water * Thermostat.LOOK - (control.onCoil() - before))
          .isGreaterThanOrEqualTo(-1e-15);
      most = Math.max(most, control.onCoil());
      if (given.running() == 0) {
        // at rest it takes out nothing: what evaporates cools as much as it moistens
        assertThat(share * able.sensible() + given.latent())
            .isCloseTo(-coil.fanPower(), within(1e-9));
        assertThat(given.power()).isEqualTo(coil.fanPower());
      }
    }
    assertThat(most).isLessThanOrEqualTo(coil.held());
    assertThat(taken).isGreaterThan(control.onCoil());
  }

  /** What a run gives is what was asked since the last start. */
  @ParameterizedTest
  @CsvSource({"0.01, 2000", "0.1, 9000", "0.4, 3000", "0.7, 12000", "0.95, 5000", "0.999, 800"})
  void whatIsAskedIsGiven(double load, double sensible) {
    RoomCycling cycling = new RoomCycling(0.0029, 530, Thermostat.USUAL, START);
    RoomCycling.Cycle cycle = cycling.cycle(load, sensible);
    double given = cycle.run() * START.share(0, cycle.run());
    assertThat(given).isCloseTo(load * (cycle.run() + cycle.rest()), withinPercentage(1e-4));
    assertThat(cycle.run()).isGreaterThanOrEqualTo(180);
    CyclingTable table = new CyclingTable(cycling);
    double running = cycle.run() / (cycle.run() + cycle.rest());
    assertThat(table.running(load, sensible)).isCloseTo(running, withinPercentage(2));
  }

  /** Nothing asked or nothing given runs nothing; more asked runs longer. */
  @Test
  void theTableKeepsItsEnds() {
    CyclingTable table = new CyclingTable(new RoomCycling(0.0029, 530, Thermostat.USUAL, START));
    assertThat(table.running(0, 3000)).isZero();
    assertThat(table.running(0.5, 0)).isZero();
    assertThat(table.running(1, 3000)).isEqualTo(1);
    assertThat(table.starts(1, 3000)).isZero();
    double before = 0;
    for (int i = 1; i <= 200; i++) {
      double running = table.running(i / 200.0, 4000);
      assertThat(running).isGreaterThanOrEqualTo(before).isBetween(i / 200.0, 1.0);
      before = running;
    }
    assertThat(table.running(0.3, 100)).isEqualTo(table.running(0.3, 250));
  }
}
