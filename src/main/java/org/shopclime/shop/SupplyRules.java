package org.shopclime.shop;

/**
 * The few rules of the National Electrical Code that tell an owner to call an electrician. They
 * warn; they size nothing.
 *
 * <p>Source: NEC (NFPA 70) 440.62, 440.64, 240.4(D), 210.20(A) and table 430.248; each method names
 * its part. Section numbers and the table from memory.
 */
public final class SupplyRules {

  /** Greatest current of a room unit on cord and plug, A (440.62(A)). */
  public static final double MOST_AMPS = 40;

  /** Greatest voltage of a room unit on cord and plug, V (440.62(A)). */
  public static final double MOST_VOLTS = 250;

  private static final double ALONE = 0.8;
  private static final double SHARED = 0.5;
  private static final double CONTINUOUS = 1.25;
  private static final double NEAR_120 = 130;
  private static final double[] BREAKERS = {15, 20, 30, 40, 50, 60};

  /** Single-phase motors of table 430.248: horsepower, then amps at 230 V. */
  private static final double[][] MOTORS = {
    {0, 0},
    {1.0 / 6, 2.2},
    {0.25, 2.9},
    {1.0 / 3, 3.6},
    {0.5, 4.9},
    {0.75, 6.9},
    {1, 8},
    {1.5, 10},
    {2, 12},
    {3, 17},
    {5, 28},
    {7.5, 40},
    {10, 50}
  };

  private SupplyRules() {}

  /**
   * Greatest current of a room unit on cord and plug.
   *
   * <p>Source: NEC 440.62(B) and (C): 80 % of the circuit alone on it, 50 % beside lights or other
   * things.
   *
   * @param breaker rating of the circuit, A, above 0
   * @param shared whether anything else hangs on it
   * @return A
   * @throws IllegalArgumentException if the rating is not above 0
   */
  public static double unitLimit(double breaker, boolean shared) {
    above("breaker", breaker, "A");
    return (shared ? SHARED : ALONE) * breaker;
  }

  /**
   * Greatest breaker on a copper wire of a small circuit.
   *
   * <p>Source: NEC 240.4(D).
   *
   * @param wire 14, 12 or 10 AWG
   * @return A
   * @throws IllegalArgumentException if the wire is another or not known
   */
  public static double breakerLimit(Supply.Wire wire) {
    return switch (wire) {
      case AWG_14 -> 15;
      case AWG_12 -> 20;
      case AWG_10 -> 30;
      case UNKNOWN, OTHER ->
          throw new IllegalArgumentException(
              "wire " + wire + " has no limit here; 14, 12 and 10 AWG copper have");
    };
  }

  /**
   * Smallest usual circuit for a current that flows for three hours and more.
   *
   * <p>Source: NEC 210.20(A), 125 % of the continuous load; 440.62(B) says the same of a room unit
   * alone.
   *
   * @param amps continuous current, A, above 0
   * @return 15, 20, 30, 40, 50 or 60 A; infinite beyond
   * @throws IllegalArgumentException if the current is not above 0
   */
  public static double continuousCircuit(double amps) {
    above("current", amps, "A");
    for (double breaker : BREAKERS) {
      // 1.25 times 0.8 of a rating may miss it by a rounding.
      if (CONTINUOUS * amps <= breaker * (1 + 1e-12)) {
        return breaker;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Longest cord of a room unit.
   *
   * <p>Source: NEC 440.64: 10 ft at 120 V nominal, 6 ft at 208 and 240 V.
   *
   * @param volts voltage, V, above 0
   * @return ft
   * @throws IllegalArgumentException if the voltage is not above 0
   */
  public static double longestCordFeet(double volts) {
    above("voltage", volts, "V");
    return volts <= NEAR_120 ? 10 : 6;
  }

  /**
   * Full-load current of a single-phase motor at 230 V.
   *
   * <p>Source: NEC table 430.248, from memory; straight lines between its rows, 5 A for each
   * horsepower beyond 10 hp.
   *
   * @param horsepower rated shaft power, hp, 0 or more
   * @return A
   * @throws IllegalArgumentException if negative or NaN
   */
  public static double motorAmps(double horsepower) {
    if (!(horsepower >= 0)) {
      throw new IllegalArgumentException("horsepower " + horsepower + " is not 0 or more");
    }
    for (int i = 1; i < MOTORS.length; i++) {
      if (horsepower <= MOTORS[i][0]) {
        double part = (horsepower - MOTORS[i - 1][0]) / (MOTORS[i][0] - MOTORS[i - 1][0]);
        return MOTORS[i - 1][1] + part * (MOTORS[i][1] - MOTORS[i - 1][1]);
      }
    }
    return 5 * horsepower;
  }

  private static void above(String name, double value, String unit) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " " + value + " " + unit + " is not above 0");
    }
  }
}
