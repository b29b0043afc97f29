package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Two walls of the literature on response factors, of one square metre, between a sol-air
 * temperature outside and 24 °C inside. Layers are cut into slices of 2 mm or less and a step is a
 * minute: the first transfer coefficient, the little that comes through within the hour, asks for
 * that (4 % off with slices twice as thick and steps of 3 minutes).
 */
class WallPublishedTest {

  /** Sol-air temperature at hours 1 to 24, °C, linear between: light west wall, 40 N, 21 July. */
  private static final double[] SOL_AIR = {
    24.4, 24.4, 23.8, 23.3, 23.3, 23.8, 25.5, 27.2, 29.4, 31.6, 33.8, 36.1, //
    43.3, 49.4, 53.8, 55.0, 52.7, 45.5, 30.5, 29.4, 28.3, 27.2, 26.1, 25.0
  };

  /** The printed d, for sums over all of them; the test of each row holds them to the file. */
  private static final double[] D = {1, -1.619841, 0.724516, -0.064305, 0.001542, -0.000006};

  private static final int STEPS = 60;
  private static final double[] WALL_IV_FLUX = periodic(wallIv());
  private static final double[] BRICK_FLUX = periodic(brick());
  private static final double[] WALL_IV_RESPONSE = response(wallIv(), 48);

  /** Wang and Chen (2003), wall IV, outside to inside. */
  private static Slices wallIv() {
    return new Slices()
        .resistance(0.060)
        .layer(0.105, 0.84, 1700, 800, 100)
        .resistance(0.180)
        .layer(0.100, 1.63, 2300, 1000, 80)
        .resistance(0.120);
  }

  /** Chen and Wang (2001), wall I, outside to inside. */
  private static Slices brick() {
    return new Slices()
        .resistance(0.0546)
        .layer(0.240, 0.81, 1800, 880, 120)
        .layer(0.020, 0.70, 1600, 880, 10)
        .resistance(0.1149);
  }

  @Test
  void uFactorsAreThosePrinted() {
    assertThat(wallIv().uFactor()).as("G-01").isCloseTo(1.83033, within(0.000005));
    assertThat(brick().uFactor()).as("G-03").isCloseTo(2.0228, within(0.00005));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/heat/wall-flux.csv", useHeadersInDisplayName = true)
  void flowsAsPrinted(String id, int hour, double flux, double tolerance) {
    double[] found = id.equals("G-01") ? WALL_IV_FLUX : BRICK_FLUX;
    assertThat(found[hour - 1]).as("%s, hour %d", id, hour).isCloseTo(flux, within(tolerance));
  }

  /** The printed d, run over our response to a triangle, must give the printed b. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/heat/wall-transfer-coefficients.csv",
      useHeadersInDisplayName = true)
  void respondsByThePrintedCoefficients(String id, int index, double b, double d) {
    // The last digit of b is 1e-6, and that of each d comes in times a response below 0.25.
    assertThat(convolved(index)).as("%s, b%d", id, index).isCloseTo(b, within(0.02 * b + 1e-6));
    assertThat(d).isEqualTo(D[index]);
  }

  @Test
  void nothingIsLeftBehindTheCoefficients() {
    double sum = 0;
    for (int n = 0; n < WALL_IV_RESPONSE.length; n++) {
      if (n > 5) {
        assertThat(convolved(n)).as("G-04, b%d", n).isCloseTo(0, within(2e-6));
      }
      sum += convolved(n);
    }
    double sumD = 0;
    for (double d : D) {
      sumD += d;
    }
    assertThat(sum / sumD).as("G-04, sums").isCloseTo(1.83033, within(0.001 * 1.83033));
  }

  private static double convolved(int n) {
    double sum = 0;
    for (int i = 0; i < D.length && i <= n; i++) {
      sum += D[i] * WALL_IV_RESPONSE[n - i];
    }
    return sum;
  }

  /** Heat into the room at hours 1 to 24 of a day that repeats, W/m2. */
  private static double[] periodic(Slices slices) {
    Wall wall = new Wall(slices);
    wall.march.start(24);
    double[] flux = new double[24];
    for (int hour = 0; hour < 24 * 15; hour++) {
      flux[hour % 24] = wall.hour(SOL_AIR[(hour + 23) % 24], SOL_AIR[hour % 24], 24);
    }
    return flux;
  }

  /** Heat into a room at 0 °C at hours 0, 1, ... of a triangle of 1 K at hour 0, W/m2K. */
  private static double[] response(Slices slices, int hours) {
    Wall wall = new Wall(slices);
    double[] flux = new double[hours];
    for (int hour = 0; hour < hours; hour++) {
      flux[hour] = wall.hour(hour == 1 ? 1 : 0, hour == 0 ? 1 : 0, 0);
    }
    return flux;
  }

  private static final class Wall {
    private final Slices slices;
    private final int outside;
    private final int inside;
    private final int chain;
    private final March march;
    private final Drivers drivers;

    private Wall(Slices slices) {
      this.slices = slices;
      Network.Builder builder = Network.builder();
      outside = builder.boundary();
      inside = builder.boundary();
      chain = slices.between(builder, outside, inside);
      Network network = builder.build();
      march = new March(network, 3600.0 / STEPS);
      drivers = new Drivers(network);
    }

    /** Flux at the end of an hour in which the temperature outside goes straight to another. */
    private double hour(double from, double to, double room) {
      drivers.boundary(inside, room);
      for (int s = 0; s < STEPS; s++) {
        drivers.boundary(outside, from + (to - from) * (s + 0.5) / STEPS);
        march.step(drivers);
      }
      return slices.right() * (march.rightFace(chain) - room);
    }
  }
}
