package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Outdoor air into a room by leaks and fans together, shared out so that the parts add up to the
 * whole.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals, infiltration chapter, "combining residential
 * infiltration and mechanical ventilation": Q = Q balanced + √(Q leak² + Q unbalanced²). The leaks
 * are charged what they let in with fans off; the fans the rest.
 *
 * <p>Error: the root of squares is within about 10 % of a full pressure balance for even leaks
 * (common practice).
 *
 * @param leakage air that would leak in with fans off, m³/s, 0 or more
 * @param fans air that unbalanced fans bring in on top, m³/s, 0 or more
 * @param balanced air that fans in pairs change, m³/s, 0 or more
 */
public record OutdoorAir(double leakage, double fans, double balanced) {

  private static final double MOST_FLOW = 1e4;

  /** Refuses a part that is negative or not a number. */
  public OutdoorAir {
    Range.check("leakage, m³/s,", leakage, 0, MOST_FLOW);
    Range.check("air by fans, m³/s,", fans, 0, MOST_FLOW);
    Range.check("balanced air, m³/s,", balanced, 0, MOST_FLOW);
  }

  /**
   * Shares of leaks and fans.
   *
   * @param leakFlow air that leaks in with fans off, m³/s, 0 to 1000
   * @param exhaustFlow air blown out by all fans that run, m³/s, 0 to 1000
   * @param supplyFlow air blown in by all fans that run, m³/s, 0 to 1000
   * @return the shares
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static OutdoorAir of(double leakFlow, double exhaustFlow, double supplyFlow) {
    Range.check("exhaust, m³/s,", exhaustFlow, 0, 1000);
    Range.check("supply, m³/s,", supplyFlow, 0, 1000);
    double whole = combined(leakFlow, exhaustFlow - supplyFlow);
    return new OutdoorAir(leakFlow, whole - leakFlow, Math.min(exhaustFlow, supplyFlow));
  }

  /**
   * Leaks and an unbalanced fan together.
   *
   * @param leakFlow air that leaks in with fans off, m³/s, 0 to 1000
   * @param unbalancedFanFlow air blown out less air blown in, either sign, m³/s, -1000 to 1000
   * @return √(leak² + fan²), m³/s; never less than either
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double combined(double leakFlow, double unbalancedFanFlow) {
    Range.check("leak flow, m³/s,", leakFlow, 0, 1000);
    Range.check("unbalanced fan flow, m³/s,", unbalancedFanFlow, -1000, 1000);
    return Math.hypot(leakFlow, unbalancedFanFlow);
  }

  /**
   * All outdoor air.
   *
   * @return m³/s
   */
  public double total() {
    return leakage + fans + balanced;
  }
}
