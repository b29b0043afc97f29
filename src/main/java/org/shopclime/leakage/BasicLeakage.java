package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Air that leaks into a building of a single zone by stack and wind, from its effective leakage
 * area.
 *
 * <p>Source: Sherman and Grimsrud (1980), as the basic model of ASHRAE Handbook - Fundamentals
 * (1997 to 2017), ventilation and infiltration chapter: Q = (A / 1000) √(Cs ΔT + Cw U²), Q in m³/s,
 * A in cm² at 4 Pa, U the wind at the weather station, m/s. Coefficients from memory.
 *
 * <p>Error: against tracer gas the model is within 20 to 40 % hour by hour for houses; the leakage
 * area is the larger unknown.
 *
 * <p>Limits: leaks spread evenly, half in floor and ceiling; one room. Heights other than whole
 * storeys follow the model's own laws: Cs with the height, Cw with its 0.4th power (wind profile of
 * the table's terrain), which gives the printed two- and three-storey values within 1 %, or the
 * last digit.
 */
public final class BasicLeakage {

  /** Height of a storey in the coefficients, m. */
  public static final double STOREY = 2.5;

  private static final double STACK_ONE_STOREY = 0.000145;
  private static final double WIND_EXPONENT = 0.4;
  private static final double CM2_PER_M2 = 1e4;

  private static final double[][] WIND = {
    {0.000319, 0.000246, 0.000174, 0.000104, 0.000032},
    {0.000420, 0.000325, 0.000231, 0.000137, 0.000042},
    {0.000494, 0.000382, 0.000271, 0.000161, 0.000049},
  };

  private BasicLeakage() {}

  /**
   * Air that leaks in, with all fans off.
   *
   * @param leakageArea effective leakage area at 4 Pa, m², 0 to 1000
   * @param temperatureDifference indoors less outdoors, either sign, K, -150 to 150
   * @param wind speed at the weather station, m/s, 0 to 100
   * @param stackCoefficient (L/s)²/(cm⁴·K), 0 to 0.01
   * @param windCoefficient (L/s)²/(cm⁴·(m/s)²), 0 to 0.01
   * @return m³/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double flow(
      double leakageArea,
      double temperatureDifference,
      double wind,
      double stackCoefficient,
      double windCoefficient) {
    Range.check("leakage area, m²,", leakageArea, 0, 1000);
    Range.check("temperature difference, K,", temperatureDifference, -150, 150);
    Range.check("wind, m/s,", wind, 0, 100);
    Range.check("stack coefficient", stackCoefficient, 0, 0.01);
    Range.check("wind coefficient", windCoefficient, 0, 0.01);
    double drive =
        stackCoefficient * Math.abs(temperatureDifference) + windCoefficient * wind * wind;
    return leakageArea * CM2_PER_M2 / 1000 * Math.sqrt(drive);
  }

  /**
   * Stack coefficient of the table.
   *
   * @param storeys 1 to 3
   * @return (L/s)²/(cm⁴·K)
   * @throws IllegalArgumentException if outside that range
   */
  public static double stackCoefficient(int storeys) {
    Range.check("number of storeys", storeys, 1, 3);
    return STACK_ONE_STOREY * storeys;
  }

  /**
   * Stack coefficient by height: in proportion.
   *
   * @param height of the leaking room, floor to ceiling or ridge, m, 0.2 to 30; published 2.5 to
   *     7.5
   * @return (L/s)²/(cm⁴·K)
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double stackCoefficientAt(double height) {
    return STACK_ONE_STOREY * storeysOf(height);
  }

  /**
   * Wind coefficient of the table.
   *
   * @param storeys 1 to 3
   * @param shelterClass 1 (no obstructions) to 5 (hemmed in on all sides)
   * @return (L/s)²/(cm⁴·(m/s)²)
   * @throws IllegalArgumentException if outside those ranges
   */
  public static double windCoefficient(int storeys, int shelterClass) {
    Range.check("number of storeys", storeys, 1, 3);
    Range.check("shelter class", shelterClass, 1, 5);
    return WIND[storeys - 1][shelterClass - 1];
  }

  /**
   * Wind coefficient by height: from the one-storey value with the 0.4th power.
   *
   * @param height of the leaking room, floor to ceiling or ridge, m, 0.2 to 30; published 2.5 to
   *     7.5
   * @param shelterClass 1 (no obstructions) to 5 (hemmed in on all sides)
   * @return (L/s)²/(cm⁴·(m/s)²)
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double windCoefficientAt(double height, int shelterClass) {
    return windCoefficient(1, shelterClass) * Math.pow(storeysOf(height), WIND_EXPONENT);
  }

  private static double storeysOf(double height) {
    return Range.check("height, m,", height, 0.2, 30) / STOREY;
  }
}
