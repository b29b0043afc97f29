package org.shopclime.air;

/**
 * A thermometer's wet bulb: water above freezing, ice below.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2017, SI), ch. 1, eq. 33 (water) and 35 (ice).
 */
enum WetBulb {
  /** Bulb of water, at and above 0 °C. */
  WATER(MoistAir.LATENT_HEAT, 2326, MoistAir.SPECIFIC_HEAT_WATER),

  /** Bulb of ice, below 0 °C. */
  ICE(2_830_000, 240, 2100);

  /** Newton's method comes down to the root from one side; this is never reached. */
  private static final int MOST_STEPS = 100;

  /** See {@link Phase}: the step after this one would be below rounding. */
  private static final double LAST_STEP = 1e-9;

  /** Far above the rounding of the excess at 0 °C, and worth less than 1e-10 K; J·Pa/kg. */
  private static final double ROUNDING = 1e-3;

  private static final double PRESSURE_OF_ICE_AT_ZERO = Phase.ICE.pressure(0);

  private static final double PRESSURE_OF_WATER_AT_TRIPLE_POINT =
      Phase.WATER.pressure(Phase.TRIPLE_POINT);

  private final double heatAtZero;
  private final double fall;
  private final double condensed;

  WetBulb(double heatAtZero, double fall, double condensed) {
    this.heatAtZero = heatAtZero;
    this.fall = fall;
    this.condensed = condensed;
  }

  /**
   * The humidity ratio that goes with a wet bulb.
   *
   * @param dryBulb °C
   * @param wetBulb °C
   * @param saturated humidity ratio at saturation at the wet bulb, kg/kg
   * @return humidity ratio, kg/kg; negative where no air is that dry
   */
  static double humidityRatio(double dryBulb, double wetBulb, double saturated) {
    WetBulb bulb = wetBulb < 0 ? ICE : WATER;
    // eq. 33, eq. 35
    return ((bulb.heatAtZero - bulb.fall * wetBulb) * saturated
            - MoistAir.SPECIFIC_HEAT_DRY_AIR * (dryBulb - wetBulb))
        / (bulb.heatAtZero + MoistAir.SPECIFIC_HEAT_VAPOUR * dryBulb - bulb.condensed * wetBulb);
  }

  /**
   * The wet bulb that goes with a humidity ratio. A liquid bulb is taken wherever one is possible.
   *
   * @param dryBulb °C
   * @param humidityRatio kg/kg
   * @param pressure Pa
   * @return wet bulb, °C
   */
  static double temperature(double dryBulb, double humidityRatio, double pressure) {
    double atTriplePoint =
        WATER.excess(
            Phase.TRIPLE_POINT,
            PRESSURE_OF_WATER_AT_TRIPLE_POINT,
            dryBulb,
            humidityRatio,
            pressure);
    if (atTriplePoint <= 0) {
      return WATER.solve(Phase.WATER, dryBulb, humidityRatio, pressure);
    }
    double atZero = WATER.excess(0, PRESSURE_OF_ICE_AT_ZERO, dryBulb, humidityRatio, pressure);
    if (atZero <= ROUNDING) {
      // Between 0 and 0.01 °C, where saturation is that over ice.
      double bulb = WATER.solve(Phase.ICE, dryBulb, humidityRatio, pressure);
      return Math.max(0, Math.min(Phase.TRIPLE_POINT, bulb));
    }
    // Fog colder than 0 °C can be too wet for ice and too dry for water: it melts at 0 °C.
    return Math.min(0, ICE.solve(Phase.ICE, dryBulb, humidityRatio, pressure));
  }

  /**
   * eq. 33 or 35 times (pressure - vapour pressure): it rises with the bulb and is curved upward.
   */
  private double excess(
      double bulb, double vapour, double dryBulb, double humidityRatio, double pressure) {
    return MoistAir.MASS_RATIO * vapour * (heatAtZero - fall * bulb)
        - (pressure - vapour) * given(bulb, dryBulb, humidityRatio);
  }

  /** Heat the air gives up down to the bulb, J/kg. */
  private double given(double bulb, double dryBulb, double humidityRatio) {
    return MoistAir.SPECIFIC_HEAT_DRY_AIR * (dryBulb - bulb)
        + humidityRatio * (heatAtZero + MoistAir.SPECIFIC_HEAT_VAPOUR * dryBulb - condensed * bulb);
  }

  /** Newton's method from the dry bulb, where the excess of any air short of fog is positive. */
  private double solve(Phase phase, double dryBulb, double humidityRatio, double pressure) {
    double bulb = dryBulb;
    for (int i = 0; i < MOST_STEPS; i++) {
      double kelvin = bulb + Phase.ZERO_CELSIUS;
      double vapour = Math.exp(phase.logPressure(kelvin));
      double vapourSlope = vapour * phase.logSlope(kelvin);
      double slope =
          MoistAir.MASS_RATIO * (vapourSlope * (heatAtZero - fall * bulb) - vapour * fall)
              + vapourSlope * given(bulb, dryBulb, humidityRatio)
              + (pressure - vapour) * (MoistAir.SPECIFIC_HEAT_DRY_AIR + humidityRatio * condensed);
      double step = excess(bulb, vapour, dryBulb, humidityRatio, pressure) / slope;
      bulb -= step;
      if (Math.abs(step) < LAST_STEP) {
        return bulb;
      }
    }
    throw new IllegalStateException(
        "no wet bulb found for "
            + dryBulb
            + " °C, "
            + humidityRatio
            + " kg/kg, "
            + pressure
            + " Pa");
  }
}
