package org.shopclime.airline;

import org.shopclime.air.AirState;
import org.shopclime.gain.CompressorGain;

/**
 * An air compressor with its tank.
 *
 * <p>It draws in a fixed volume for each turn, so the mass it delivers follows the density of the
 * air drawn in, at nearly the same power: hot or thin air costs running time. Its electric power is
 * that of its motor at full load ({@link CompressorGain}), times the part of the time it runs.
 *
 * <p>Source: ideal gas; the rule of the trade, "1 % less air for each 5 °F", is the same ({@code
 * CompressorPublishedTest}). Shape of the tank: a cylinder 2.5 times as tall as wide, common
 * practice.
 *
 * <p>Limits: the air lost to re-expansion and leaks is in the free air its plate tells; that it
 * grows with pressure is left out.
 *
 * @param shaftWatts rated shaft power of its motor, W, 50 to 1e5
 * @param stages one or two
 * @param freeAir volume drawn in while it runs, m³/s of air as it is drawn in, 1e-5 to 1; the plate
 *     tells it as free air at a pressure
 * @param tankPressure mean pressure in the tank, Pa above the air around, 1e5 to 1.5e6
 * @param tankVolume m³, 0.001 to 10
 */
public record AirCompressor(
    double shaftWatts, Stages stages, double freeAir, double tankPressure, double tankVolume) {

  /**
   * Highest temperature around usual air-cooled motors and compressors, °C (104 °F).
   *
   * <p>Source: NEMA MG 1, motor ambient 40 °C, from memory; the trade says the same of compressors.
   */
  public static final double MOST_AMBIENT = 40;

  private static final double TANK_SLENDERNESS = 2.5;

  /** Refuses what is outside the ranges above. */
  public AirCompressor {
    Check.within("rated shaft power, W,", shaftWatts, 50, 1e5);
    Check.within("free air, m³/s,", freeAir, 1e-5, 1);
    Check.within("tank pressure, Pa,", tankPressure, 1e5, 1.5e6);
    Check.within("tank volume, m³,", tankVolume, 0.001, 10);
  }

  /**
   * The usual machine of a size.
   *
   * @param shaftWatts rated shaft power, W, 50 to 1e5
   * @param stages one or two
   * @return it, with free air, pressure and tank by {@link Stages}
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static AirCompressor usual(double shaftWatts, Stages stages) {
    return new AirCompressor(
        shaftWatts,
        stages,
        stages.airPerShaftWatt() * shaftWatts,
        stages.tankPressure(),
        stages.tankPerShaftWatt() * shaftWatts);
  }

  /**
   * Dry air delivered while it runs.
   *
   * @param intake air drawn in
   * @return kg/s of dry air
   */
  public double delivers(AirState intake) {
    return freeAir * intake.dryAirDensity();
  }

  /**
   * How it runs for a demand.
   *
   * @param demand dry air asked for in the mean of the hour, kg/s, 0 to 10
   * @param intake air drawn in
   * @return part of the time, air given, power
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public Running running(double demand, AirState intake) {
    Check.within("air asked for, kg/s,", demand, 0, 10);
    double most = delivers(intake);
    double asked = demand / most;
    double duty = Math.min(1, asked);
    return new Running(
        asked, asked > 1 ? most : demand, CompressorGain.electricInput(shaftWatts, duty));
  }

  /**
   * Pressure in the tank over the pressure of the air drawn in.
   *
   * @param intake air drawn in
   * @return ratio of absolute pressures, above 1
   */
  public double pressureRatio(AirState intake) {
    return tankPressureAbsolute(intake) / intake.pressure();
  }

  /**
   * Absolute pressure in the tank.
   *
   * @param intake air drawn in
   * @return Pa
   */
  public double tankPressureAbsolute(AirState intake) {
    return tankPressure + intake.pressure();
  }

  /**
   * Temperature of the air at its outlet, without loss: {@link IdealCompression}.
   *
   * @param intake air drawn in, -60 to 150 °C
   * @return °C
   */
  public double dischargeCelsius(AirState intake) {
    return IdealCompression.dischargeCelsius(intake.dryBulb(), pressureRatio(intake), stages);
  }

  /**
   * Outer area of the tank.
   *
   * @return m²
   */
  public double tankArea() {
    double diameter = Math.cbrt(tankVolume * 4 / (Math.PI * TANK_SLENDERNESS));
    return Math.PI * diameter * diameter * (TANK_SLENDERNESS + 0.5);
  }

  /**
   * How a machine runs in the mean of an hour.
   *
   * @param duty part of the time it would have to run, 0 or more; above 1 it cannot keep up
   * @param dryAir dry air it gives, kg/s; less than asked for where it cannot keep up
   * @param electricWatts mean electric power, W
   */
  public record Running(double duty, double dryAir, double electricWatts) {

    /**
     * Part of the air asked for that is missing.
     *
     * @return 0 to 1
     */
    public double missing() {
      return duty > 1 ? 1 - 1 / duty : 0;
    }
  }
}
