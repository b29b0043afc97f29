package org.shopclime.gain;

import org.shopclime.quantity.Units;

/**
 * Tools that use compressed air, with what they usually draw while the trigger is held.
 *
 * <p>Source: common practice: standard air ({@link CompressorDuty#STANDARD_DENSITY}) as makers of
 * usual tools tell it.
 */
public enum AirToolFlow {
  /** Cabinet that draws its grit up, jet of 3/32 in: 12 cfm. */
  BLAST_CABINET(12),
  /** Pressure pot, nozzle of 1/8 in: 21 cfm. */
  BLAST_POT(21),
  /** Sander of 6 in: 11 cfm. */
  SANDER(11),
  /** Spray gun of high volume and low pressure: 10 cfm. */
  SPRAY_GUN(10),
  /** Die or angle grinder: 8 cfm. */
  GRINDER(8),
  /** Impact wrench: 5 cfm. */
  IMPACT_WRENCH(5),
  /** Blow gun at no more than 30 psi at its tip: 6 cfm. */
  BLOW_GUN(6),
  /** Inflating: 3 cfm. */
  INFLATING(3);

  private final double flow;

  AirToolFlow(double cfm) {
    this.flow = Units.cubicMetresPerSecondFromCfm(cfm);
  }

  /**
   * What it draws.
   *
   * @return m³/s of standard air
   */
  public double flow() {
    return flow;
  }
}
