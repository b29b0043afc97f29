package org.shopclime.airline;

/**
 * Air through a blasting nozzle, a blow gun or a leak: an ideal gas at the speed of sound in the
 * throat.
 *
 * <p>Source: choked isentropic flow, m = Cd A p √(k / (R T)) (2 / (k + 1))^((k + 1) / (2 (k - 1))),
 * k = 1.4. Printed tables of leaks lie 2 to 4 % below it ({@code DemandPublishedTest}).
 *
 * <p>Limits: pressure at the nozzle at least about twice that of the air around (15 psi at sea
 * level), grit left out: it takes up to a fifth of the throat (common practice). A worn nozzle
 * grows: half as wide again is more than twice the air.
 */
public final class Nozzle {

  /** Discharge coefficient of a rounded inlet; 0.61 of a sharp edge. */
  public static final double ROUNDED = 0.97;

  private static final double GAS_CONSTANT = 287.042;
  private static final double KELVIN = 273.15;
  private static final double K = IdealCompression.K;
  private static final double THROAT = Math.pow(2 / (K + 1), (K + 1) / (2 * (K - 1)));

  private Nozzle() {}

  /**
   * Air while it blows.
   *
   * @param diameter of the throat, m, 1e-4 to 0.05
   * @param pressure absolute pressure before it, Pa, 2e5 to 2e6
   * @param celsius air before it, °C, -40 to 100
   * @param discharge coefficient, 0.5 to 1
   * @return kg/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double flow(double diameter, double pressure, double celsius, double discharge) {
    Check.within("nozzle diameter, m,", diameter, 1e-4, 0.05);
    Check.within("nozzle pressure, Pa absolute,", pressure, 2e5, 2e6);
    Check.within("air temperature, °C,", celsius, -40, 100);
    Check.within("discharge coefficient", discharge, 0.5, 1);
    double area = Math.PI / 4 * diameter * diameter;
    return discharge
        * area
        * pressure
        * Math.sqrt(K / (GAS_CONSTANT * (celsius + KELVIN)))
        * THROAT;
  }
}
