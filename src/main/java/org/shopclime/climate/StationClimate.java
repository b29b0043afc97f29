package org.shopclime.climate;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a station's typical year says about its hot, humid and cold days.
 *
 * @param station the station
 * @param pressure mean pressure of the year, Pa, 55000 to 110000
 * @param levels heat at each level, all four
 * @param dailyRange mean of highest less lowest dry bulb on hot days (days that reach the 2 % dry
 *     bulb), K, 0 to 40
 * @param monthRange the same over all days of the month that is hottest at the 1 % level, K, 0 to
 *     40; the figure the trade prints as daily range
 * @param shape part of the range by which each hour's mean lies below the peak on hot days, 0 to 1
 * @param humid moist air and the days on which it comes
 * @param winter cold
 * @param hotDayWind mean wind of each hour on hot days, m/s
 * @param hotHourWind mean wind of the hours at or above the 2 % dry bulb, m/s
 * @param aerosol aerosol depth by month and how it was found
 * @param waterCm mean precipitable water of each month, cm, 0 to 12
 * @param monthDryBulb mean dry bulb of each month, °C
 * @param ground wave of the ground temperature
 * @param degreeDays heating and cooling degree-days of the year
 */
public record StationClimate(
    Station station,
    double pressure,
    Map<Level, HotPoint> levels,
    double dailyRange,
    double monthRange,
    Hours shape,
    HumidPoint humid,
    Winter winter,
    Hours hotDayWind,
    double hotHourWind,
    Aerosol aerosol,
    Months waterCm,
    Months monthDryBulb,
    GroundTemperature ground,
    DegreeDays degreeDays) {

  /** Copies the map, refuses a missing level and figures outside the ranges named. */
  public StationClimate {
    Guard.within("pressure, Pa", pressure, 55_000, 110_000);
    for (Level level : Level.values()) {
      if (!levels.containsKey(level)) {
        throw new IllegalArgumentException("level " + level + " is missing at " + station.id());
      }
    }
    levels = Collections.unmodifiableMap(new EnumMap<>(levels));
    Guard.within("daily range, K", dailyRange, 0, 40);
    Guard.within("range of the month, K", monthRange, 0, 40);
    Guard.within("shape", shape.min(), 0, 1);
    Guard.within("shape", shape.max(), 0, 1);
    Guard.within("wind, m/s", hotDayWind.min(), 0, 40);
    Guard.within("wind, m/s", hotHourWind, 0, 40);
    Guard.within("water, cm", waterCm.min(), 0, 12);
    Guard.within("water, cm", waterCm.max(), 0, 12);
  }

  /**
   * Heat at a level.
   *
   * @param level the level
   * @return its dry bulb, wet bulb and month
   */
  public HotPoint at(Level level) {
    return levels.get(level);
  }

  /** The same with another aerosol depth. */
  StationClimate with(Aerosol other) {
    return new StationClimate(
        station,
        pressure,
        levels,
        dailyRange,
        monthRange,
        shape,
        humid,
        winter,
        hotDayWind,
        hotHourWind,
        other,
        waterCm,
        monthDryBulb,
        ground,
        degreeDays);
  }
}
