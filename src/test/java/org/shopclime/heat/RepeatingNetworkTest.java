package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RepeatingNetworkTest {

  private static final Waves NOTHING = new Waves();
  private static final int PARTS = 20;

  /** A square wave of 1 kW from 8 to 17 and twice that from 12:00 to 12:30. */
  private static double[] work() {
    double[] steps = new double[Waves.STEPS];
    Arrays.fill(steps, 16, 34, 1000);
    steps[24] = 2000;
    return steps;
  }

  private static double[] outdoor() {
    double[] hours = new double[24];
    Arrays.setAll(hours, hour -> 30 + 7 * Math.cos(2 * Math.PI * (hour - 14.5) / 24));
    return hours;
  }

  /**
   * Air of 200 kJ/K behind a film of 50 W/K, an hour and seven minutes: T' = (u - T) / τ with u =
   * 20 K from 0:00 to 12:00, else 0. Hour by hour in closed form: T = 20 (1 - a e^(-t/τ)), a = 1 /
   * (1 + e^(-12 h/τ)).
   */
  @Test
  void lumpOfAirAnswersBySeries() {
    Network.Builder builder = Network.builder();
    int room = builder.room(2e5);
    int boundary = builder.boundary();
    builder.link(room, boundary, 50);
    RepeatingNetwork network = new RepeatingNetwork(builder.build(), new boolean[1], new double[1]);
    double[] hours = new double[24];
    Arrays.fill(hours, 0, 12, 20);
    RepeatingNetwork.Day day = network.day();
    day.boundary(boundary, Waves.ofHours(hours), 0);
    double[] air = day.solve().air(room).hours();
    double constant = 2e5 / 50;
    double first = 1 / (1 + Math.exp(-12 * 3600 / constant));
    for (int hour = 0; hour < 12; hour++) {
      double decayed =
          first
              * (Math.exp(-hour * 3600 / constant) - Math.exp(-(hour + 1) * 3600 / constant))
              * constant
              / 3600;
      assertThat(air[hour]).isCloseTo(20 * (1 - decayed), within(1e-9));
      assertThat(air[hour + 12]).isCloseTo(20 * decayed, within(1e-9));
    }
  }

  /** A held shop under a floating attic, against a march in steps of a minute and a half. */
  @Test
  void marchTellsTheSameHours() {
    Network.Builder builder = Network.builder();
    int shop = builder.room(2e5);
    int attic = builder.room(6e4);
    int outside = builder.boundary();
    int above = builder.boundary();
    builder.chain(
        new End.Boundary(outside, 1500),
        new double[] {4e5, 8e5, 4e5},
        new double[] {90, 110},
        new End.Room(shop, 250, 420));
    builder.chain(
        new End.Room(attic, 60, 300),
        new double[] {0, 3e5, 3e5},
        new double[] {18, 800},
        new End.Room(shop, 60, 300));
    builder.chain(
        new End.Boundary(above, 1200),
        new double[] {2e5, 2e5},
        new double[] {900},
        new End.Room(attic, 200, 350));
    builder.chain(
        new End.Insulated(),
        new double[] {1e6, 2e6, 1e6},
        new double[] {2000, 2000},
        new End.Room(shop, 150, 200));
    Network network = builder.build();

    boolean[] held = {true, false};
    double[] inflow = {0, 40};
    RepeatingNetwork repeating = new RepeatingNetwork(network, held, inflow);
    RepeatingNetwork.Day day = repeating.day();
    double[] air = outdoor();
    double[] roof = Arrays.stream(air).map(celsius -> celsius + 3 * (celsius - 25)).toArray();
    double[] work = work();
    double[] inflowHeat = Arrays.stream(air).map(celsius -> 40 * celsius).toArray();
    day.boundary(outside, Waves.ofHours(air), 0);
    day.boundary(above, Waves.ofHours(roof), 0);
    day.star(shop, Waves.of(work), NOTHING);
    day.air(attic, Waves.ofHours(inflowHeat), NOTHING);
    day.hold(shop, 25);
    double[] plant = day.solve().plant(shop).hours();
    double[] warm = day.solve().air(attic).hours();

    March march = new March(network, 1800.0 / PARTS);
    Drivers drivers = new Drivers(network);
    drivers.hold(shop, 25);
    double[] marched = new double[24];
    double[] marchedAir = new double[24];
    for (int round = 0; round < 40; round++) {
      Arrays.fill(marched, 0);
      Arrays.fill(marchedAir, 0);
      for (int step = 0; step < Waves.STEPS; step++) {
        drivers.boundary(outside, air[step / 2]);
        drivers.boundary(above, roof[step / 2]);
        drivers.starSource(shop, work[step]);
        drivers.inflow(attic, 40, air[step / 2]);
        for (int part = 0; part < PARTS; part++) {
          march.step(drivers);
          marched[step / 2] += march.plant(shop) / 2 / PARTS;
          marchedAir[step / 2] += march.meanAir(attic) / 2 / PARTS;
        }
      }
    }
    double peak = Arrays.stream(marched).map(Math::abs).max().orElseThrow();
    assertThat(peak).isGreaterThan(1000);
    for (int hour = 0; hour < 24; hour++) {
      assertThat(plant[hour]).isCloseTo(marched[hour], within(5e-4 * peak));
      assertThat(warm[hour]).isCloseTo(marchedAir[hour], within(0.01));
    }
  }

  /** A gain that ends in the middle of a half hour counts by its tilt: a small heat, told well. */
  @Test
  void tiltMovesHeatToTheNextHalfHour() {
    Network.Builder builder = Network.builder();
    int room = builder.room(2e5);
    int boundary = builder.boundary();
    builder.link(room, boundary, 50);
    RepeatingNetwork network = new RepeatingNetwork(builder.build(), new boolean[1], new double[1]);
    double[] mean = new double[Waves.STEPS];
    double[] tilt = new double[Waves.STEPS];
    mean[20] = 500;
    // 1 kW in the second quarter of an hour: the mean of √3 (2 t - 1) over it is √3 / 4 of 1 kW.
    tilt[20] = 1000 * Math.sqrt(3) / 4;
    RepeatingNetwork.Day day = network.day();
    day.air(room, Waves.of(mean), Waves.of(tilt));
    double[] air = day.solve().air(room).steps();
    double constant = 2e5 / 50;
    double quarter = 900;
    double end = 20 * (1 - Math.exp(-quarter / constant));
    double within = 20 * (1 - constant / quarter * (1 - Math.exp(-quarter / constant))) / 2;
    double next = end * constant / 1800 * (1 - Math.exp(-1800 / constant));
    assertThat(air[20]).isCloseTo(within, within(0.01));
    assertThat(air[21]).isCloseTo(next, within(0.01));
  }

  @Test
  void refusesARoomThatNothingFixes() {
    Network.Builder builder = Network.builder();
    builder.room(1e5);
    Network network = builder.build();
    assertThatIllegalStateException()
        .isThrownBy(() -> new RepeatingNetwork(network, new boolean[1], new double[1]));
  }
}
