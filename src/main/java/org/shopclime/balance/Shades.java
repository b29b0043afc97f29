package org.shopclime.balance;

import java.util.Optional;
import org.shopclime.shop.Face;
import org.shopclime.shop.Overhang;

/** What stands between the sun and a face or an opening in it. */
final class Shades {

  private Shades() {}

  /** Shade of a whole face, or of a door in it, which begins at the bottom of the face. */
  static Piece.Shade of(Face face, double width, double height) {
    return of(face, Optional.empty(), width, height, 0);
  }

  /**
   * Shade of an opening.
   *
   * @param face the face it is in; its overhang counts where the opening has none
   * @param own overhang of the opening
   * @param width width of the opening, m
   * @param height its height, m
   * @param sill height of its bottom above that of the face, m
   * @return shade
   */
  static Piece.Shade of(
      Face face, Optional<Overhang> own, double width, double height, double sill) {
    if (own.isPresent()) {
      return new Piece.Shade(face.treeShade(), own.get().depth(), own.get().gap(), width, height);
    }
    if (face.overhang().isPresent()) {
      Overhang eave = face.overhang().get();
      double below = Math.max(0, face.height() - sill - height);
      return new Piece.Shade(face.treeShade(), eave.depth(), eave.gap() + below, width, height);
    }
    return new Piece.Shade(face.treeShade(), 0, 0, width, height);
  }
}
