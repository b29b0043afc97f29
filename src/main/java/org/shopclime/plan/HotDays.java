package org.shopclime.plan;

import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.climate.StationClimate;
import org.shopclime.shop.HotDayLevel;
import org.shopclime.shop.Place;

/** The days a shop is judged on, from its place. */
public final class HotDays {

  private HotDays() {}

  /**
   * The climate of a place.
   *
   * @param place the owner's place
   * @param climates the tables
   * @return climate of its station
   * @throws IllegalArgumentException if the station is not in the tables
   */
  public static StationClimate climate(Place place, Climates climates) {
    return climates
        .find(place.station())
        .orElseThrow(() -> new IllegalArgumentException("no station \"" + place.station() + "\""));
  }

  /**
   * The hot day of a place.
   *
   * @param place the owner's place
   * @param climates the tables
   * @return its day, moved bodily to the peak the owner typed, if any
   */
  public static HotDay of(Place place, Climates climates) {
    StationClimate climate = climate(place, climates);
    Level level = level(place.level());
    return place.typedPeak().isPresent()
        ? DesignDays.hotDay(climate, level, place.typedPeak().get())
        : DesignDays.hotDay(climate, level);
  }

  private static Level level(HotDayLevel level) {
    return switch (level) {
      case HOTTEST -> Level.HOTTEST;
      case P0_4 -> Level.P0_4;
      case P1 -> Level.P1;
      case P2 -> Level.P2;
    };
  }
}
