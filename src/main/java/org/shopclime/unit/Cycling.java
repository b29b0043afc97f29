package org.shopclime.unit;

import java.util.Optional;
import org.shopclime.air.AirState;

/**
 * How a unit behaves that runs on and off to give a part of what it can.
 *
 * @param degradation what starts cost: coefficient C_D of {@link PartLoad}, 0 to below 1
 * @param fanRunsOn the indoor fan between runs; empty if it stops with the compressor, when what
 *     hangs on the coil is taken to drain away
 */
public record Cycling(double degradation, Optional<FanRunsOn> fanRunsOn) {

  /** Checks the range. */
  public Cycling {
    if (!(degradation >= 0 && degradation < 1)) {
      throw new IllegalArgumentException(
          "degradation coefficient " + degradation + " is not 0 to below 1");
    }
  }

  /**
   * The usual: default degradation, and the fan stops with the compressor.
   *
   * @return the cycling
   */
  public static Cycling usual() {
    return new Cycling(PartLoad.DEGRADATION, Optional.empty());
  }

  /**
   * The same with a fan that runs on.
   *
   * @param fan the fan between runs
   * @return the cycling
   */
  public Cycling withFanRunningOn(FanRunsOn fan) {
    return new Cycling(degradation, Optional.of(fan));
  }

  /**
   * Part of the time the compressor runs; it starts poorly, so that is more than the load.
   *
   * @param load load as a part of capacity, 0 to 1
   * @return 0 to 1
   * @throws IllegalArgumentException if outside 0 to 1 or NaN
   */
  public double runFraction(double load) {
    return PartLoad.powerFraction(load, degradation);
  }

  /** Part of the latent capacity that is left, 0 to 1. */
  double latentKept(double run, double latentOfRated, AirState room) {
    return fanRunsOn.isEmpty() || run >= 1 || !(latentOfRated > 0)
        ? 1
        : fanRunsOn.get().latentKept(run, latentOfRated, room.dryBulb() - room.wetBulb());
  }

  /** Power of the indoor fan while the compressor stands, W. */
  double fanPowerBetweenRuns() {
    return fanRunsOn.isEmpty() ? 0 : fanRunsOn.get().fanPower();
  }
}
