package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The heavy room S of VDI 6007-1:2012: an air node without capacity, an outer wall and an inner
 * mass of one capacity each. Radiation between the two surfaces, 5 W/m2K times 10.5 m2, is led
 * through the star: two conductances of twice that in series.
 */
class RoomPublishedTest {

  private static final double OUTER_AREA = 10.5;
  private static final double INNER_AREA = 75.5;
  private static final double RADIATION = 5 * OUTER_AREA;
  private static final int STEPS = 12;
  private static final double[] FLOATING = days(false);
  private static final double[] HELD = days(true);

  @ParameterizedTest
  @CsvFileSource(resources = "/published/heat/room-floating.csv", useHeadersInDisplayName = true)
  void floatsAsInTestCase1(String id, int day, int hour, double celsius, double tolerance) {
    assertThat(FLOATING[24 * (day - 1) + hour - 1]).as(id).isCloseTo(celsius, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/heat/room-held.csv", useHeadersInDisplayName = true)
  void isHeldAsInTestCase6(String id, int day, int hour, double watts, double tolerance) {
    assertThat(HELD[24 * (day - 1) + hour - 1]).as(id).isCloseTo(watts, within(tolerance));
  }

  /** Hourly means of 60 days: of the air floating under a convective gain, or of the plant. */
  private static double[] days(boolean held) {
    Network.Builder builder = Network.builder();
    int room = builder.room(0);
    int outdoors = builder.boundary();
    double outward = 1 / (0.0389592 + 1 / (25 * OUTER_AREA));
    int outer =
        builder.chain(
            new End.Boundary(outdoors, outward),
            new double[] {1600848.94, 0},
            new double[] {1 / 0.00436791},
            new End.Room(room, 2.7 * OUTER_AREA, 2 * RADIATION));
    int inner =
        builder.chain(
            new End.Insulated(),
            new double[] {14836354.6, 0},
            new double[] {1 / 0.000595693},
            new End.Room(room, 2.24 * INNER_AREA, 2 * RADIATION));
    Network network = builder.build();
    March march = new March(network, 3600.0 / STEPS);
    march.start(22);
    Drivers drivers = new Drivers(network);
    drivers.boundary(outdoors, 22);
    double[] means = new double[24 * 60];
    for (int hour = 0; hour < means.length; hour++) {
      boolean day = hour % 24 >= 6 && hour % 24 < 18;
      double gain = day ? 1000 : 0;
      if (held) {
        drivers.rightSource(outer, gain * OUTER_AREA / (OUTER_AREA + INNER_AREA));
        drivers.rightSource(inner, gain * INNER_AREA / (OUTER_AREA + INNER_AREA));
        drivers.hold(room, day ? 27 : 22);
      } else {
        drivers.airSource(room, gain);
      }
      for (int s = 0; s < STEPS; s++) {
        march.step(drivers);
        means[hour] += (held ? march.plant(room) : march.meanAir(room)) / STEPS;
      }
    }
    return means;
  }
}
