package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** A zone that loses nothing, held at 24 °C: what is put on its faces comes out as load. */
class ConstantGainPublishedTest {

  private final Network.Builder builder = Network.builder();
  private final int room = builder.room(6e4);
  private final int slab =
      builder.chain(
          new End.Insulated(),
          new double[] {2e6, 2e6, 1e6, 0},
          new double[] {300, 300, 600},
          new End.Room(room, 60, 150));
  private final int wall =
      builder.chain(
          new End.Room(room, 90, 200), new double[] {0, 4e5}, new double[] {400}, insulated());
  private final Network network = builder.build();
  private final Drivers drivers = new Drivers(network);

  private static End insulated() {
    return new End.Insulated();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/heat/constant-gain.csv", useHeadersInDisplayName = true)
  void loadEqualsGain(String id, double gainWatts, double share, double tolerance) {
    drivers.hold(room, 24);
    gain(gainWatts);
    March march = new March(network, 3600);
    march.startSteady(drivers);
    for (int hour = 0; hour < 24; hour++) {
      march.step(drivers);
      assertThat(-march.plant(room) / gainWatts).as(id).isCloseTo(share, within(tolerance));
    }
  }

  /** The same said of one hour's gain: all of it comes out in the end. */
  @ParameterizedTest
  @CsvFileSource(resources = "/published/heat/constant-gain.csv", useHeadersInDisplayName = true)
  void seriesSumsToOne(String id, double gainWatts, double share, double tolerance) {
    drivers.hold(room, 24);
    March march = new March(network, 3600);
    march.start(24);
    double sum = 0;
    for (int hour = 0; hour < 24 * 30; hour++) {
      gain(hour == 0 ? gainWatts : 0);
      march.step(drivers);
      double load = -march.plant(room) / gainWatts;
      if (hour == 0) {
        assertThat(load).as(id).isBetween(0.05, 0.95);
      }
      sum += load;
    }
    assertThat(sum).as(id).isCloseTo(share, within(tolerance));
  }

  private void gain(double watts) {
    drivers.rightSource(slab, 0.4 * watts);
    drivers.leftSource(wall, 0.3 * watts);
    drivers.starSource(room, 0.3 * watts);
  }
}
