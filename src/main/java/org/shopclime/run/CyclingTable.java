package org.shopclime.run;

import java.util.Arrays;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;
import org.shopclime.unit.PartLoad;
import org.shopclime.unit.StartUp;

/**
 * Cycles of a room, looked up between points that are reckoned when first needed: steps of load
 * {@value #LOAD_STEPS} to the whole, of capacity {@value #CAPACITY_STEPS} to the doubling; straight
 * lines between them. Not for several threads at once.
 */
final class CyclingTable {

  private static final int LOAD_STEPS = 32;
  private static final int CAPACITY_STEPS = 3;

  /** Sensible capacity the table begins with, W; the smallest unit sold gives more. */
  private static final double LEAST = 250;

  /** Doublings from there: to 256 kW. */
  private static final int DOUBLINGS = 10;

  private final RoomCycling of;

  /** Part of capacity that is left on cycling, and starts in an hour, by capacity and load. */
  private final double[][] left = new double[DOUBLINGS * CAPACITY_STEPS + 1][];

  private final double[][] starts = new double[DOUBLINGS * CAPACITY_STEPS + 1][];

  /** How a compressor comes to its capacity, of the default degradation coefficient. */
  private static final StartUp START = StartUp.ofDegradation(PartLoad.DEGRADATION);

  /**
   * The cycles of a room with the usual thermostat and start.
   *
   * @param march march of its network; another step is to be chosen afterwards
   * @param still drivers without air flows and holds
   * @param room index of the room
   * @param shorter number of the step of {@link RoomCycling#SHORT}
   * @param longer number of the step of {@link RoomCycling#LONG}
   */
  static CyclingTable usual(ModeMarch march, Drivers still, int room, int shorter, int longer) {
    return new CyclingTable(
        RoomCycling.of(march, still, room, shorter, longer, Thermostat.USUAL, START));
  }

  CyclingTable(RoomCycling of) {
    this.of = of;
  }

  RoomCycling of() {
    return of;
  }

  /**
   * Part of the time the unit runs.
   *
   * @param load what is asked as a part of the steady sensible capacity, 0 to 1
   * @param sensible that capacity, W
   * @return 0 to 1, {@code load} or more; 0 where nothing is asked or given
   */
  double running(double load, double sensible) {
    if (!(load > 0 && sensible > 0)) {
      return 0;
    }
    return load >= 1 ? 1 : Math.min(1, load / read(left, load, sensible));
  }

  /**
   * Starts in an hour.
   *
   * @param load as there
   * @param sensible as there
   * @return 0 or more
   */
  double starts(double load, double sensible) {
    return load > 0 && load < 1 && sensible > 0 ? read(starts, load, sensible) : 0;
  }

  private double read(double[][] table, double load, double sensible) {
    double across = Math.log(Math.max(LEAST, sensible) / LEAST) / Math.log(2) * CAPACITY_STEPS;
    int row = (int) Math.min(across, table.length - 2);
    double x = Math.min(1, across - row);
    double along = load * LOAD_STEPS;
    int column = (int) Math.min(along, LOAD_STEPS - 1);
    double y = along - column;
    return (1 - x) * (point(table, row, column) * (1 - y) + point(table, row, column + 1) * y)
        + x * (point(table, row + 1, column) * (1 - y) + point(table, row + 1, column + 1) * y);
  }

  private double point(double[][] table, int row, int column) {
    if (left[row] == null) {
      left[row] = new double[LOAD_STEPS + 1];
      Arrays.fill(left[row], Double.NaN);
      starts[row] = left[row].clone();
    }
    if (Double.isNaN(left[row][column])) {
      double sensible = LEAST * Math.pow(2, (double) row / CAPACITY_STEPS);
      // Nothing asked starts nothing, but what little is asked costs whole starts.
      double load = Math.max(column, 1e-3) / LOAD_STEPS;
      RoomCycling.Cycle cycle = of.cycle(load, sensible);
      left[row][column] = of.start().share(0, cycle.run());
      starts[row][column] = column == 0 ? 0 : cycle.starts();
    }
    return table[row][column];
  }
}
