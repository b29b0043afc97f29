package org.shopclime.balance;

import java.util.Optional;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fins;
import org.shopclime.shop.Overhang;
import org.shopclime.shop.Window;
import org.shopclime.sun.Fin;
import org.shopclime.sun.Shading;

/** What stands between the sun and a face or an opening in it. */
final class Shades {

  /** Boards are reckoned on faces within ten degrees of upright. */
  private static final double SLANT = 10;

  private Shades() {}

  /** Shade of a whole face. */
  static Piece.Shade of(Face face) {
    return of(face, Optional.empty(), Optional.empty(), 0, 0, face.width(), face.height());
  }

  /** Shade of a door: it begins at the bottom of the face, somewhere along it. */
  static Piece.Shade ofDoor(Face face, double width, double height) {
    double offset = Math.max(0, (face.width() - width) / 2);
    return of(face, Optional.empty(), Optional.empty(), offset, 0, width, height);
  }

  /** Shade of a window; overhang and fins of the face count where it has none of its own. */
  static Piece.Shade of(Face face, Window window) {
    return of(
        face,
        window.overhang(),
        window.fins(),
        window.offset(),
        window.sill(),
        window.width(),
        window.height());
  }

  private static Piece.Shade of(
      Face face,
      Optional<Overhang> ownOverhang,
      Optional<Fins> ownFins,
      double left,
      double sill,
      double width,
      double height) {
    boolean bare =
        ownOverhang.isEmpty()
            && ownFins.isEmpty()
            && face.overhang().isEmpty()
            && face.fins().isEmpty();
    if (bare || Math.abs(face.tilt() - 90) >= SLANT) {
      return Piece.Shade.trees(face.treeShade());
    }
    double right = Math.max(0, face.width() - left - width);
    double above = Math.max(0, face.height() - sill - height);
    Shading boards = Shading.overhang(width, height, 0, 0);
    if (ownOverhang.isPresent()) {
      Overhang own = ownOverhang.get();
      boards =
          Shading.overhang(width, height, own.depth(), own.gap())
              .withReach(own.beyond(), own.beyond());
    } else if (face.overhang().isPresent()) {
      Overhang eave = face.overhang().get();
      boards =
          Shading.overhang(width, height, eave.depth(), eave.gap() + above)
              .withReach(left + eave.beyond(), right + eave.beyond());
    }
    if (ownFins.isPresent()) {
      Fin fin = fin(ownFins.get(), 0, 0, 0);
      boards = boards.withFins(fin, fin);
    } else if (face.fins().isPresent()) {
      Fins fins = face.fins().get();
      boards = boards.withFins(fin(fins, left, above, sill), fin(fins, right, above, sill));
    }
    return Piece.Shade.of(face.treeShade(), boards);
  }

  private static Fin fin(Fins fins, double aside, double above, double below) {
    return new Fin(fins.depth(), fins.gap() + aside, fins.above() + above, fins.below() + below);
  }
}
