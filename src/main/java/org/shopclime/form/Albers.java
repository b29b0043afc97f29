package org.shopclime.form;

import java.awt.geom.Point2D;

/**
 * Albers equal-area conic projection of the sphere: places far apart keep their areas, so that a
 * large country looks as on most printed maps of it.
 *
 * <p>Source: J. P. Snyder, Map Projections - A Working Manual, USGS Professional Paper 1395 (1987),
 * section 14, equations 14-1 to 14-6 with radius 1. Error: the earth's flattening moves a point by
 * less than 0.5 % of the map, which no eye sees here.
 */
final class Albers {

  private static final double TURN = 360;

  private final double n;
  private final double c;
  private final double originRho;
  private final double originLongitude;

  /**
   * A projection.
   *
   * @param south southern standard parallel, degrees
   * @param north northern standard parallel, degrees; its sine and that of the other must not add
   *     up to nothing
   * @param originLatitude latitude of the point that becomes 0, 0, degrees
   * @param originLongitude longitude of that point, degrees
   */
  Albers(double south, double north, double originLatitude, double originLongitude) {
    double sine = Math.sin(Math.toRadians(south));
    double cosine = Math.cos(Math.toRadians(south));
    this.n = (sine + Math.sin(Math.toRadians(north))) / 2;
    if (!(Math.abs(n) > 1e-6)) {
      throw new IllegalArgumentException(
          "standard parallels " + south + " and " + north + "; takes two that make a cone");
    }
    this.c = cosine * cosine + 2 * n * sine;
    this.originRho = rho(originLatitude);
    this.originLongitude = originLongitude;
  }

  private double rho(double latitude) {
    return Math.sqrt(c - 2 * n * Math.sin(Math.toRadians(latitude))) / n;
  }

  /**
   * Where a place comes to lie.
   *
   * @param latitude latitude, degrees, -90 to 90
   * @param longitude longitude, degrees, east positive, -180 to 180
   * @return x to the right and y upwards, in radii of the earth
   */
  Point2D.Double of(double latitude, double longitude) {
    // the short way round, so that islands beyond the date line stay by their neighbours
    double east = Math.IEEEremainder(longitude - originLongitude, TURN);
    double theta = n * Math.toRadians(east);
    double rho = rho(latitude);
    return new Point2D.Double(rho * Math.sin(theta), originRho - rho * Math.cos(theta));
  }
}
