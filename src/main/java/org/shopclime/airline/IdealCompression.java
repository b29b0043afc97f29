package org.shopclime.airline;

/**
 * Air compressed without loss: what its temperature and its work would at least be.
 *
 * <p>Source: isentropic relations of an ideal gas, k = 1.4, as in the handbook of the Compressed
 * Air and Gas Institute: T₂ = T₁ r^((k-1)/k); work for each m³ drawn in p₁ k/(k-1) (r^((k-1)/k) -
 * 1). Two stages share the ratio evenly (√r each) and the air is back at T₁ between them.
 *
 * <p>Error: the handbook's tables lie within 1 % ({@code CompressorPublishedTest}).
 *
 * <p>Limits: a real machine takes a third to a half more work (valves, leaks, friction, motor); its
 * air leaves cooler than that would make it, as the finned cylinder cools while it compresses. So
 * this stands for the temperature at the outlet, never for the power drawn.
 */
public final class IdealCompression {

  /** Ratio of specific heats of air. */
  public static final double K = 1.4;

  private static final double EXPONENT = (K - 1) / K;
  private static final double KELVIN = 273.15;
  private static final double MOST_RATIO = 50;

  private IdealCompression() {}

  /**
   * Temperature of the air as it leaves the last stage.
   *
   * @param intakeCelsius air drawn in, °C, -60 to 150
   * @param ratio absolute pressure after over before, 1 to 50
   * @param stages one or two
   * @return °C
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double dischargeCelsius(double intakeCelsius, double ratio, Stages stages) {
    Check.within("intake temperature, °C,", intakeCelsius, -60, 150);
    return (intakeCelsius + KELVIN) * (1 + riseOfStage(ratio, stages)) - KELVIN;
  }

  /**
   * Work for each cubic metre drawn in.
   *
   * @param intakePressure absolute, Pa, 1e4 to 1e6
   * @param ratio absolute pressure after over before, 1 to 50
   * @param stages one or two
   * @return J/m³
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double workPerVolume(double intakePressure, double ratio, Stages stages) {
    Check.within("intake pressure, Pa,", intakePressure, 1e4, 1e6);
    return stages.count() * intakePressure / EXPONENT * riseOfStage(ratio, stages);
  }

  /** Rise of absolute temperature in one stage, as a part of it. */
  private static double riseOfStage(double ratio, Stages stages) {
    Check.within("pressure ratio", ratio, 1, MOST_RATIO);
    return Math.pow(ratio, EXPONENT / stages.count()) - 1;
  }
}
