package org.shopclime.climate;

/**
 * Temperature of undisturbed ground as a wave through the year.
 *
 * <p>Source: Kusuda and Achenbach, Earth temperature and thermal diffusivity at selected stations
 * in the United States, ASHRAE Transactions 71(1), 1965: T(z,t) = mean - amplitude exp(-z/d)
 * cos(2π/365 (t - t0) - z/d), d = sqrt(365 a/π). We take the wave of the air temperature for that
 * of the bare surface, as is common practice where no ground was measured.
 *
 * <p>Error: open ground runs about 1 to 2 K warmer than the air in the yearly mean (common
 * practice); snow and shade change it.
 *
 * @param annualMean mean of the year, °C, -30 to 40
 * @param amplitude half of the yearly swing at the surface, K, 0 to 40
 * @param dayOfMinimum day of the year on which the surface is coldest, 1 to 366
 */
public record GroundTemperature(double annualMean, double amplitude, double dayOfMinimum) {
  private static final double DAYS = 365;

  /** Refuses figures outside the ranges named. */
  public GroundTemperature {
    Guard.within("mean ground temperature, °C", annualMean, -30, 40);
    Guard.within("ground amplitude, K", amplitude, 0, 40);
    Guard.within("day of minimum", dayOfMinimum, 1, 366);
  }

  /**
   * The wave of a year's air: first harmonic of its dry bulb.
   *
   * @param year hours of a year
   * @return mean, half swing and coldest day
   */
  public static GroundTemperature ofAir(WeatherYear year) {
    double sum = 0;
    double cosine = 0;
    double sine = 0;
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      double angle = 2 * Math.PI * hour / WeatherYear.COUNT;
      double dryBulb = year.dryBulb(hour);
      sum += dryBulb;
      cosine += dryBulb * Math.cos(angle);
      sine += dryBulb * Math.sin(angle);
    }
    double amplitude = 2 * Math.hypot(cosine, sine) / WeatherYear.COUNT;
    double coldest = Math.atan2(-sine, -cosine) / (2 * Math.PI);
    // A fraction of the year past midnight of 1 January; day 1 is its first day.
    double day = 1 + DAYS * (coldest < 0 ? coldest + 1 : coldest);
    return new GroundTemperature(sum / WeatherYear.COUNT, amplitude, day);
  }

  /**
   * Temperature at a depth on a day.
   *
   * @param depth depth below the surface, m, 0 or more; a wide slab with a short edge along
   *     outdoors is as if it lay beyond 50 m, where nothing but the mean is left
   * @param dayOfYear day of the year, 1 to 366
   * @param diffusivity thermal diffusivity of the soil, m²/day, 0.001 to 1; usual soils have 0.03
   *     to 0.08
   * @return temperature, °C
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public double at(double depth, double dayOfYear, double diffusivity) {
    Guard.within("depth, m", depth, 0, Double.MAX_VALUE);
    Guard.within("day of the year", dayOfYear, 1, 366);
    Guard.within("diffusivity, m²/day", diffusivity, 0.001, 1);
    double damping = depth / Math.sqrt(DAYS * diffusivity / Math.PI);
    double angle = 2 * Math.PI / DAYS * (dayOfYear - dayOfMinimum) - damping;
    return annualMean - amplitude * Math.exp(-damping) * Math.cos(angle);
  }
}
