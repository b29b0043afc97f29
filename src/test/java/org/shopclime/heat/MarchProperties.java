package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What must be true of any linear network, tried on random ones (after the form of each law). */
class MarchProperties {

  private static final double GAMMA = 1 - 1 / Math.sqrt(2);

  /** Elimination of chains and star nodes changes nothing: the whole matrix says the same. */
  @Property
  void stepsAsTheWholeMatrix(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    double seconds = one.between(60, 7200);
    March march = new March(network, seconds);
    double[] expected = one.state();
    march.restore(expected);
    Drivers drivers = one.drivers();
    for (int s = 0; s < 6; s++) {
      if (s % 2 == 1) {
        one.flow(drivers);
      }
      one.drive(drivers);
      double[][] stages = WholeMatrix.step(network, drivers, seconds, expected);
      expected = stages[1];
      march.step(drivers);
      assertThat(march.state()).containsExactly(expected, within(1e-7));
      for (int r = 0; r < network.rooms(); r++) {
        assertThat(march.air(r)).isEqualTo(march.state()[r]);
        assertThat(march.meanAir(r)).isCloseTo(mean(stages, r), within(1e-7));
        assertThat(march.star(r)).isCloseTo(expected[network.rooms() + r], within(1e-7));
        assertThat(march.meanStar(r)).isCloseTo(mean(stages, network.rooms() + r), within(1e-7));
      }
      int first = 2 * network.rooms();
      for (int k = 0; k < network.chains(); k++) {
        int last = first + network.nodes(k) - 1;
        assertThat(march.leftFace(k)).isCloseTo(expected[first], within(1e-7));
        assertThat(march.meanLeftFace(k)).isCloseTo(mean(stages, first), within(1e-7));
        assertThat(march.rightFace(k)).isCloseTo(expected[last], within(1e-7));
        assertThat(march.meanRightFace(k)).isCloseTo(mean(stages, last), within(1e-7));
        for (int i = 0; i < network.nodes(k); i++) {
          assertThat(march.node(k, i)).isCloseTo(expected[first + i], within(1e-7));
        }
        first = last + 1;
      }
    }
  }

  private static double mean(double[][] stages, int i) {
    return (1 - GAMMA) * stages[0][i] + GAMMA * stages[1][i];
  }

  /** First law: what is stored came in through boundaries, sources, air flows and plant. */
  @Property
  void closesInEnergy(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    double seconds = one.between(60, 7200);
    March march = new March(network, seconds);
    march.restore(one.state());
    Drivers drivers = one.drivers();
    for (int s = 0; s < 5; s++) {
      one.flow(drivers);
      one.drive(drivers);
      march.step(drivers);
      Sum in = sources(network, drivers);
      for (int b = 0; b < network.boundaries(); b++) {
        in.add(march.boundaryHeat(b));
      }
      for (int r = 0; r < network.rooms(); r++) {
        in.add(march.plant(r));
        in.add(drivers.inflow[r] * (drivers.inflowTemperature[r] - march.meanAir(r)));
        for (int from = 0; from < network.rooms(); from++) {
          double flow = drivers.exchange[r * network.rooms() + from];
          in.add(flow * (march.meanAir(from) - march.meanAir(r)));
        }
      }
      assertThat(march.storedHeatChange())
          .isCloseTo(seconds * in.sum, within(1e-10 * seconds * in.size));
    }
  }

  private static Sum sources(Network network, Drivers drivers) {
    Sum in = new Sum();
    for (int k = 0; k < network.chains(); k++) {
      in.add(drivers.endSource[2 * k]);
      in.add(drivers.endSource[2 * k + 1]);
    }
    for (double source : drivers.nodeSource) {
      in.add(source);
    }
    for (int r = 0; r < network.rooms(); r++) {
      in.add(drivers.airSource[r]);
      in.add(drivers.starSource[r]);
    }
    return in;
  }

  private static final class Sum {
    private double sum;
    private double size;

    private void add(double part) {
      sum += part;
      size += Math.abs(part);
    }
  }

  /** Superposition: two runs under parts of the drivers add up to the run under the whole. */
  @Property
  void partsAddUpToTheWhole(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    March a = new March(network, 900);
    March b = new March(network, 900);
    March whole = new March(network, 900);
    double[] startA = one.state();
    double[] startB = one.state();
    a.restore(startA);
    b.restore(startB);
    whole.restore(add(startA, startB));
    Drivers ofA = new Drivers(network);
    Drivers ofB = new Drivers(network);
    Drivers ofWhole = new Drivers(network);
    for (int s = 0; s < 6; s++) {
      one.flow(ofA);
      one.drive(ofA);
      ofB.clear();
      ofB.takeFlows(ofA);
      one.drive(ofB);
      ofWhole.clear();
      ofWhole.takeFlows(ofA);
      sum(ofA, ofB, ofWhole);
      a.step(ofA);
      b.step(ofB);
      whole.step(ofWhole);
      assertThat(whole.state()).containsExactly(add(a.state(), b.state()), within(1e-9));
      for (int r = 0; r < network.rooms(); r++) {
        double parts = a.plant(r) + b.plant(r);
        double size = Math.abs(a.plant(r)) + Math.abs(b.plant(r));
        assertThat(whole.plant(r)).isCloseTo(parts, within(1e-8 + 1e-11 * size));
        assertThat(whole.meanAir(r)).isCloseTo(a.meanAir(r) + b.meanAir(r), within(1e-9));
      }
    }
  }

