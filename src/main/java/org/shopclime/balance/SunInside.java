package org.shopclime.balance;

import java.util.List;

/**
 * Where sun through the windows of a room ends: direct sun falls on the floor first; what the floor
 * throws back, and scattered sun, is spread over all sides of the room by area and absorptance,
 * where glass lets out its share again.
 *
 * <p>Sides are numbered 2 x chain for the outer (left) end and 2 x chain + 1 for the inner end.
 */
final class SunInside {

  private final double[] direct;
  private final double[] scattered;

  SunInside(List<Piece> pieces, int room) {
    double[] area = new double[2 * pieces.size()];
    boolean[] floor = new boolean[area.length];
    double[] lets = new double[area.length];
    for (int chain = 0; chain < pieces.size(); chain++) {
      Piece piece = pieces.get(chain);
      double through = piece.pane().map(pane -> pane.optics().diffuseTransmittance()).orElse(0.0);
      if (piece.room() == room) {
        area[2 * chain + 1] = piece.area();
        floor[2 * chain + 1] = piece.inside().isFloor();
        lets[2 * chain + 1] = through;
      }
      if (piece.outside() instanceof Piece.OtherRoom other && other.room() == room) {
        area[2 * chain] = piece.area();
        floor[2 * chain] = other.side().isFloor();
        lets[2 * chain] = through;
      }
    }
    double floorArea = 0;
    double weight = 0;
    for (int side = 0; side < area.length; side++) {
      floorArea += floor[side] ? area[side] : 0;
      weight += area[side] * (lets[side] > 0 ? lets[side] : Piece.INNER_ABSORPTANCE);
    }
    direct = new double[area.length];
    scattered = new double[area.length];
    for (int side = 0; side < area.length; side++) {
      scattered[side] =
          weight == 0 || lets[side] > 0 ? 0 : area[side] * Piece.INNER_ABSORPTANCE / weight;
    }
    for (int side = 0; side < area.length; side++) {
      if (floorArea == 0) {
        direct[side] = scattered[side];
      } else {
        double first = floor[side] ? Piece.INNER_ABSORPTANCE * area[side] / floorArea : 0;
        direct[side] = first + (1 - Piece.INNER_ABSORPTANCE) * scattered[side];
      }
    }
  }

  /** Part of the direct sun that ends on a side. */
  double direct(int side) {
    return direct[side];
  }

  /** Part of the scattered sun that ends on a side. */
  double scattered(int side) {
    return scattered[side];
  }
}
