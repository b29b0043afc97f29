package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Rounds of a steady state tell what each steady state tells alone. */
class SteadyRoundsProperties {

  @Property(tries = 200)
  void eachRoundIsASteadyState(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Drivers drivers = one.drivers();
    for (int room = 0; room < one.network.rooms(); room++) {
      drivers.inflow(room, one.between(1, 50), 20);
    }
    SteadyRounds rounds = roundsOrNone(one.network, drivers);
    for (int round = 0; round < 3; round++) {
      for (int room = 0; room < one.network.rooms(); room++) {
        drivers.inflow(room, one.between(1, 200), one.between(-10, 40));
      }
      rounds.solve();
      SteadyState.Solution alone = SteadyState.solve(one.network, drivers);
      for (int room = 0; room < one.network.rooms(); room++) {
        assertThat(rounds.air(room)).isCloseTo(alone.air(room), within(size(alone)));
      }
    }
    SteadyState.Solution last = rounds.finish();
    SteadyState.Solution alone = SteadyState.solve(one.network, drivers);
    assertThat(last.temperatures()).containsExactly(alone.temperatures(), within(size(alone)));
    for (int room = 0; room < one.network.rooms(); room++) {
      double greatest = Math.max(1, Math.abs(alone.plant(room)));
      assertThat(last.plant(room)).isCloseTo(alone.plant(room), within(1e-7 * greatest));
    }
  }

  private static SteadyRounds roundsOrNone(Network network, Drivers drivers) {
    try {
      SteadyState.solve(network, drivers);
    } catch (IllegalStateException undetermined) {
      Assume.that(false);
    }
    return new SteadyRounds(network, drivers);
  }

  private static double size(SteadyState.Solution steady) {
    double size = 1;
    for (double value : steady.temperatures()) {
      size = Math.max(size, Math.abs(value));
    }
    return 1e-9 * size;
  }
}
