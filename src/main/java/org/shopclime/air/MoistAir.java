package org.shopclime.air;

/**
 * The relations between the properties of moist air.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2017, SI), ch. 1, ideal-gas relations; each method
 * names its equation. Temperatures in °C, pressures in Pa, humidity ratios in kg of water per kg of
 * dry air, enthalpies in J per kg of dry air counted from dry air and liquid water at 0 °C.
 *
 * <p>Error: the ideal-gas humidity ratio at saturation reads 0.4 to 0.7 % below the handbook's
 * real-gas tables ({@code MoistAirPublishedTest}).
 *
 * <p>Ranges unless told otherwise: temperature -100 to 200 °C, humidity ratio 0 to 10 kg/kg,
 * pressure 1 kPa to 10 MPa. Air wetter than saturation (fog, or a step of a calculation on its way)
 * is taken; its relative humidity is above 1 and its dew point and wet bulb lie above its dry bulb.
 */
public final class MoistAir {

  /** Pressure of the standard atmosphere at sea level, Pa. */
  public static final double STANDARD_PRESSURE = 101_325;

  /** Gas constant of dry air, J/(kg·K), eq. 1. */
  public static final double GAS_CONSTANT_DRY_AIR = 287.042;

  /** Mass of a mole of water over that of dry air, kg/kg, eq. 20. */
  public static final double MASS_RATIO = 0.621945;

  /** Specific heat of dry air, J/(kg·K), eq. 28. */
  public static final double SPECIFIC_HEAT_DRY_AIR = 1006;

  /** Specific heat of water vapour, J/(kg·K), eq. 29. */
  public static final double SPECIFIC_HEAT_VAPOUR = 1860;

  /** Specific heat of liquid water, J/(kg·K), eq. 33. */
  public static final double SPECIFIC_HEAT_WATER = 4186;

  /** Heat that evaporates water at 0 °C, J/kg, eq. 29. */
  public static final double LATENT_HEAT = 2_501_000;

  /** Lowest temperature taken, °C. */
  public static final double COLDEST = -100;

  /** Highest temperature taken, °C. */
  public static final double HOTTEST = 200;

  private static final double LEAST_VAPOUR = SaturationCurve.ICE.pressure(COLDEST);
  private static final double MOST_VAPOUR = SaturationCurve.WATER.pressure(HOTTEST);
  private static final double TRIPLE_POINT_WATER = Phase.WATER.pressure(Phase.TRIPLE_POINT);
  private static final double TRIPLE_POINT_ICE = Phase.ICE.pressure(Phase.TRIPLE_POINT);

  private MoistAir() {}

  /**
   * Pressure of the standard atmosphere at an altitude.
   *
   * <p>Source: eq. 3. Error: within 0.02 % of the U.S. Standard Atmosphere (1976); weather moves
   * the true pressure by 3 %.
   *
   * @param altitude height above sea level, m, -5000 to 11000
   * @return pressure, Pa; falls with altitude
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double standardPressure(double altitude) {
    check("altitude", altitude, -5000, 11_000, "m");
    return STANDARD_PRESSURE * Math.pow(1 - 2.25577e-5 * altitude, 5.2559); // eq. 3
  }

  /**
   * Pressure at which water vapour is in balance with liquid water or, at and below the triple
   * point (0.01 °C), with ice. The small rise caused by the air above it (about 0.4 %) is left out.
   *
   * <p>Source: Hyland and Wexler (1983), eq. 5 (ice) and 6 (water). The handbook splits the two at
   * 0 °C, where they differ by 0.06 Pa; we split at the triple point, where they meet within 4e-6
   * Pa, so that {@link #dewPoint} has no jump to fall into.
   *
   * <p>Error: within 0.05 % of IAPWS-IF97 from 0.01 to 40 °C, within 0.05 % of IAPWS R14-08 over
   * ice at -43 °C ({@code SaturatedVapourPublishedTest}).
   *
   * @param celsius temperature of the water or ice surface, °C, -100 to 200
   * @return pressure, Pa; rises strictly with temperature
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double saturationPressure(double celsius) {
    check("temperature", celsius, COLDEST, HOTTEST, "°C");
    return SaturationCurve.at(celsius).pressure(celsius);
  }

  /**
   * Water that air holds when saturated.
   *
   * <p>Source: eq. 21, without its enhancement factor.
   *
   * @param celsius temperature, °C
   * @param pressure total pressure, Pa
   * @return humidity ratio, kg/kg
   * @throws IllegalArgumentException if out of range, or where water boils
   */
  public static double saturationHumidityRatio(double celsius, double pressure) {
    return humidityRatio(saturationPressure(celsius), pressure);
  }

