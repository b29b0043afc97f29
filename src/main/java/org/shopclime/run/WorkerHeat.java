package org.shopclime.run;

import java.util.Collection;
import java.util.OptionalInt;
import org.shopclime.air.HeatIndex;
import org.shopclime.air.WetBulbGlobe;
import org.shopclime.balance.Profile;

/**
 * A lived day as a worker bears it: an estimate from means of the hour, not a measurement and not a
 * medical verdict.
 *
 * @param heatIndex heat index of each hour, °C
 * @param wetBulbGlobe wet-bulb globe temperature indoors of each hour, °C
 * @param airSpeed air speed at the worker it is reckoned for, of each hour, m/s
 */
public record WorkerHeat(Profile heatIndex, Profile wetBulbGlobe, Profile airSpeed) {

  /**
   * A day seen by its worker. The radiant temperature is the one that makes the trace's operative
   * temperature its mean with the air; fog counts as saturated air.
   *
   * @param trace the room through the day
   * @param airSpeed air speed at the worker, m/s, 0.05 to 5
   * @return heat index and wet-bulb globe temperature
   * @throws IllegalArgumentException if the speed or a temperature is outside what those take
   */
  public static WorkerHeat of(Trace trace, double airSpeed) {
    return of(trace, Profile.of(hour -> airSpeed));
  }

  /**
   * A day seen by its worker, in air that moves faster in some hours than in others.
   *
   * @param trace the room through the day
   * @param airSpeed air speed at the worker, m/s, 0.05 to 5
   * @return heat index and wet-bulb globe temperature
   * @throws IllegalArgumentException if a speed or a temperature is outside what those take
   */
  public static WorkerHeat of(Trace trace, Profile airSpeed) {
    return new WorkerHeat(
        Profile.of(hour -> HeatIndex.of(trace.air().at(hour), humidity(trace, hour))),
        Profile.of(
            hour ->
                WetBulbGlobe.indoors(
                    trace.air().at(hour),
                    2 * trace.operative().at(hour) - trace.air().at(hour),
                    humidity(trace, hour),
                    airSpeed.at(hour))),
        airSpeed);
  }

  private static double humidity(Trace trace, int hour) {
    return Math.max(0, Math.min(1, trace.relativeHumidity().at(hour)));
  }

  /**
   * The worst of some hours.
   *
   * @param profile one of the two profiles
   * @param hours hours ending, 1 to 24
   * @return the first of equals; nothing of no hours
   */
  public static OptionalInt worst(Profile profile, Collection<Integer> hours) {
    int worst = 0;
    for (int hour : hours) {
      if (worst == 0 || profile.at(hour) > profile.at(worst)) {
        worst = hour;
      }
    }
    return worst == 0 ? OptionalInt.empty() : OptionalInt.of(worst);
  }
}
