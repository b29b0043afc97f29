package org.shopclime.unit;

import org.shopclime.air.AirState;

/**
 * An indoor fan that runs on while the compressor stands: its power heats the room, and the water
 * on the coil goes back into the air. The total stays, latent becomes sensible.
 *
 * <p>Source: Henderson and Rengarajan, A model to predict the latent capacity of air conditioners
 * and heat pumps at part-load conditions with constant fan operation, ASHRAE Transactions 102(1),
 * 1996, with evaporation falling off in a straight line with time, so with the root of the water
 * left ({@link WetCoil}); from memory, as are the usual figures. What drips is what condenses less
 * what evaporates, so that the water closes. A thermostat cycles most often at half load, 4 N x (1
 * - x) times an hour. Whether a given coil holds as much water is not known before it is measured:
 * read it as "how bad it can get".
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
    double off = 3600 / (4 * mostCycles * run);
    // in seconds of rated latent capacity
    WetCoil coil = new WetCoil(fanPower, secondsToDrip, evaporation * dryness(depression), 1);
    double useful = on + startSeconds * Math.expm1(-on / startSeconds);
    return Math.max(0, 1 - coil.evaporated(off) / (latentOfRated * useful));
  }

  /**
   * The coil of a unit in some air.
   *
   * @param ratedLatent rated latent capacity of the unit, W, 0 or more
   * @param room air of the room
   * @return what hangs on it, and how fast that evaporates
   * @throws IllegalArgumentException if the latent capacity is negative, infinite or NaN
   */
  public WetCoil over(double ratedLatent, AirState room) {
    Figures.requireNotNegative("rated latent capacity", ratedLatent, "W");
    double rated = ratedLatent / Saturation.vapourEnthalpy(RatingPoint.INDOOR_DRY_BULB);
    return new WetCoil(
        fanPower,
        secondsToDrip * rated,
        evaporation * rated * dryness(room.dryBulb() - room.wetBulb()),
        Saturation.vapourEnthalpy(room.dryBulb()));
  }

  /** How much drier than in the rated state the air is, 1. */
  private static double dryness(double depression) {
    return Math.max(0, depression) / RATED_DEPRESSION;
  }
}
