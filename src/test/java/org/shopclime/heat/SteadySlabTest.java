package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Steady heat through a slab of layers: q = (T_a - T_b) / sum of R, and the temperature falls by q
 * R over each layer.
 *
 * <p>Source: Fourier's law; ISO 6946:2017, 6.7 (thermal resistances in series add up).
 */
class SteadySlabTest {

  // 0.04 film, 0.12 m of 0.8 W/mK, 0.1 m of 0.04 W/mK, 0.0125 m of 0.25 W/mK, 0.13 film; 20 m2.
  private static final double[] R = {0.04, 0.15, 2.5, 0.05, 0.13};
  private static final double AREA = 20;
  private static final double FLOW = AREA * (35 - 20) / 2.87;

  private final Network.Builder builder = Network.builder();
  private final int outside = builder.boundary();
  private final double[] capacities = {0, 1e6, 0, 0};
  private final double[] conductances = {AREA / R[1], AREA / R[2], AREA / R[3]};

  @Test
  void flowsThroughLayersInSeries() {
    int inside = builder.boundary();
    int chain =
        builder.chain(
            new End.Boundary(outside, AREA / R[0]),
            capacities,
            conductances,
            new End.Boundary(inside, AREA / R[4]));
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.boundary(outside, 35);
    drivers.boundary(inside, 20);
    SteadyState.Solution steady = SteadyState.solve(network, drivers);

    assertThat(steady.boundaryHeat(outside)).isCloseTo(FLOW, within(1e-10));
    assertThat(steady.boundaryHeat(inside)).isCloseTo(-FLOW, within(1e-10));
    assertFalls(chain, steady);
  }

  @Test
  void flowsIntoAHeldRoom() {
    int room = builder.room(5e4);
    int chain =
        builder.chain(
            new End.Boundary(outside, AREA / R[0]),
            capacities,
            conductances,
            new End.Room(room, AREA / R[4], 0));
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.boundary(outside, 35);
    drivers.hold(room, 20);
    SteadyState.Solution steady = SteadyState.solve(network, drivers);

    assertThat(steady.boundaryHeat(outside)).isCloseTo(FLOW, within(1e-10));
    assertThat(steady.plant(room)).isCloseTo(-FLOW, within(1e-10));
    assertThat(steady.air(room)).isEqualTo(20);
    assertThat(steady.star(room)).isEqualTo(20);
    assertFalls(chain, steady);
  }

  private static void assertFalls(int chain, SteadyState.Solution steady) {
    double celsius = 35;
    for (int i = 0; i < 4; i++) {
      celsius -= FLOW / AREA * R[i];
      assertThat(steady.node(chain, i)).isCloseTo(celsius, within(1e-12));
    }
    assertThat(steady.leftFace(chain)).isEqualTo(steady.node(chain, 0));
    assertThat(steady.rightFace(chain)).isEqualTo(steady.node(chain, 3));
  }

  /**
   * Radiation by way of the star: a warm and a cold face of one room exchange heat through their
   * two radiant conductances in series, whatever the air does.
   */
  @Test
  void radiatesFromFaceToFace() {
    int room = builder.room(0);
    int warm = builder.boundary();
    builder.link(room, outside, 1);
    int left =
        builder.chain(
            new End.Boundary(warm, 60), new double[1], new double[0], new End.Room(room, 0, 30));
    int right =
        builder.chain(
            new End.Room(room, 0, 20), new double[1], new double[0], new End.Boundary(outside, 12));
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.boundary(warm, 60);
    drivers.boundary(outside, 10);
    SteadyState.Solution steady = SteadyState.solve(network, drivers);

    // 1/60 + 1/30 + 1/20 + 1/12 = 11/60 K/W.
    double flow = 50 * 60 / 11.0;
    assertThat(steady.boundaryHeat(warm)).isCloseTo(flow, within(1e-10));
    assertThat(steady.leftFace(left)).isCloseTo(60 - flow / 60, within(1e-12));
    assertThat(steady.star(room)).isCloseTo(60 - flow / 60 - flow / 30, within(1e-12));
    assertThat(steady.rightFace(right)).isCloseTo(10 + flow / 12, within(1e-12));
    assertThat(steady.air(room)).isCloseTo(10, within(1e-12));
  }
}
