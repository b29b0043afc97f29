package org.shopclime.shop;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Look-up of weather stations, handed in so that a shop can be checked without the climate tables.
 *
 * @param known whether a station number or name is in the tables
 * @param nearest numbers or names like the one given, nearest first
 */
public record Stations(Predicate<String> known, Function<String, List<String>> nearest) {

  /**
   * Takes every station.
   *
   * @return a look-up that never complains
   */
  public static Stations any() {
    return new Stations(station -> true, station -> List.of());
  }
}
