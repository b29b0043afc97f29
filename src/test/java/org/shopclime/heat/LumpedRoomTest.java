package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A room of one capacity C tied to T_e by H: T = T_e + (T_0 - T_e) exp(-t H / C).
 *
 * <p>Source: lumped heat capacity, Newton's law of cooling (Incropera et al., Fundamentals of Heat
 * and Mass Transfer, ch. 5, lumped capacitance method).
 */
class LumpedRoomTest {

  private static final double CAPACITY = 3.6e5;
  private static final double CONDUCTANCE = 50;

  private final Network.Builder builder = Network.builder();
  private final int room = builder.room(CAPACITY);
  private final int outside = builder.boundary();
  private final Network network = build();
  private final Drivers drivers = new Drivers(network);

  private Network build() {
    builder.link(room, outside, CONDUCTANCE);
    return builder.build();
  }

  @Test
  void coolsExponentially() {
    March march = new March(network, 60);
    march.start(30);
    drivers.boundary(outside, 10);
    for (int s = 1; s <= 240; s++) {
      march.step(drivers);
      double expected = 10 + 20 * Math.exp(-60 * s * CONDUCTANCE / CAPACITY);
      // Second-order error of a step of 1/120 of the time constant.
      assertThat(march.air(room)).isCloseTo(expected, within(3e-5));
    }
  }

  /**
   * One step multiplies the distance to T_e by R(z) = (1 + (1 - 2 γ) z) / (1 - γ z)², z = -h H / C:
   * Alexander (1977), as in Hairer and Wanner, Solving Ordinary Differential Equations II, IV.3.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 60, 900, 3600, 36000, 1e7, 1e12})
  void stepsByTheStabilityFunction(double seconds) {
    March march = new March(network, seconds);
    march.start(30);
    drivers.boundary(outside, 10);
    march.step(drivers);
    double gamma = 1 - 1 / Math.sqrt(2);
    double z = -seconds * CONDUCTANCE / CAPACITY;
    double factor = (1 + (1 - 2 * gamma) * z) / ((1 - gamma * z) * (1 - gamma * z));
    assertThat(march.air(room)).isCloseTo(10 + 20 * factor, within(1e-12));
    // Heat out of the boundary is what was stored, to the rounding of H T h.
    double rounding = 1e-5 + 1e-13 * CONDUCTANCE * 10 * seconds;
    assertThat(march.boundaryHeat(outside) * seconds)
        .isCloseTo(CAPACITY * 20 * (factor - 1), within(rounding));
    assertThat(march.storedHeatChange()).isCloseTo(CAPACITY * 20 * (factor - 1), within(1e-5));
    assertThat(march.meanAir(room))
        .isCloseTo(10 + 20 * (1 - factor) / -z, within(1e-12 * (1 + 20 / -z)));
  }

  /** Heat, air from outside and a held temperature drive it as H does. */
  @Test
  void warmsByHeatAndAir() {
    drivers.boundary(outside, 10);
    drivers.airSource(room, 400);
    drivers.starSource(room, 100);
    drivers.inflow(room, 25, 40);
    March march = new March(network, 30);
    march.start(20);
    double steady = (50 * 10 + 25 * 40 + 500) / 75.0;
    for (int s = 1; s <= 240; s++) {
      march.step(drivers);
      double expected = steady + (20 - steady) * Math.exp(-30 * s * 75 / CAPACITY);
      assertThat(march.air(room)).isCloseTo(expected, within(2e-5));
      assertThat(march.star(room)).isEqualTo(march.air(room));
      assertThat(march.plant(room)).isZero();
    }
    assertThat(SteadyState.solve(network, drivers).air(room)).isCloseTo(steady, within(1e-13));
  }

  /** Holding a room costs what it loses, and in the first step what its air takes to get there. */
  @Test
  void holdsAtOnce() {
    drivers.boundary(outside, 10);
    drivers.hold(room, 22);
    March march = new March(network, 900);
    march.start(20);
    march.step(drivers);
    assertThat(march.air(room)).isEqualTo(22);
    assertThat(march.meanAir(room)).isCloseTo(22, within(1e-13));
    assertThat(march.plant(room)).isCloseTo(CONDUCTANCE * 12 + CAPACITY * 2 / 900, within(1e-10));
    march.step(drivers);
    assertThat(march.plant(room)).isCloseTo(CONDUCTANCE * 12, within(1e-10));
    drivers.release(room);
    march.step(drivers);
    assertThat(march.plant(room)).isZero();
    assertThat(march.air(room)).isLessThan(22);
  }
}
