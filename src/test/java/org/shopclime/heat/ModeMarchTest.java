package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The march by modes against solutions in closed form and against the full network. */
class ModeMarchTest {

  private static final double HOUR = 3600;

  /**
   * Heat gone into a thick body whose face is put to V at once: 2 k V √(t / (π α)). Source: Carslaw
   * and Jaeger, Conduction of Heat in Solids, 2nd ed. (1959), 2.4 and 2.5. Hourly steps.
   */
  @Test
  void aThickBodyTakesUpHeatWithTheRootOfTime() {
    double conductivity = 0.8;
    double density = 1700;
    double heat = 850;
    Network.Builder builder = Network.builder();
    int face = builder.boundary();
    new Slices().layer(1, conductivity, density, heat, 400).behind(builder, face);
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.boundary(face, 30);
    ModeMarch march = new ModeMarch(network, HOUR);
    double taken = 0;
    for (int hour = 1; hour <= 12; hour++) {
      march.step(drivers);
      taken += march.boundaryHeat(face) * HOUR;
      double diffusivity = conductivity / density / heat;
      double exact = 2 * conductivity * 30 * Math.sqrt(hour * HOUR / Math.PI / diffusivity);
      assertThat(taken).as("after %s h", hour).isCloseTo(exact, within(0.001 * exact));
    }
  }

  /** A lumped room left to itself cools by exp(-t / τ); third order: half the step, an eighth. */
  @Test
  void aLumpedRoomCoolsByTheExponential() {
    Network.Builder builder = Network.builder();
    int room = builder.room(2e5);
    builder.link(room, builder.boundary(), 2e5 / HOUR);
    Network network = builder.build();
    double coarse = missed(network, room, 4);
    double fine = missed(network, room, 8);
    // One step of length x misses exp(-x) by x⁴ / 72 in its leading term (Padé 1, 2).
    assertThat(coarse).isCloseTo(4 * Math.pow(0.25, 4) / 72 / Math.E, within(1e-5));
    assertThat(coarse / fine).isBetween(7.0, 9.0);
  }

  private static double missed(Network network, int room, int steps) {
    ModeMarch march = new ModeMarch(network, HOUR / steps);
    march.start(1);
    for (int s = 0; s < steps; s++) {
      march.step(new Drivers(network));
    }
    return Math.abs(march.air(room) - Math.exp(-1));
  }

  /** A room of heavy and light walls and a hot loft above it, in the numbers of a small shop. */
  private static Network shop() {
    return shop(1);
  }

  /** The same with all films so many times as conductive. */
  private static Network shop(double films) {
    Network.Builder builder = Network.builder();
    int room = builder.room(2e5);
    int loft = builder.room(8e4);
    for (int i = 0; i < 4; i++) {
      builder.boundary();
    }
    builder.chain(
        new End.Boundary(0, 700 * films),
        new double[] {4e5, 3e5, 3e5, 2e5, 2e5, 1e5},
        new double[] {800, 20, 15, 20, 700},
        new End.Room(room, 100 * films, 160 * films));
    builder.chain(
        new End.Boundary(1, 900 * films),
        new double[] {2e5, 2e5},
        new double[] {1500},
        new End.Room(loft, 120 * films, 150 * films));
    builder.chain(
        new End.Room(loft, 80 * films, 100 * films),
        new double[] {5e4, 8e4, 8e4, 2e5},
        new double[] {15, 12, 300},
        new End.Room(room, 60 * films, 120 * films));
    builder.chain(
        new End.Boundary(2, 40 * films),
        new double[] {2e7, 1.5e7, 8e6, 3e6, 1e6},
        new double[] {60, 150, 300, 700},
        new End.Room(room, 90 * films, 130 * films));
    builder.chain(
        new End.Boundary(3, 150 * films),
        new double[] {0, 0},
        new double[] {60},
        new End.Room(room, 15 * films, 25 * films));
    return builder.build();
  }

  /** Hour by hour: outdoors, sun on the roof, a jump in the gains, an open door. */
  private static void drive(Drivers d, int hour) {
    double outdoor = 28 + 6 * Math.sin((hour - 9) * Math.PI / 12);
    double sun = Math.max(0, Math.sin((hour % 24 - 6) * Math.PI / 12));
    d.boundary(0, outdoor);
    d.boundary(1, outdoor - 5);
    d.boundary(2, 18);
    d.boundary(3, outdoor);
    d.leftSource(1, 9000 * sun);
    d.leftSource(0, 3000 * sun);
    d.starSource(0, hour % 24 >= 8 && hour % 24 < 16 ? 300 : 0);
    d.airSource(0, hour % 24 >= 8 && hour % 24 < 16 ? 200 : 0);
    d.inflow(0, hour % 3 == 0 ? 40 : 15, outdoor);
    d.inflow(1, 20 + hour % 5, outdoor);
  }

