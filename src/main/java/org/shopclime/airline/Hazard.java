package org.shopclime.airline;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.leakage.Flue;

/** What excludes a place, whatever else it is good for. */
public enum Hazard {
  /** Solvent or powder in the air where motor and switch spark, or in the air drawn in. */
  FUMES,
  /** An open flame, or things that burn, next to the hot head. */
  FLAME,
  /** Exhaust of the place draws the shop below what its flue stands. */
  SHOP_UNDER_SUCTION;

  /**
   * Hazards of a place.
   *
   * @param facts what is known of it
   * @return none where nothing speaks against it
   */
  public static List<Hazard> of(Facts facts) {
    List<Hazard> all = new ArrayList<>();
    if (facts.fumes()) {
      all.add(FUMES);
    }
    if (facts.flame()) {
      all.add(FLAME);
    }
    if (facts.flue().isEndangeredBy(facts.suction())) {
      all.add(SHOP_UNDER_SUCTION);
    }
    return List.copyOf(all);
  }

  /**
   * What is known of a place.
   *
   * @param fumes whether solvent fumes or powder reach it
   * @param flame whether a flame, or things that burn, are next to it
   * @param flue the most sensitive flue of the shop
   * @param suction of the shop with all that runs together with this place, Pa below outdoors
   */
  public record Facts(boolean fumes, boolean flame, Flue flue, double suction) {}
}
