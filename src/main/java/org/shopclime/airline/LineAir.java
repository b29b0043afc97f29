package org.shopclime.airline;

import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/**
 * Air on its way through the line. As {@link AirState}, but hot as it leaves a compressor.
 *
 * <p>Source: the ideal-gas relations of {@link MoistAir}: enthalpy of the air does not depend on
 * its pressure, and it holds at saturation what the vapour pressure at its temperature allows.
 *
 * @param celsius temperature, °C, -60 to 600
 * @param pressure absolute, Pa, 1e4 to 1e7
 * @param humidityRatio vapour for each kg of dry air, kg/kg, 0 to 10
 */
public record LineAir(double celsius, double pressure, double humidityRatio) {

  /** Refuses what is outside the ranges above. */
  public LineAir {
    Check.within("temperature in the line, °C,", celsius, -60, 600);
    Check.within("pressure in the line, Pa,", pressure, 1e4, 1e7);
    Check.within("humidity ratio in the line", humidityRatio, 0, 10);
  }

  /**
   * Vapour that air can hold.
   *
   * @param celsius its temperature, °C, -60 to 600
   * @param pressure absolute, Pa, 1e4 to 1e7
   * @return kg/kg; infinite where water boils at that pressure
   */
  public static double capacity(double celsius, double pressure) {
    if (celsius > MoistAir.HOTTEST) {
      return Double.POSITIVE_INFINITY;
    }
    double saturated = MoistAir.saturationPressure(celsius);
    return saturated < pressure
        ? MoistAir.humidityRatio(saturated, pressure)
        : Double.POSITIVE_INFINITY;
  }

  /**
   * Enthalpy, counted as {@link MoistAir#enthalpy} does.
   *
   * @return J per kg of dry air
   */
  public double enthalpy() {
    return MoistAir.SPECIFIC_HEAT_DRY_AIR * celsius
        + humidityRatio * (MoistAir.LATENT_HEAT + MoistAir.SPECIFIC_HEAT_VAPOUR * celsius);
  }

  /**
   * Temperature at which water drops out at the pressure it has here.
   *
   * @return pressure dew point, °C
   * @throws IllegalArgumentException if it lies outside -100 to 200 °C, as that of dry air does
   */
  public double pressureDewPoint() {
    return MoistAir.dewPoint(humidityRatio, pressure);
  }

  /**
   * This air brought to a temperature; what it cannot hold drops out.
   *
   * @param newCelsius °C, -60 to 600
   * @return air with as much vapour or less
   */
  public LineAir at(double newCelsius) {
    return new LineAir(
        newCelsius, pressure, Math.min(humidityRatio, capacity(newCelsius, pressure)));
  }

  /**
   * This air let down to another pressure at the same temperature.
   *
   * @param newPressure absolute, Pa, at most its own
   * @return air with the same vapour
   */
  public LineAir letDownTo(double newPressure) {
    return new LineAir(
        celsius, Check.within("pressure after, Pa,", newPressure, 1e4, pressure), humidityRatio);
  }
}
