package org.shopclime.gain;

import org.shopclime.quantity.Range;

/**
 * Heat given off by lights that hang in the room.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals, nonresidential load chapter: heat = lamp watts × use ×
 * special allowance (for the ballast). Radiant shares: incandescent 0.80 and hung fluorescent 0.67,
 * Fundamentals (2005) ch. 30 Table 16, from memory; LED 0.5, common practice (measured luminaires
 * lie between about 0.4 and 0.6, from memory).
 *
 * <p>Limits: all the power ends as heat in the room; lights recessed into an attic give a part of
 * theirs to the attic, which is not told here.
 */
public final class LightGain {

  private LightGain() {}

  /** Kind of lamp. */
  public enum Lamp {
    /** LED, power marked with its driver. */
    LED(1.0, 0.5),
    /** Incandescent or halogen. */
    INCANDESCENT(1.0, 0.80),
    /** Fluorescent tube with magnetic ballast, power marked on the tube. */
    OLD_FLUORESCENT(1.2, 0.67);

    private final double allowance;
    private final double radiantShare;

    Lamp(double allowance, double radiantShare) {
      this.allowance = allowance;
      this.radiantShare = radiantShare;
    }

    /**
     * Power drawn for each watt marked on the lamp.
     *
     * @return 1 or more
     */
    public double allowance() {
      return allowance;
    }

    /**
     * Radiant part of the heat.
     *
     * @return 0 to 1
     */
    public double radiantShare() {
      return radiantShare;
    }
  }

  /**
   * Lamps that are on.
   *
   * @param lamp kind of lamp
   * @param count how many, a mean over the hour, 0 to 100,000
   * @param wattsEach power marked on each, W, 0 to 100,000
   * @return their heat
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static HeatGain of(Lamp lamp, double count, double wattsEach) {
    Range.check("number of lamps", count, 0, 1e5);
    Range.check("lamp power, W,", wattsEach, 0, 1e5);
    return HeatGain.dry(count * wattsEach * lamp.allowance, lamp.radiantShare);
  }
}
