package org.shopclime.unit;

import org.shopclime.air.MoistAir;

/**
 * The indoor coil as a bypass factor: part of the air leaves untouched, the rest saturated at the
 * apparatus dew point.
 *
 * <p>Source: apparatus dew point and bypass factor as in ASHRAE Handbook - HVAC Systems and
 * Equipment, air-cooling coils; with the air-side resistance kept constant, the bypass factor is
 * exp(-NTU), NTU = UA / (m cp).
 *
 * @param contact UA / cp of the coil, kg/s: mass flow at which NTU is 1
 */
record Coil(double contact) {

  /** Steps in which the saturation line is searched for the apparatus dew point, K. */
  private static final double SEARCH_STEP = 0.25;

  /** Halvings of one search step, down to 1e-15 K. */
  private static final int HALVINGS = 48;

  /**
   * The coil that gives this sensible heat ratio in the rated state, at sea level.
   *
   * @param capacity total capacity in that state, W
   * @param sensibleHeatRatio sensible part of it
   * @param airflow indoor airflow, m³/s
   * @throws IllegalArgumentException if no coil above 0 °C does that
   */
  static Coil ofRating(double capacity, double sensibleHeatRatio, double airflow) {
    double p = RatingPoint.PRESSURE;
    double t = RatingPoint.INDOOR_DRY_BULB;
    double w = MoistAir.humidityRatioFromWetBulb(t, RatingPoint.INDOOR_WET_BULB, p);
    double mass = airflow * MoistAir.dryAirDensity(t, w, p);
    double h = MoistAir.enthalpy(t, w);
    double leavingH = h - capacity / mass;
    double leavingW = w - (1 - sensibleHeatRatio) * capacity / mass / Saturation.vapourEnthalpy(t);
    double slope = (w - leavingW) / (h - leavingH);
    // the line through both states, followed down from the leaving one until it meets saturation
    double above = Saturation.temperature(leavingH, p);
    if (!(excess(above, p, w, h, slope) > 0)) {
      throw impossible(capacity, sensibleHeatRatio, airflow, "air would leave beyond saturation");
    }
    double below = above - SEARCH_STEP;
    while (excess(below, p, w, h, slope) > 0) {
      above = below;
      below -= SEARCH_STEP;
      if (below < 0) {
        throw impossible(capacity, sensibleHeatRatio, airflow, "no coil above 0 °C does that");
      }
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (above + below);
      if (excess(middle, p, w, h, slope) > 0) {
        above = middle;
      } else {
        below = middle;
      }
    }
    double saturatedH = Saturation.enthalpy(above, p);
    return new Coil(-Math.log((leavingH - saturatedH) / (h - saturatedH)) * mass);
  }

  private static IllegalArgumentException impossible(
      double capacity, double sensibleHeatRatio, double airflow, String why) {
    return new IllegalArgumentException(
        "sensible heat ratio "
            + sensibleHeatRatio
            + " with "
            + capacity
            + " W and "
            + airflow
            + " m³/s is not possible at the rating point: "
            + why);
  }

  /** How far saturation at this temperature lies above the coil line, kg/kg. */
  private static double excess(double celsius, double p, double w, double h, double slope) {
    double saturated = MoistAir.saturationHumidityRatio(celsius, p);
    return saturated - w + slope * (h - MoistAir.enthalpy(celsius, saturated));
  }

  /**
   * Part of the air that passes untouched.
   *
   * @param massFlow dry air, kg/s
   * @return 0 to 1
   */
  double bypassFactor(double massFlow) {
    return Math.exp(-contact / massFlow);
  }
}
