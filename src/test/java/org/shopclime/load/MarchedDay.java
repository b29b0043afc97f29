package org.shopclime.load;

import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayDrivers;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;

/**
 * The day that repeats, marched step by step until it does: slow, and of other making than {@link
 * HeldDay}, which is held against it. Cooled rooms are held, floating rooms have frozen air flows.
 */
final class MarchedDay {

  private static final int MOST_DAYS = 80;
  private static final double CONVERGED = 1e-6;

  private final int steps;
  private final int stepsPerHour;
  private final ShopModel model;
  private final March march;
  private final Drivers drivers;

  /** Heat carried by each kelvin of outdoor air entering a floating room, W/K, by room and step. */
  private final double[][] conductance;

  private int days;

  /**
   * Marches a day.
   *
   * @param model the shop on a day
   * @param steps steps in the day, a multiple of 24; of 288 for more
   */
  MarchedDay(ShopModel model, int steps) {
    this.model = model;
    this.steps = steps;
    stepsPerHour = steps / 24;
    this.march = new March(model.network(), 86400.0 / steps);
    this.drivers = new Drivers(model.network());
    this.conductance = new double[model.rooms()][steps];
    freeze();
  }

  /** Takes the air flows of floating rooms from another making of the same day. */
  void takeFlows(HeldDay day) {
    int stepsPerHalf = stepsPerHour / 2;
    for (int room = 0; room < model.rooms(); room++) {
      if (!model.isCooled(room)) {
        for (int step = 0; step < steps; step++) {
          conductance[room][step] = day.flow(room, step / stepsPerHalf);
        }
      }
    }
  }

  /** One run: which drivers count, from what temperature they are told, who is held where. */
  interface Setting {
    /** Drivers of the lines that count. */
    DayDrivers drivers();

    /** Temperature at which a cooled room is held, told from the reference, K. */
    double held(int room);

    /** Temperature of outdoor air entering a floating room, told from the reference, K. */
    double outdoor(int room, int hour);
  }

  /** Looks at each step of a run once it is made, for whoever audits. */
  interface Watch {
    /** A step was made under these drivers. */
    void stepped(March march, Drivers drivers);
  }

  /** What a run gives: plant heat of cooled rooms, W, and air of all, K, by room and step. */
  final class Result {
    private final double[][] plant;
    private final double[][] air;

    private Result(double[][] plant, double[][] air) {
      this.plant = plant;
      this.air = air;
    }

    /** Mean plant heat of a room in an hour ending 1 to 24, W. */
    double plant(int room, int hour) {
      return hourly(plant[room], hour);
    }

    /** Mean air temperature of a room in an hour, told from the reference, K. */
    double air(int room, int hour) {
      return hourly(air[room], hour);
    }
  }

  /**
   * Finds the air flows of floating rooms in one full run, and how many days it takes to repeat.
   */
  private void freeze() {
    Setting all = everything();
    DayDrivers day = all.drivers();
    double[] guess = new double[model.rooms()];
    for (int room = 0; room < guess.length; room++) {
      guess[room] = model.meanTemperature(room);
    }
    for (int room = 0; room < guess.length; room++) {
      for (int step = 0; step < steps; step++) {
        conductance[room][step] = flow(room, guess[room], step);
      }
    }
    startSteady(all, day);
    double[] before = march.state();
    for (days = 1; days <= MOST_DAYS; days++) {
      for (int step = 0; step < steps; step++) {
        for (int room = 0; room < guess.length; room++) {
          if (!model.isCooled(room)) {
            conductance[room][step] = flow(room, march.air(room), step);
          }
        }
        step(all, day, step);
      }
      double[] after = march.state();
      if (largestChange(before, after) < CONVERGED) {
        return;
      }
      before = after;
    }
    days = MOST_DAYS;
  }

  private double flow(int room, double celsius, int step) {
    int hour = step / stepsPerHour + 1;
    return model.isCooled(room)
        ? 0
        : model.streams().total(room, celsius, DayKind.WORKING, slot(step), slots())
            * MoistAir.humidHeat(model.outdoorHumidityRatio(hour));
  }

  /** The setting of the run with everything on, in absolute temperatures. */
  Setting everything() {
    DayDrivers day = model.drivers(DayKind.WORKING, component -> true, 0);
    return new Setting() {
      @Override
      public DayDrivers drivers() {
        return day;
      }

      @Override
      public double held(int room) {
        return model.setPoint(room);
      }

      @Override
      public double outdoor(int room, int hour) {
        return model.outdoor(hour);
      }
    };
  }

  /**
   * Runs a setting.
   *
   * @param setting what counts
   * @return plant heat and air temperatures of the last day
   */
  Result run(Setting setting) {
    return run(setting, (stepped, under) -> {});
  }

  /** The same, watched. */
  Result run(Setting setting, Watch watch) {
    DayDrivers day = setting.drivers();
    startSteady(setting, day);
    double[][] plant = new double[model.rooms()][steps];
    double[][] air = new double[model.rooms()][steps];
    for (int round = 0; round < days; round++) {
      for (int step = 0; step < steps; step++) {
        step(setting, day, step);
        watch.stepped(march, drivers);
        for (int room = 0; room < model.rooms(); room++) {
          plant[room][step] = march.plant(room);
          air[room][step] = march.meanAir(room);
        }
      }
    }
    return new Result(plant, air);
  }

  private void startSteady(Setting setting, DayDrivers day) {
    day.fillMeans(drivers);
    for (int room = 0; room < model.rooms(); room++) {
      if (model.isCooled(room)) {
        drivers.hold(room, setting.held(room));
      } else {
        double sum = 0;
        double heat = 0;
        for (int step = 0; step < steps; step++) {
          sum += conductance[room][step];
          heat += conductance[room][step] * setting.outdoor(room, step / stepsPerHour + 1);
        }
        drivers.inflow(room, sum / steps, sum > 0 ? heat / sum : 0);
      }
    }
    march.startSteady(drivers);
  }

  private void step(Setting setting, DayDrivers day, int step) {
    day.fill(drivers, slot(step), slots());
    int hour = step / stepsPerHour + 1;
    for (int room = 0; room < model.rooms(); room++) {
      if (model.isCooled(room)) {
        drivers.hold(room, setting.held(room));
      } else {
        drivers.inflow(room, conductance[room][step], setting.outdoor(room, hour));
      }
    }
    march.step(drivers);
  }

  private int slot(int step) {
    return step * DaySlots.COUNT / steps;
  }

  private int slots() {
    return Math.max(1, DaySlots.COUNT / steps);
  }

  private static double largestChange(double[] before, double[] after) {
    double largest = 0;
    for (int i = 0; i < before.length; i++) {
      largest = Math.max(largest, Math.abs(after[i] - before[i]));
    }
    return largest;
  }

  /** Mean of the steps of an hour. */
  private double hourly(double[] steps, int hour) {
    double sum = 0;
    for (int step = (hour - 1) * stepsPerHour; step < hour * stepsPerHour; step++) {
      sum += steps[step];
    }
    return sum / stepsPerHour;
  }
}
