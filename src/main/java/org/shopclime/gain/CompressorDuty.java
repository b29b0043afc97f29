package org.shopclime.gain;

import org.shopclime.air.AirState;
import org.shopclime.quantity.Range;
import org.shopclime.quantity.Units;

/**
 * How long a compressor runs for the air that its tools draw.
 *
 * <p>It draws in a fixed volume for each turn, so what it delivers follows the density of the air
 * drawn in: running time = tools' dry air / (free air x density), by the balance of air.
 */
public final class CompressorDuty {

  /**
   * Dry air in a cubic metre of the standard air in which tools are rated, kg/m³ (0.075 lb/ft³).
   *
   * <p>Source: common practice of the trade in inch-pound units; standards of 14.5 psia or 1 bar at
   * 68 °F read 1.1 to 1.3 % less.
   */
  public static final double STANDARD_DENSITY =
      0.075 * 0.45359237 / Units.CUBIC_METRES_PER_CUBIC_FOOT;

  /** Free air of a usual machine of one stage, m³/s for each W of shaft power: 3 cfm a hp. */
  public static final double SINGLE_STAGE_AIR = perShaftWatt(3.0);

  /** Free air of a usual machine of two stages, m³/s for each W of shaft power: 3.5 cfm a hp. */
  public static final double TWO_STAGE_AIR = perShaftWatt(3.5);

  /** Shaft power from which a machine usually has two stages, W: 5 hp, common practice. */
  public static final double TWO_STAGES_FROM = 4.999 * Units.WATTS_PER_HORSEPOWER;

  private CompressorDuty() {}

  private static double perShaftWatt(double cfmPerHorsepower) {
    return Units.cubicMetresPerSecondFromCfm(cfmPerHorsepower) / Units.WATTS_PER_HORSEPOWER;
  }

  /**
   * Part of the time it would have to run.
   *
   * @param standardAir what tools draw in the mean, m³/s of standard air, 0 to 10
   * @param freeAir what it draws in while it runs, m³/s, 1e-5 to 1
   * @param intake air drawn in
   * @return 0 or more; above 1 it cannot keep up
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double asked(double standardAir, double freeAir, AirState intake) {
    Range.check("air of tools, m³/s,", standardAir, 0, 10);
    Range.check("free air, m³/s,", freeAir, 1e-5, 1);
    return standardAir * STANDARD_DENSITY / (freeAir * intake.dryAirDensity());
  }
}
