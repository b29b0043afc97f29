package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The march against a dense solution of its own scheme and against a general integrator. */
class GeneralSolversTest {

  private static final int HOURS = 72;

  private final Network.Builder builder = Network.builder();
  private final int shop = builder.room(2e5);
  private final int attic = builder.room(6e4);
  private final int outside = builder.boundary();
  private final int sunny = builder.boundary();
  private final Network network = build();

  private Network build() {
    Slices wall =
        new Slices().layer(0.02, 0.2, 800, 1200, 2).resistance(2).layer(0.1, 1.5, 2200, 900, 4);
    wall.between(builder, outside, sunny);
    builder.chain(
        new End.Boundary(sunny, 900),
        new double[] {2e5, 6e4, 3e5},
        new double[] {300, 60},
        new End.Room(shop, 150, 260));
    builder.chain(
        new End.Room(attic, 90, 150),
        new double[] {0, 5e4, 1.2e5, 0},
        new double[] {70, 25, 400},
        new End.Room(shop, 70, 300));
    builder.chain(
        new End.Boundary(sunny, 700),
        new double[] {3e5, 2e5},
        new double[] {600},
        new End.Room(attic, 120, 280));
    builder.chain(
        new End.Insulated(), new double[] {4e6, 0}, new double[] {500}, new End.Room(shop, 200, 0));
    builder.link(shop, outside, 18);
    return builder.build();
  }

  private void hour(Drivers d, int hour) {
    double angle = 2 * Math.PI * (hour - 9) / 24;
    double sun = Math.max(0, Math.sin(angle));
    d.boundary(outside, 27 + 7 * Math.sin(angle));
    d.boundary(sunny, 27 + 7 * Math.sin(angle) + 25 * sun);
    d.leftSource(1, 300 * sun);
    d.airSource(shop, hour % 24 >= 8 && hour % 24 < 17 ? 900 : 0);
    d.starSource(shop, hour % 24 >= 8 && hour % 24 < 17 ? 600 : 0);
    d.inflow(shop, 25, 27 + 7 * Math.sin(angle));
    d.inflow(attic, 60, 27 + 7 * Math.sin(angle));
  }

  private Drivers flows(boolean held) {
    Drivers d = new Drivers(network);
    hour(d, 0);
    d.exchange(attic, shop, 4);
    if (held) {
      d.hold(shop, 25);
    }
    return d;
  }

  /** Steps of 10 s; the bounds are 1e-10 K for the same scheme, 2e-4 K for the same network. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void threeWaysToOneAnswer(boolean held) {
    Drivers d = flows(held);
    int steps = 360;
    March march = new March(network, 3600.0 / steps);
    march.start(25);
    DenseMarch dense = new DenseMarch(network, d, 3600.0 / steps);
    dense.restore(march.state());
    AdaptiveMarch adaptive =
        new AdaptiveMarch(network, d, 0, new DormandPrince853Integrator(1e-6, 3600, 1e-8, 1e-8));
    adaptive.restore(march.state());
    for (int hour = 0; hour < HOURS; hour++) {
      hour(d, hour);
      double[] marched = new double[2];
      double[] densely = new double[2];
      for (int step = 0; step < steps; step++) {
        march.step(d);
        dense.step(d);
        for (int room = 0; room < 2; room++) {
          marched[room] += march.meanAir(room) / steps;
          densely[room] += dense.meanAir(room) / steps;
        }
      }
      adaptive.advance(d, 3600);
      for (int room = 0; room < 2; room++) {
        assertThat(densely[room]).isCloseTo(marched[room], within(1e-10));
        assertThat(adaptive.meanAir(room)).isCloseTo(marched[room], within(2e-4));
      }
      assertThat(dense.state()).containsExactly(march.state(), within(1e-10));
    }
    assertThat(march.air(attic)).isNotCloseTo(25, within(0.5));
  }

  /** Any network, with rooms that nothing radiates in and nodes that store nothing. */
  @Test
  void denseIsTheMarchOfAnyNetwork() {
    for (int number = 0; number < 200; number++) {
      RandomCase random = new RandomCase(number);
      Drivers d = random.drivers();
      March march = new March(random.network, 900);
      march.restore(random.state());
      DenseMarch dense = new DenseMarch(random.network, d, 900);
      dense.restore(march.state());
      for (int step = 0; step < 4; step++) {
        random.drive(d);
        march.step(d);
        dense.step(d);
      }
      assertThat(dense.state())
          .as("network %s", number)
          .containsExactly(march.state(), within(1e-7));
    }
  }
}
