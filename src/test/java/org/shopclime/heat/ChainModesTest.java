package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** The modes of a chain, against what is known of it without them. */
class ChainModesTest {

  /** Steady answers are those of the conductances in series, whatever was put together. */
  @Property
  void steadyAnswersAreThoseOfTheConductances(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    for (int k = 0; k < network.chains(); k++) {
      double left = outer(network, 2 * k);
      double right = outer(network, 2 * k + 1);
      if (left + right > 0) {
        double resistance = 0;
        for (int i = network.start[k]; i < network.start[k + 1] - 1; i++) {
          resistance += 1 / network.conductance[i];
        }
        double sum = left + right + left * right * resistance;
        double[] steady = steady(ChainModes.of(network, k, false));
        near(steady[0], (1 + right * resistance) / sum);
        near(steady[1], 1 / sum);
        near(steady[2], (1 + left * resistance) / sum);
      }
    }
  }

  private static void near(double value, double exact) {
    assertThat(value).isCloseTo(exact, within(1e-9 * exact));
  }

  private static double outer(Network network, int e) {
    return network.endOuter[e] + network.endConvective[e] + network.endRadiant[e];
  }

  private static double[] steady(ChainModes modes) {
    double[] steady = {modes.leftToLeft, modes.leftToRight, modes.rightToRight};
    for (int m = 0; m < modes.count(); m++) {
      steady[0] += modes.left[m] * modes.left[m] / modes.rate[m];
      steady[1] += modes.left[m] * modes.right[m] / modes.rate[m];
      steady[2] += modes.right[m] * modes.right[m] / modes.rate[m];
    }
    return steady;
  }

  /**
   * Heat that a mode holds is what left it through the ends: rate times stored is what it loses.
   */
  @Property
  void whatIsStoredLeavesByTheEnds(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    for (int k = 0; k < network.chains(); k++) {
      ChainModes modes = ChainModes.of(network, k, false);
      for (int m = 0; m < modes.count(); m++) {
        double lost =
            outer(network, 2 * k) * modes.left[m] + outer(network, 2 * k + 1) * modes.right[m];
        double size =
            outer(network, 2 * k) * Math.abs(modes.left[m])
                + outer(network, 2 * k + 1) * Math.abs(modes.right[m]);
        assertThat(modes.rate[m] * modes.stored[m]).isCloseTo(lost, within(1e-9 * size + 1e-12));
      }
    }
  }

  /** One mass between two films is one mode, with the rate of a lumped body. */
  @Test
  void oneMassIsOneMode() {
    Network.Builder builder = Network.builder();
    int outside = builder.boundary();
    int inside = builder.boundary();
    builder.chain(
        new End.Boundary(outside, 30),
        new double[] {0, 2e6, 0},
        new double[] {60, 90},
        new End.Boundary(inside, 10));
    ChainModes modes = ChainModes.of(builder.build(), 0, true);
    double left = 30 * 60 / 90.0;
    double right = 10 * 90 / 100.0;
    assertThat(modes.count()).isEqualTo(1);
    assertThat(modes.rate[0]).isCloseTo((left + right) / 2e6, within(1e-18));
    assertThat(Math.abs(modes.left[0])).isCloseTo(60 / 90.0 / Math.sqrt(2e6), within(1e-15));
    assertThat(Math.abs(modes.right[0])).isCloseTo(0.9 / Math.sqrt(2e6), within(1e-15));
    assertThat(modes.leftToLeft).isCloseTo(1 / 90.0, within(1e-15));
    assertThat(modes.leftToRight).isZero();
    assertThat(modes.rightToRight).isCloseTo(1 / 100.0, within(1e-15));
    assertThat(Math.abs(modes.stored[0])).isCloseTo(Math.sqrt(2e6), within(1e-9));
  }

  /**
   * A slab of n equal slices, both faces held by half a slice, has the rates 4 / (R C) sin²(k π / 2
   * n), k = 1 to n: the eigenvalues of the second difference with ends fixed half a step outside
   * (Yueh, Applied Mathematics E-Notes 5 (2005) 66).
   */
  @Test
  void equalSlicesHaveTheRatesOfTheSecondDifference() {
    int slices = 12;
    double capacity = 4e5;
    double conductance = 25;
    double[] capacities = new double[slices];
    double[] conductances = new double[slices - 1];
    java.util.Arrays.fill(capacities, capacity);
    java.util.Arrays.fill(conductances, conductance);
    Network.Builder builder = Network.builder();
    builder.boundary();
    builder.chain(
        new End.Boundary(0, 2 * conductance),
        capacities,
        conductances,
        new End.Boundary(0, 2 * conductance));
    ChainModes modes = ChainModes.of(builder.build(), 0, false);
    double[] rates = modes.rate.clone();
    java.util.Arrays.sort(rates);
    assertThat(rates).hasSize(slices);
    for (int k = 1; k <= slices; k++) {
      double sine = Math.sin(k * Math.PI / 2 / slices);
      double exact = 4 * conductance / capacity * sine * sine;
      assertThat(rates[k - 1]).isCloseTo(exact, within(1e-12 * exact + 1e-18));
    }
  }
}
