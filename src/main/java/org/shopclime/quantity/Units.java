package org.shopclime.quantity;

/**
 * Inch-pound figures from SI numbers and back, for whoever shows or writes figures.
 *
 * <p>Source: the international yard and pound (1959), the International Table BTU and the other
 * definitions in NIST Special Publication 811 (2008), appendix B. Only defining figures are typed;
 * all else is derived from them. Every function takes any number, is linear (temperatures: affine)
 * and returns to its argument within rounding ({@code UnitsPublishedTest}, {@code
 * UnitsProperties}).
 */
public final class Units {

  /** m in a foot, exact. */
  public static final double METRES_PER_FOOT = 0.3048;

  /** m in an inch. */
  public static final double METRES_PER_INCH = METRES_PER_FOOT / 12;

  /** m in a statute mile. */
  public static final double METRES_PER_MILE = 5280 * METRES_PER_FOOT;

  /** m² in a square foot. */
  public static final double SQUARE_METRES_PER_SQUARE_FOOT = METRES_PER_FOOT * METRES_PER_FOOT;

  /** m² in a square inch. */
  public static final double SQUARE_METRES_PER_SQUARE_INCH = METRES_PER_INCH * METRES_PER_INCH;

  /** m³ in a cubic foot. */
  public static final double CUBIC_METRES_PER_CUBIC_FOOT =
      SQUARE_METRES_PER_SQUARE_FOOT * METRES_PER_FOOT;

  /** m³ in a US gallon, which is 231 cubic inches. */
  public static final double CUBIC_METRES_PER_GALLON =
      231 * SQUARE_METRES_PER_SQUARE_INCH * METRES_PER_INCH;

  /** kg in a pound (avoirdupois), exact. */
  public static final double KG_PER_LB = 0.45359237;

  /** Grains in a pound. */
  public static final double GRAINS_PER_LB = 7000;

  /** Acceleration of free fall by convention, m/s², exact. */
  public static final double STANDARD_GRAVITY = 9.80665;

  /** Pa in a pound-force per square inch. */
  public static final double PASCALS_PER_PSI =
      KG_PER_LB * STANDARD_GRAVITY / SQUARE_METRES_PER_SQUARE_INCH;

  /** s in an hour. */
  public static final double SECONDS_PER_HOUR = 3600;

  /** K in a Fahrenheit degree of difference. */
  public static final double KELVIN_PER_FAHRENHEIT_DEGREE = 5.0 / 9.0;

  /** J/kg in a BTU per pound, which defines the International Table BTU, exact. */
  public static final double JOULES_PER_KG_IN_BTU_PER_LB = 2326;

  /** J in a BTU (International Table). */
  public static final double JOULES_PER_BTU = JOULES_PER_KG_IN_BTU_PER_LB * KG_PER_LB;

  /** W in a BTU per hour. */
  public static final double WATTS_PER_BTUH = JOULES_PER_BTU / SECONDS_PER_HOUR;

  /** W in a ton of cooling, which is 12,000 BTU/h. */
  public static final double WATTS_PER_TON = 12000 * WATTS_PER_BTUH;

  /** W in a mechanical horsepower, which is 550 foot-pounds-force per second. */
  public static final double WATTS_PER_HORSEPOWER =
      550 * METRES_PER_FOOT * KG_PER_LB * STANDARD_GRAVITY;

  /** J in a kilowatt-hour. */
  public static final double JOULES_PER_KWH = 1000 * SECONDS_PER_HOUR;

  /** W/(m²·K) in a BTU/(h·ft²·°F). */
  public static final double SI_PER_IP_U_FACTOR =
      WATTS_PER_BTUH / (SQUARE_METRES_PER_SQUARE_FOOT * KELVIN_PER_FAHRENHEIT_DEGREE);

  /** W/(m·K) in a BTU·in/(h·ft²·°F). */
  public static final double SI_PER_IP_CONDUCTIVITY = SI_PER_IP_U_FACTOR * METRES_PER_INCH;

