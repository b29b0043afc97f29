package org.shopclime.climate;

/**
 * A weather station.
 *
 * @param id six-digit station number, such as 722230
 * @param name name of the place, such as "Mobile Regional AP"
 * @param state two-letter postal code of the state or territory
 * @param timeZoneHours local standard time less universal time, h, -12 to 14
 * @param latitudeDeg latitude, degrees, north positive, -90 to 90
 * @param longitudeDeg longitude, degrees, east positive, -180 to 180
 * @param elevationM height above the sea, m, -500 to 6000
 */
public record Station(
    String id,
    String name,
    String state,
    double timeZoneHours,
    double latitudeDeg,
    double longitudeDeg,
    double elevationM) {

  /** Mean radius of the earth, km (IUGG). */
  private static final double EARTH_RADIUS_KM = 6371.0;

  /** Refuses an empty number or name and figures outside the ranges named. */
  public Station {
    if (id.isBlank() || name.isBlank()) {
      throw new IllegalArgumentException(
          "a station needs a number and a name: " + id + ", " + name);
    }
    Guard.within("time zone, h", timeZoneHours, -12, 14);
    Guard.within("latitude, degrees", latitudeDeg, -90, 90);
    Guard.within("longitude, degrees", longitudeDeg, -180, 180);
    Guard.within("elevation, m", elevationM, -500, 6000);
  }

  /**
   * Distance along the great circle.
   *
   * <p>Source: haversine formula on a sphere of 6,371 km. Error: within 0.6 % of the ellipsoid.
   *
   * @param latitude latitude of the other point, degrees, -90 to 90
   * @param longitude longitude of the other point, degrees, east positive, -180 to 180
   * @return distance, km
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public double distanceKm(double latitude, double longitude) {
    Guard.within("latitude, degrees", latitude, -90, 90);
    Guard.within("longitude, degrees", longitude, -180, 180);
    double here = Math.toRadians(latitudeDeg);
    double there = Math.toRadians(latitude);
    double north = Math.sin((there - here) / 2);
    double east = Math.sin(Math.toRadians(longitude - longitudeDeg) / 2);
    double h = north * north + Math.cos(here) * Math.cos(there) * east * east;
    return 2 * EARTH_RADIUS_KM * Math.asin(Math.sqrt(Math.min(1, h)));
  }
}
