package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The error of the scheme falls with the square of the step: half the step, a quarter of the error.
 *
 * <p>Source: Alexander (1977): order 2.
 */
class MarchConvergenceTest {

  private final Network.Builder builder = Network.builder();
  private final int room = builder.room(2e5);
  private final int outside = builder.boundary();

  /** Against exp(-1) of the lumped room. */
  @Test
  void lumpedRoomIsOfSecondOrder() {
    builder.link(room, outside, 200000.0 / 3600);
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    double coarse = error(network, drivers, 16);
    double fine = error(network, drivers, 32);
    double finest = error(network, drivers, 64);
    assertThat(coarse / fine).isCloseTo(4, within(0.15));
    assertThat(fine / finest).isCloseTo(4, within(0.08));
    // R(z) - exp(z) = (3 γ² - 2 γ³ - 1/6) z³ + ..., so the error is that times h² exp(-1).
    double gamma = 1 - 1 / Math.sqrt(2);
    double constant = 3 * gamma * gamma - 2 * gamma * gamma * gamma - 1 / 6.0;
    assertThat(finest * 64 * 64 * Math.E).isCloseTo(constant, within(0.03 * constant));
  }

  private double error(Network network, Drivers drivers, int steps) {
    March march = new March(network, 3600.0 / steps);
    march.start(1);
    for (int s = 0; s < steps; s++) {
      march.step(drivers);
    }
    return Math.abs(march.air(room) - Math.exp(-1));
  }

  /** A room of two masses under a smooth day, against a much finer march; also when held. */
  @Test
  void roomWithWallsIsOfSecondOrder() {
    builder.chain(
        new End.Boundary(outside, 150),
        new double[] {0, 8e5, 8e5, 0},
        new double[] {80, 40, 80},
        new End.Room(room, 40, 60));
    builder.chain(
        new End.Insulated(), new double[] {3e6, 0}, new double[] {200}, new End.Room(room, 60, 90));
    Network network = builder.build();
    for (boolean held : new boolean[] {false, true}) {
      double[] exact = day(network, held, 4800);
      double coarse = Math.abs(day(network, held, 48)[held ? 1 : 0] - exact[held ? 1 : 0]);
      double fine = Math.abs(day(network, held, 96)[held ? 1 : 0] - exact[held ? 1 : 0]);
      assertThat(coarse / fine).as("held %s", held).isCloseTo(4, within(0.4));
    }
  }

  /** Air at the end of two days, and the mean plant of the last half hour. */
  private double[] day(Network network, boolean held, int steps) {
    double seconds = 86400.0 / steps;
    double omega = 2 * Math.PI / 86400;
    March march = new March(network, seconds);
    march.start(0);
    Drivers drivers = new Drivers(network);
    if (held) {
      drivers.hold(room, 0);
    }
    int last = steps / 48;
    double plant = 0;
    for (int s = 0; s < 2 * steps; s++) {
      double start = omega * seconds * s;
      double end = start + omega * seconds;
      drivers.boundary(outside, 10 * (Math.cos(start) - Math.cos(end)) / (omega * seconds));
      march.step(drivers);
      if (s >= 2 * steps - last) {
        plant += march.plant(room) / last;
      }
    }
    return new double[] {march.air(room), plant};
  }

  /** A room fed with the plant heat that held it stays near what was held, by a law of h². */
  @Test
  void plantHeatHoldsTheRoom() {
    builder.chain(
        new End.Boundary(outside, 150),
        new double[] {0, 8e5, 8e5, 0},
        new double[] {80, 40, 80},
        new End.Room(room, 40, 60));
    Network network = builder.build();
    double coarse = drift(network, 600);
    double fine = drift(network, 300);
    assertThat(coarse).isLessThan(0.01);
    assertThat(coarse / fine).isGreaterThan(3.5);
  }

  private double drift(Network network, double seconds) {
    double omega = 2 * Math.PI / 86400;
    March held = new March(network, seconds);
    March fed = new March(network, seconds);
    held.start(24);
    fed.start(24);
    Drivers holding = new Drivers(network);
    Drivers feeding = new Drivers(network);
    holding.hold(room, 24);
    double drift = 0;
    for (int s = 0; s < 86400 / seconds; s++) {
      double outdoors = 24 + 8 * (1 - Math.cos(omega * seconds * (s + 0.5)));
      holding.boundary(outside, outdoors);
      feeding.boundary(outside, outdoors);
      held.step(holding);
      feeding.airSource(room, held.plant(room));
      fed.step(feeding);
      drift = Math.max(drift, Math.abs(fed.air(room) - 24));
    }
    return drift;
  }
}
