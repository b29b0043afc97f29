package org.shopclime.unit;

/**
 * A wet coil under a fan that runs on, in some air of the room: what hangs on it evaporates into
 * the room, at a rate that falls off with the root of what is left, so in a straight line with
 * time.
 *
 * <p>Source: as {@link FanRunsOn}, the model of the source whose evaporation falls off linearly in
 * time; from memory.
 *
 * @param fanPower power of the fan, W, 0 or more
 * @param held water it holds as it begins to drip, kg, 0 or more
 * @param evaporation what evaporates at first of a coil that holds so much, kg/s, 0 or more
 * @param enthalpy heat the air loses for each kilogram that evaporates into it, J/kg
 */
public record WetCoil(double fanPower, double held, double evaporation, double enthalpy) {

  /** A coil that nothing hangs on, without a fan. */
  public static final WetCoil NONE = new WetCoil(0, 0, 0, 0);

  /**
   * What evaporates in a rest that begins as it drips.
   *
   * @param rest s, 0 or more
   * @return kg, up to {@link #held}
   */
  public double evaporated(double rest) {
    double part = way(rest);
    return part < 1 ? held * part * (2 - part) : held;
  }

  /**
   * What is left of some water after a while.
   *
   * @param water kg, 0 to {@link #held}
   * @param seconds s, 0 or more
   * @return kg
   */
  public double left(double water, double seconds) {
    if (held == 0) {
      return 0;
    }
    double root = Math.max(0, Math.sqrt(water / held) - way(seconds));
    return held * root * root;
  }

  /**
   * Rate at which water evaporates at the end of a rest, one run and one rest being like the last.
   *
   * @param rest s, above 0
   * @param evaporated what evaporates in that rest, kg
   * @return kg/s
   */
  public double rateAfter(double rest, double evaporated) {
    double part = way(rest);
    if (part == 0 || held == 0) {
      return 0;
    }
    double root = Math.min(1, (evaporated / held + part * part) / (2 * part));
    return evaporation * Math.max(0, root - part);
  }

  /** Part of the way to a dry coil that a rest is, had it begun to drip; may be above 1. */
  private double way(double rest) {
    return held == 0 ? 0 : evaporation * rest / (2 * held);
  }
}
