package org.shopclime.climate;

/**
 * A point on the earth.
 *
 * @param latitudeDeg latitude, degrees, north positive, -90 to 90
 * @param longitudeDeg longitude, degrees, east positive, -180 to 180
 */
public record GeoPoint(double latitudeDeg, double longitudeDeg) {
  /** Refuses figures outside the ranges named. */
  public GeoPoint {
    Guard.within("latitude, degrees", latitudeDeg, -90, 90);
    Guard.within("longitude, degrees", longitudeDeg, -180, 180);
  }

  /**
   * The point on which a station stands.
   *
   * @param station the station
   * @return its latitude and longitude
   */
  public static GeoPoint of(Station station) {
    return new GeoPoint(station.latitudeDeg(), station.longitudeDeg());
  }
}
