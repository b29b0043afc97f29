package org.shopclime.envelope;

/**
 * Surface films: the thin layer of air, and the radiation, between a face and what surrounds it.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals, surface film table (emittance 0.9; still air inside;
 * wind of 15 mph in winter and 7.5 mph in summer outside); ISO 6946:2017, Table 7. Error: the real
 * film inside follows the draughts of the room and may be half or twice the convective part.
 */
public final class Films {

  /** Emittance for which the printed films hold. */
  public static final double PRINTED_EMITTANCE = 0.9;

  /** Stefan-Boltzmann constant, W/(m²·K⁴), CODATA 2018. */
  public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  /** 0 °C, K. */
  public static final double KELVIN = 273.15;

  /** Mean temperature at which the printed inside films are split, °C. */
  private static final double INSIDE_MEAN = 20;

  private Films() {}

  /**
   * Resistance of the still film inside, convection and radiation together, for a level or upright
   * face of emittance 0.9.
   *
   * <p>Source: as the class.
   *
   * @param flow which way heat passes
   * @return m²·K/W
   */
  public static double interiorResistance(HeatFlow flow) {
    return InchPound.R
        * switch (flow) {
          case HORIZONTAL -> 0.68;
          case UP -> 0.61;
          case DOWN -> 0.92;
        };
  }

  /**
   * Which way heat passes through a face in that season.
   *
   * @param tilt slope of the outer side, degrees: 0 looks up (roof), 90 upright, 180 looks down
   *     (floor)
   * @param season in the cooling season heat comes in, in the heating season it goes out
   * @return the direction
   * @throws IllegalArgumentException if the tilt is outside 0 to 180
   */
  public static HeatFlow flow(double tilt, Season season) {
    Range.require("tilt, degrees,", tilt, 0, 180);
    if (tilt == 90) {
      return HeatFlow.HORIZONTAL;
    }
    return (tilt < 90) == (season == Season.COOLING) ? HeatFlow.DOWN : HeatFlow.UP;
  }

  /**
   * Resistance of the still film inside of a face of any slope and emittance 0.9.
   *
   * <p>Source: as the class, where slopes of 45 degrees read R-0.62 (upwards) and
   * (downwards); between the printed slopes the coefficient runs straight with the angle.
   *
   * @param tilt slope of the outer side, degrees: 0 looks up (roof), 90 upright, 180 looks down
   * @param season season, which decides the direction of heat
   * @return m²·K/W
   * @throws IllegalArgumentException if the tilt is outside 0 to 180
   */
  public static double interiorResistance(double tilt, Season season) {
    HeatFlow flow = flow(tilt, season);
    double upright = 1 / interiorResistance(HeatFlow.HORIZONTAL);
    if (flow == HeatFlow.HORIZONTAL) {
      return 1 / upright;
    }
    double level = 1 / interiorResistance(flow);
    double half = 1 / (InchPound.R * (flow == HeatFlow.UP ? 0.62 : 0.76));
    double fromLevel = Math.min(tilt, 180 - tilt);
    double coefficient =
        fromLevel <= 45
            ? level + (half - level) * fromLevel / 45
            : half + (upright - half) * (fromLevel - 45) / 45;
    return 1 / coefficient;
  }

  /**
   * Convective part of the film inside: the printed film without the radiation that it counts
   * (emittance 0.9 at 20 °C, 5.14 W/(m²·K)).
   *
   * @param tilt slope of the outer side, degrees: 0 looks up (roof), 90 upright, 180 looks down
   * @param season season, which decides the direction of heat
   * @return W/(m²·K), 1.0 to 4.2
   * @throws IllegalArgumentException if the tilt is outside 0 to 180
   */
  public static double interiorConvective(double tilt, Season season) {
    return 1 / interiorResistance(tilt, season) - radiative(PRINTED_EMITTANCE, INSIDE_MEAN);
  }

  /**
   * Convective part of the film inside of a level or upright face, as {@link
   * #interiorConvective(double, Season)}.
   *
   * @param flow which way heat passes
   * @return W/(m²·K): 3.2 upright, 4.2 upwards, 1.0 downwards
   */
  public static double interiorConvective(HeatFlow flow) {
    return 1 / interiorResistance(flow) - radiative(PRINTED_EMITTANCE, INSIDE_MEAN);
  }

  /**
   * Resistance of the film outside, convection and radiation together, emittance 0.9.
   *
   * <p>Source: as the class: at 15 mph (heating season), R-0.25 at 7.5 mph (cooling season).
   *
   * @param season season
   * @return m²·K/W
   */
  public static double exteriorResistance(Season season) {
    return InchPound.R * (season == Season.HEATING ? 0.17 : 0.25);
  }

  /**
   * Convective part of the film outside: the printed film without the radiation that it counts
   * (emittance 0.9 at a mean of 0 °C in the heating season, 30 °C in the cooling season; the print
   * does not say, and 10 °C more or less is 0.5 W/(m²·K)).
   *
   * @param season season
   * @return W/(m²·K): 17.0 in the cooling season, 29.2 in the heating season
   */
  public static double exteriorConvective(Season season) {
    double mean = season == Season.HEATING ? 0 : 30;
    return 1 / exteriorResistance(season) - radiative(PRINTED_EMITTANCE, mean);
  }

  /**
   * Radiative coefficient of a face towards surroundings near its own temperature, 4 ε σ T³.
   *
   * <p>Error: the exact (T₁² + T₂²)(T₁ + T₂) is larger by (ΔT / 2T)², 0.03 % at 10 K apart.
   *
   * @param emittance emittance, or for two faces their combined emittance, 0 to 1
   * @param meanCelsius mean of both temperatures, °C, -100 to 200
   * @return W/(m²·K)
   * @throws IllegalArgumentException if either is outside its range
   */
  public static double radiative(double emittance, double meanCelsius) {
    Range.require("emittance", emittance, 0, 1);
    Range.require("mean temperature, °C,", meanCelsius, -100, 200);
    double kelvin = meanCelsius + KELVIN;
    return 4 * emittance * STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
  }

  /**
   * What a face gives off, ε σ T⁴.
   *
   * @param emittance emittance, 0 to 1
   * @param celsius its temperature, °C, -150 to 300
   * @return W/m²
   * @throws IllegalArgumentException if either is outside its range
   */
  public static double radiated(double emittance, double celsius) {
    Range.require("emittance", emittance, 0, 1);
    Range.require("temperature, °C,", celsius, -150, 300);
    double kelvin = celsius + KELVIN;
    return emittance * STEFAN_BOLTZMANN * kelvin * kelvin * kelvin * kelvin;
  }

  /**
   * Surface resistance inside by ISO 6946:2017, Table 7.
   *
   * @param flow which way heat passes
   * @return m²·K/W
   */
  public static double isoInteriorResistance(HeatFlow flow) {
    return switch (flow) {
      case UP -> 0.10;
      case HORIZONTAL -> 0.13;
      case DOWN -> 0.17;
    };
  }

  /**
   * Surface resistance outside by ISO 6946:2017, Table 7.
   *
   * @return m²·K/W
   */
  public static double isoExteriorResistance() {
    return 0.04;
  }
}
