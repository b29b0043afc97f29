package org.shopclime.plan;

import org.shopclime.balance.YearWeather;
import org.shopclime.run.YearResult;

/**
 * When a heater must help a heat pump through a year.
 *
 * @param hours hours in which it helps
 * @param heat heat it gives in them, kWh
 * @param rising the part of that in hours in which the room is warmed up, as its heating comes on
 *     or is set higher, kWh
 * @param most the most it gives in an hour, W
 * @param coldest outdoor air in the coldest of them, °C; infinite where there is none
 * @param warmest outdoor air in the warmest of them, °C; infinite where there is none
 */
public record HeaterHelp(
    int hours, double heat, double rising, double most, double coldest, double warmest) {

  /** Less is rounding, W. */
  private static final double LEAST = 1;

  /** Less is no rise of the set point, K. */
  private static final double RISE = 0.01;

  private static final double WATTS_PER_KILOWATT = 1000;

  /**
   * Looks through a year.
   *
   * @param year a year's run
   * @param room index of the heat pump's room
   * @return when its heater helps
   */
  public static HeaterHelp of(YearResult year, int room) {
    int hours = 0;
    double heat = 0;
    double rising = 0;
    double most = 0;
    double coldest = Double.POSITIVE_INFINITY;
    double warmest = Double.NEGATIVE_INFINITY;
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      double missing = year.missing(room, hour);
      if (missing > LEAST) {
        hours++;
        heat += missing / WATTS_PER_KILOWATT;
        rising += rises(year, room, hour) ? missing / WATTS_PER_KILOWATT : 0;
        most = Math.max(most, missing);
        coldest = Math.min(coldest, year.year().weather().dryBulb(hour));
        warmest = Math.max(warmest, year.year().weather().dryBulb(hour));
      }
    }
    return new HeaterHelp(hours, heat, rising, most, coldest, warmest);
  }

  private static boolean rises(YearResult year, int room, int hour) {
    int before = Math.floorMod(hour - 1, YearWeather.HOURS);
    return !year.year().plants().heatingOn(room, before)
        || year.year().plants().heatedTo(room, hour, 1)
            > year.year().plants().heatedTo(room, before, 1) + RISE;
  }
}
