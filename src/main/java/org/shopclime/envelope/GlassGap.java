package org.shopclime.envelope;

/**
 * Upright gap of air between two bare panes.
 *
 * <p>Source: EN 673:2011, 5.3 and Table 1 (gas and radiation conductance, Nu = 0.035 (Gr Pr)^0.38,
 * at least 1; air from -10 to 20 °C, straight beyond). The density of the air goes with pressure
 * and temperature.
 *
 * @param width width of the gap, m, 0.001 to 0.1
 * @param emittance infrared emittance of both panes towards it, 0.01 to 1; bare glass 0.837 (EN
 *     673, 5.3.3)
 */
public record GlassGap(double width, double emittance) {

  /** Mean temperature at which glazing is rated, °C (EN 673, 6). */
  private static final double RATED_MEAN = 10;

  /** Difference between the panes at which glazing is rated, K (EN 673, 6). */
  private static final double RATED_DIFFERENCE = 15;

  private static final double SEA_LEVEL = 101_325;
  private static final double KELVIN = 273.15;
  private static final double GRAVITY = 9.81;
  private static final double GAS_CONSTANT = 287.055;
  private static final double SPECIFIC_HEAT = 1008;

  /** Refuses figures outside their ranges. */
  public GlassGap {
    Range.require("width of a gap, m,", width, 0.001, 0.1);
    Range.require("emittance of panes", emittance, 0.01, 1);
  }

  /**
   * Conductance at rating conditions.
   *
   * @return W/(m²·K)
   */
  public double ratedConductance() {
    return conductance(RATED_MEAN, RATED_DIFFERENCE, SEA_LEVEL);
  }

  /**
   * Conductance, convection and radiation together.
   *
   * @param meanCelsius mean temperature of the two panes, °C, -80 to 150
   * @param difference difference between them, K, either sign
   * @param pressure air pressure, Pa, 30000 to 110000
   * @return W/(m²·K)
   * @throws IllegalArgumentException if temperature or pressure is outside its range
   */
  public double conductance(double meanCelsius, double difference, double pressure) {
    Range.require("mean temperature of a gap, °C,", meanCelsius, -80, 150);
    Range.require("pressure, Pa,", pressure, 30_000, 110_000);
    double kelvin = meanCelsius + KELVIN;
    double conductivity = 0.02416 + 8e-5 * meanCelsius;
    double viscosity = 1.711e-5 + 5e-8 * meanCelsius;
    double density = pressure / (GAS_CONSTANT * kelvin);
    double grashof =
        GRAVITY
            * width
            * width
            * width
            * Math.abs(difference)
            * density
            * density
            / (kelvin * viscosity * viscosity);
    double prandtl = viscosity * SPECIFIC_HEAT / conductivity;
    double nusselt = Math.max(1, 0.035 * Math.pow(grashof * prandtl, 0.38));
    double radiant = Films.radiative(1, meanCelsius) / (2 / emittance - 1);
    return nusselt * conductivity / width + radiant;
  }
}
