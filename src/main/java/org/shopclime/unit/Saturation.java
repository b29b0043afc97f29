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

  private Saturation() {}

  /** Humidity ratio of saturated air, kg/kg, at °C and Pa. */
  static double humidityRatio(double celsius, double pressure) {
    return celsius < DRIEST ? 0 : MoistAir.saturationHumidityRatio(celsius, pressure);
  }

  /** Enthalpy of saturated air, J/kg, at °C and Pa. */
  static double enthalpy(double celsius, double pressure) {
    return MoistAir.enthalpy(celsius, humidityRatio(celsius, pressure));
  }

  /** Temperature of saturated air of this enthalpy, °C, at J/kg and Pa. */
  static double temperature(double enthalpy, double pressure) {
    return enthalpy < MoistAir.SPECIFIC_HEAT_DRY_AIR * DRIEST
        ? enthalpy / MoistAir.SPECIFIC_HEAT_DRY_AIR
        : MoistAir.saturatedTemperature(enthalpy, pressure);
  }

  /** Enthalpy of vapour, J/kg: the slope of enthalpy in humidity ratio. */
  static double vapourEnthalpy(double celsius) {
    return MoistAir.LATENT_HEAT + MoistAir.SPECIFIC_HEAT_VAPOUR * celsius;
  }
}