  /**
   * Steps under hourly drivers against the full network in steps of a minute: hourly ones to 0.05 K
   * in the room and 0.1 K in the loft, whose roof jumps by 3 K; half of it misses far less.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void hoursAreThoseOfTheFullNetwork(boolean held) {
    double[] hourly = worst(held, 1);
    double[] halved = worst(held, 2);
    assertThat(hourly[0]).as("room").isLessThan(0.05);
    assertThat(hourly[1]).as("loft and roof").isLessThan(0.1);
    assertThat(hourly[2]).as("plant").isLessThan(held ? 4 : 1e-300);
    assertThat(halved[1]).isLessThan(hourly[1] / 3);
  }

  private static double[] worst(boolean held, int parts) {
    Network network = shop();
    March full = new March(network, 60);
    ModeMarch march = new ModeMarch(network, HOUR / parts);
    full.start(25);
    march.start(25);
    Drivers drivers = new Drivers(network);
    double[] worst = new double[3];
    for (int hour = 0; hour < 240; hour++) {
      drive(drivers, hour);
      if (held) {
        drivers.hold(0, 24);
      }
      double[] off = new double[4];
      for (int minute = 0; minute < 60; minute++) {
        full.step(drivers);
        off[0] += full.meanAir(0) / 60;
        off[1] += full.meanAir(1) / 60;
        off[2] += full.meanLeftFace(1) / 60;
        off[3] += full.plant(0) / 60;
      }
      for (int part = 0; part < parts; part++) {
        march.step(drivers);
        off[0] -= march.meanAir(0) / parts;
        off[1] -= march.meanAir(1) / parts;
        off[2] -= march.leftFace(1) / parts;
        off[3] -= march.plant(0) / parts;
      }
      if (hour > 0) {
        worst[0] = Math.max(worst[0], Math.abs(off[0]));
        worst[1] = Math.max(worst[1], Math.max(Math.abs(off[1]), Math.abs(off[2])));
        worst[2] = Math.max(worst[2], Math.abs(off[3]));
      }
    }
    return worst;
  }

  /** In the steady state nothing moves, in steps of any length, and it is that of the network. */
  @Test
  void theSteadyStateStays() {
    Network network = shop();
    Drivers drivers = new Drivers(network);
    drive(drivers, 14);
    SteadyState.Solution steady = SteadyState.solve(network, drivers);
    ModeMarch march = new ModeMarch(network, HOUR, 300);
    march.startSteady(drivers);
    for (int s = 0; s < 10; s++) {
      march.choose(s % 2);
      march.step(drivers);
      for (int room = 0; room < 2; room++) {
        assertThat(march.meanAir(room)).isCloseTo(steady.temperatures()[room], within(1e-9));
        assertThat(march.meanStar(room)).isCloseTo(steady.temperatures()[2 + room], within(1e-9));
      }
      assertThat(march.storedHeatChange()).isCloseTo(0, within(1e-3));
    }
  }

  /** With other films the walls keep their heat; with the same films nothing changes at all. */
  @Test
  void anotherSeasonTakesOver() {
    Network network = shop();
    Drivers drivers = new Drivers(network);
    ModeMarch before = ModeMarch.handingOver(network, 300);
    ModeMarch after = ModeMarch.handingOver(network, 300);
    before.start(20);
    for (int hour = 0; hour < 48; hour++) {
      drive(drivers, hour);
      for (int part = 0; part < 12; part++) {
        before.step(drivers);
      }
    }
    after.takeOver(before);
    before.step(drivers);
    after.step(drivers);
    for (int room = 0; room < 2; room++) {
      assertThat(after.air(room)).isCloseTo(before.air(room), within(0.02));
    }
    assertThat(after.leftFace(3)).isCloseTo(before.leftFace(3), within(0.002));
  }

  /**
   * Handed over at each hour of the day to films half as conductive again, rooms go on as those of
   * the full network do, whose nodes keep their temperatures: to 0.05 K in the first five minutes,
   * in which the loft moves by up to 3 K.
   */
  @Test
  void otherFilmsTakeOverWithAllTemperatures() {
    Network one = shop();
    Network other = shop(1.5);
    for (int turn = 25; turn < 49; turn++) {
      March full = new March(one, 60);
      ModeMarch modes = ModeMarch.handingOver(one, 300);
      full.start(25);
      modes.start(25);
      Drivers drivers = new Drivers(one);
      for (int hour = 0; hour < turn; hour++) {
        drive(drivers, hour);
        hour(full, modes, drivers);
      }
      March fullNext = new March(other, 60);
      fullNext.restore(full.state());
      ModeMarch next = ModeMarch.handingOver(other, 300);
      next.takeOver(modes);
      Drivers onward = new Drivers(other);
      drive(onward, turn);
      next.step(onward);
      for (int minute = 0; minute < 5; minute++) {
        fullNext.step(onward);
      }
      for (int room = 0; room < 2; room++) {
        assertThat(next.air(room))
            .as("room %s, handed over in hour %s", room, turn)
            .isCloseTo(fullNext.air(room), within(0.05));
      }
    }
  }

  private static void hour(March full, ModeMarch modes, Drivers drivers) {
    for (int part = 0; part < 12; part++) {
      modes.step(drivers);
      for (int minute = 0; minute < 5; minute++) {
        full.step(drivers);
      }
    }
  }

  @Test
  void falseCallsAreRefused() {
    Network network = shop();
    assertThatThrownBy(() -> new ModeMarch(network))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no length of step");
    assertThatThrownBy(() -> new ModeMarch(network, 0)).hasMessageContaining("length of a step");
    ModeMarch march = new ModeMarch(network, HOUR);
    assertThatThrownBy(() -> march.choose(1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> march.start(Double.NaN)).hasMessageContaining("temperature");
    assertThatThrownBy(() -> march.restore(new double[3])).hasMessageContaining("state of 3");
    assertThatThrownBy(() -> march.step(new Drivers(shop()))).hasMessageContaining("another");
    Drivers onNode = new Drivers(network);
    onNode.nodeSource(0, 1, 5);
    assertThatThrownBy(() -> march.step(onNode)).hasMessageContaining("on their faces only");
  }
}
