package org.shopclime.form;

import java.awt.geom.Point2D;

/**
 * What is seen of the map: from map to screen and back.
 *
 * @param width width of the view, pixels, more than 0
 * @param height its height, pixels, more than 0
 * @param zoom how many times larger than when the whole map just fits, 1 to {@value #CLOSEST}
 * @param x point of the map in the middle of the view, to the right
 * @param y the same downwards
 */
record MapSight(int width, int height, double zoom, double x, double y) {

  /** Closest look. */
  static final int CLOSEST = 16;

  MapSight {
    if (!(width > 0 && height > 0) || !(zoom >= 1 && zoom <= CLOSEST)) {
      throw new IllegalArgumentException(
          "view of " + width + " x " + height + ", zoom " + zoom + "; takes 1 to " + CLOSEST);
    }
  }

  /** The whole map. */
  static MapSight whole(int width, int height) {
    return new MapSight(width, height, 1, MapFrame.WIDTH / 2.0, MapFrame.HEIGHT / 2.0);
  }

  /** The same look in a view of another size. */
  MapSight sized(int newWidth, int newHeight) {
    return new MapSight(newWidth, newHeight, zoom, x, y);
  }

  /** Pixels for one unit of the map. */
  double scale() {
    double fit = Math.min(width / (double) MapFrame.WIDTH, height / (double) MapFrame.HEIGHT);
    return fit * zoom;
  }

  Point2D.Double toScreen(double mapX, double mapY) {
    return new Point2D.Double(
        width / 2.0 + (mapX - x) * scale(), height / 2.0 + (mapY - y) * scale());
  }

  Point2D.Double toMap(double screenX, double screenY) {
    return new Point2D.Double(
        x + (screenX - width / 2.0) / scale(), y + (screenY - height / 2.0) / scale());
  }

  /** Closer or further by a factor, as far as that goes; the point under the pointer stays. */
  MapSight zoomed(double factor, double screenX, double screenY) {
    double closer = Math.max(1, Math.min(CLOSEST, zoom * factor));
    Point2D.Double stays = toMap(screenX, screenY);
    double share = zoom / closer;
    return at(closer, stays.x + (x - stays.x) * share, stays.y + (y - stays.y) * share);
  }

  /** Moved with the paper by so many pixels. */
  MapSight dragged(double right, double down) {
    return at(zoom, x - right / scale(), y - down / scale());
  }

  /** With a point of the map in the middle, as far as the edge of the map allows. */
  MapSight centred(double mapX, double mapY) {
    return at(zoom, mapX, mapY);
  }

  /** The map does not leave the view: its edge is never further in than it must. */
  private MapSight at(double closer, double mapX, double mapY) {
    MapSight there = new MapSight(width, height, closer, mapX, mapY);
    return new MapSight(
        width,
        height,
        closer,
        within(mapX, MapFrame.WIDTH, width / there.scale()),
        within(mapY, MapFrame.HEIGHT, height / there.scale()));
  }

  private static double within(double middle, double whole, double seen) {
    return seen >= whole ? whole / 2 : Math.max(seen / 2, Math.min(whole - seen / 2, middle));
  }
}
