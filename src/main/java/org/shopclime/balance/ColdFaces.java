package org.shopclime.balance;

import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Faces in a room on which dew falls first: iron that warms slowly, and floors on the ground. */
final class ColdFaces {

  private final Skeleton skeleton;

  ColdFaces(Skeleton skeleton) {
    this.skeleton = skeleton;
  }

  /** Chains whose right faces are the machines and stock of iron in a room; none without iron. */
  int[] iron(int room) {
    if (!(skeleton.rooms().get(room).contents().iron().likely() > 0)) {
      return new int[0];
    }
    // Iron is the first of the contents, as ContentsPath lists them.
    return chains(piece -> piece.component().kind() == ComponentKind.CONTENTS, room)
        .limit(1)
        .toArray();
  }

  /** Chains whose right faces are floors on the ground in a room. */
  int[] slabs(int room) {
    return chains(
            piece -> piece.outside() instanceof Piece.Ground && piece.inside().isFloor(), room)
        .toArray();
  }

  private IntStream chains(Predicate<Piece> wanted, int room) {
    return IntStream.range(0, skeleton.pieces().size())
        .filter(chain -> skeleton.pieces().get(chain).room() == room)
        .filter(chain -> wanted.test(skeleton.pieces().get(chain)));
  }
}
