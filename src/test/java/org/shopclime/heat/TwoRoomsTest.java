package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Two equal rooms, each of capacity C and tied by H to T_e, that exchange air g both ways. Their
 * mean falls with C / H, their difference with C / (H + 2 g).
 *
 * <p>Source: the eigenvectors (1, 1) and (1, -1) of the two balances (computed).
 */
class TwoRoomsTest {

  private static final double CAPACITY = 1.8e5;
  private static final double CONDUCTANCE = 40;
  private static final double FLOW = 30;

  private final Network.Builder builder = Network.builder();
  private final int one = builder.room(CAPACITY);
  private final int other = builder.room(CAPACITY);
  private final int outside = builder.boundary();

  private Network linked() {
    builder.link(one, outside, CONDUCTANCE);
    builder.link(other, outside, CONDUCTANCE);
    return builder.build();
  }

  @Test
  void evenOutAndCool() {
    Network network = linked();
    Drivers drivers = new Drivers(network);
    drivers.exchange(one, other, FLOW);
    drivers.exchange(other, one, FLOW);
    drivers.boundary(outside, 5);
    March march = new March(network, 30);
    double[] state = march.state();
    state[one] = 35;
    state[other] = 15;
    march.restore(state);
    for (int s = 1; s <= 240; s++) {
      march.step(drivers);
      double mean = 5 + 20 * Math.exp(-30 * s * CONDUCTANCE / CAPACITY);
      double half = 10 * Math.exp(-30 * s * (CONDUCTANCE + 2 * FLOW) / CAPACITY);
      assertThat(march.air(one)).isCloseTo(mean + half, within(1e-4));
      assertThat(march.air(other)).isCloseTo(mean - half, within(1e-4));
    }
  }

  /**
   * Two unequal rooms with unequal air back and forth, told from outdoors: C₁ T₁' = -(H₁ + g₁₂) T₁
   * + g₁₂ T₂ and the same of the other, so T = Σ cᵢ vᵢ exp(λᵢ t) with the roots of λ² - (a + d) λ +
   * a d - b c = 0 (computed; any text on linear equations with constant coefficients).
   */
  @Test
  void unequalRoomsByTheirEigenvalues() {
    Network.Builder unequal = Network.builder();
    int small = unequal.room(9e4);
    int large = unequal.room(4e5);
    int outdoors = unequal.boundary();
    unequal.link(small, outdoors, 55);
    unequal.link(large, outdoors, 20);
    Network network = unequal.build();
    Drivers drivers = new Drivers(network);
    drivers.exchange(large, small, 25);
    drivers.exchange(small, large, 45);
    drivers.boundary(outdoors, 30);
    March march = new March(network, 15);
    double[] state = march.state();
    state[small] = 18;
    state[large] = 44;
    march.restore(state);
    double[] into = {march.air(small) - 30, march.air(large) - 30};
    double a = -(55 + 25) / 9e4;
    double b = 25 / 9e4;
    double c = 45 / 4e5;
    double d = -(20 + 45) / 4e5;
    double root = Math.sqrt((a - d) * (a - d) / 4 + b * c);
    double slow = (a + d) / 2 + root;
    double fast = (a + d) / 2 - root;
    // Vectors (b, λ - a): the share of each from the start.
    double one = (into[1] * b - into[0] * (fast - a)) / (b * (slow - fast));
    double two = into[0] / b - one;
    for (int s = 1; s <= 1200; s++) {
      march.step(drivers);
      double slowly = one * Math.exp(slow * 15 * s);
      double fastly = two * Math.exp(fast * 15 * s);
      assertThat(march.air(small)).isCloseTo(30 + b * (slowly + fastly), within(1e-4));
      double other = 30 + (slow - a) * slowly + (fast - a) * fastly;
      assertThat(march.air(large)).isCloseTo(other, within(1e-4));
    }
  }

  /** Air that goes one way warms the room it enters, and does nothing to the one it leaves. */
  @Test
  void airGoesOneWay() {
    Network network = linked();
    Drivers drivers = new Drivers(network);
    drivers.exchange(one, other, FLOW);
    drivers.airSource(one, 800);
    SteadyState.Solution steady = SteadyState.solve(network, drivers);
    assertThat(steady.air(one)).isCloseTo(20, within(1e-12));
    assertThat(steady.air(other)).isCloseTo(20 * FLOW / (FLOW + CONDUCTANCE), within(1e-12));
  }

  /** Mirror images behave alike, with a wall, radiation and air between them. */
  @Test
  void mirrorImagesBehaveAlike() {
    double[] capacities = {0, 2e5, 2e5, 0};
    double[] conductances = {60, 30, 60};
    for (int room : new int[] {one, other}) {
      builder.chain(
          new End.Boundary(outside, 90), capacities, conductances, new End.Room(room, 10, 25));
    }
    int shared =
        builder.chain(
            new End.Room(one, 12, 28), capacities, conductances, new End.Room(other, 12, 28));
    Network network = linked();
    Drivers drivers = new Drivers(network);
    drivers.exchange(one, other, FLOW);
    drivers.exchange(other, one, FLOW);
    drivers.boundary(outside, 38);
    drivers.airSource(one, 300);
    drivers.airSource(other, 300);
    drivers.starSource(one, 500);
    drivers.starSource(other, 500);
    drivers.leftSource(shared, 70);
    drivers.rightSource(shared, 70);
    March march = new March(network, 900);
    march.start(20);
    for (int s = 0; s < 50; s++) {
      march.step(drivers);
      assertThat(march.air(one)).isCloseTo(march.air(other), within(1e-11));
      assertThat(march.star(one)).isCloseTo(march.star(other), within(1e-11));
      assertThat(march.leftFace(shared)).isCloseTo(march.rightFace(shared), within(1e-11));
      assertThat(march.node(shared, 1)).isCloseTo(march.node(shared, 2), within(1e-11));
    }
    assertThat(march.star(one)).isGreaterThan(march.air(one));
    assertThat(march.air(one)).isGreaterThan(40);
  }

  /** A closed pair of rooms keeps its heat: the end is the mean weighted by capacity. */
  @Test
  void closedPairKeepsItsHeat() {
    builder.chain(
        new End.Room(one, 5, 0), new double[] {1e5}, new double[0], new End.Room(other, 5, 0));
    Network network = builder.build();
    March march = new March(network, 3600);
    double[] state = march.state();
    state[one] = 40;
    state[other] = 10;
    state[state.length - 1] = 22;
    march.restore(state);
    double end = (CAPACITY * 40 + CAPACITY * 10 + 1e5 * 22) / (2 * CAPACITY + 1e5);
    Drivers drivers = new Drivers(network);
    for (int s = 0; s < 2000; s++) {
      march.step(drivers);
      assertThat(march.storedHeatChange()).isCloseTo(0, within(1e-5));
    }
    assertThat(march.air(one)).isCloseTo(end, within(1e-9));
    assertThat(march.air(other)).isCloseTo(end, within(1e-9));
  }
}
