package org.shopclime.unit;

import org.shopclime.air.MoistAir;

/**
 * The saturation line at one pressure, met from sides the coil needs.
 *
 * <p>Below -90 °C the line is taken as dry air (true value under 1e-7 kg/kg), so that a senseless
 * question about a very cold coil still has an answer, which is then marked {@link
 * Limit#COIL_ICES}.
 */
final class Saturation {

  private static final double DRIEST = -90;

  private static final double ABSOLUTE_ZERO = -273.15;

  /** Gas constant of water vapour, J/(kg K). */
  private static final double VAPOUR_GAS_CONSTANT = 461.52;

  /** The step after one of this size, K, is below 1e-9 K; well above the kink at 0.01 °C. */
  private static final double CLOSE = 1e-7;

  private static final int MOST_STEPS = 60;

  private Saturation() {}

  /** Humidity ratio of saturated air, kg/kg, at °C and Pa. */
  static double humidityRatio(double celsius, double pressure) {
    return celsius < DRIEST ? 0 : MoistAir.saturationHumidityRatio(celsius, pressure);
  }

  /** Enthalpy of saturated air, J/kg, at °C and Pa. */
  static double enthalpy(double celsius, double pressure) {
    return MoistAir.enthalpy(celsius, humidityRatio(celsius, pressure));
  }

  /**
   * Temperature of saturated air of this enthalpy, °C.
   *
   * <p>Newton steps with the slope of Clausius and Clapeyron, true to 1 %, so that each step brings
   * two digits or more. Enthalpy is convex in temperature: from a warmer start the steps close in
   * without passing by.
   *
   * @param enthalpy J/kg
   * @param pressure Pa
   * @param warmer a guess at or above the answer, °C
   */
  static double temperature(double enthalpy, double pressure, double warmer) {
    if (enthalpy < MoistAir.SPECIFIC_HEAT_DRY_AIR * DRIEST) {
      return enthalpy / MoistAir.SPECIFIC_HEAT_DRY_AIR;
    }
    double t = warmer;
    for (int i = 0; i < MOST_STEPS; i++) {
      double w = humidityRatio(t, pressure);
      double kelvin = t - ABSOLUTE_ZERO;
      // dW/dT = W (1 + W / 0.622) L / (R T²)
      double slope =
          w
              * (1 + w / MoistAir.MASS_RATIO)
              * heatOfEvaporation(t)
              / (VAPOUR_GAS_CONSTANT * kelvin * kelvin);
      double step =
          (enthalpy - MoistAir.enthalpy(t, w))
              / (MoistAir.humidHeat(w) + slope * vapourEnthalpy(t));
      t += step;
      if (Math.abs(step) < CLOSE) {
        return t;
      }
    }
    throw new ArithmeticException("no saturated air of " + enthalpy + " J/kg near " + t + " °C");
  }

  /** Enthalpy of vapour, J/kg: the slope of enthalpy in humidity ratio. */
  static double vapourEnthalpy(double celsius) {
    return MoistAir.LATENT_HEAT + MoistAir.SPECIFIC_HEAT_VAPOUR * celsius;
  }

  /** Heat of evaporation or, below 0 °C, of sublimation, J/kg, to 1 %: for slopes only. */
  private static double heatOfEvaporation(double celsius) {
    return celsius < 0 ? 2.834e6 : 2.501e6 - 2370 * celsius;
  }
}
