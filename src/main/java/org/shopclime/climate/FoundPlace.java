package org.shopclime.climate;

/**
 * A station that was found.
 *
 * @param station the station
 * @param distanceKm great circle from the point asked for, or from the first station found where a
 *     name was asked for, km, 0 or more
 */
public record FoundPlace(Station station, double distanceKm) {
  /** Refuses a negative distance. */
  public FoundPlace {
    Guard.within("distance, km", distanceKm, 0, 21_000);
  }
}
