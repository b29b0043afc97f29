package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Starting, keeping and restoring states, what is told at rest, and what is refused. */
class MarchTest {

  private final Network.Builder builder = Network.builder();
  private final int room = builder.room(1e5);
  private final int outside = builder.boundary();

  private Network walled() {
    builder.chain(
        new End.Boundary(outside, 50),
        new double[] {0, 1e6, 0},
        new double[] {20, 20},
        new End.Room(room, 30, 60));
    builder.chain(
        new End.Insulated(), new double[] {5e5}, new double[0], new End.Room(room, 10, 20));
    return builder.build();
  }

  private void atRest(March march, double celsius) {
    assertThat(march.state()).containsOnly(celsius);
    assertThat(march.air(room)).isEqualTo(celsius);
    assertThat(march.meanAir(room)).isCloseTo(celsius, within(1e-13));
    assertThat(march.meanStar(room)).isCloseTo(celsius, within(1e-13));
    assertThat(march.meanLeftFace(0)).isCloseTo(celsius, within(1e-13));
    assertThat(march.meanRightFace(0)).isCloseTo(celsius, within(1e-13));
    assertThat(march.plant(room)).isZero();
    assertThat(march.boundaryHeat(outside)).isZero();
    assertThat(march.storedHeatChange()).isZero();
  }

  @Test
  void restsUntilTheFirstStep() {
    Network network = walled();
    March march = new March(network, 600);
    atRest(march, 0);
    march.start(21);
    atRest(march, 21);
    Drivers drivers = new Drivers(network);
    drivers.boundary(outside, 40);
    drivers.hold(room, 25);
    march.step(drivers);
    assertThat(march.plant(room)).isNotZero();
    assertThat(march.boundaryHeat(outside)).isPositive();
    double[] state = march.state();
    march.start(18);
    atRest(march, 18);
    march.restore(state);
    assertThat(march.state()).containsExactly(state);
    assertThat(march.meanAir(room)).isCloseTo(25, within(1e-13));
    assertThat(march.meanLeftFace(0)).isCloseTo(march.leftFace(0), within(1e-13));
    assertThat(march.plant(room)).isZero();
    assertThat(march.boundaryHeat(outside)).isZero();
    assertThat(march.storedHeatChange()).isZero();
    march.step(drivers);
    march.startSteady(drivers);
    assertThat(march.storedHeatChange()).isZero();
    assertThat(march.meanAir(room)).isCloseTo(25, within(1e-13));
    // 1/50 + 1/20 + 1/20 and the inner face, which sees the air also by way of star and mass.
    assertThat(march.boundaryHeat(outside)).isCloseTo(-march.plant(room), within(1e-10));
    assertThat(march.boundaryHeat(outside)).isPositive();
  }

  /** What a step will take is what it takes, and looking changes nothing. */
  @Test
  void tellsThePlantOfAStepBeforeIt() {
    Network network = walled();
    March march = new March(network, 600);
    march.start(30);
    Drivers drivers = new Drivers(network);
    drivers.boundary(outside, 40);
    drivers.inflow(room, 25, 38);
    drivers.airSource(room, 150);
    for (double setPoint : new double[] {25, 24, 31, 28}) {
      assertThat(march.lookAheadPlant(drivers, room)).as("floating").isZero();
      drivers.hold(room, setPoint);
      double[] state = march.state();
      double ahead = march.lookAheadPlant(drivers, room);
      assertThat(march.state()).isEqualTo(state);
      march.step(drivers);
      assertThat(ahead).isEqualTo(march.plant(room)).isNotZero();
      assertThat(march.lookAheadPlant(drivers, room)).isNotEqualTo(ahead);
      assertThat(march.plant(room)).isEqualTo(ahead);
      drivers.release(room);
    }
  }

  @Test
  void goesOnFromARestoredState() {
    Network network = walled();
    Drivers drivers = new Drivers(network);
    drivers.boundary(outside, 40);
    March march = new March(network, 600);
    march.start(10);
    march.step(drivers);
    double[] state = march.state();
    march.step(drivers);
    double[] after = march.state();
    march.restore(state);
    state[0] = 99;
    march.step(drivers);
    assertThat(march.state()).containsExactly(after);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesSteps(double bad) {
    Network network = walled();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new March(network, bad))
        .withMessage("length of a step, s: " + bad + " is not above 0 and finite");
  }

