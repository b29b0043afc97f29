package org.shopclime.airline;

import org.shopclime.gain.AirToolFlow;

/**
 * Tools that use air, with what they usually draw and how long in an hour of that work.
 *
 * <p>Source: common practice: air while the trigger is held, as makers of usual tools tell it, of
 * standard air ({@link ToolUse#STANDARD_DENSITY}); minutes by what a person working alone does. The
 * two blasters are nozzles of 3/32 and 1/8 in ({@link Nozzle}, within 5 %).
 *
 * <p>Error: makers often tell the mean of a quarter of the time on the trigger, so figures on boxes
 * of sanders and grinders can be a third of this.
 */
public enum AirTool {
  /** Cabinet that draws its grit up, jet of 3/32 in: 12 cfm at 80 psi, half of the time. */
  BLAST_CABINET(AirToolFlow.BLAST_CABINET, 80, 30),
  /** Pressure pot, nozzle of 1/8 in: 21 cfm at 80 psi, a third of the time. */
  BLAST_POT(AirToolFlow.BLAST_POT, 80, 20),
  /** Sander of 6 in: 11 cfm at 90 psi, a third of the time. */
  SANDER(AirToolFlow.SANDER, 90, 20),
  /** Spray gun of high volume and low pressure: 10 cfm at 40 psi, a sixth of the time. */
  SPRAY_GUN(AirToolFlow.SPRAY_GUN, 40, 10),
  /** Die or angle grinder: 8 cfm at 90 psi, a sixth of the time. */
  GRINDER(AirToolFlow.GRINDER, 90, 10),
  /** Impact wrench: 5 cfm at 90 psi, four minutes. */
  IMPACT_WRENCH(AirToolFlow.IMPACT_WRENCH, 90, 4),
  /** Blow gun at no more than 30 psi at its tip: 6 cfm, three minutes. */
  BLOW_GUN(AirToolFlow.BLOW_GUN, 30, 3),
  /** Inflating: 3 cfm at 50 psi, three minutes. */
  INFLATING(AirToolFlow.INFLATING, 50, 3);

  private final double flow;
  private final double pressure;
  private final double minutes;

  AirTool(AirToolFlow air, double psi, double minutesPerHour) {
    this.flow = air.flow();
    this.pressure = psi * Trade.PSI;
    this.minutes = minutesPerHour;
  }

  /**
   * The tool as it is usually used.
   *
   * @return its use
   */
  public ToolUse usual() {
    return usedFor(minutes);
  }

  /**
   * The tool, used for longer or shorter.
   *
   * @param minutesPerHour minutes with the trigger held, 0 to 60
   * @return its use
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public ToolUse usedFor(double minutesPerHour) {
    return new ToolUse(flow, pressure, minutesPerHour);
  }
}