  /** m³/s in a cubic foot per minute. */
  public static final double CUBIC_METRES_PER_SECOND_PER_CFM = CUBIC_METRES_PER_CUBIC_FOOT / 60;

  /** m/s in a mile per hour. */
  public static final double METRES_PER_SECOND_PER_MPH = METRES_PER_MILE / SECONDS_PER_HOUR;

  private Units() {}

  /**
   * Temperature on the Fahrenheit scale; for a difference see {@link #fahrenheitDifference}.
   *
   * @param celsius temperature, °C
   * @return °F
   */
  public static double fahrenheit(double celsius) {
    return 32 + celsius / KELVIN_PER_FAHRENHEIT_DEGREE;
  }

  /**
   * Temperature on the Celsius scale; for a difference see {@link #kelvinDifference}.
   *
   * @param fahrenheit temperature, °F
   * @return °C
   */
  public static double celsius(double fahrenheit) {
    return (fahrenheit - 32) * KELVIN_PER_FAHRENHEIT_DEGREE;
  }

  /**
   * Temperature difference in inch-pound units.
   *
   * @param kelvin temperature difference, K
   * @return °F
   */
  public static double fahrenheitDifference(double kelvin) {
    return kelvin / KELVIN_PER_FAHRENHEIT_DEGREE;
  }

  /**
   * Temperature difference in SI units.
   *
   * @param fahrenheitDegrees temperature difference, °F
   * @return K
   */
  public static double kelvinDifference(double fahrenheitDegrees) {
    return fahrenheitDegrees * KELVIN_PER_FAHRENHEIT_DEGREE;
  }

  /**
   * Length in inch-pound units.
   *
   * @param metres length, m
   * @return ft
   */
  public static double feet(double metres) {
    return metres / METRES_PER_FOOT;
  }

  /**
   * Length in SI units.
   *
   * @param feet length, ft
   * @return m
   */
  public static double metresFromFeet(double feet) {
    return feet * METRES_PER_FOOT;
  }

  /**
   * Length in inch-pound units.
   *
   * @param metres length, m
   * @return in
   */
  public static double inches(double metres) {
    return metres / METRES_PER_INCH;
  }

  /**
   * Length in SI units.
   *
   * @param inches length, in
   * @return m
   */
  public static double metresFromInches(double inches) {
    return inches * METRES_PER_INCH;
  }

  /**
   * Distance in inch-pound units.
   *
   * @param metres distance, m
   * @return mi
   */
  public static double miles(double metres) {
    return metres / METRES_PER_MILE;
  }

  /**
   * Distance in SI units.
   *
   * @param miles distance, mi
   * @return m
   */
  public static double metresFromMiles(double miles) {
    return miles * METRES_PER_MILE;
  }

  /**
   * Area in inch-pound units.
   *
   * @param squareMetres area, m²
   * @return ft²
   */
  public static double squareFeet(double squareMetres) {
    return squareMetres / SQUARE_METRES_PER_SQUARE_FOOT;
  }

  /**
   * Area in SI units.
   *
   * @param squareFeet area, ft²
   * @return m²
   */
  public static double squareMetresFromSquareFeet(double squareFeet) {
    return squareFeet * SQUARE_METRES_PER_SQUARE_FOOT;
  }

  /**
   * Small area in inch-pound units.
   *
   * @param squareMetres small area, m²
   * @return in²
   */
  public static double squareInches(double squareMetres) {
    return squareMetres / SQUARE_METRES_PER_SQUARE_INCH;
  }

  /**
   * Small area in SI units.
   *
   * @param squareInches small area, in²
   * @return m²
   */
  public static double squareMetresFromSquareInches(double squareInches) {
    return squareInches * SQUARE_METRES_PER_SQUARE_INCH;
  }

  /**
   * Volume in inch-pound units.
   *
   * @param cubicMetres volume, m³
   * @return ft³
   */
  public static double cubicFeet(double cubicMetres) {
    return cubicMetres / CUBIC_METRES_PER_CUBIC_FOOT;
  }

