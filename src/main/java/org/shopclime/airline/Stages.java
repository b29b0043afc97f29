package org.shopclime.airline;

import org.shopclime.gain.CompressorDuty;

/**
 * How often a piston machine compresses its air.
 *
 * <p>Source: air delivered for each horsepower, pressure, tank and the duty a machine is made for
 * are those of usual small air-cooled piston machines: common practice. Two stages at 100 to 175
 * psi deliver 3.2 to 3.8 cfm for each horsepower ({@code CompressorPublishedTest}).
 */
public enum Stages {
  /** One cylinder stage: 3 cfm for each horsepower at about 115 psi. */
  SINGLE(1, CompressorDuty.SINGLE_STAGE_AIR, 115, 12, 0.6),
  /** Two stages with a cooler between: 3.5 cfm for each horsepower at about 150 psi. */
  TWO(2, CompressorDuty.TWO_STAGE_AIR, 150, 16, 0.75);

  private final int count;
  private final double airPerShaftWatt;
  private final double tankPressure;
  private final double tankPerShaftWatt;
  private final double mostDuty;

  Stages(int count, double airPerShaftWatt, double psi, double gallonsPerHorsepower, double most) {
    this.count = count;
    this.airPerShaftWatt = airPerShaftWatt;
    this.tankPressure = psi * Trade.PSI;
    this.tankPerShaftWatt = gallonsPerHorsepower * Trade.GALLON / Trade.HORSEPOWER;
    this.mostDuty = most;
  }

  /**
   * How many.
   *
   * @return 1 or 2
   */
  public int count() {
    return count;
  }

  /**
   * Free air that a usual machine delivers.
   *
   * @return m³/s of air as it is drawn in, for each W of rated shaft power
   */
  public double airPerShaftWatt() {
    return airPerShaftWatt;
  }

  /**
   * Usual mean pressure in the tank between cut-in and cut-out.
   *
   * @return Pa above the air around
   */
  public double tankPressure() {
    return tankPressure;
  }

  /**
   * Usual tank.
   *
   * @return m³ for each W of rated shaft power
   */
  public double tankPerShaftWatt() {
    return tankPerShaftWatt;
  }

  /**
   * Part of an hour that a usual air-cooled piston machine is made to run; its plate may say more.
   *
   * @return 0 to 1
   */
  public double mostDuty() {
    return mostDuty;
  }
}
