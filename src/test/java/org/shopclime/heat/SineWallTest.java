package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * A day's sine at the face of a very thick wall: T(x, t) = A exp(-x / δ) sin(ω t - x / δ), with the
 * penetration depth δ = √(2 α / ω); heat flow in at the face q = A k √2 / δ sin(ω t + π/4).
 *
 * <p>Source: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed. (1959), 2.6.
 */
class SineWallTest {

  private static final double CONDUCTIVITY = 1.2;
  private static final double CAPACITY = 2000.0 * 900;
  private static final double OMEGA = 2 * Math.PI / 86400;
  private static final double DEPTH = Math.sqrt(2 * CONDUCTIVITY / CAPACITY / OMEGA);
  private static final double AMPLITUDE = 20;
  private static final double STEP = 60;
  private static final int STEPS_A_DAY = 1440;

  @Test
  void fallsAndLagsWithDepth() {
    int perDepth = 25;
    int slices = 12 * perDepth;
    Network.Builder builder = Network.builder();
    int face = builder.boundary();
    int wall =
        new Slices().layer(12 * DEPTH, CONDUCTIVITY, 2000, 900, slices).behind(builder, face);
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    March march = new March(network, STEP);
    double[] state = new double[slices];
    for (int i = 0; i < slices; i++) {
      double x = (i + 0.5) / perDepth;
      state[i] = AMPLITUDE * Math.exp(-x) * Math.sin(-x);
    }
    march.restore(state);
    double heatError = 0;
    double[] error = new double[slices];
    for (int s = 0; s < 2 * STEPS_A_DAY; s++) {
      double start = STEP * s * OMEGA;
      double end = start + STEP * OMEGA;
      // Mean of the sine over the step.
      drivers.boundary(face, AMPLITUDE * (Math.cos(start) - Math.cos(end)) / (end - start));
      march.step(drivers);
      for (int i = 0; i < error.length; i++) {
        double x = (i + 0.5) / perDepth;
        double exact = AMPLITUDE * Math.exp(-x) * Math.sin(end - x);
        error[i] = Math.max(error[i], Math.abs(march.node(wall, i) - exact));
      }
      double flow = AMPLITUDE * CONDUCTIVITY * Math.sqrt(2) / DEPTH;
      double quarter = Math.PI / 4;
      double mean = flow * (Math.cos(start + quarter) - Math.cos(end + quarter)) / (end - start);
      // The first steps of a staircase of means are not yet periodic: the second day counts.
      if (s >= STEPS_A_DAY) {
        heatError = Math.max(heatError, Math.abs(march.boundaryHeat(face) - mean) / flow);
      }
    }
    // At the face a node follows the mean of the step, which lags by half a step: ω h / 2 = 0.002
    // of the amplitude. Deeper only the error of slices is left: a half slice of straight gradient
    // at the face misses dx²/8 T'' = (dx/δ)²/4 = 0.0004 of the amplitude for slices of δ/25.
    assertThat(error[0]).isLessThan(0.002 * AMPLITUDE);
    error[0] = 0;
    assertThat(error).containsExactly(new double[error.length], within(0.0005 * AMPLITUDE));
    assertThat(heatError).isLessThan(0.001);
  }
}
