package org.shopclime.air;

/**
 * The heat balance of air brought to saturation, which wet bulb and saturated air of an enthalpy
 * share: the saturated humidity ratio times the heat of its water equals the heat the air can give,
 * both straight in the temperature.
 *
 * @param water heat of the water taken up
 * @param givenAtZero heat the air can give down to 0 °C, J per kg of dry air
 * @param givenFall how much that falls with the temperature, J/(kg K), above 0
 * @param pressure Pa
 */
record SaturatedBalance(HeatOfWater water, double givenAtZero, double givenFall, double pressure) {

  /** Newton's step of what is close, K: one better step then leaves an error below 1e-11 K. */
  private static final double CLOSE = 0.02;

  /** Halley's steps shrink by cubes: after one of this size, K, the error is below 1e-11 K. */
  private static final double LAST_STEP = 1e-3;

  /** Water boils below this at any pressure taken, °C; beyond it the balance has a second root. */
  private static final double BOILING = 320;

  /** Reached by no air within the ranges of {@link MoistAir}. */
  private static final int MOST_STEPS = 100;

  private static final HeatOfWater VAPOUR =
      HeatOfWater.of(MoistAir.LATENT_HEAT, -MoistAir.SPECIFIC_HEAT_VAPOUR);

  private static final double PRESSURE_OF_ICE_AT_TRIPLE_POINT =
      Phase.ICE.pressure(Phase.TRIPLE_POINT);

  /** The balance of saturated air of an enthalpy, J/kg. */
  static SaturatedBalance ofEnthalpy(double enthalpy, double pressure) {
    return new SaturatedBalance(VAPOUR, enthalpy, MoistAir.SPECIFIC_HEAT_DRY_AIR, pressure);
  }

  /**
   * The balance times (pressure - vapour pressure), J Pa/kg: it rises with the temperature, is
   * curved upward, and is 0 where the balance holds.
   *
   * @param celsius °C
   * @param vapour saturation pressure there, Pa
   */
  double excess(double celsius, double vapour) {
    return MoistAir.MASS_RATIO * vapour * (water.atZero() - water.fall() * celsius)
        - (pressure - vapour) * (givenAtZero - givenFall * celsius);
  }

  /**
   * Enthalpy of saturated air of a temperature, were it that at which the balance holds, J/kg; good
   * for a guess.
   */
  double enthalpy(double celsius) {
    return MoistAir.SPECIFIC_HEAT_DRY_AIR * celsius
        + (givenAtZero - givenFall * celsius) * water.shareAt(celsius);
  }

  /** Derivative of {@link #enthalpy}, J/(kg K), but for what is small. */
  double enthalpySlope() {
    return MoistAir.SPECIFIC_HEAT_DRY_AIR - givenFall * water.share();
  }

  /**
   * Temperature at which the balance holds over the phase that is stable there, °C.
   *
   * @param fallback where a search begins for which there is no better guess, °C
   */
  double saturation(double fallback) {
    if (excess(Phase.TRIPLE_POINT, PRESSURE_OF_ICE_AT_TRIPLE_POINT) > 0) {
      return Math.min(Phase.TRIPLE_POINT, solve(SaturationCurve.ICE, fallback));
    }
    return Math.max(Phase.TRIPLE_POINT, solve(SaturationCurve.WATER, fallback));
  }

  /**
   * Temperature at which the balance holds, by one step of Householder's where the start is close,
   * else by Halley's method; to 1e-10 K.
   *
   * @param curve saturation over water or ice
   * @param start where the search begins, °C
   * @return °C
   */
  double solve(SaturationCurve curve, double start) {
    Pieces laidOut = curve.laidOut();
    if (laidOut.hold(start)) {
      double step =
          closeStep(
              start,
              laidOut.at(start),
              laidOut.slope(start),
              laidOut.curvature(start),
              laidOut.third(start));
      if (!Double.isNaN(step)) {
        return start - step;
      }
    }
    return search(curve, start);
  }

  private double search(SaturationCurve curve, double start) {
    double t = start;
    for (int i = 0; i < MOST_STEPS; i++) {
      double step = step(t, curve.pressure(t), curve.slope(t), curve.curvature(t));
      t = Math.min(BOILING, t - step);
      if (Math.abs(step) < LAST_STEP) {
        return t;
      }
    }
    throw new IllegalStateException("no saturation found for " + this);
  }

  /**
   * Householder's step of the fourth order, K, from saturation pressure and its derivatives at a
   * temperature; not a number where the answer is not close.
   */
  private double closeStep(
      double celsius, double vapour, double first, double second, double third) {
    double given = givenAtZero - givenFall * celsius;
    double heat = MoistAir.MASS_RATIO * (water.atZero() - water.fall() * celsius) + given;
    double heatFall = MoistAir.MASS_RATIO * water.fall() + givenFall;
    double excess = vapour * heat - pressure * given;
    double slope = first * heat - vapour * heatFall + pressure * givenFall;
    if (!(Math.abs(excess) < CLOSE * slope)) {
      return Double.NaN;
    }
    double curvature = second * heat - 2 * first * heatFall;
    double jerk = third * heat - 3 * second * heatFall;
    double square = 2 * slope * slope;
    double bent = excess * curvature;
    return 3
        * excess
        * (square - bent)
        / (3 * slope * (square - 2 * bent) + excess * excess * jerk);
  }

  /**
   * Halley's step, K, likewise; from afar at most twice Newton's, which does not pass the root of
   * what is curved upward.
   */
  private double step(double celsius, double vapour, double first, double second) {
    double given = givenAtZero - givenFall * celsius;
    double heat = MoistAir.MASS_RATIO * (water.atZero() - water.fall() * celsius) + given;
    double heatFall = MoistAir.MASS_RATIO * water.fall() + givenFall;
    double excess = vapour * heat - pressure * given;
    double slope = first * heat - vapour * heatFall + pressure * givenFall;
    double curvature = second * heat - 2 * first * heatFall;
    double square = slope * slope;
    double whole = 2 * square - excess * curvature;
    return 2 * excess * slope / (whole > square ? whole : square);
  }
}