  /**
   * Humidity ratio from the partial pressure of the vapour.
   *
   * <p>Source: eq. 20.
   *
   * @param vapourPressure partial pressure of the vapour, Pa, 0 or more and below the total
   * @param pressure total pressure, Pa
   * @return humidity ratio, kg/kg
   * @throws IllegalArgumentException if out of range
   */
  public static double humidityRatio(double vapourPressure, double pressure) {
    checkPressure(pressure);
    if (!(vapourPressure >= 0 && vapourPressure < pressure)) {
      throw new IllegalArgumentException(
          "vapour pressure "
              + vapourPressure
              + " Pa is not within 0 and below the total of "
              + pressure
              + " Pa");
    }
    return MASS_RATIO * vapourPressure / (pressure - vapourPressure); // eq. 20
  }

  /**
   * Partial pressure of the vapour from the humidity ratio.
   *
   * <p>Source: eq. 20, inverted.
   *
   * @param humidityRatio kg/kg
   * @param pressure total pressure, Pa
   * @return partial pressure of the vapour, Pa
   * @throws IllegalArgumentException if out of range
   */
  public static double vapourPressure(double humidityRatio, double pressure) {
    checkHumidityRatio(humidityRatio);
    checkPressure(pressure);
    return pressure * humidityRatio / (MASS_RATIO + humidityRatio);
  }

  /**
   * Humidity ratio from dry bulb and relative humidity.
   *
   * <p>Source: eq. 12 and 20.
   *
   * @param dryBulb °C
   * @param relativeHumidity vapour pressure over that at saturation, 0 to 1
   * @param pressure total pressure, Pa
   * @return humidity ratio, kg/kg
   * @throws IllegalArgumentException if out of range
   */
  public static double humidityRatioFromRelativeHumidity(
      double dryBulb, double relativeHumidity, double pressure) {
    check("relative humidity", relativeHumidity, 0, 1, "");
    return humidityRatio(relativeHumidity * saturationPressure(dryBulb), pressure);
  }

  /**
   * Humidity ratio from dry bulb and thermodynamic wet bulb; below 0 °C the bulb is of ice.
   *
   * <p>Source: eq. 33 (water), eq. 35 (ice).
   *
   * @param dryBulb °C
   * @param wetBulb °C, at most the dry bulb
   * @param pressure total pressure, Pa
   * @return humidity ratio, kg/kg
   * @throws IllegalArgumentException if out of range, or if no air is dry enough for so low a bulb
   */
  public static double humidityRatioFromWetBulb(double dryBulb, double wetBulb, double pressure) {
    checkTemperature("dry bulb", dryBulb);
    check("wet bulb", wetBulb, COLDEST, dryBulb, "°C");
    double ratio =
        WetBulb.humidityRatio(dryBulb, wetBulb, saturationHumidityRatio(wetBulb, pressure));
    if (!(ratio >= 0)) {
      throw new IllegalArgumentException(
          "wet bulb "
              + wetBulb
              + " °C is below that of dry air at "
              + dryBulb
              + " °C and "
              + pressure
              + " Pa");
    }
    return ratio;
  }

