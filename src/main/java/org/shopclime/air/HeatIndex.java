package org.shopclime.air;

/**
 * Heat index: how warm a person in the shade finds damp air, told as a temperature.
 *
 * <p>Source: Rothfusz, National Weather Service technical attachment SR 90-23 (1990), a regression
 * on Steadman (1979), with the two adjustments and the simple form that the Weather Prediction
 * Center publishes beside it. Coefficients from memory; held against the printed chart ({@code
 * HeatPublishedTest}).
 *
 * <p>Error: the regression lies within 1.3 °F of Steadman's table (told by its author). Where it
 * takes over from the simple form, near 80 °F, the value steps: by less than 1.6 °F in air of 10 to
 * 60 %, by up to 6 °F in saturated air; kept as published. Beyond the chart, which ends at {@link
 * #CHART_END}, it is extrapolated. It knows neither sun, radiant heat, air speed nor how hard one
 * works.
 */
public final class HeatIndex {

  /** Highest heat index of the printed chart, °C (137 °F). */
  public static final double CHART_END = 105 / 1.8;

  private static final double COLDEST = -50;
  private static final double HOTTEST = 100;

  private HeatIndex() {}

  /**
   * Heat index.
   *
   * @param dryBulb air temperature, °C, -50 to 100
   * @param relativeHumidity 0 to 1
   * @return heat index, °C
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double of(double dryBulb, double relativeHumidity) {
    MoistAir.check("dry bulb", dryBulb, COLDEST, HOTTEST, "°C");
    MoistAir.check("relative humidity", relativeHumidity, 0, 1, "");
    return (fahrenheit(1.8 * dryBulb + 32, 100 * relativeHumidity) - 32) / 1.8;
  }

  private static double fahrenheit(double t, double percent) {
    double simple = 0.5 * (t + 61 + (t - 68) * 1.2 + percent * 0.094);
    double averaged = (simple + t) / 2;
    if (averaged < 80) {
      return averaged;
    }
    double index =
        -42.379
            + 2.04901523 * t
            + 10.14333127 * percent
            - 0.22475541 * t * percent
            - 6.83783e-3 * t * t
            - 5.481717e-2 * percent * percent
            + 1.22874e-3 * t * t * percent
            + 8.5282e-4 * t * percent * percent
            - 1.99e-6 * t * t * percent * percent;
    if (percent < 13 && t <= 112) {
      return index - (13 - percent) / 4 * Math.sqrt(Math.max(0, (17 - Math.abs(t - 95)) / 17));
    }
    if (percent > 85 && t <= 87) {
      return index + (percent - 85) / 10 * ((87 - t) / 5);
    }
    return index;
  }
}
