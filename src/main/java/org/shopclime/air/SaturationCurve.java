package org.shopclime.air;

/**
 * Pressure of saturated vapour over one phase, and its inverse, laid out once in pieces: the
 * equation of {@link Phase} to 1e-12 of the pressure and 1e-10 K of the temperature, without a
 * logarithm and an exponential for each pressure ({@code SaturationCurveTest}). Temperatures in °C,
 * pressures in Pa.
 */
final class SaturationCurve {

  /** Over ice; laid out to a little beyond the triple point. */
  static final SaturationCurve ICE = new SaturationCurve(Phase.ICE, MoistAir.COLDEST, 1);

  /** Over water; laid out from a little below the triple point. */
  static final SaturationCurve WATER = new SaturationCurve(Phase.WATER, 0, MoistAir.HOTTEST);

  /** Width of the pieces of the pressure, K. */
  private static final double WIDTH = 0.5;

  /** Width of the pieces of the temperature, of ln(pressure). */
  private static final double LOG_WIDTH = 0.25;

  private final Phase phase;
  private final Pieces pressure;
  private final Pieces temperature;

  private SaturationCurve(Phase phase, double coldest, double hottest) {
    this.phase = phase;
    pressure = Pieces.of(phase::pressure, coldest, hottest, WIDTH);
    temperature =
        Pieces.of(
            log -> phase.temperature(Math.exp(log)),
            phase.logPressure(coldest + Phase.ZERO_CELSIUS),
            phase.logPressure(hottest + Phase.ZERO_CELSIUS),
            LOG_WIDTH);
  }

  /** The curve of the phase in balance with vapour at a temperature, see {@link Phase#at}. */
  static SaturationCurve at(double celsius) {
    return celsius <= Phase.TRIPLE_POINT ? ICE : WATER;
  }

  /** Saturation pressure, Pa. */
  double pressure(double celsius) {
    return pressure.hold(celsius) ? pressure.at(celsius) : phase.pressure(celsius);
  }

  /** Its first derivative, Pa/K. */
  double slope(double celsius) {
    return pressure.hold(celsius)
        ? pressure.slope(celsius)
        : phase.pressure(celsius) * phase.logSlope(celsius + Phase.ZERO_CELSIUS);
  }

  /** Its second derivative, Pa/K², for steps of a search: beyond what is laid out, to a third. */
  double curvature(double celsius) {
    if (pressure.hold(celsius)) {
      return pressure.curvature(celsius);
    }
    double logSlope = phase.logSlope(celsius + Phase.ZERO_CELSIUS);
    return phase.pressure(celsius) * logSlope * logSlope;
  }

  /** Temperature at which saturation has this pressure, °C. */
  double temperature(double pascals) {
    double log = Math.log(pascals);
    return temperature.hold(log) ? temperature.at(log) : phase.temperature(pascals);
  }

  /** The pressure where it is laid out. */
  Pieces laidOut() {
    return pressure;
  }
}
