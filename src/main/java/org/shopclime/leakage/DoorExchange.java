package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Air that changes places through an open door because it is warmer on one side: light air out (or
 * in) at the top, dense air at the foot.
 *
 * <p>Source: Gosney and Olama (1975), as in ASHRAE Handbook - Refrigeration, infiltration by air
 * exchange: V = 0.221 A √(1 - ρ light / ρ dense) √(g H) Fm; times 0.68, the measured correction of
 * Pham and Oliver (1983). Chosen over Kiel and Wilson ({@link #kielWilson}) because it takes
 * densities, so that damp air counts, and because equation and correction were both seen in print;
 * at 95 °F against 75 °F the two agree within 2 %.
 *
 * <p>Error: published formulas without the correction lie up to half as high again.
 *
 * <p>Limits: one door, steady flow, still air; {@link #windFlow} tells what wind does through the
 * same door. Two doors open at once are a cross draught: {@link VentStack#windFlow}. While air and
 * door are at rest for long the room fills with outdoor air and the flow ends by itself, as the
 * densities meet. A car or a person in the doorway is left out.
 */
public final class DoorExchange {

  /** Measured flow over theoretical flow: Pham and Oliver (1983). */
  public static final double MEASURED_CORRECTION = 0.68;

  private static final double GRAVITY = 9.80665;
  private static final double GOSNEY_OLAMA = 0.221;
  private static final double KELVIN = 273.15;
  private static final double SINGLE_SIDED_WIND = 0.025;

  private DoorExchange() {}

  /**
   * What hangs in the open doorway. Both were measured on air that temperature moves; nothing
   * measured is known of air that wind moves, which parts strips and bends a jet, so that is taken
   * to pass as through an open door.
   */
  public enum Protection {
    /** Nothing. */
    NONE(0),
    /**
     * Plastic strips, whole and hanging closed: stops 93 % (Pham and Oliver 1983). Worn or parted
     * ones much less.
     */
    STRIP_CURTAIN(0.93),
    /**
     * A fan that blows down across the doorway, well set: stops 75 % (same; others measured 50 to
     * 80 %).
     */
    AIR_CURTAIN(0.75);

    private final double stopped;

    Protection(double stopped) {
      this.stopped = stopped;
    }

    /**
     * Part of the flow that it stops.
     *
     * @return 0 to 1
     */
    public double stopped() {
      return stopped;
    }

    /**
     * What goes through of a flow that temperature moves.
     *
     * @param flow without protection, any unit
     * @return the same unit
     */
    public double left(double flow) {
      return (1 - stopped) * flow;
    }
  }

  /**
   * Air that goes each way while the door is open: the corrected formula.
   *
   * @param width of the opening, m, 0.1 to 30
   * @param height of the opening, m, 0.1 to 30
   * @param outdoorDensity of the air outdoors, kg/m³, 0.4 to 2
   * @param indoorDensity of the air indoors, kg/m³, 0.4 to 2
   * @return volume of the denser air, m³/s; times its density it is the mass that goes each way
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double flow(
      double width, double height, double outdoorDensity, double indoorDensity) {
    return MEASURED_CORRECTION * gosneyOlama(width, height, outdoorDensity, indoorDensity);
  }

  /**
   * Theoretical flow of Gosney and Olama, without the correction.
   *
   * @param width of the opening, m, 0.1 to 30
   * @param height of the opening, m, 0.1 to 30
   * @param outdoorDensity of the air outdoors, kg/m³, 0.4 to 2
   * @param indoorDensity of the air indoors, kg/m³, 0.4 to 2
   * @return volume of the denser air each way, m³/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double gosneyOlama(
      double width, double height, double outdoorDensity, double indoorDensity) {
    double area = area(width, height);
    Range.check("outdoor density, kg/m³,", outdoorDensity, 0.4, 2);
    Range.check("indoor density, kg/m³,", indoorDensity, 0.4, 2);
    double light = Math.min(outdoorDensity, indoorDensity);
    double dense = Math.max(outdoorDensity, indoorDensity);
    return GOSNEY_OLAMA
        * area
        * Math.sqrt(1 - light / dense)
        * Math.sqrt(GRAVITY * height)
        * densityFactor(light, dense);
  }

  /**
   * Flow of Kiel and Wilson (1989), ASHRAE Transactions 95(2), from memory: V = (K / 3) A √(g H ΔT
   * / Tm), K = 0.40 + 0.0045 ΔT.
   *
   * @param width of the opening, m, 0.1 to 30
   * @param height of the opening, m, 0.1 to 30
   * @param outdoorCelsius air outdoors, °C, -60 to 60
   * @param indoorCelsius air indoors, °C, -60 to 60
   * @return volume each way, m³/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double kielWilson(
      double width, double height, double outdoorCelsius, double indoorCelsius) {
    double area = area(width, height);
    Range.check("outdoor temperature, °C,", outdoorCelsius, -60, 60);
    Range.check("indoor temperature, °C,", indoorCelsius, -60, 60);
    double difference = Math.abs(outdoorCelsius - indoorCelsius);
    double mean = (outdoorCelsius + indoorCelsius) / 2 + KELVIN;
    double coefficient = 0.40 + 0.0045 * difference;
    return coefficient / 3 * area * Math.sqrt(GRAVITY * height * difference / mean);
  }

  /**
   * Air that wind drives in and out of one door, all else shut: 0.025 A U. Of this and {@link
   * #flow} the larger counts.
   *
   * <p>Source: Warren (1978), as in BS 5925, single-sided ventilation, from memory.
   *
   * @param width of the opening, m, 0.1 to 30
   * @param height of the opening, m, 0.1 to 30
   * @param wind speed at the height of the building, m/s, 0 to 100
   * @return volume each way, m³/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double windFlow(double width, double height, double wind) {
    return SINGLE_SIDED_WIND * area(width, height) * Range.check("wind, m/s,", wind, 0, 100);
  }

  /**
   * Part of an hour that a door is open.
   *
   * @param secondsPerHour seconds open in the hour, 0 to 3600
   * @return 0 to 1
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double openFraction(double secondsPerHour) {
    return Range.check("seconds open in an hour", secondsPerHour, 0, 3600) / 3600;
  }

  /** Fm = [2 / (1 + (dense / light)^(1/3))]^1.5. */
  static double densityFactor(double light, double dense) {
    double factor = 2 / (1 + Math.cbrt(dense / light));
    return factor * Math.sqrt(factor);
  }

  private static double area(double width, double height) {
    return Range.check("door width, m,", width, 0.1, 30)
        * Range.check("door height, m,", height, 0.1, 30);
  }
}
