package org.shopclime.form;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A piece of the map of stations with a projection of its own: the lower 48 states, and far states
 * and islands in boxes where the large piece leaves room, as printed maps do it. The whole map is
 * {@value #WIDTH} wide and {@value #HEIGHT} high, y downwards.
 */
final class MapFrame {

  /** Width of the whole map. */
  static final int WIDTH = 100;

  /** Height of the whole map. */
  static final int HEIGHT = 66;

  /** Part of a box that is left free around what is in it. */
  private static final double MARGIN = 0.12;

  /** Room for the name of a box. */
  private static final double NAME = 2.6;

  /** The lower 48 states; standard parallels of USGS Professional Paper 1395, section 14. */
  static final MapFrame LOWER_48 =
      new MapFrame(
          "",
          new Albers(29.5, 45.5, 37.5, -96),
          new Rectangle2D.Double(1, 1, 98, 63),
          List.of(
              at(48.38, -124.73), // Cape Flattery
              at(40.44, -124.41), // Cape Mendocino
              at(24.55, -81.8), // Key West
              at(44.8, -66.95)), // West Quoddy Head
          List.of());

  /** Alaska; standard parallels of the same source. */
  static final MapFrame ALASKA =
      new MapFrame(
          "Alaska",
          new Albers(55, 65, 60, -154),
          new Rectangle2D.Double(0, 49, 26, 17),
          List.of(
              at(52.9, 173), // Attu
              at(71.39, -156.5), // Point Barrow
              at(54.7, -130), // southern end of the panhandle
              at(51.5, -177)), // Aleutian islands
          List.of("AK"));

  /** Hawaii; standard parallels of the same source. */
  static final MapFrame HAWAII =
      new MapFrame(
          "Hawaii",
          new Albers(8, 18, 20, -157.5),
          new Rectangle2D.Double(27, 56, 12, 10),
          List.of(at(22.23, -160.25), at(18.9, -155.7), at(19.5, -154.8)),
          List.of("HI"));

  /** Puerto Rico and the Virgin Islands. */
  static final MapFrame CARIBBEAN =
      new MapFrame(
          "P. Rico",
          new Albers(8, 18, 18, -66),
          new Rectangle2D.Double(90, 56, 10, 10),
          List.of(at(18.5, -67.3), at(17.7, -64.5)),
          List.of("PR", "VI"));

  /** Guam and islands near it. */
  static final MapFrame PACIFIC =
      new MapFrame(
          "Guam",
          new Albers(8, 18, 13.5, 144.8),
          new Rectangle2D.Double(55, 58, 8, 8),
          List.of(at(12.5, 144), at(14.5, 145.6)),
          List.of("GU", "MP"));

  /** All pieces, the large one first. */
  static final List<MapFrame> ALL = List.of(LOWER_48, ALASKA, HAWAII, CARIBBEAN, PACIFIC);

  private final String title;
  private final Albers projection;
  private final Rectangle2D.Double box;
  private final List<String> states;
  private final double scale;
  private final double left;
  private final double top;

  private MapFrame(
      String title,
      Albers projection,
      Rectangle2D.Double box,
      List<Point2D.Double> ends,
      List<String> states) {
    this.title = title;
    this.projection = projection;
    this.box = box;
    this.states = states;
    Rectangle2D.Double extent = null;
    for (Point2D.Double end : ends) {
      Point2D.Double point = projection.of(end.y, end.x);
      if (extent == null) {
        extent = new Rectangle2D.Double(point.x, point.y, 0, 0);
      }
      extent.add(point);
    }
    double margin = states.isEmpty() ? 0 : MARGIN * Math.min(box.width, box.height);
    double name = title.isEmpty() ? 0 : NAME;
    double wide = box.width - 2 * margin;
    double high = box.height - 2 * margin - name;
    this.scale = Math.min(wide / extent.width, high / extent.height);
    this.left = box.getCenterX() - scale * extent.getCenterX();
    this.top = box.getCenterY() + name / 2 + scale * extent.getCenterY();
  }

  private static Point2D.Double at(double latitude, double longitude) {
    return new Point2D.Double(longitude, latitude);
  }

  /** The piece a state or territory is drawn in. */
  static MapFrame of(String state) {
    for (MapFrame frame : ALL) {
      if (frame.states.contains(state)) {
        return frame;
      }
    }
    return LOWER_48;
  }

  /** What its box is called; nothing for the large piece, which has none. */
  String title() {
    return title;
  }

  /** Its box on the whole map. */
  Rectangle2D.Double box() {
    return new Rectangle2D.Double(box.x, box.y, box.width, box.height);
  }

  /** Where a place lies on the whole map; latitude and longitude in degrees. */
  Point2D.Double place(double latitude, double longitude) {
    Point2D.Double point = projection.of(latitude, longitude);
    return new Point2D.Double(left + scale * point.x, top - scale * point.y);
  }
}