  /**
   * Volume in SI units.
   *
   * @param cubicFeet volume, ft³
   * @return m³
   */
  public static double cubicMetresFromCubicFeet(double cubicFeet) {
    return cubicFeet * CUBIC_METRES_PER_CUBIC_FOOT;
  }

  /**
   * Liquid volume in inch-pound units.
   *
   * @param cubicMetres liquid volume, m³
   * @return US gal
   */
  public static double gallons(double cubicMetres) {
    return cubicMetres / CUBIC_METRES_PER_GALLON;
  }

  /**
   * Liquid volume in SI units.
   *
   * @param gallons liquid volume, US gal
   * @return m³
   */
  public static double cubicMetresFromGallons(double gallons) {
    return gallons * CUBIC_METRES_PER_GALLON;
  }

  /**
   * Mass in inch-pound units.
   *
   * @param kilograms mass, kg
   * @return lb
   */
  public static double pounds(double kilograms) {
    return kilograms / KG_PER_LB;
  }

  /**
   * Mass in SI units.
   *
   * @param pounds mass, lb
   * @return kg
   */
  public static double kilogramsFromPounds(double pounds) {
    return pounds * KG_PER_LB;
  }

  /**
   * Pressure in inch-pound units.
   *
   * @param pascals pressure, Pa
   * @return psi
   */
  public static double psi(double pascals) {
    return pascals / PASCALS_PER_PSI;
  }

  /**
   * Pressure in SI units.
   *
   * @param psi pressure, psi
   * @return Pa
   */
  public static double pascalsFromPsi(double psi) {
    return psi * PASCALS_PER_PSI;
  }

  /**
   * Heat flow in inch-pound units.
   *
   * @param watts heat flow, W
   * @return BTU/h
   */
  public static double btuh(double watts) {
    return watts / WATTS_PER_BTUH;
  }

  /**
   * Heat flow in SI units.
   *
   * @param btuh heat flow, BTU/h
   * @return W
   */
  public static double wattsFromBtuh(double btuh) {
    return btuh * WATTS_PER_BTUH;
  }

  /**
   * Cooling in inch-pound units.
   *
   * @param watts cooling, W
   * @return tons of 12,000 BTU/h
   */
  public static double tons(double watts) {
    return watts / WATTS_PER_TON;
  }

  /**
   * Cooling in SI units.
   *
   * @param tons cooling, tons of 12,000 BTU/h
   * @return W
   */
  public static double wattsFromTons(double tons) {
    return tons * WATTS_PER_TON;
  }

  /**
   * Shaft power in inch-pound units.
   *
   * @param watts shaft power, W
   * @return hp
   */
  public static double horsepower(double watts) {
    return watts / WATTS_PER_HORSEPOWER;
  }

  /**
   * Shaft power in SI units.
   *
   * @param horsepower shaft power, hp
   * @return W
   */
  public static double wattsFromHorsepower(double horsepower) {
    return horsepower * WATTS_PER_HORSEPOWER;
  }

  /**
   * Heat in inch-pound units.
   *
   * @param joules heat, J
   * @return BTU
   */
  public static double btu(double joules) {
    return joules / JOULES_PER_BTU;
  }

  /**
   * Heat in SI units.
   *
   * @param btu heat, BTU
   * @return J
   */
  public static double joulesFromBtu(double btu) {
    return btu * JOULES_PER_BTU;
  }

  /**
   * Energy in kilowatt-hours.
   *
   * @param joules energy, J
   * @return kWh
   */
  public static double kilowattHours(double joules) {
    return joules / JOULES_PER_KWH;
  }

  /**
   * Energy in joules.
   *
   * @param kilowattHours energy, kWh
   * @return J
   */
  public static double joulesFromKilowattHours(double kilowattHours) {
    return kilowattHours * JOULES_PER_KWH;
  }

