package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What must be true of the steady state of any network, tried on random ones. */
class SteadyStateProperties {

  @Property
  void agreesWithTheWholeMatrix(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    Drivers drivers = one.drivers();
    SteadyState.Solution steady = solve(network, drivers);
    double[] expected = WholeMatrix.solve(network, drivers, 0, new double[network.temperatures()]);
    assertClose(steady.temperatures(), expected);
    int at = 2 * network.rooms();
    for (int k = 0; k < network.chains(); k++) {
      assertThat(steady.leftFace(k)).isEqualTo(steady.temperatures()[at]);
      for (int i = 0; i < network.nodes(k); i++) {
        assertThat(steady.node(k, i)).isEqualTo(steady.temperatures()[at + i]);
      }
      at += network.nodes(k);
      assertThat(steady.rightFace(k)).isEqualTo(steady.temperatures()[at - 1]);
    }
    for (int r = 0; r < network.rooms(); r++) {
      assertThat(steady.air(r)).isEqualTo(steady.temperatures()[r]);
      assertThat(steady.star(r)).isEqualTo(steady.temperatures()[network.rooms() + r]);
    }
  }

  /** Elements are compared by the size of the whole: weak ties and strong sources make it large. */
  private static void assertClose(double[] found, double[] expected) {
    double size = 1;
    for (double value : expected) {
      size = Math.max(size, Math.abs(value));
    }
    assertThat(found).containsExactly(expected, within(1e-9 * size));
  }

  /** A steady state does not move, and tells the same heat as the step that keeps it. */
  @Property
  void staysWhereItIs(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    Drivers drivers = one.drivers();
    SteadyState.Solution steady = solve(network, drivers);
    March march = new March(network, 900);
    march.startSteady(drivers);
    assertThat(march.state()).containsExactly(steady.temperatures());
    assertThat(march.storedHeatChange()).isZero();
    heatIs(march, steady, network, 1e-12);
    march.step(drivers);
    assertClose(march.state(), steady.temperatures());
    heatIs(march, steady, network, 1e-7);
  }

  private static void heatIs(
      March march, SteadyState.Solution steady, Network network, double tolerance) {
    double size = 1;
    for (double celsius : steady.temperatures()) {
      size = Math.max(size, Math.abs(celsius));
    }
    for (int r = 0; r < network.rooms(); r++) {
      assertThat(march.plant(r)).isCloseTo(steady.plant(r), within(tolerance * size));
    }
    for (int b = 0; b < network.boundaries(); b++) {
      assertThat(march.boundaryHeat(b))
          .isCloseTo(steady.boundaryHeat(b), within(100 * tolerance * size));
    }
  }

  /** A room fed with the plant heat of a held room floats at the temperature that was held. */
  @Property
  void plantHeatIsWhatHolds(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    Drivers drivers = one.drivers();
    SteadyState.Solution held = solve(network, drivers);
    for (int r = 0; r < network.rooms(); r++) {
      if (drivers.held[r]) {
        assertThat(held.air(r)).isEqualTo(drivers.holdTemperature[r]);
        drivers.airSource(r, drivers.airSource[r] + held.plant(r));
        drivers.release(r);
      } else {
        assertThat(held.plant(r)).isZero();
      }
    }
    assertClose(solve(network, drivers).temperatures(), held.temperatures());
  }

  /** Random networks may float as a whole; those are the matter of another test. */
  private static SteadyState.Solution solve(Network network, Drivers drivers) {
    try {
      return SteadyState.solve(network, drivers);
    } catch (IllegalStateException floats) {
      Assume.that(false);
      throw floats;
    }
  }
}
