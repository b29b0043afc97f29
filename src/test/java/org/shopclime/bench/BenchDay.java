package org.shopclime.bench;

import java.util.function.Consumer;
import java.util.function.IntToDoubleFunction;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.nonstiff.AdamsMoultonIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;
import org.hipparchus.ode.nonstiff.HighamHall54Integrator;
import org.shopclime.balance.DayDrivers;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.AdaptiveMarch;
import org.shopclime.heat.DenseMarch;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.heat.ModeMarch;
import org.shopclime.heat.Network;

/**
 * A hot working day of the {@link BenchShop}, its drivers constant over each hour: the unit takes
 * its sensible share from 8 to 17 o'clock, the air of both rooms floats, air from outside comes in
 * at a constant flow.
 */
final class BenchDay {

  static final int HOURS = 24;

  /** Sensible part of the unit's 12,000 BTU/h at a sensible heat ratio of 0.70, W. */
  private static final double SENSIBLE = 0.70 * 3516.85;

  /** Air from outside into the shop and the attic, W/K. */
  private static final double[] INFLOW = {20, 60};

  /** Advances the day from its steady state. */
  interface Solver {

    /** Back to the steady state. */
    void restart();

    /** One hour on. */
    void hour(Drivers drivers);

    /** Mean of the last hour, °C. */
    double meanAir(int room);
  }

  /** The ways compared. */
  enum Way {
    /** Ours by modes, as the year's run steps: a step an hour. */
    MODES_1 {
      @Override
      Solver solver(BenchDay day) {
        return day.modes(1);
      }
    },
    /** Ours by modes, 4 steps an hour. */
    MODES_4 {
      @Override
      Solver solver(BenchDay day) {
        return day.modes(4);
      }
    },
    /** Ours, 4 steps an hour. */
    MARCH_4 {
      @Override
      Solver solver(BenchDay day) {
        return day.march(4);
      }
    },
    /** Ours, 12 steps an hour. */
    MARCH_12 {
      @Override
      Solver solver(BenchDay day) {
        return day.march(12);
      }
    },
    /** The scheme of ours with a dense matrix, 4 steps an hour. */
    DENSE_4 {
      @Override
      Solver solver(BenchDay day) {
        return day.dense(4);
      }
    },
    /** The scheme of ours with a dense matrix, 12 steps an hour. */
    DENSE_12 {
      @Override
      Solver solver(BenchDay day) {
        return day.dense(12);
      }
    },
    /** Dormand and Prince, order 8. */
    DORMAND_PRINCE_853 {
      @Override
      Solver solver(BenchDay day) {
        return day.adaptive(
            new DormandPrince853Integrator(LEAST_STEP, HOUR, TOLERANCE, RELATIVE_TOLERANCE));
      }
    },
    /** Dormand and Prince, order 5. */
    DORMAND_PRINCE_54 {
      @Override
      Solver solver(BenchDay day) {
        return day.adaptive(
            new DormandPrince54Integrator(LEAST_STEP, HOUR, TOLERANCE, RELATIVE_TOLERANCE));
      }
    },
    /** Higham and Hall, order 5, with a larger region of stability. */
    HIGHAM_HALL_54 {
      @Override
      Solver solver(BenchDay day) {
        return day.adaptive(
            new HighamHall54Integrator(LEAST_STEP, HOUR, TOLERANCE, RELATIVE_TOLERANCE));
      }
    },
    /** Gragg, Bulirsch and Stoer, any order. */
    GRAGG_BULIRSCH_STOER {
      @Override
      Solver solver(BenchDay day) {
        return day.adaptive(
            new GraggBulirschStoerIntegrator(LEAST_STEP, HOUR, TOLERANCE, RELATIVE_TOLERANCE));
      }
    },
    /** Adams and Moulton, the one implicit formula of the library, corrected once. */
    ADAMS_MOULTON {
      @Override
      Solver solver(BenchDay day) {
        return day.adaptive(
            new AdamsMoultonIntegrator(3, LEAST_STEP, HOUR, TOLERANCE, RELATIVE_TOLERANCE));
      }
    };

    abstract Solver solver(BenchDay day);
  }

  private static final double HOUR = 3600;