  /**
   * Thermal transmittance in inch-pound units.
   *
   * @param uFactor thermal transmittance, W/(m²·K)
   * @return BTU/(h·ft²·°F)
   */
  public static double uFactorIp(double uFactor) {
    return uFactor / SI_PER_IP_U_FACTOR;
  }

  /**
   * Thermal transmittance in SI units.
   *
   * @param uFactorIp thermal transmittance, BTU/(h·ft²·°F)
   * @return W/(m²·K)
   */
  public static double uFactorSi(double uFactorIp) {
    return uFactorIp * SI_PER_IP_U_FACTOR;
  }

  /**
   * Thermal resistance as printed on insulation: the 15 of "R-15".
   *
   * @param rValue resistance, m²·K/W
   * @return h·ft²·°F/BTU
   */
  public static double rValueIp(double rValue) {
    return rValue * SI_PER_IP_U_FACTOR;
  }

  /**
   * Thermal resistance in SI units.
   *
   * @param rValueIp resistance, h·ft²·°F/BTU
   * @return m²·K/W
   */
  public static double rValueSi(double rValueIp) {
    return rValueIp / SI_PER_IP_U_FACTOR;
  }

  /**
   * Thermal conductivity in inch-pound units.
   *
   * @param conductivity thermal conductivity, W/(m·K)
   * @return BTU·in/(h·ft²·°F)
   */
  public static double conductivityIp(double conductivity) {
    return conductivity / SI_PER_IP_CONDUCTIVITY;
  }

  /**
   * Thermal conductivity in SI units.
   *
   * @param conductivityIp thermal conductivity, BTU·in/(h·ft²·°F)
   * @return W/(m·K)
   */
  public static double conductivitySi(double conductivityIp) {
    return conductivityIp * SI_PER_IP_CONDUCTIVITY;
  }

  /**
   * Air flow in inch-pound units.
   *
   * @param cubicMetresPerSecond air flow, m³/s
   * @return ft³/min
   */
  public static double cfm(double cubicMetresPerSecond) {
    return cubicMetresPerSecond / CUBIC_METRES_PER_SECOND_PER_CFM;
  }

  /**
   * Air flow in SI units.
   *
   * @param cfm air flow, ft³/min
   * @return m³/s
   */
  public static double cubicMetresPerSecondFromCfm(double cfm) {
    return cfm * CUBIC_METRES_PER_SECOND_PER_CFM;
  }

  /**
   * Speed in inch-pound units.
   *
   * @param metresPerSecond speed, m/s
   * @return mi/h
   */
  public static double milesPerHour(double metresPerSecond) {
    return metresPerSecond / METRES_PER_SECOND_PER_MPH;
  }

  /**
   * Speed in SI units.
   *
   * @param milesPerHour speed, mi/h
   * @return m/s
   */
  public static double metresPerSecondFromMilesPerHour(double milesPerHour) {
    return milesPerHour * METRES_PER_SECOND_PER_MPH;
  }

  /**
   * Cooling per power in BTU per watt-hour, as on American labels.
   *
   * @param wattsPerWatt cooling per power, W/W
   * @return BTU/Wh
   */
  public static double eer(double wattsPerWatt) {
    return wattsPerWatt / WATTS_PER_BTUH;
  }

  /**
   * Cooling per power as a plain ratio.
   *
   * @param eer cooling per power, BTU/Wh
   * @return W/W
   */
  public static double wattsPerWattFromEer(double eer) {
    return eer * WATTS_PER_BTUH;
  }

  /**
   * Humidity ratio in grains of water per pound of dry air.
   *
   * @param humidityRatio humidity ratio, kg/kg
   * @return gr/lb
   */
  public static double grainsPerPound(double humidityRatio) {
    return humidityRatio * GRAINS_PER_LB;
  }

  /**
   * Humidity ratio as a plain ratio.
   *
   * @param grainsPerPound humidity ratio, gr/lb
   * @return kg/kg
   */
  public static double humidityRatioFromGrainsPerPound(double grainsPerPound) {
    return grainsPerPound / GRAINS_PER_LB;
  }
}
