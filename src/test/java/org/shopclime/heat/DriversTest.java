package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A buffer that takes the last word, refuses what is no number, and can be emptied. */
class DriversTest {

  private final Network network = network();
  private final Drivers drivers = new Drivers(network);

  private static Network network() {
    Network.Builder builder = Network.builder();
    int one = builder.room(1e5);
    int two = builder.room(1e5);
    int outside = builder.boundary();
    builder.chain(
        new End.Boundary(outside, 5),
        new double[] {10, 20},
        new double[] {3},
        new End.Room(one, 4, 6));
    builder.chain(
        new End.Room(one, 1, 0), new double[] {10}, new double[0], new End.Room(two, 2, 0));
    return builder.build();
  }

  private static void refused(Runnable call, String message) {
    assertThatIllegalArgumentException().isThrownBy(call::run).withMessage(message);
  }

  private void setAll() {
    drivers.boundary(0, 35);
    drivers.leftSource(0, 100);
    drivers.rightSource(1, 50);
    drivers.nodeSource(0, 1, 20);
    drivers.airSource(1, 70);
    drivers.starSource(0, 80);
    drivers.inflow(0, 6, 33);
    drivers.exchange(0, 1, 9);
    drivers.hold(1, 24);
  }

  private double[] result() {
    March march = new March(network, 600);
    march.start(20);
    march.step(drivers);
    double[] state = march.state();
    state[network.star(1)] = march.plant(1);
    return state;
  }

  @Test
  void isEmptyAtFirstAndWhenCleared() {
    double[] empty = result();
    setAll();
    assertThat(result()).isNotEqualTo(empty);
    drivers.clear();
    assertThat(result()).containsExactly(empty);
    assertThat(drivers.holdTemperature).containsOnly(0);
    assertThat(drivers.inflowTemperature).containsOnly(0);
  }

  /** Each of these alone changes the result, and clearing takes each away. */
  @Test
  void everyDriverCounts() {
    double[] empty = result();
    Runnable[] calls = {
      () -> drivers.boundary(0, 35),
      () -> drivers.leftSource(0, 100),
      () -> drivers.rightSource(1, 50),
      () -> drivers.nodeSource(0, 1, 20),
      () -> drivers.airSource(1, 70),
      () -> drivers.starSource(0, 80),
      () -> drivers.starSource(1, 80),
      () -> drivers.inflow(0, 6, 33),
      () -> drivers.exchange(0, 1, 9),
      () -> drivers.hold(1, 24)
    };
    for (int i = 0; i < calls.length; i++) {
      calls[i].run();
      if (i == 8) {
        drivers.airSource(0, 300);
      }
      assertThat(result()).as("call %d", i).isNotEqualTo(empty);
      drivers.clear();
      assertThat(result()).as("call %d cleared", i).containsExactly(empty);
    }
  }

  @Test
  void theLastWordCounts() {
    setAll();
    double[] once = result();
    drivers.boundary(0, 1);
    drivers.leftSource(0, 2);
    drivers.rightSource(1, 3);
    drivers.nodeSource(0, 1, 4);
    drivers.airSource(1, 5);
    drivers.starSource(0, 6);
    drivers.inflow(0, 7, 8);
    drivers.exchange(0, 1, 9.5);
    drivers.hold(1, 10);
    drivers.release(1);
    setAll();
    assertThat(result()).containsExactly(once);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY})
  void refusesWhatIsNotFinite(double bad) {
    refused(() -> drivers.boundary(0, bad), "temperature of a boundary, °C: " + bad + end());
    refused(() -> drivers.leftSource(0, bad), "heat on a left face, W: " + bad + end());
    refused(() -> drivers.rightSource(0, bad), "heat on a right face, W: " + bad + end());
    refused(() -> drivers.nodeSource(0, 0, bad), "heat on a node, W: " + bad + end());
    refused(() -> drivers.airSource(0, bad), "heat into the air of a room, W: " + bad + end());
    refused(() -> drivers.starSource(0, bad), "heat on the star of a room, W: " + bad + end());
    refused(
        () -> drivers.inflow(0, 1, bad),
        "temperature of air flowing into a room, °C: " + bad + end());
    refused(() -> drivers.hold(0, bad), "temperature to hold, °C: " + bad + end());
    assertThat(drivers.held[0]).isFalse();
    assertThat(drivers.inflow[0]).isZero();
  }

  private static String end() {
    return " is not finite";
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesFlows(double bad) {
    refused(
        () -> drivers.inflow(0, bad, 20),
        "air flow into a room, W/K: " + bad + " is not 0 or more and finite");
    refused(
        () -> drivers.exchange(0, 1, bad),
        "air flow between rooms, W/K: " + bad + " is not 0 or more and finite");
  }

  @Test
  void refusesPlacesThatAreNotThere() {
    refused(() -> drivers.boundary(1, 0), "boundary 1 is not in 0 to 0 of this network");
    refused(() -> drivers.leftSource(2, 0), "chain 2 is not in 0 to 1 of this network");
    refused(() -> drivers.rightSource(-1, 0), "chain -1 is not in 0 to 1 of this network");
    refused(() -> drivers.nodeSource(2, 0, 0), "chain 2 is not in 0 to 1 of this network");
    refused(() -> drivers.nodeSource(0, 2, 0), "node 2 is not in 0 to 1 of this network");
    String room = "room 2 is not in 0 to 1 of this network";
    refused(() -> drivers.airSource(2, 0), room);
    refused(() -> drivers.starSource(2, 0), room);
    refused(() -> drivers.inflow(2, 0, 0), room);
    refused(() -> drivers.exchange(2, 0, 0), room);
    refused(() -> drivers.exchange(0, 2, 0), room);
    refused(() -> drivers.hold(2, 0), room);
    refused(() -> drivers.release(2), room);
    refused(() -> drivers.exchange(1, 1, 0), "air flow from room 1 into itself");
  }
}
