package org.shopclime.unit;

/**
 * A single-speed unit that needs to run only part of the time.
 *
 * <p>Source: the cycling of AHRI Standard 210/240 and 10 CFR 430 subpart B appendix M: part-load
 * factor 1 - C_D (1 - load factor), with the default C_D of 0.25. From memory. It moves power only:
 * what a stopped coil gives back as moisture is left out here; {@link FanRunsOn} puts it in.
 */
public final class PartLoad {

  /** Default cyclic degradation coefficient, 1. */
  public static final double DEGRADATION = 0.25;

  private PartLoad() {}

  /**
   * Load as a part of what the unit can deliver.
   *
   * @param load heat to remove, W, 0 or more
   * @param capacity what the unit delivers running flat out, W, above 0
   * @return 0 to 1; 1 where the load is the larger: it runs flat out, and the rest stays unmet
   * @throws IllegalArgumentException if an argument is outside its range or NaN
   */
  public static double loadFraction(double load, double capacity) {
    if (!(load >= 0 && load < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("load " + load + " W is not 0 or more");
    }
    if (!(capacity > 0 && capacity < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("capacity " + capacity + " W is not above 0");
    }
    return Math.min(1, load / capacity);
  }

  /**
   * Mean power over the hour as a part of the power of running flat out.
   *
   * @param loadFraction load as a part of capacity, 0 to 1
   * @return 0 to 1; the load fraction over the part-load factor
   * @throws IllegalArgumentException if outside 0 to 1 or NaN
   */
  public static double powerFraction(double loadFraction) {
    return powerFraction(loadFraction, DEGRADATION);
  }

  /**
   * The same for a unit that loses more or less at each start.
   *
   * @param loadFraction load as a part of capacity, 0 to 1
   * @param degradation cyclic degradation coefficient, 0 (nothing lost) to below 1
   * @return 0 to 1; the load fraction over the part-load factor. It is also the part of the time
   *     the compressor runs
   * @throws IllegalArgumentException if an argument is outside its range or NaN
   */
  public static double powerFraction(double loadFraction, double degradation) {
    if (!(loadFraction >= 0 && loadFraction <= 1)) {
      throw new IllegalArgumentException("load fraction " + loadFraction + " is not within 0 to 1");
    }
    if (!(degradation >= 0 && degradation < 1)) {
      throw new IllegalArgumentException(
          "degradation coefficient " + degradation + " is not 0 to below 1");
    }
    return loadFraction / (1 - degradation * (1 - loadFraction));
  }
}
