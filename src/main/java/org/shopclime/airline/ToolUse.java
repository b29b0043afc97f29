package org.shopclime.airline;

import org.shopclime.gain.CompressorDuty;

/**
 * Air that one tool takes in an hour of work.
 *
 * @param flow standard air while it draws, m³/s, 0 to 1
 * @param pressure at the tool, Pa above the air around, 0 to 1.5e6
 * @param minutesPerHour minutes it draws, 0 to 60
 */
public record ToolUse(double flow, double pressure, double minutesPerHour) {

  /** Dry air in a cubic metre of standard air, kg/m³: {@link CompressorDuty#STANDARD_DENSITY}. */
  public static final double STANDARD_DENSITY = CompressorDuty.STANDARD_DENSITY;

  /** Refuses what is outside the ranges above. */
  public ToolUse {
    Check.within("air of a tool, m³/s,", flow, 0, 1);
    Check.within("pressure at a tool, Pa,", pressure, 0, 1.5e6);
    Check.within("minutes in an hour", minutesPerHour, 0, 60);
  }

  /**
   * Dry air while it draws.
   *
   * @return kg/s
   */
  public double drawing() {
    return flow * STANDARD_DENSITY;
  }

  /**
   * Dry air in the mean of the hour.
   *
   * @return kg/s
   */
  public double mean() {
    return drawing() * minutesPerHour / 60;
  }
}