  private static double[] add(double[] a, double[] b) {
    double[] sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += b[i];
    }
    return sum;
  }

  private static void sum(Drivers a, Drivers b, Drivers sum) {
    Network network = sum.network;
    for (int i = 0; i < network.boundaries(); i++) {
      sum.boundary(i, a.boundary[i] + b.boundary[i]);
    }
    for (int k = 0; k < network.chains(); k++) {
      sum.leftSource(k, a.endSource[2 * k] + b.endSource[2 * k]);
      sum.rightSource(k, a.endSource[2 * k + 1] + b.endSource[2 * k + 1]);
      for (int i = 0; i < network.nodes(k); i++) {
        int node = network.start[k] + i;
        sum.nodeSource(k, i, a.nodeSource[node] + b.nodeSource[node]);
      }
    }
    for (int r = 0; r < network.rooms(); r++) {
      sum.airSource(r, a.airSource[r] + b.airSource[r]);
      sum.starSource(r, a.starSource[r] + b.starSource[r]);
      sum.inflow(r, a.inflow[r], a.inflowTemperature[r] + b.inflowTemperature[r]);
      if (a.held[r]) {
        sum.hold(r, a.holdTemperature[r] + b.holdTemperature[r]);
      }
    }
  }

  /** The zero of the temperature scale is no physics. */
  @Property
  void shiftsWithTheScale(@ForAll long number) {
    double shift = 273.15;
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    March march = new March(network, 600);
    March shifted = new March(network, 600);
    double[] state = one.state();
    march.restore(state);
    shifted.restore(shift(state, shift));
    Drivers drivers = one.drivers();
    for (int s = 0; s < 5; s++) {
      one.drive(drivers);
      march.step(drivers);
      state = march.state();
      double[] plant = new double[network.rooms()];
      for (int r = 0; r < network.rooms(); r++) {
        plant[r] = march.plant(r);
      }
      shift(drivers, shift);
      shifted.step(drivers);
      shift(drivers, -shift);
      assertThat(shifted.state()).containsExactly(shift(state, shift), within(1e-9));
      for (int r = 0; r < network.rooms(); r++) {
        assertThat(shifted.plant(r)).isCloseTo(plant[r], within(1e-7));
      }
    }
  }

  private static double[] shift(double[] celsius, double shift) {
    double[] shifted = celsius.clone();
    for (int i = 0; i < shifted.length; i++) {
      shifted[i] += shift;
    }
    return shifted;
  }

  private static void shift(Drivers d, double shift) {
    for (int b = 0; b < d.boundary.length; b++) {
      d.boundary(b, d.boundary[b] + shift);
    }
    for (int r = 0; r < d.inflow.length; r++) {
      d.inflow(r, d.inflow[r], d.inflowTemperature[r] + shift);
      if (d.held[r]) {
        d.hold(r, d.holdTemperature[r] + shift);
      }
    }
  }

  /** Response is the difference that 1 W makes, and a look ahead is a step that leaves no trace. */
  @Property
  void foretellsTheStep(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    Network network = one.network;
    March march = new March(network, 900);
    double[] state = one.state();
    march.restore(state);
    Drivers drivers = one.drivers();
    march.step(drivers);
    one.flow(drivers);
    one.drive(drivers);
    double[] before = march.state();
    double[] means = means(march, network);
    int into = one.random.nextInt(network.rooms());
    int of = one.random.nextInt(network.rooms());
    double response = march.response(drivers, into, of);
    double ahead = march.lookAhead(drivers, of);
    assertThat(march.state()).containsExactly(before);
    assertThat(means(march, network)).containsExactly(means);
    assertThat(march.response(drivers, into, of)).isEqualTo(response);
    drivers.airSource(into, drivers.airSource[into] + 1000);
    double aheadWithHeat = march.lookAhead(drivers, of);
    assertThat(aheadWithHeat - ahead).isCloseTo(1000 * response, within(1e-8));
    assertThat(response).isGreaterThanOrEqualTo(0);
    march.step(drivers);
    assertThat(march.air(of)).isEqualTo(aheadWithHeat);
  }

  private static double[] means(March march, Network network) {
    double[] means = new double[2 * network.rooms() + network.boundaries() + 1];
    for (int r = 0; r < network.rooms(); r++) {
      means[r] = march.meanAir(r);
      means[network.rooms() + r] = march.plant(r);
    }
    for (int b = 0; b < network.boundaries(); b++) {
      means[2 * network.rooms() + b] = march.boundaryHeat(b);
    }
    means[means.length - 1] = march.storedHeatChange();
    return means;
  }

  /** A march does not remember the flows of an earlier step. */
  @Property
  void forgetsEarlierFlows(@ForAll long number) {
    RandomCase one = new RandomCase(number);
    March used = new March(one.network, 900);
    March fresh = new March(one.network, 900);
    Drivers drivers = one.drivers();
    used.step(drivers);
    one.flow(drivers);
    double[] state = one.state();
    used.restore(state);
    fresh.restore(state);
    used.step(drivers);
    fresh.step(drivers);
    assertThat(used.state()).containsExactly(fresh.state());
  }
}
