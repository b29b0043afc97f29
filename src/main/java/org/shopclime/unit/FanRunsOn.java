package org.shopclime.unit;

/**
 * An indoor fan that runs on while the compressor stands: its power heats the room, and the water
 * on the coil goes back into the air. The total stays, latent becomes sensible.
 *
 * <p>Source: Henderson and Rengarajan, A model to predict the latent capacity of air conditioners
 * and heat pumps at part-load conditions with constant fan operation, ASHRAE Transactions 102(1),
 * 1996, with evaporation falling off in proportion to the water left; from memory, as are the usual
 * figures. A thermostat cycles most often at half load, 4 N x (1 - x) times an hour. Whether a
 * given coil holds as much water is not known before it is measured: read it as "how bad it can
 * get".
 *
 * @param fanPower power of the indoor fan, W, 0 or more
 * @param secondsToDrip how long the coil, dry at first, runs in the rated state before it drips, s,
 *     above 0
 * @param evaporation evaporation off the wet coil as the compressor stops, part of the rated latent
 *     capacity, above 0
 * @param startSeconds time constant in which latent capacity builds up after a start, s, above 0
 * @param mostCycles most cycles in an hour, above 0
 */
public record FanRunsOn(
    double fanPower,
    double secondsToDrip,
    double evaporation,
    double startSeconds,
    double mostCycles) {

  /** Dry bulb less wet bulb of the room in the rated state, K. */
  private static final double RATED_DEPRESSION =
      RatingPoint.INDOOR_DRY_BULB - RatingPoint.INDOOR_WET_BULB;

  private static final int MOST_STEPS = 100;

  /** Checks the ranges. */
  public FanRunsOn {
    Figures.requireNotNegative("fan power", fanPower, "W");
    Figures.requirePositive("time to drip", secondsToDrip, "s");
    Figures.requirePositive("evaporation", evaporation, "of the rated latent capacity");
    Figures.requirePositive("time constant of a start", startSeconds, "s");
    Figures.requirePositive("most cycles", mostCycles, "an hour");
  }

  /**
   * The usual figures: 1,000 s to drip, evaporation 1.5 times the latent capacity, a start of 60 s,
   * 3 cycles an hour; from memory.
   *
   * @param fanPower power of the indoor fan, W, 0 or more
   * @return the fan
   */
  public static FanRunsOn usual(double fanPower) {
    return new FanRunsOn(fanPower, 1000, 1.5, 60, 3);
  }

  /**
   * Part of the latent capacity that is left.
   *
   * @param run part of the time the compressor runs, 0 to 1
   * @param latentOfRated latent capacity of the running unit as a part of the rated, above 0
   * @param depression dry bulb less wet bulb of the room, K, 0 or more
   * @return 0 to 1
   */
  double latentKept(double run, double latentOfRated, double depression) {
    if (run <= 0) {
      return 0;
    }
    double on = 3600 / (4 * mostCycles * (1 - run));
    double ratio = evaporation / latentOfRated * Math.max(0, depression) / RATED_DEPRESSION;
    double drip = secondsToDrip / latentOfRated;
    if (ratio == 0) {
      return 1;
    }
    // the coil is dry after 2 drip / ratio
    double off = Math.min(3600 / (4 * mostCycles * run), 2 * drip / ratio);
    double evaporated = ratio * off * (1 - ratio * off / (4 * drip));
    double useful = on + startSeconds * Math.expm1(-on / startSeconds);
    return Math.max(0, 1 - refill(evaporated) / useful);
  }

  /** Time after a start until the coil holds again what evaporated, s; Newton from above. */
  private double refill(double evaporated) {
    double time = evaporated + startSeconds;
    for (int i = 0; i < MOST_STEPS; i++) {
      double over = time + startSeconds * Math.expm1(-time / startSeconds) - evaporated;
      double next = time + over / Math.expm1(-time / startSeconds);
      if (!(next < time && next > 0)) {
        return time;
      }
      time = next;
    }
    return time;
  }
}
