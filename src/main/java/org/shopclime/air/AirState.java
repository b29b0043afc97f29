package org.shopclime.air;

/**
 * Moist air of one temperature, humidity and pressure. Four numbers of one kind in a row trap the
 * caller; this carries the three that fix all others.
 *
 * @param dryBulb temperature, °C, -100 to 200
 * @param humidityRatio kg of water per kg of dry air, 0 to 10; may be above saturation
 * @param pressure total pressure, Pa, 1 kPa to 10 MPa
 */
public record AirState(double dryBulb, double humidityRatio, double pressure) {

  /** Refuses figures outside the ranges above. */
  public AirState {
    MoistAir.checkTemperature("dry bulb", dryBulb);
    MoistAir.checkHumidityRatio(humidityRatio);
    MoistAir.checkPressure(pressure);
  }

  /**
   * Air of known relative humidity.
   *
   * @param dryBulb °C
   * @param relativeHumidity 0 to 1
   * @param pressure Pa
   * @return the state
   * @throws IllegalArgumentException if out of range
   */
  public static AirState ofRelativeHumidity(
      double dryBulb, double relativeHumidity, double pressure) {
    return new AirState(
        dryBulb,
        MoistAir.humidityRatioFromRelativeHumidity(dryBulb, relativeHumidity, pressure),
        pressure);
  }

  /**
   * Air of known wet bulb.
   *
   * @param dryBulb °C
   * @param wetBulb °C, at most the dry bulb
   * @param pressure Pa
   * @return the state
   * @throws IllegalArgumentException if out of range, or if no air is dry enough for so low a bulb
   */
  public static AirState ofWetBulb(double dryBulb, double wetBulb, double pressure) {
    return new AirState(
        dryBulb, MoistAir.humidityRatioFromWetBulb(dryBulb, wetBulb, pressure), pressure);
  }

  /**
   * Air of known dew point.
   *
   * @param dryBulb °C
   * @param dewPoint °C, at most the dry bulb
   * @param pressure Pa
   * @return the state
   * @throws IllegalArgumentException if out of range
   */
  public static AirState ofDewPoint(double dryBulb, double dewPoint, double pressure) {
    MoistAir.check("dew point", dewPoint, MoistAir.COLDEST, dryBulb, "°C");
    return new AirState(dryBulb, MoistAir.humidityRatioFromDewPoint(dewPoint, pressure), pressure);
  }

  /**
   * This air warmed or cooled without losing or taking up water.
   *
   * @param celsius new dry bulb, °C
   * @return the new state
   * @throws IllegalArgumentException if out of range
   */
  public AirState withDryBulb(double celsius) {
    return new AirState(celsius, humidityRatio, pressure);
  }

  /**
   * Partial pressure of the vapour, see {@link MoistAir#vapourPressure}.
   *
   * @return Pa
   */
  public double vapourPressure() {
    return MoistAir.vapourPressure(humidityRatio, pressure);
  }

  /**
   * Relative humidity, see {@link MoistAir#relativeHumidity}.
   *
   * @return 1; above 1 in fog
   */
  public double relativeHumidity() {
    return MoistAir.relativeHumidity(dryBulb, humidityRatio, pressure);
  }

  /**
   * Dew or frost point, see {@link MoistAir#dewPoint}.
   *
   * @return °C
   * @throws IllegalArgumentException if it lies outside -100 to 200 °C, as that of dry air does
   */
  public double dewPoint() {
    return MoistAir.dewPoint(humidityRatio, pressure);
  }

  /**
   * Thermodynamic wet bulb, see {@link MoistAir#wetBulb}.
   *
   * @return °C
   */
  public double wetBulb() {
    return MoistAir.wetBulb(dryBulb, humidityRatio, pressure);
  }

  /**
   * Enthalpy, see {@link MoistAir#enthalpy}.
   *
   * @return J per kg of dry air
   */
  public double enthalpy() {
    return MoistAir.enthalpy(dryBulb, humidityRatio);
  }

  /**
   * Volume per mass of dry air, see {@link MoistAir#specificVolume}.
   *
   * @return m³ per kg of dry air
   */
  public double specificVolume() {
    return MoistAir.specificVolume(dryBulb, humidityRatio, pressure);
  }

  /**
   * Density of the moist air, see {@link MoistAir#density}.
   *
   * @return kg/m³
   */
  public double density() {
    return MoistAir.density(dryBulb, humidityRatio, pressure);
  }

  /**
   * Dry air in a cubic metre, see {@link MoistAir#dryAirDensity}.
   *
   * @return kg of dry air per m³
   */
  public double dryAirDensity() {
    return MoistAir.dryAirDensity(dryBulb, humidityRatio, pressure);
  }
}
