package org.shopclime.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shopclime.heat.Network;

/** What the benchmark of solvers stands on: the size of its shop, and that all ways agree. */
class BenchShopTest {

  private static final BenchDay DAY = new BenchDay();

  /** The same network by steps of 1 s. */
  private static final double[][] FINE = DAY.means(DAY.march(3600));

  @Test
  void hasTwoRoomsAndTwentyFiveChains() {
    Network network = BenchShop.model().network();
    assertThat(network.rooms()).isEqualTo(2);
    assertThat(network.chains()).isEqualTo(25);
    assertThat(BenchShop.model().isCooled(0)).isTrue();
    assertThat(BenchShop.model().isCooled(1)).isFalse();
  }

  /** The worst hourly mean of either room; a day in which they move by 7 and 26 K. */
  @ParameterizedTest
  @EnumSource
  void everyWayAgrees(BenchDay.Way way) {
    double[][] means = DAY.means(way.solver(DAY));
    double bound =
        switch (way) {
          case MODES_1 -> 0.15;
          case MARCH_4, DENSE_4 -> 0.02;
          case MODES_4 -> 0.01;
          case MARCH_12, DENSE_12 -> 2e-3;
          default -> 2e-4;
        };
    for (int room = 0; room < 2; room++) {
      for (int hour = 0; hour < BenchDay.HOURS; hour++) {
        assertThat(Math.abs(means[room][hour] - FINE[room][hour]))
            .as("room %s, hour %s", room, hour)
            .isLessThan(bound);
      }
    }
  }
}