  /**
   * Humidity ratio from the dew point, or frost point at and below 0.01 °C.
   *
   * @param dewPoint °C
   * @param pressure total pressure, Pa
   * @return humidity ratio, kg/kg
   * @throws IllegalArgumentException if out of range, or where water boils
   */
  public static double humidityRatioFromDewPoint(double dewPoint, double pressure) {
    return saturationHumidityRatio(dewPoint, pressure);
  }

  /**
   * Vapour pressure over that at saturation.
   *
   * <p>Source: eq. 12.
   *
   * @param dryBulb °C
   * @param humidityRatio kg/kg
   * @param pressure total pressure, Pa
   * @return relative humidity, 1; above 1 in fog
   * @throws IllegalArgumentException if out of range
   */
  public static double relativeHumidity(double dryBulb, double humidityRatio, double pressure) {
    return vapourPressure(humidityRatio, pressure) / saturationPressure(dryBulb); // eq. 12
  }

  /**
   * Temperature of a surface on which dew, or at and below 0.01 °C frost, begins to form.
   *
   * <p>Source: {@link #saturationPressure} inverted, to better than 1e-9 K; the handbook's fitted
   * eq. 37 and 38 are not used.
   *
   * @param humidityRatio kg/kg, above 0
   * @param pressure total pressure, Pa
   * @return dew point, °C, -100 to 200
   * @throws IllegalArgumentException if out of range, or if the dew point would be: air without any
   *     water has none
   */
  public static double dewPoint(double humidityRatio, double pressure) {
    double vapour = vapourPressure(humidityRatio, pressure);
    check("vapour pressure", vapour, LEAST_VAPOUR, MOST_VAPOUR, "Pa");
    if (vapour >= TRIPLE_POINT_WATER) {
      return SaturationCurve.WATER.temperature(vapour);
    }
    return vapour <= TRIPLE_POINT_ICE
        ? SaturationCurve.ICE.temperature(vapour)
        : Phase.TRIPLE_POINT;
  }

  /**
   * Thermodynamic wet bulb. Just below freezing a bulb of ice and a slightly warmer bulb of water
   * can both be in balance with the same air; the water is taken, as a wick is liquid before it
   * freezes.
   *
   * <p>Source: eq. 33 (water), eq. 35 (ice, below 0 °C), solved by Householder's method to better
   * than 1e-9 K.
   *
   * @param dryBulb °C
   * @param humidityRatio kg/kg
   * @param pressure total pressure, Pa
   * @return wet bulb, °C; at most the dry bulb unless there is fog
   * @throws IllegalArgumentException if out of range
   */
  public static double wetBulb(double dryBulb, double humidityRatio, double pressure) {
    checkTemperature("dry bulb", dryBulb);
    checkHumidityRatio(humidityRatio);
    checkPressure(pressure);
    return WetBulb.temperature(dryBulb, humidityRatio, pressure);
  }

  /**
   * Enthalpy of moist air.
   *
   * <p>Source: eq. 30. Fahrenheit tables count dry air from 0 °F and so read 17.9 kJ/kg (7.7
   * BTU/lb) higher.
   *
   * @param dryBulb °C
   * @param humidityRatio kg/kg
   * @return enthalpy, J per kg of dry air
   * @throws IllegalArgumentException if out of range
   */
  public static double enthalpy(double dryBulb, double humidityRatio) {
    checkTemperature("dry bulb", dryBulb);
    checkHumidityRatio(humidityRatio);
    return SPECIFIC_HEAT_DRY_AIR * dryBulb
        + humidityRatio * (LATENT_HEAT + SPECIFIC_HEAT_VAPOUR * dryBulb); // eq. 30
  }

  /**
   * Dry bulb of air of known enthalpy and humidity ratio.
   *
   * <p>Source: eq. 30, inverted.
   *
   * @param enthalpy J per kg of dry air, finite
   * @param humidityRatio kg/kg
   * @return dry bulb, °C; not checked against any range
   * @throws IllegalArgumentException if out of range
   */
  public static double dryBulbFromEnthalpy(double enthalpy, double humidityRatio) {
    check("enthalpy", enthalpy, -Double.MAX_VALUE, Double.MAX_VALUE, "J/kg");
    return (enthalpy - LATENT_HEAT * humidityRatio) / humidHeat(humidityRatio);
  }

