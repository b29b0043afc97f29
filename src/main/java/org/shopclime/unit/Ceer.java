package org.shopclime.unit;

import org.shopclime.quantity.Units;

/**
 * The efficiency on the label of a room air conditioner: cooling over power with the standby of a
 * year added (combined energy efficiency ratio), here in W/W.
 *
 * <p>Source: 10 CFR 430 subpart B appendix F, as before the variable-speed amendment; equation from
 * memory. 1 W/W is 3.412 BTU/Wh.
 */
public final class Ceer {

  /** Hours a year the compressor is counted to run. */
  public static final double RUNNING_HOURS = 750;

  /** Hours a year counted as standby or off. */
  public static final double STANDBY_HOURS = 5115;

  /** Standby power assumed where none is known, W; common practice for units with a remote. */
  public static final double USUAL_STANDBY = 1;

  private Ceer() {}

  /**
   * The label figure of a unit.
   *
   * @param capacity rated total capacity, W, above 0
   * @param power rated power while running, W, above 0
   * @param standby power in standby, W, 0 or more
   * @return W/W; at most capacity over power
   * @throws IllegalArgumentException if an argument is outside its range or NaN
   */
  public static double of(double capacity, double power, double standby) {
    requirePositive("capacity", capacity);
    requirePositive("power", power);
    if (!(standby >= 0 && standby < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("standby " + standby + " W is not 0 or more");
    }
    return capacity * RUNNING_HOURS / (RUNNING_HOURS * power + STANDBY_HOURS * standby);
  }

  /**
   * Power while running of a unit with this label: {@link #of} solved for it.
   *
   * @param capacity rated total capacity, W, above 0
   * @param ceer label figure, W/W, above 0
   * @param standby power in standby, W, 0 or more
   * @return W, above 0
   * @throws IllegalArgumentException if an argument is outside its range or NaN, or standby alone
   *     would use more than the label allows
   */
  public static double power(double capacity, double ceer, double standby) {
    requirePositive("capacity", capacity);
    requirePositive("CEER", ceer);
    double power = capacity / ceer - STANDBY_HOURS / RUNNING_HOURS * standby;
    if (!(standby >= 0 && power > 0)) {
      throw new IllegalArgumentException(
          "standby " + standby + " W is not 0 or more, or leaves no power at CEER " + ceer);
    }
    return power;
  }

  /**
   * Least label figure allowed to be made for the United States from 2014: louvred sides, no
   * reverse cycle.
   *
   * <p>Source: 10 CFR 430.32(b); from memory: 11.0 BTU/Wh below 8,000 BTU/h, 10.9 to 13,999, 10.7
   * to 19,999, 9.4 to 27,999, 9.0 above. Replaced by higher figures for units made later.
   *
   * @param capacity rated total capacity, W, above 0; classed to the whole BTU/h
   * @return W/W
   * @throws IllegalArgumentException if not above 0, infinite or NaN
   */
  public static double leastFrom2014(double capacity) {
    requirePositive("capacity", capacity);
    double btuh = Math.rint(Units.btuh(capacity));
    double least;
    if (btuh < 8000) {
      least = 11.0;
    } else if (btuh < 14000) {
      least = 10.9;
    } else if (btuh < 20000) {
      least = 10.7;
    } else if (btuh < 28000) {
      least = 9.4;
    } else {
      least = 9.0;
    }
    return Units.wattsPerWattFromEer(least);
  }

  private static void requirePositive(String what, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " " + value + " is not above 0");
    }
  }
}
