package org.shopclime.air;

/**
 * A thermometer's wet bulb: water above freezing, ice below.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2017, SI), ch. 1, eq. 33 (water) and 35 (ice).
 */
final class WetBulb {

  /** Bulb of water, at and above 0 °C. */
  private static final WetBulb WATER =
      new WetBulb(
          HeatOfWater.of(MoistAir.LATENT_HEAT, 2326),
          MoistAir.SPECIFIC_HEAT_WATER,
          SaturationCurve.WATER,
          Double.MAX_VALUE);

  /**
   * Bulb of ice, below 0 °C. Fog colder than that can be too wet for ice and too dry for water: it
   * melts at 0 °C.
   */
  private static final WetBulb ICE =
      new WetBulb(HeatOfWater.of(2_830_000, 240), 2100, SaturationCurve.ICE, 0);

  /** Far above the rounding of the excess at 0 °C, and worth less than 1e-10 K; J·Pa/kg. */
  private static final double ROUNDING = 1e-3;

  private static final double PRESSURE_OF_ICE_AT_ZERO = Phase.ICE.pressure(0);

  private static final double PRESSURE_OF_WATER_AT_TRIPLE_POINT =
      Phase.WATER.pressure(Phase.TRIPLE_POINT);

  private final HeatOfWater water;
  private final double condensed;
  private final SaturationCurve curve;
  private final double warmest;

  private WetBulb(HeatOfWater water, double condensed, SaturationCurve curve, double warmest) {
    this.water = water;
    this.condensed = condensed;
    this.curve = curve;
    this.warmest = warmest;
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
    return ((bulb.water.atZero() - bulb.water.fall() * wetBulb) * saturated
            - MoistAir.SPECIFIC_HEAT_DRY_AIR * (dryBulb - wetBulb))
        / (bulb.water.atZero()
            + MoistAir.SPECIFIC_HEAT_VAPOUR * dryBulb
            - bulb.condensed * wetBulb);
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
    SaturatedBalance water = WATER.balance(dryBulb, humidityRatio, pressure);
    double atTriplePoint = water.excess(Phase.TRIPLE_POINT, PRESSURE_OF_WATER_AT_TRIPLE_POINT);
    double atZero = water.excess(0, PRESSURE_OF_ICE_AT_ZERO);
    if (atTriplePoint >= 0 && atZero <= ROUNDING) {
      // Between 0 and 0.01 °C, where saturation is that over ice.
      double bulb = water.solve(SaturationCurve.ICE, Phase.TRIPLE_POINT);
      return Math.max(0, Math.min(Phase.TRIPLE_POINT, bulb));
    }
    WetBulb kind = atTriplePoint < 0 ? WATER : ICE;
    SaturatedBalance balance = kind.balance(dryBulb, humidityRatio, pressure);
    double guess = FirstGuess.of(water.givenAtZero(), balance, Math.min(dryBulb, kind.warmest));
    double bulb = balance.solve(kind.curve, guess);
    return bulb < kind.warmest ? bulb : kind.warmest;
  }

  /** eq. 33 or 35 of one air, with the bulb open. */
  private SaturatedBalance balance(double dryBulb, double humidityRatio, double pressure) {
    return new SaturatedBalance(
        water,
        MoistAir.SPECIFIC_HEAT_DRY_AIR * dryBulb
            + humidityRatio * (water.atZero() + MoistAir.SPECIFIC_HEAT_VAPOUR * dryBulb),
        MoistAir.SPECIFIC_HEAT_DRY_AIR + humidityRatio * condensed,
        pressure);
  }
}
