package org.shopclime.gain;

import org.shopclime.quantity.Range;

/**
 * Heat given off by an air compressor.
 *
 * <p>All its electric input becomes heat at the machine and its tank, as long as the air leaves the
 * tank at the temperature of the room: compressed air that has cooled down holds no more heat than
 * free air. What the air can still do is taken from the heat of the room where it expands, and is
 * given back as work and noise. So in one room the whole input counts; this is the default.
 *
 * <p>Source: energy balance; motor efficiency from {@link MotorGain}. The compressed-air sourcebook
 * of the US Department of Energy says 80 to 93 % of the input can be caught at the machine; the
 * rest leaves with warm air and through the pipes ({@link #LEAST_SHARE_WITH_AIR}, {@link
 * #MOST_SHARE_WITH_AIR}). Radiant share 0.25: common practice for a machine that a fan blows on.
 *
 * <p>Limits: full load while running. The rule of thumb of 2,545 BTU/h per horsepower leaves out
 * the motor's own loss, so it reads 15 to 25 % lower. A "peak" horsepower on a label is not a rated
 * one; from amperes, power is nearer volts × amperes than the label.
 */
public final class CompressorGain {

  /** Radiant part of the heat at the machine, 0 to 1. */
  public static final double RADIANT_SHARE = 0.25;

  /** Least published part of the electric input that leaves the machine with the air, 0 to 1. */
  public static final double LEAST_SHARE_WITH_AIR = 0.07;

  /** Most published part of the electric input that leaves the machine with the air, 0 to 1. */
  public static final double MOST_SHARE_WITH_AIR = 0.20;

  private CompressorGain() {}

  /**
   * Mean electric power.
   *
   * @param ratedShaftWatts rated shaft power of its motor, W, 0 to 1e7
   * @param duty part of the time it runs, 0 to 1
   * @return W
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double electricInput(double ratedShaftWatts, double duty) {
    return MotorGain.electricInput(ratedShaftWatts, 1) * Range.check("duty", duty, 0, 1);
  }

  /**
   * Heat to the room where it stands: all of its input.
   *
   * @param ratedShaftWatts rated shaft power of its motor, W, 0 to 1e7
   * @param duty part of the time it runs, 0 to 1
   * @return mean heat
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static HeatGain inRoom(double ratedShaftWatts, double duty) {
    return inRoom(ratedShaftWatts, duty, 0);
  }

  /**
   * Heat to the room where it stands, when a part leaves with the warm air to another room.
   *
   * @param ratedShaftWatts rated shaft power of its motor, W, 0 to 1e7
   * @param duty part of the time it runs, 0 to 1
   * @param shareWithAir part of the input that leaves with the air, 0 to 1; published 0.07 to 0.20
   * @return mean heat
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static HeatGain inRoom(double ratedShaftWatts, double duty, double shareWithAir) {
    Range.check("share that leaves with the air", shareWithAir, 0, 1);
    return HeatGain.dry(electricInput(ratedShaftWatts, duty) * (1 - shareWithAir), RADIANT_SHARE);
  }
}
