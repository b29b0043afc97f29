package org.shopclime.balance;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.shopclime.sun.SunAngles;

/**
 * Sun inside followed to where it falls: on the floor, on the wall opposite the window, or on one
 * of the two beside it. Then by {@link SunBounces}.
 *
 * <p>The room is taken as a box as wide as the wall with the window, as deep as its floor area asks
 * and as high as that wall. What would fall on a wall that the room does not have falls on the
 * floor. Windows that are not in upright walls throw their sun on the floor. Boards outside are
 * taken to shade a window evenly.
 */
final class TracedSunInside implements SunInside {

  private static final int FLOOR = 0;
  private static final int OPPOSITE = 1;
  private static final int LEFT = 2;
  private static final int RIGHT = 3;

  /** Rays across and up a window; a patch of sun is told to 1/400. */
  private static final int RAYS = 20;

  private final SunBounces bounces;
  private final double floorArea;
  private final Map<Integer, double[][]> targets = new HashMap<>();

  TracedSunInside(SunBounces bounces, double floorArea) {
    this.bounces = bounces;
    this.floorArea = floorArea;
    bounces.windows().forEach(window -> targets.put(window, targets(window)));
  }

  @Override
  public double[] scattered(int window) {
    return bounces.scattered(window);
  }

  @Override
  public double[] direct(int window, SunAngles sun) {
    double[][] ends = targets.get(window);
    Piece.Pane pane = bounces.piece(window).pane().orElseThrow();
    if (pane.place().isEmpty()) {
      return ends[FLOOR];
    }
    double[] parts = trace(pane.place().get(), floorArea, sun);
    double[] found = new double[ends[FLOOR].length];
    for (int target = 0; target < parts.length; target++) {
      for (int side = 0; side < found.length; side++) {
        found[side] += parts[target] * ends[target][side];
      }
    }
    return found;
  }

  private double[][] targets(int window) {
    List<Integer> floor = bounces.floor();
    double[] onFloor = floor.isEmpty() ? bounces.scattered(window) : bounces.firstOn(floor);
    double[][] ends = {onFloor, onFloor, onFloor, onFloor};
    Piece.Pane pane = bounces.piece(window).pane().orElseThrow();
    if (pane.place().isPresent()) {
      double azimuth = pane.place().get().azimuth();
      // Seen from outdoors the left wall of a room behind a south wall looks west.
      double[] looks = {0, azimuth + 180, azimuth + 90, azimuth - 90};
      for (int target = OPPOSITE; target <= RIGHT; target++) {
        List<Integer> walls = bounces.walls(looks[target]);
        ends[target] = walls.isEmpty() ? onFloor : bounces.firstOn(walls);
      }
    }
    return ends;
  }

  /**
   * Parts of the beam through a window that fall on the floor, the opposite wall, the left and the
   * right one (seen from outdoors) of a box.
   */
  static double[] trace(Piece.Place place, double floorArea, SunAngles sun) {
    double deep = floorArea / place.wallWidth();
    double aside = Math.toRadians(sun.azimuthDeg() - place.azimuth());
    double along = Math.tan(aside);
    double down = Math.tan(Math.toRadians(sun.altitudeDeg())) / Math.max(1e-9, Math.cos(aside));
    double[] parts = new double[4];
    for (int i = 0; i < RAYS; i++) {
      double x = place.offset() + (i + 0.5) / RAYS * place.width();
      double toSide = along < 0 ? -x / along : (place.wallWidth() - x) / Math.max(1e-9, along);
      for (int j = 0; j < RAYS; j++) {
        double toFloor = (place.sill() + (j + 0.5) / RAYS * place.height()) / down;
        int target = OPPOSITE;
        if (toFloor <= Math.min(deep, toSide)) {
          target = FLOOR;
        } else if (toSide < deep) {
          target = along < 0 ? LEFT : RIGHT;
        }
        parts[target] += 1.0 / (RAYS * RAYS);
      }
    }
    return parts;
  }
}
