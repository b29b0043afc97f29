package org.shopclime.climate;

import java.util.EnumMap;
import java.util.Map;

/**
 * A climate made for a test, easy to reckon with: peak 35 °C, range 12 K falling straight from hour
 * 12.
 */
final class MadeClimate {
  /** 1 at hour 24 and 0 at hour 12, straight between. */
  static final Hours SHAPE = Hours.from(hour -> Math.abs(hour - 12) / 12.0);

  private MadeClimate() {}

  static StationClimate at(Station station) {
    Map<Level, HotPoint> levels = new EnumMap<>(Level.class);
    levels.put(Level.HOTTEST, new HotPoint(38, 25, 6));
    levels.put(Level.P0_4, new HotPoint(36, 24.5, 7));
    levels.put(Level.P1, new HotPoint(35, 24, 8));
    levels.put(Level.P2, new HotPoint(33, 23.5, 7));
    return new StationClimate(
        station,
        101_325,
        levels,
        12,
        10,
        SHAPE,
        new HumidPoint(25, 28, 9, 31, 8),
        new Winter(-2, -4, 3),
        Hours.from(hour -> hour / 10.0),
        4,
        new Aerosol(Months.from(month -> month / 100.0), new AerosolSource.Own()),
        Months.from(month -> month / 4.0),
        Months.from(month -> month),
        new GroundTemperature(19, 9, 15),
        new DegreeDays(900, 1400));
  }
}
