package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a description counts, and what it refuses. */
class NetworkTest {

  private static final End INSULATED = new End.Insulated();

  private final Network.Builder builder = Network.builder();

  private static double[] of(double... values) {
    return values;
  }

  private static void refused(Runnable call, String message) {
    assertThatIllegalArgumentException().isThrownBy(call::run).withMessage(message);
  }

  @Test
  void countsWhatWasAdded() {
    assertThat(builder.room(1)).isZero();
    assertThat(builder.room(2)).isEqualTo(1);
    assertThat(builder.boundary()).isZero();
    assertThat(builder.boundary()).isEqualTo(1);
    assertThat(builder.boundary()).isEqualTo(2);
    assertThat(builder.chain(INSULATED, of(1, 2, 3), of(1, 2), new End.Room(0, 1, 0))).isZero();
    assertThat(builder.chain(INSULATED, of(1), of(), new End.Room(0, 1, 0))).isEqualTo(1);
    Network network = builder.build();
    assertThat(network.rooms()).isEqualTo(2);
    assertThat(network.boundaries()).isEqualTo(3);
    assertThat(network.chains()).isEqualTo(2);
    assertThat(network.nodes(0)).isEqualTo(3);
    assertThat(network.nodes(1)).isEqualTo(1);
    refused(() -> network.nodes(2), "chain 2 is not in 0 to 1 of this network");
    refused(() -> network.nodes(-1), "chain -1 is not in 0 to 1 of this network");
  }

  @Test
  void doesNotSeeLaterChangesOfTheArrays() {
    double[] capacities = {100};
    int room = builder.room(0);
    builder.chain(INSULATED, capacities, of(), new End.Room(room, 1, 0));
    capacities[0] = 0;
    assertThat(builder.build().capacity).containsExactly(100);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesCapacities(double bad) {
    refused(
        () -> builder.room(bad),
        "heat capacity of a room's air, J/K: " + bad + " is not 0 or more and finite");
    refused(
        () -> builder.chain(INSULATED, of(1, bad), of(1), INSULATED),
        "heat capacity of a node, J/K: " + bad + " is not 0 or more and finite");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesConductances(double bad) {
    refused(
        () -> builder.chain(INSULATED, of(1, 1), of(bad), INSULATED),
        "conductance between nodes, W/K: " + bad + " is not above 0 and finite");
    refused(
        () -> new End.Boundary(0, bad),
        "conductance of a boundary end, W/K: " + bad + " is not above 0 and finite");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesRoomEndsAndLinks(double bad) {
    refused(
        () -> new End.Room(0, bad, 1),
        "convective conductance of a room end, W/K: " + bad + " is not 0 or more and finite");
    refused(
        () -> new End.Room(0, 1, bad),
        "radiant conductance of a room end, W/K: " + bad + " is not 0 or more and finite");
    refused(
        () -> builder.link(0, 0, bad),
        "conductance of a link, W/K: " + bad + " is not 0 or more and finite");
  }

  @Test
  void refusesAnEndThatSeesNothing() {
    refused(
        () -> new End.Room(0, 0, 0),
        "sum of the conductances of a room end, W/K: 0.0 is not above 0 and finite");
    refused(() -> new End.Room(-1, 1, 1), "room -1 is not 0 or more");
    refused(() -> new End.Boundary(-1, 1), "boundary -1 is not 0 or more");
    refused(() -> builder.link(-1, 0, 1), "room -1 is not 0 or more");
    refused(() -> builder.link(0, -1, 1), "boundary -1 is not 0 or more");
  }

  @Test
  void refusesLengthsThatDoNotFit() {
    refused(
        () -> builder.chain(INSULATED, of(), of(), INSULATED),
        "a chain of 0 nodes and 0 conductances: takes 1 node or more and one conductance fewer");
    refused(
        () -> builder.chain(INSULATED, of(1, 1), of(1, 1), INSULATED),
        "a chain of 2 nodes and 2 conductances: takes 1 node or more and one conductance fewer");
    refused(() -> builder.chain(null, of(1), of(), INSULATED), "an end of a chain is null");
    refused(() -> builder.chain(INSULATED, of(1), of(), null), "an end of a chain is null");
  }

  @Test
  void refusesWhatWasNotAdded() {
    notBuilt(
        b -> b.chain(new End.Room(1, 1, 0), of(1), of(), INSULATED),
        "room 1 is not in 0 to 0 of this network");
    notBuilt(
        b -> b.chain(INSULATED, of(1), of(), new End.Boundary(1, 1)),
        "boundary 1 is not in 0 to 0 of this network");
    notBuilt(b -> b.link(1, 0, 1), "room 1 is not in 0 to 0 of this network");
    notBuilt(b -> b.link(0, 1, 1), "boundary 1 is not in 0 to 0 of this network");
  }

  /** Beside a room with capacity (0) and a boundary (0). */
  private static void notBuilt(Consumer<Network.Builder> more, String message) {
    Network.Builder builder = Network.builder();
    builder.room(1000);
    builder.boundary();
    more.accept(builder);
    assertThatIllegalArgumentException().isThrownBy(builder::build).withMessage(message);
  }

  @Test
  void refusesWhatHasNoTemperature() {
    String lost = " path to a boundary and no heat capacity, so it has no temperature";
    notBuilt(b -> b.room(0), "room 1 has no" + lost);
    notBuilt(b -> b.link(b.room(0), 0, 0), "room 1 has no" + lost);
    notBuilt(b -> b.chain(INSULATED, of(0, 0), of(1), INSULATED), "chain 0 has no" + lost);
    notBuilt(
        b -> {
          int other = b.room(0);
          b.chain(new End.Room(other, 1, 0), of(0), of(), INSULATED);
        },
        "room 1 has no" + lost);
    notBuilt(
        b -> b.chain(new End.Room(0, 0, 1), of(0), of(), INSULATED),
        "room 0 has no radiant" + lost);
    notBuilt(
        b -> {
          int other = b.room(0);
          b.chain(new End.Room(other, 0, 1), of(5), of(), INSULATED);
        },
        "room 1 has no" + lost);
  }

  /** A path may lead through other rooms and stars, in any order. */
  @Test
  void takesWhatIsReachedInRoundaboutWays() {
    int one = builder.room(0);
    int two = builder.room(0);
    int three = builder.room(0);
    int outside = builder.boundary();
    builder.chain(new End.Room(one, 1, 0), of(0), of(), new End.Room(two, 0, 1));
    builder.chain(new End.Room(two, 1, 1), of(0), of(), new End.Room(three, 1, 0));
    builder.link(three, outside, 2);
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.boundary(outside, 7);
    March march = new March(network, 60);
    march.step(drivers);
    for (int r = 0; r < 3; r++) {
      assertThat(march.air(r)).isEqualTo(SteadyState.solve(network, drivers).air(r));
      assertThat(Math.abs(march.air(r) - 7)).isLessThan(1e-14);
    }
  }

  @Test
  void aNetworkOfNothingDoesNothing() {
    Network network = builder.build();
    March march = new March(network, 60);
    march.step(new Drivers(network));
    assertThat(march.state()).isEmpty();
    assertThat(march.storedHeatChange()).isZero();
  }
}