  /**
   * Temperature of saturated air of known enthalpy.
   *
   * <p>Source: eq. 21 and 30, solved by Householder's method to better than 1e-9 K.
   *
   * @param enthalpy J per kg of dry air, finite
   * @param pressure total pressure, Pa
   * @return temperature, °C; not checked against any range
   * @throws IllegalArgumentException if out of range
   */
  public static double saturatedTemperature(double enthalpy, double pressure) {
    check("enthalpy", enthalpy, -Double.MAX_VALUE, Double.MAX_VALUE, "J/kg");
    checkPressure(pressure);
    SaturatedBalance balance = SaturatedBalance.ofEnthalpy(enthalpy, pressure);
    return balance.saturation(FirstGuess.of(enthalpy, balance, Phase.TRIPLE_POINT));
  }

  /**
   * Volume of moist air that holds one kilogram of dry air.
   *
   * <p>Source: eq. 26, its 1.607858 taken as 1/0.621945.
   *
   * @param dryBulb °C
   * @param humidityRatio kg/kg
   * @param pressure total pressure, Pa
   * @return specific volume, m³ per kg of dry air
   * @throws IllegalArgumentException if out of range
   */
  public static double specificVolume(double dryBulb, double humidityRatio, double pressure) {
    checkTemperature("dry bulb", dryBulb);
    checkHumidityRatio(humidityRatio);
    checkPressure(pressure);
    return GAS_CONSTANT_DRY_AIR
        * (dryBulb + Phase.ZERO_CELSIUS)
        * (1 + humidityRatio / MASS_RATIO)
        / pressure; // eq. 26
  }

  /**
   * Mass of air and vapour in a cubic metre.
   *
   * <p>Source: eq. 11.
   *
   * @param dryBulb °C
   * @param humidityRatio kg/kg
   * @param pressure total pressure, Pa
   * @return density, kg/m³
   * @throws IllegalArgumentException if out of range
   */
  public static double density(double dryBulb, double humidityRatio, double pressure) {
    return (1 + humidityRatio) / specificVolume(dryBulb, humidityRatio, pressure); // eq. 11
  }

  /**
   * Mass of dry air in a cubic metre of moist air, which turns a volume flow into the mass flow
   * that enthalpies and humidity ratios belong to.
   *
   * @param dryBulb °C
   * @param humidityRatio kg/kg
   * @param pressure total pressure, Pa
   * @return kg of dry air per m³
   * @throws IllegalArgumentException if out of range
   */
  public static double dryAirDensity(double dryBulb, double humidityRatio, double pressure) {
    return 1 / specificVolume(dryBulb, humidityRatio, pressure);
  }

  /**
   * Heat that warms moist air by one kelvin at constant humidity ratio: the slope of {@link
   * #enthalpy}.
   *
   * @param humidityRatio kg/kg
   * @return J per kg of dry air and K
   * @throws IllegalArgumentException if out of range
   */
  public static double humidHeat(double humidityRatio) {
    checkHumidityRatio(humidityRatio);
    return SPECIFIC_HEAT_DRY_AIR + SPECIFIC_HEAT_VAPOUR * humidityRatio;
  }

  /** Guards a dry bulb for this room. */
  static void checkTemperature(String name, double celsius) {
    check(name, celsius, COLDEST, HOTTEST, "°C");
  }

  /** Guards a humidity ratio for this room. */
  static void checkHumidityRatio(double humidityRatio) {
    check("humidity ratio", humidityRatio, 0, 10, "kg/kg");
  }

  /** Guards a total pressure for this room. */
  static void checkPressure(double pressure) {
    check("pressure", pressure, 1e3, 1e7, "Pa");
  }

  /** Guards any figure for this room; what is NaN is outside. */
  static void check(String name, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          (name + " " + value + " " + unit).strip() + " is not within " + low + " to " + high);
    }
  }
}
