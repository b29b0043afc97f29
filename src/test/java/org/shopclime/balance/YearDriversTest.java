package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.End;
import org.shopclime.heat.Network;
import org.shopclime.heat.SteadyState;

/** What drives a year is kept by chain and hour. */
class YearDriversTest {

  @Test
  void eachChainAndHourHasItsOwnPlace() {
    YearDrivers drivers = new YearDrivers(3);
    for (int hour : new int[] {0, 1, 8759}) {
      for (int chain = 0; chain < 3; chain++) {
        drivers.boundary(chain, hour, hour + chain / 10.0);
        drivers.addLeft(chain, hour, 100 + hour + chain);
        drivers.addRight(chain, hour, 200 + hour + chain);
      }
    }
    for (int hour : new int[] {0, 1, 8759}) {
      for (int chain = 0; chain < 3; chain++) {
        assertThat(drivers.boundary(chain, hour)).isEqualTo(hour + chain / 10.0);
        assertThat(drivers.left(chain, hour)).isEqualTo(100 + hour + chain);
        assertThat(drivers.right(chain, hour)).isEqualTo(200 + hour + chain);
      }
    }
    assertThat(drivers.boundary(2, 2)).isZero();
    assertThat(drivers.left(0, 8758)).isZero();
  }

  /** Heat of several sources adds up on a face; a temperature said again replaces the first. */
  @Test
  void heatAddsUpAndTemperaturesDoNot() {
    YearDrivers drivers = new YearDrivers(1);
    drivers.addLeft(0, 5, 30);
    drivers.addLeft(0, 5, 12);
    drivers.addRight(0, 5, 1);
    drivers.addRight(0, 5, -4);
    drivers.boundary(0, 5, 20);
    drivers.boundary(0, 5, 25);
    assertThat(drivers.left(0, 5)).isEqualTo(42);
    assertThat(drivers.right(0, 5)).isEqualTo(-3);
    assertThat(drivers.boundary(0, 5)).isEqualTo(25);
  }

  /**
   * A wall between a boundary at 30 °C and a room held at 20 °C, by pencil: 2 W/K outside, 1 W/K
   * through, 4 W/K inside, and heat on both its faces.
   */
  @Test
  void anHourFillsTheNetwork() {
    Network.Builder builder = Network.builder();
    int room = builder.room(1000);
    int boundary = builder.boundary();
    builder.chain(
        new End.Boundary(boundary, 2),
        new double[] {10, 10},
        new double[] {1},
        new End.Room(room, 4, 0));
    Network network = builder.build();
    YearDrivers year = new YearDrivers(1);
    year.boundary(0, 7, 30);
    year.addLeft(0, 7, 70);
    year.addRight(0, 7, 35);
    Drivers drivers = new Drivers(network);
    year.fill(drivers, 7);
    year.fillFaces(drivers, 7, new double[2]);
    drivers.hold(0, 20);
    double outer = 1 / 2.0;
    double inner = 1 + 1 / 4.0;
    // Superposed: conduction, and each source shared by the resistances to both sides.
    double in =
        10 / (outer + inner) + 70 * outer / (outer + inner) + 35 * (outer + 1) / (outer + inner);
    assertThat(SteadyState.solve(network, drivers).plant(0)).isCloseTo(-in, within(1e-9));
    year.fill(drivers, 8);
    year.fillFaces(drivers, 8, new double[2]);
    assertThat(SteadyState.solve(network, drivers).plant(0))
        .isCloseTo(20 / (outer + inner), within(1e-9));
  }
}