  @Test
  void refusesStatesThatDoNotFit() {
    March march = new March(walled(), 60);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> march.restore(new double[5]))
        .withMessage("a state of 5 values; takes 6");
    double[] state = march.state();
    state[3] = Double.NaN;
    assertThatIllegalArgumentException()
        .isThrownBy(() -> march.restore(state))
        .withMessage("temperature in a state, °C: NaN is not finite");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> march.start(Double.NaN))
        .withMessage("temperature to start from, °C: NaN is not finite");
    assertThat(march.state()).containsOnly(0);
  }

  @Test
  void refusesDriversOfAnotherNetwork() {
    Network network = walled();
    March march = new March(network, 60);
    Drivers other = new Drivers(builder.build());
    String message = "the drivers were made for another network";
    assertThatIllegalArgumentException().isThrownBy(() -> march.step(other)).withMessage(message);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> march.lookAhead(other, room))
        .withMessage(message);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> march.response(other, room, room))
        .withMessage(message);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> march.startSteady(other))
        .withMessage(message);
  }

  @Test
  void refusesPlacesThatAreNotThere() {
    Network network = walled();
    March march = new March(network, 60);
    Drivers drivers = new Drivers(network);
    SteadyState.Solution steady = SteadyState.solve(network, drivers);
    Runnable[] calls = {
      () -> march.air(1),
      () -> march.meanAir(-1),
      () -> march.star(1),
      () -> march.meanStar(1),
      () -> march.leftFace(2),
      () -> march.meanLeftFace(2),
      () -> march.rightFace(2),
      () -> march.meanRightFace(2),
      () -> march.node(0, 3),
      () -> march.plant(1),
      () -> march.boundaryHeat(1),
      () -> march.response(drivers, 1, 0),
      () -> march.response(drivers, 0, 1),
      () -> march.lookAhead(drivers, 1),
      () -> steady.air(1),
      () -> steady.star(-1),
      () -> steady.leftFace(2),
      () -> steady.rightFace(2),
      () -> steady.node(1, 1),
      () -> steady.plant(1),
      () -> steady.boundaryHeat(1)
    };
    for (Runnable call : calls) {
      assertThatIllegalArgumentException()
          .isThrownBy(call::run)
          .withMessageContaining("of this network");
    }
  }

  @Test
  void aHeldRoomAnswersToNothing() {
    Network network = walled();
    March march = new March(network, 600);
    Drivers drivers = new Drivers(network);
    assertThat(march.response(drivers, room, room)).isPositive();
    drivers.hold(room, 20);
    assertThat(march.response(drivers, room, room)).isZero();
  }

  /** A floating insulated room has no steady state, but it has a tomorrow. */
  @Test
  void tellsWhatFloats() {
    int other = builder.room(1e5);
    builder.chain(
        new End.Insulated(), new double[] {1e6, 0}, new double[] {20}, new End.Room(other, 30, 60));
    Network network = walled();
    Drivers drivers = new Drivers(network);
    String message =
        "nothing fixes the temperature of room 1: no boundary, no air from outside and no held"
            + " room reaches it";
    assertThatIllegalStateException()
        .isThrownBy(() -> SteadyState.solve(network, drivers))
        .withMessage(message);
    March march = new March(network, 600);
    assertThatIllegalStateException()
        .isThrownBy(() -> march.startSteady(drivers))
        .withMessage(message);
    march.start(30);
    march.step(drivers);
    assertThat(march.air(other)).isCloseTo(30, within(1e-12));

    drivers.exchange(other, room, 10);
    assertThatIllegalStateException()
        .isThrownBy(() -> SteadyState.solve(network, drivers))
        .withMessage(message);
    drivers.exchange(room, other, 10);
    drivers.boundary(outside, 12);
    assertThat(SteadyState.solve(network, drivers).air(other)).isCloseTo(12, within(1e-12));
    drivers.exchange(room, other, 0);
    drivers.inflow(other, 5, 33);
    assertThat(SteadyState.solve(network, drivers).air(other)).isCloseTo(33, within(1e-12));
    drivers.inflow(other, 0, 33);
    drivers.hold(other, 19);
    assertThat(SteadyState.solve(network, drivers).star(other)).isCloseTo(19, within(1e-12));
  }

  @Test
  void tellsWhichChainFloats() {
    builder.chain(new End.Insulated(), new double[] {1, 1}, new double[] {1}, new End.Insulated());
    Network network = walled();
    assertThatIllegalStateException()
        .isThrownBy(() -> SteadyState.solve(network, new Drivers(network)))
        .withMessage("nothing fixes the temperature of chain 0: it is insulated at both ends");
  }

  /** No digit is lost where films are a million times better than the wall between them. */
  @Test
  void keepsDigitsBehindStrongFilms() {
    builder.chain(
        new End.Boundary(outside, 1e6),
        new double[] {0, 0},
        new double[] {1e-6},
        new End.Room(room, 1e6, 1e6));
    Network network = builder.build();
    Drivers drivers = new Drivers(network);
    drivers.airSource(room, 2e-5);
    double ua = 1 / (1e6 + 1e-6 + 1e-6);
    assertThat(SteadyState.solve(network, drivers).air(room)).isCloseTo(2e-5 / ua, within(1e-12));
  }

  /** The loop of a year makes no garbage. */
  @Test
  void stepsWithoutAllocating() {
    Network network = walled();
    March march = new March(network, 600);
    Drivers drivers = new Drivers(network);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    double sum = work(march, drivers);
    long before = threads.getThreadAllocatedBytes(thread);
    sum += work(march, drivers);
    long allocated = threads.getThreadAllocatedBytes(thread) - before;
    assertThat(sum).isFinite();
    // A thousand rounds; what the measuring itself takes is far below a byte a round.
    assertThat(allocated).isLessThan(1000);
  }

  private double work(March march, Drivers drivers) {
    double sum = 0;
    for (int s = 0; s < 1000; s++) {
      drivers.boundary(outside, 30 + s % 7);
      drivers.inflow(room, s % 5, 35);
      if (s % 3 == 0) {
        drivers.hold(room, 25);
      } else {
        drivers.release(room);
      }
      sum += march.response(drivers, room, room) + march.lookAhead(drivers, room);
      march.step(drivers);
      sum += march.meanAir(room) + march.plant(room) + march.boundaryHeat(outside);
      sum += march.meanRightFace(0) + march.storedHeatChange();
    }
    return sum;
  }
}