  /**
   * The two faces of sheets and panes are one to the general integrators, which spares them most.
   */
  private static final double QUICKEST = 5;

  private static final double LEAST_STEP = 1e-6;

  /** Of the general integrators, K; their hourly means are then nearer than ours at 12 steps. */
  static final double TOLERANCE = 1e-3;

  private static final double RELATIVE_TOLERANCE = 1e-4;

  private final Network network;
  private final Drivers[] hours = new Drivers[HOURS];
  private final Drivers means;
  private final double[] start;

  BenchDay() {
    ShopModel model = BenchShop.model();
    network = model.network();
    DayDrivers day = model.drivers(DayKind.WORKING, component -> true, 0);
    means = new Drivers(network);
    day.fillMeans(means);
    flow(means, model.meanOutdoor());
    for (int hour = 0; hour < HOURS; hour++) {
      hours[hour] = new Drivers(network);
      day.fill(hours[hour], hour * DaySlots.PER_HOUR, DaySlots.PER_HOUR);
      flow(hours[hour], model.outdoor(hour + 1));
      if (hour >= 8 && hour < 17) {
        hours[hour].airSource(0, day.airGain(0, hour * DaySlots.PER_HOUR) - SENSIBLE);
      }
    }
    March march = new March(network, HOUR);
    march.startSteady(means);
    start = march.state();
  }

  private static void flow(Drivers into, double outdoor) {
    for (int room = 0; room < INFLOW.length; room++) {
      into.inflow(room, INFLOW[room], outdoor);
    }
    into.exchange(0, 1, 3);
    into.exchange(1, 0, 3);
  }

  Drivers hour(int hour) {
    return hours[hour];
  }

  /** Advances the whole day, and gives the hourly means of both rooms, °C. */
  double[][] means(Solver solver) {
    double[][] means = new double[2][HOURS];
    solver.restart();
    for (int hour = 0; hour < HOURS; hour++) {
      solver.hour(hours[hour]);
      means[0][hour] = solver.meanAir(0);
      means[1][hour] = solver.meanAir(1);
    }
    return means;
  }

  Solver march(int steps) {
    March march = new March(network, HOUR / steps);
    return new Stepped(steps, () -> march.restore(start), march::step, room -> march.meanAir(room));
  }

  Solver modes(int steps) {
    ModeMarch march = new ModeMarch(network, HOUR / steps);
    march.startSteady(means);
    double[] steady = march.state();
    return new Stepped(
        steps, () -> march.restore(steady), march::step, room -> march.meanAir(room));
  }

  Solver dense(int steps) {
    DenseMarch march = new DenseMarch(network, hours[0], HOUR / steps);
    return new Stepped(steps, () -> march.restore(start), march::step, room -> march.meanAir(room));
  }

  Solver adaptive(ODEIntegrator integrator) {
    AdaptiveMarch march = new AdaptiveMarch(network, hours[0], QUICKEST, integrator);
    return new Solver() {
      @Override
      public void restart() {
        march.restore(start);
      }

      @Override
      public void hour(Drivers drivers) {
        march.advance(drivers, HOUR);
      }

      @Override
      public double meanAir(int room) {
        return march.meanAir(room);
      }
    };
  }

  /** Steps of one length. */
  private static final class Stepped implements Solver {

    private final int steps;
    private final Runnable restart;
    private final Consumer<Drivers> step;
    private final IntToDoubleFunction meanAir;
    private final double[] mean = new double[2];

    private Stepped(
        int steps, Runnable restart, Consumer<Drivers> step, IntToDoubleFunction meanAir) {
      this.steps = steps;
      this.restart = restart;
      this.step = step;
      this.meanAir = meanAir;
    }

    @Override
    public void restart() {
      restart.run();
    }

    @Override
    public void hour(Drivers drivers) {
      mean[0] = 0;
      mean[1] = 0;
      for (int i = 0; i < steps; i++) {
        step.accept(drivers);
        mean[0] += meanAir.applyAsDouble(0) / steps;
        mean[1] += meanAir.applyAsDouble(1) / steps;
      }
    }

    @Override
    public double meanAir(int room) {
      return mean[room];
    }
  }
}
