package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The daily wave through a cavity wall: exact matrix, and chain of nodes. */
class NodesPublishedTest {

  private static final double DAY = 86400;

  private static final List<Layer> WALL =
      List.of(
          new Layer("brick", 0.105, 0.84, 1700, 800),
          Layer.massless("cavity", 0.18),
          new Layer("concrete", 0.100, 1.63, 2300, 1000));

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/periodic.csv", useHeadersInDisplayName = true)
  void exactMatrix(String id, String figure, double value, double tolerance) {
    PeriodicTransmittance found = PeriodicTransmittance.of(WALL, 0.06, 0.12, DAY);
    assertThat(figure(figure, found))
        .as("%s, %s, periodic.csv", id, figure)
        .isCloseTo(value, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/periodic.csv", useHeadersInDisplayName = true)
  void chain(String id, String figure, double value, double tolerance) {
    Nodes nodes = Nodes.of(WALL);
    double steady = Chain.transmittance(nodes, 0.06, 0.12, 1e12).modulus();
    Complex wave = Chain.transmittance(nodes, 0.06, 0.12, DAY);
    double lag = -wave.angle() / (2 * Math.PI) * DAY;
    PeriodicTransmittance found = new PeriodicTransmittance(steady, wave.modulus(), lag);
    assertThat(figure(figure, found))
        .as("%s, %s, periodic.csv, by nodes", id, figure)
        .isCloseTo(value, within(tolerance));
  }

  private static double figure(String figure, PeriodicTransmittance found) {
    return switch (figure) {
      case "U" -> found.uFactor();
      case "amplitude" -> found.amplitude();
      case "decrement" -> found.decrement();
      case "time shift h" -> found.timeShift() / 3600;
      default -> throw new IllegalArgumentException(figure);
    };
  }
}
