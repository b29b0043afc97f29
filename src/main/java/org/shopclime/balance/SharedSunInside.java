package org.shopclime.balance;

import java.util.List;
import org.shopclime.sun.SunAngles;

/** Sun inside by the shares that the owner tells of the faces; the rest is lost outdoors. */
final class SharedSunInside implements SunInside {

  private final double[] shares;

  SharedSunInside(List<Piece> pieces, int room) {
    shares = new double[2 * pieces.size()];
    for (int chain = 0; chain < pieces.size(); chain++) {
      Piece piece = pieces.get(chain);
      if (piece.room() == room) {
        shares[2 * chain + 1] = piece.area() * piece.inside().sunShare();
      }
    }
  }

  @Override
  public double[] direct(int window, SunAngles sun) {
    return shares;
  }

  @Override
  public double[] scattered(int window) {
    return shares;
  }
}
