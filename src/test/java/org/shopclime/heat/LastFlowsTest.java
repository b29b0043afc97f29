package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Which change of the drivers asks for new factors. */
class LastFlowsTest {

  private final Drivers drivers = new Drivers(network());
  private final LastFlows last = new LastFlows(2);

  private static Network network() {
    Network.Builder builder = Network.builder();
    int outdoors = builder.boundary();
    for (int room = 0; room < 2; room++) {
      builder.link(builder.room(1000), outdoors, 1);
    }
    return builder.build();
  }

  private void isNewAfter(Consumer<Drivers> change) {
    last.take(drivers);
    assertThat(last.areThoseOf(drivers)).as("taken, not yet factored").isFalse();
    last.factored();
    assertThat(last.areThoseOf(drivers)).isTrue();
    change.accept(drivers);
    assertThat(last.areThoseOf(drivers)).isFalse();
  }

  @Test
  void flowsAndHoldsAskForNewFactors() {
    isNewAfter(d -> d.inflow(0, 5, 20));
    isNewAfter(d -> d.exchange(0, 1, 2));
    isNewAfter(d -> d.hold(1, 20));
    isNewAfter(d -> d.release(1));
  }

  @Test
  void sourcesAndTemperaturesDoNot() {
    drivers.inflow(0, 5, 20);
    last.take(drivers);
    last.factored();
    drivers.inflow(0, 5, 30);
    drivers.airSource(1, 100);
    drivers.boundary(0, -5);
    assertThat(last.areThoseOf(drivers)).isTrue();
  }
}
