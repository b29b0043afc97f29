package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Examples;

/** Faces on which dew falls first, in the example's shop below its attic. */
class ColdFacesTest {

  private static final int SHOP = 0;
  private static final int ATTIC = 1;

  private final Skeleton skeleton = SkeletonMaker.of(Examples.shop("insulated"), Season.COOLING);
  private final ColdFaces faces = new ColdFaces(skeleton);

  @Test
  void oneFaceStandsForTheIron() {
    assertThat(faces.iron(SHOP)).hasSize(1);
    Piece iron = skeleton.pieces().get(faces.iron(SHOP)[0]);
    assertThat(iron.component().kind()).isEqualTo(ComponentKind.CONTENTS);
    assertThat(iron.room()).isEqualTo(SHOP);
    assertThat(faces.iron(ATTIC)).as("none is told there").isEmpty();
  }

  @Test
  void theSlabLiesOnTheGround() {
    assertThat(faces.slabs(SHOP)).isNotEmpty();
    for (int chain : faces.slabs(SHOP)) {
      assertThat(skeleton.pieces().get(chain).component().name()).isEqualTo("Floor");
    }
    assertThat(faces.slabs(ATTIC)).isEmpty();
  }
}
