package org.shopclime.gain;

import org.shopclime.quantity.Range;

/**
 * Heat given off by an electric motor and by what it drives.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (1989 to 2005), nonresidential load chapter, table
 * "Heat gain from typical electric motors" (full-load efficiency, from memory) and the equations
 * below it. Half radiant, half convective: the same chapter, default for motors.
 *
 * <p>Limits: full-load efficiency at any load; below half load a motor is worse. Motors sold since
 * 2010 are better by some points, so the motor's own part is on the high side. Power is what the
 * shaft can give all day; a hand tool marked with the watts or amperes it draws belongs to {@link
 * ElectricGain}. Dust or chips carried out by a collector take no heat along here.
 */
public final class MotorGain {

  /** Radiant part of the heat of motor and machine, 0 to 1. */
  public static final double RADIANT_SHARE = 0.5;

  private static final double WATTS_PER_HORSEPOWER = 550 * 0.3048 * 0.45359237 * 9.80665;
  private static final double MOST_WATTS = 1e7;
  private static final double MOST_LOAD = 1.5;

  private static final double[] HORSEPOWER = {
    0.05, 0.125, 0.16, 0.25, 0.33, 0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 60, 75, 125,
    150, 250
  };
  private static final double[] EFFICIENCY = {
    0.35, 0.35, 0.35, 0.54, 0.56, 0.60, 0.72, 0.75, 0.77, 0.79, 0.81, 0.82, 0.84, 0.85, 0.86, 0.87,
    0.88, 0.89, 0.89, 0.90, 0.90, 0.91, 0.91
  };

  private MotorGain() {}

  /**
   * Shaft power over electric input at full load, on straight lines between the rows of the table.
   * Below 1/20 hp (37 W) and above 250 hp (186 kW) the end of the table is held; {@link
   * #isInTable(double)} tells.
   *
   * @param ratedShaftWatts rated shaft power, W, 0 to 1e7
   * @return efficiency, 0.35 to 0.91
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double efficiency(double ratedShaftWatts) {
    Range.check("rated shaft power, W,", ratedShaftWatts, 0, MOST_WATTS);
    double horsepower = ratedShaftWatts / WATTS_PER_HORSEPOWER;
    int last = HORSEPOWER.length - 1;
    if (horsepower <= HORSEPOWER[0]) {
      return EFFICIENCY[0];
    }
    if (horsepower >= HORSEPOWER[last]) {
      return EFFICIENCY[last];
    }
    int row = 1;
    while (HORSEPOWER[row] < horsepower) {
      row++;
    }
    double part = (horsepower - HORSEPOWER[row - 1]) / (HORSEPOWER[row] - HORSEPOWER[row - 1]);
    return EFFICIENCY[row - 1] + part * (EFFICIENCY[row] - EFFICIENCY[row - 1]);
  }

  /**
   * Whether the table speaks of a motor of this size.
   *
   * @param ratedShaftWatts rated shaft power, W
   * @return true from 1/20 to 250 hp
   */
  public static boolean isInTable(double ratedShaftWatts) {
    double horsepower = ratedShaftWatts / WATTS_PER_HORSEPOWER;
    return horsepower >= HORSEPOWER[0] && horsepower <= HORSEPOWER[HORSEPOWER.length - 1];
  }

  /**
   * Electric power while it runs.
   *
   * @param ratedShaftWatts rated shaft power, W, 0 to 1e7
   * @param load part of the rated power drawn, 0 to 1.5
   * @return P / E × load, W
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double electricInput(double ratedShaftWatts, double load) {
    return ratedShaftWatts / efficiency(ratedShaftWatts) * loadOf(load);
  }

  /**
   * Motor and machine both in the room: P / E × use × load.
   *
   * @param ratedShaftWatts rated shaft power P, W, 0 to 1e7
   * @param load part of the rated power drawn while running, 0 to 1.5
   * @param use part of the time it runs, 0 to 1
   * @return mean heat
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static HeatGain motorAndMachineInRoom(double ratedShaftWatts, double load, double use) {
    return gain(electricInput(ratedShaftWatts, load), use);
  }

  /**
   * The machine in the room, its motor elsewhere: P × use × load.
   *
   * @param ratedShaftWatts rated shaft power P, W, 0 to 1e7
   * @param load part of the rated power drawn while running, 0 to 1.5
   * @param use part of the time it runs, 0 to 1
   * @return mean heat
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static HeatGain machineOnly(double ratedShaftWatts, double load, double use) {
    Range.check("rated shaft power, W,", ratedShaftWatts, 0, MOST_WATTS);
    return gain(ratedShaftWatts * loadOf(load), use);
  }

  /**
   * The motor in the room, what it drives elsewhere: P (1 / E - 1) × use × load.
   *
   * @param ratedShaftWatts rated shaft power P, W, 0 to 1e7
   * @param load part of the rated power drawn while running, 0 to 1.5
   * @param use part of the time it runs, 0 to 1
   * @return mean heat
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static HeatGain motorOnly(double ratedShaftWatts, double load, double use) {
    return gain(ratedShaftWatts * (1 / efficiency(ratedShaftWatts) - 1) * loadOf(load), use);
  }

  private static HeatGain gain(double watts, double use) {
    return HeatGain.dry(watts * Range.check("use", use, 0, 1), RADIANT_SHARE);
  }

  private static double loadOf(double load) {
    return Range.check("load", load, 0, MOST_LOAD);
  }
}
