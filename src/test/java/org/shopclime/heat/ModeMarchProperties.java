package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What must be true of any linear network, tried on random ones by the march by modes. */
class ModeMarchProperties {

  private static Drivers drivers(RandomCase one) {
    Drivers drivers = one.drivers();
    onFaces(drivers);
    return drivers;
  }

  private static void onFaces(Drivers drivers) {
    Arrays.fill(drivers.nodeSource, 0);
    drivers.onNodes = false;
  }

  /** First law: what is stored came in through boundaries, sources, air flows and plant. */
  @Property
  void closesInEnergy(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    double[] seconds = {one.between(60, 7200), one.between(60, 7200)};
    ModeMarch march = new ModeMarch(network, seconds);
    march.start(one.between(-10, 50));
    Drivers drivers = drivers(one);
    for (int s = 0; s < 6; s++) {
      one.flow(drivers);
      one.drive(drivers);
      onFaces(drivers);
      march.choose(s % 2);
      march.step(drivers);
      double in = drivers.sources();
      double size = 1;
      for (int k = 0; k < network.chains(); k++) {
        size += Math.abs(drivers.endSource[2 * k]) + Math.abs(drivers.endSource[2 * k + 1]);
      }
      for (int b = 0; b < network.boundaries(); b++) {
        in += march.boundaryHeat(b);
        size += Math.abs(march.boundaryHeat(b));
      }
      for (int r = 0; r < network.rooms(); r++) {
        in += march.plant(r) + drivers.inflowHeat(r, march.meanAir(r));
        size += Math.abs(march.plant(r)) + Math.abs(drivers.inflowHeat(r, march.meanAir(r)));
        for (int from = 0; from < network.rooms(); from++) {
          double flow = drivers.exchange[r * network.rooms() + from];
          in += flow * (march.meanAir(from) - march.meanAir(r));
          size += flow * Math.abs(march.meanAir(from) - march.meanAir(r));
        }
      }
      double length = seconds[s % 2];
      assertThat(march.storedHeatChange()).isCloseTo(length * in, within(1e-9 * length * size));
    }
  }

  /** The zero of the temperature scale is no physics. */
  @Property
  void shiftsWithTheScale(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    ModeMarch march = new ModeMarch(one.network, 900);
    ModeMarch shifted = new ModeMarch(one.network, 900);
    Drivers drivers = drivers(one);
    march.start(20);
    double[] state = march.state();
    double[] warmth = march.warmth();
    double shift = 40;
    for (int s = 0; s < 5; s++) {
      for (int i = 0; i < state.length; i++) {
        state[i] += shift * warmth[i];
      }
      shifted.restore(state);
      march.step(drivers);
      double[] plants = plants(march, one.network);
      shift(drivers, shift);
      shifted.step(drivers);
      shift(drivers, -shift);
      assertThat(plants(shifted, one.network)).containsExactly(plants, within(1e-6));
      for (int r = 0; r < one.network.rooms(); r++) {
        assertThat(shifted.air(r)).isCloseTo(march.air(r) + shift, within(1e-7));
      }
      state = march.state();
      one.flow(drivers);
      one.drive(drivers);
      onFaces(drivers);
    }
  }

  private static double[] plants(ModeMarch march, Network network) {
    double[] plants = new double[network.rooms()];
    Arrays.setAll(plants, march::plant);
    return plants;
  }

  private static void shift(Drivers d, double shift) {
    for (int b = 0; b < d.boundary.length; b++) {
      d.boundary(b, d.boundary[b] + shift);
    }
    for (int r = 0; r < d.inflow.length; r++) {
      d.inflow(r, d.inflow[r], d.inflowTemperature[r] + shift);
      if (d.held[r]) {
        d.hold(r, d.holdTemperature[r] + shift);
      }
    }
  }

  /** A look leaves no trace, tells the step, and answers to heat in the air in proportion. */
  @Property
  void foretellsTheStep(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    ModeMarch march = new ModeMarch(network, 900);
    march.start(30);
    Drivers drivers = drivers(one);
    march.step(drivers);
    one.flow(drivers);
    one.drive(drivers);
    onFaces(drivers);
    double[] before = march.state();
    int room = one.random.nextInt(network.rooms());
    march.look(drivers);
    double ahead = march.ahead(room);
    double plant = march.plantAhead(drivers, room);
    double response = march.response(drivers, room);
    assertThat(march.state()).containsExactly(before);
    assertThat(response).isGreaterThanOrEqualTo(0);
    drivers.airSource(room, drivers.airSource[room] + 1000);
    march.lookAgain(drivers);
    double heated = march.ahead(room);
    assertThat(heated - ahead).isCloseTo(1000 * response, within(1e-8));
    if (drivers.held[room]) {
      assertThat(march.plantAhead(drivers, room)).isCloseTo(plant - 1000, within(1e-6));
    }
    march.go(drivers);
    assertThat(march.air(room)).isEqualTo(heated);
    ModeMarch other = new ModeMarch(network, 900);
    other.restore(before);
    other.step(drivers);
    assertThat(other.state()).containsExactly(march.state(), within(1e-9));
  }

  /** Under steady drivers it comes to the steady state of the network. */
  @Property(tries = 200)
  void comesToTheSteadyState(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Drivers drivers = drivers(one);
    double[] steady;
    try {
      steady = SteadyState.solve(one.network, drivers).temperatures();
    } catch (IllegalStateException nothingFixesIt) {
      return;
    }
    ModeMarch march = new ModeMarch(one.network, 1e8);
    march.start(20);
    for (int s = 0; s < 20; s++) {
      march.step(drivers);
    }
    for (int r = 0; r < one.network.rooms(); r++) {
      double size = 1 + Math.abs(steady[r]);
      assertThat(march.meanAir(r)).isCloseTo(steady[r], within(1e-6 * size));
    }
  }
}
