package org.shopclime.balance;

import java.util.List;
import org.shopclime.sun.SunAngles;

/**
 * Where sun through the windows of a room ends: direct sun falls on the floor first; what the floor
 * throws back, and scattered sun, is spread over all sides of the room by area and absorptance,
 * where glass lets out its share again.
 *
 * <p>Sides are numbered 2 x chain for the outer (left) end and 2 x chain + 1 for the inner end.
 */
final class PlainSunInside implements SunInside {

  private final double[] direct;
  private final double[] scattered;

  PlainSunInside(List<Piece> pieces, int room) {
    double[] area = new double[2 * pieces.size()];
    boolean[] floor = new boolean[area.length];
    double[] takes = new double[area.length];
    double[] lets = new double[area.length];
    for (int chain = 0; chain < pieces.size(); chain++) {
      Piece piece = pieces.get(chain);
      double through = piece.pane().map(pane -> pane.optics().diffuseTransmittance()).orElse(0.0);
      if (piece.room() == room) {
        area[2 * chain + 1] = piece.area();
        floor[2 * chain + 1] = piece.inside().isFloor();
        takes[2 * chain + 1] = piece.inside().absorptance();
        lets[2 * chain + 1] = through;
      }
      if (piece.outside() instanceof Piece.OtherRoom other && other.room() == room) {
        area[2 * chain] = piece.area();
        floor[2 * chain] = other.side().isFloor();
        takes[2 * chain] = other.side().absorptance();
        lets[2 * chain] = through;
      }
    }
    double floorArea = 0;
    double weight = 0;
    for (int side = 0; side < area.length; side++) {
      floorArea += floor[side] ? area[side] : 0;
      weight += area[side] * (lets[side] > 0 ? lets[side] : takes[side]);
    }
    direct = new double[area.length];
    scattered = new double[area.length];
    double thrownBack = 0;
    for (int side = 0; side < area.length; side++) {
      scattered[side] = weight == 0 || lets[side] > 0 ? 0 : area[side] * takes[side] / weight;
      thrownBack += floor[side] ? (1 - takes[side]) * area[side] / floorArea : 0;
    }
    for (int side = 0; side < area.length; side++) {
      double first = floor[side] ? takes[side] * area[side] / floorArea : 0;
      direct[side] = floorArea == 0 ? scattered[side] : first + thrownBack * scattered[side];
    }
  }

  @Override
  public double[] direct(int window, SunAngles sun) {
    return direct;
  }

  @Override
  public double[] scattered(int window) {
    return scattered;
  }
}
