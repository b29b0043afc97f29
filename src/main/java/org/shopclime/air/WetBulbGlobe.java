package org.shopclime.air;

import java.util.function.DoubleUnaryOperator;

/**
 * Wet-bulb globe temperature indoors, estimated from air, radiant temperature, humidity and air
 * speed instead of being measured.
 *
 * <p>Source: ISO 7243 for the sum, the heat balance used with it for the natural wet bulb; ISO 7726
 * for the heat balance of the black globe of 150 mm. From memory; the globe gives the worked
 * example of ISO 7726, the wet bulb lies within 0.6 K of the fit of Bernard and Pourmoghani (1999)
 * where walls are as warm as the air ({@code HeatPublishedTest}).
 *
 * <p>Ranges: air -50 to 100 °C, walls -50 to 150 °C, air speed 0.05 to 5 m/s (below that the air's
 * own rise past a warm body is faster), relative humidity 0 to 1, pressure as in {@link MoistAir}.
 * The balance of the wet bulb is fitted near sea level.
 */
public final class WetBulbGlobe {

  /** Still indoor air without a fan, m/s (common practice). */
  public static final double STILL = 0.3;

  /** Slowest air taken, m/s. */
  public static final double SLOWEST = 0.05;

  /** Fastest air taken, m/s. */
  public static final double FASTEST = 5;

  private static final double STEFAN_BOLTZMANN = 5.670374e-8;
  private static final double EMISSIVITY = 0.95;
  private static final double DIAMETER = 0.15;
  private static final double ZERO_CELSIUS = 273.15;
  private static final double COLDEST = -50;
  private static final double HOTTEST = 100;
  private static final double HOTTEST_WALLS = 150;
  private static final double NATURAL_SHARE = 0.7;
  private static final double GLOBE_SHARE = 0.3;
  private static final double SMALL = 1e-9;

  private WetBulbGlobe() {}

  /**
   * Wet-bulb globe temperature without sun.
   *
   * <p>Source: ISO 7243, indoors: 0.7 natural wet bulb + 0.3 globe.
   *
   * @param air air temperature, °C
   * @param radiant mean radiant temperature, °C
   * @param relativeHumidity 0 to 1
   * @param speed air speed at the worker, m/s
   * @return °C; rises with each of the first three
   * @throws IllegalArgumentException if outside the ranges or NaN
   */
  public static double indoors(double air, double radiant, double relativeHumidity, double speed) {
    return NATURAL_SHARE * naturalWetBulb(air, radiant, relativeHumidity, speed)
        + GLOBE_SHARE * globe(air, radiant, speed);
  }

  /**
   * Temperature of a black globe of 150 mm.
   *
   * <p>Source: ISO 7726, globe balance, emissivity 0.95; the greater of free and forced convection.
   *
   * @param air air temperature, °C
   * @param radiant mean radiant temperature, °C
   * @param speed air speed, m/s
   * @return °C, between air and radiant temperature
   * @throws IllegalArgumentException if outside the ranges or NaN
   */
  public static double globe(double air, double radiant, double speed) {
    check(air, radiant, speed);
    double forced = 6.3 * Math.pow(speed, 0.6) / Math.pow(DIAMETER, 0.4);
    return root(
        globe -> {
          double free = 1.4 * Math.pow(Math.abs(globe - air) / DIAMETER, 0.25);
          double convection = Math.max(free, forced);
          return EMISSIVITY * STEFAN_BOLTZMANN * (fourth(globe) - fourth(radiant))
              + convection * (globe - air);
        },
        Math.min(air, radiant),
        Math.max(air, radiant));
  }

  /**
   * Temperature of a wick in the room's own air and radiation, not whirled or fanned.
   *
   * <p>Source: heat balance of the natural wet bulb used with ISO 7243 (Malchaire, Annals of
   * Occupational Hygiene 19, 1976), in which convection, radiation and evaporation stand as 4.18
   * v^0.444, 1e-8 T^4 and 77.1 v^0.421 (kPa). From memory.
   *
   * @param air air temperature, °C
   * @param radiant mean radiant temperature, °C
   * @param relativeHumidity 0 to 1
   * @param speed air speed, m/s
   * @return °C
   * @throws IllegalArgumentException if outside the ranges or NaN
   */
  public static double naturalWetBulb(
      double air, double radiant, double relativeHumidity, double speed) {
    check(air, radiant, speed);
    MoistAir.check("relative humidity", relativeHumidity, 0, 1, "");
    double vapour = relativeHumidity * MoistAir.saturationPressure(air) / 1000;
    double convection = 4.18 * Math.pow(speed, 0.444);
    double evaporation = 77.1 * Math.pow(speed, 0.421);
    return root(
        wick ->
            convection * (wick - air)
                + 1e-8 * (fourth(wick) - fourth(radiant))
                + evaporation * (MoistAir.saturationPressure(wick) / 1000 - vapour),
        MoistAir.COLDEST,
        Math.max(air, radiant));
  }

  private static void check(double air, double radiant, double speed) {
    MoistAir.check("air temperature", air, COLDEST, HOTTEST, "°C");
    MoistAir.check("radiant temperature", radiant, COLDEST, HOTTEST_WALLS, "°C");
    MoistAir.check("air speed", speed, SLOWEST, FASTEST, "m/s");
  }

  private static double fourth(double celsius) {
    double square = (celsius + ZERO_CELSIUS) * (celsius + ZERO_CELSIUS);
    return square * square;
  }

  /** Root of a rising function by halving; all that is asked for here lies between the ends. */
  private static double root(DoubleUnaryOperator rising, double low, double high) {
    double below = low;
    double above = high;
    while (above - below > SMALL) {
      double middle = (below + above) / 2;
      if (rising.applyAsDouble(middle) > 0) {
        above = middle;
      } else {
        below = middle;
      }
    }
    return (below + above) / 2;
  }
}
