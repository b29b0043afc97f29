package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The face of a very thick body at 0 °C is put to V at once: T = V erfc(x / (2 √(α t))), and the
 * heat gone in since is 2 k V √(t / (π α)), by a flux k V / √(π α t) at the face.
 *
 * <p>Source: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed. (1959), 2.4 and 2.5; erfc by
 * Abramowitz and Stegun (1964), 7.1.5 (series).
 */
class StepWallTest {

  private static final double CONDUCTIVITY = 0.8;
  private static final double DENSITY = 1700;
  private static final double HEAT = 850;
  private static final double DIFFUSIVITY = CONDUCTIVITY / DENSITY / HEAT;
  private static final double FACE = 30;

  @Test
  void warmsFromTheFaceInwards() {
    int slices = 400;
    double slice = 0.0025;
    double step = 60;
    Network.Builder builder = Network.builder();
    int face = builder.boundary();
    int wall =
        new Slices()
            .layer(slices * slice, CONDUCTIVITY, DENSITY, HEAT, slices)
            .behind(builder, face);
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.boundary(face, FACE);
    March march = new March(network, step);
    double heat = 0;
    for (int s = 1; s <= 720; s++) {
      march.step(drivers);
      heat += march.boundaryHeat(face) * step;
      double seconds = step * s;
      if (s >= 60) {
        double entered = 2 * CONDUCTIVITY * FACE * Math.sqrt(seconds / Math.PI / DIFFUSIVITY);
        assertThat(heat).isCloseTo(entered, within(0.001 * entered));
        double before =
            2 * CONDUCTIVITY * FACE * Math.sqrt((seconds - step) / Math.PI / DIFFUSIVITY);
        double flux = (entered - before) / step;
        assertThat(march.boundaryHeat(face)).as("flux").isCloseTo(flux, within(0.001 * flux));
        for (int i = 0; i < 100; i++) {
          double x = (i + 0.5) * slice;
          double exact = FACE * (1 - erf(x / 2 / Math.sqrt(DIFFUSIVITY * seconds)));
          assertThat(march.node(wall, i)).isCloseTo(exact, within(0.001 * FACE));
        }
      }
    }
  }

  private static double erf(double x) {
    double term = x;
    double sum = x;
    for (int n = 1; n < 200; n++) {
      term *= -x * x / n;
      sum += term / (2 * n + 1);
    }
    return 2 / Math.sqrt(Math.PI) * sum;
  }
}
