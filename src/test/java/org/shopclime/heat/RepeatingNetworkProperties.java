package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** What must be true of the repeating day of any network, tried on random ones. */
class RepeatingNetworkProperties {

  private static final Waves NOTHING = new Waves();

  /** A random network with some rooms held, and drives of all kinds. */
  private static final class Case {
    private final RandomCase one;
    private final Network network;
    private final boolean[] held;
    private final double[] inflow;
    private final double[] hold;
    private final Drivers means;
    private final SteadyState.Solution steady;
    private final RepeatingNetwork repeating;
    private final List<Drive> drives = new ArrayList<>();
    private double scale = 100;

    Case(long number) {
      one = new RandomCase(number);
      network = one.network;
      int rooms = network.rooms();
      held = new boolean[rooms];
      inflow = new double[rooms];
      hold = new double[rooms];
      means = new Drivers(network);
      for (int r = 0; r < rooms; r++) {
        held[r] = one.random.nextInt(3) == 0;
        hold[r] = one.between(15, 30);
        if (held[r]) {
          means.hold(r, hold[r]);
        } else {
          inflow[r] = one.random.nextBoolean() ? one.between(1, 80) : 0;
          means.inflow(r, inflow[r], 20);
        }
      }
      steadyOrNone();
      for (int b = 0; b < network.boundaries(); b++) {
        int boundary = b;
        Waves celsius = day(-10, 60);
        means.boundary(b, celsius.mean());
        drives.add(to -> to.boundary(boundary, celsius, 0));
      }
      double[] shares = new double[2 * network.chains()];
      Waves shared = day(0, 900);
      for (int k = 0; k < network.chains(); k++) {
        int chain = k;
        Waves left = day(-50, 500);
        Waves right = day(-50, 500);
        shares[2 * k] = one.between(0, 0.2);
        means.leftSource(k, left.mean() + shares[2 * k] * shared.mean());
        means.rightSource(k, right.mean());
        drives.add(to -> to.left(chain, left));
        drives.add(to -> to.right(chain, right));
      }
      drives.add(to -> to.faces(shares, shared));
      for (int r = 0; r < rooms; r++) {
        int room = r;
        Waves air = day(-500, 500);
        Waves airTilt = day(-300, 300);
        Waves star = day(-500, 500);
        Waves starTilt = day(-300, 300);
        means.airSource(r, air.mean() - (held[r] ? 0 : 20 * inflow[r]));
        means.starSource(r, star.mean());
        drives.add(to -> to.air(room, air, airTilt));
        drives.add(to -> to.star(room, star, starTilt));
        drives.add(to -> to.hold(room, hold[room]));
      }
      steady = SteadyState.solve(network, means);
      repeating = new RepeatingNetwork(network, held, inflow);
      for (int r = 0; r < rooms; r++) {
        scale = Math.max(scale, Math.abs(steady.plant(r)));
        scale = Math.max(scale, Math.abs(steady.air(r)));
      }
    }

    /** Networks with a part that nothing fixes are left out. */
    private void steadyOrNone() {
      try {
        SteadyState.solve(network, means);
      } catch (IllegalStateException undetermined) {
        Assume.that(false);
      }
    }

    private Waves day(double low, double high) {
      double[] steps = new double[Waves.STEPS];
      for (int step = 0; step < steps.length; step++) {
        steps[step] = one.between(low, high);
      }
      return Waves.of(steps);
    }

    RepeatingNetwork.Solution solution() {
      RepeatingNetwork.Day day = repeating.day();
      drives.forEach(drive -> drive.on(day));
      return day.solve();
    }
  }

  /** One drive. */
  @FunctionalInterface
  private interface Drive {
    void on(Driven to);
  }

  /** What each room answers to single drives adds up to what the whole day is solved to. */
  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void answersAddUpToTheDay(@ForAll long number) {
    Case one = new Case(number);
    RepeatingNetwork.Solution day = one.solution();
    for (int r = 0; r < one.network.rooms(); r++) {
      RepeatingNetwork.Answer answer = one.repeating.answer(r);
      double[] whole = (one.held[r] ? day.plant(r) : day.air(r)).steps();
      double[] sum = new double[Waves.STEPS];
      for (Drive drive : one.drives) {
        RepeatingNetwork.Sum alone = answer.sum();
        drive.on(alone);
        double[] steps = alone.result().steps();
        for (int step = 0; step < sum.length; step++) {
          sum[step] += steps[step];
        }
      }
      close(sum, whole, one.scale);
    }
  }

  /** The mean of the day is the steady state under the means of its drives. */
  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void meanIsTheSteadyState(@ForAll long number) {
    Case one = new Case(number);
    RepeatingNetwork.Solution day = one.solution();
    for (int r = 0; r < one.network.rooms(); r++) {
      close(day.plant(r).mean(), one.steady.plant(r), one.scale);
      close(day.air(r).mean(), one.steady.air(r), one.scale);
    }
    for (int b = 0; b < one.network.boundaries(); b++) {
      close(day.boundaryHeat(b), one.steady.boundaryHeat(b), one.scale);
    }
  }

  /** Told from another reference all is the same but for the reference. */
  @Property(tries = 50, shrinking = ShrinkingMode.OFF)
  void referenceDoesNotMatter(@ForAll long number) {
    Case one = new Case(number);
    RepeatingNetwork.Solution plain = solveOutdoors(one, 0);
    RepeatingNetwork.Solution told = solveOutdoors(one, 7);
    for (int r = 0; r < one.network.rooms(); r++) {
      close(told.plant(r).steps(), plain.plant(r).steps(), one.scale);
      double[] air = told.air(r).steps();
      for (int step = 0; step < air.length; step++) {
        air[step] += 7;
      }
      close(air, plain.air(r).steps(), one.scale);
    }
  }

  private static RepeatingNetwork.Solution solveOutdoors(Case one, double reference) {
    RepeatingNetwork.Day day = one.repeating.day();
    for (int b = 0; b < one.network.boundaries(); b++) {
      day.boundary(b, Waves.ofHours(hours(hour -> 10 + hour)), reference);
    }
    for (int r = 0; r < one.network.rooms(); r++) {
      day.hold(r, 20 - reference);
      if (!one.held[r]) {
        Waves air = new Waves();
        air.add(one.inflow[r] * (15 - reference));
        day.air(r, air, NOTHING);
      }
    }
    return day.solve();
  }

  private static double[] hours(ToDoubleFunction<Integer> value) {
    double[] hours = new double[24];
    for (int hour = 0; hour < hours.length; hour++) {
      hours[hour] = value.applyAsDouble(hour);
    }
    return hours;
  }

  private static void close(double[] found, double[] expected, double scale) {
    for (int i = 0; i < found.length; i++) {
      close(found[i], expected[i], scale);
    }
  }

  private static void close(double found, double expected, double scale) {
    assertThat(Math.abs(found - expected) / scale).isLessThan(1e-9);
  }
}
