package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.leakage.Flue;

class RankingTest {

  private static Candidate place(
      String name, double peak, double indoor, double dewPoint, double energy) {
    return new Candidate(name, List.of(), peak, 40, indoor, 26, dewPoint, 20, energy);
  }

  @Test
  void eachCriterionDecidesInItsTurn() {
    Candidate best = place("loop", 39, 25, 15, 10);
    Candidate more = place("fan loop", 39.5, 25.5, 15, 12);
    Candidate wet = place("lean-to", 38, 25, 22, 5);
    Candidate warm = place("in the room", 25, 27, 15, 3);
    Candidate hot = place("shut", 80, 25, 15, 1);
    Candidate unsafe =
        new Candidate("by the booth", List.of(Hazard.FUMES), 25, 40, 25, 26, 15, 20, 0);
    List<Ranking.Ranked> ranked = Ranking.of(List.of(unsafe, hot, warm, wet, more, best));
    assertThat(ranked)
        .extracting(row -> row.place().name())
        .containsExactly("loop", "fan loop", "lean-to", "in the room", "shut", "by the booth");
    assertThat(ranked)
        .extracting(row -> row.reason().criterion())
        .containsExactly(
            Criterion.ENERGY,
            Criterion.ENERGY,
            Criterion.DRY_LINE,
            Criterion.SHOP_HOLDS,
            Criterion.PLACE_LIMIT,
            Criterion.SAFETY);
    assertThat(ranked.get(0).rank()).contains(1);
    assertThat(ranked.get(5).rank()).isEmpty();
    assertThat(ranked.get(0).reason())
        .isEqualTo(new Ranking.Reason(Criterion.ENERGY, 10, 12, Optional.of("fan loop")));
    assertThat(ranked.get(2).reason())
        .isEqualTo(new Ranking.Reason(Criterion.DRY_LINE, 22, 15, Optional.of("loop")));
    assertThat(ranked.get(4).reason())
        .isEqualTo(new Ranking.Reason(Criterion.PLACE_LIMIT, 80, 39, Optional.of("loop")));
    assertThat(ranked.get(5).reason())
        .isEqualTo(new Ranking.Reason(Criterion.SAFETY, 1, 0, Optional.empty()));
  }

  /** Where none passes, the one that fails by less goes first, but not for less than a step. */
  @Test
  void whatFailsByLessGoesFirst() {
    Candidate loft = place("loft", 61, 25, 15, 5);
    Candidate fan = place("fan loop", 45, 25, 15, 9);
    Candidate leanTo = place("lean-to", 44.2, 27.5, 15, 8);
    Candidate closet = place("closet", 44.6, 29, 15, 7);
    assertThat(Ranking.of(List.of(loft, closet, leanTo, fan)))
        .extracting(row -> row.place().name())
        .containsExactly("fan loop", "lean-to", "closet", "loft");
    assertThat(Ranking.of(List.of(closet, leanTo, fan)))
        .extracting(row -> row.reason().criterion())
        .containsOnly(Criterion.SHOP_HOLDS);
  }

  @Test
  void oneAloneAndEqualOnes() {
    Candidate one = place("a", 30, 25, 15, 10);
    assertThat(Ranking.of(List.of(one)).get(0).reason())
        .isEqualTo(new Ranking.Reason(Criterion.ENERGY, 10, 10, Optional.empty()));
    Candidate same = place("b", 30, 25, 15, 10);
    assertThat(Ranking.of(List.of(same, one)))
        .extracting(row -> row.place().name())
        .containsExactly("b", "a");
    assertThat(Ranking.of(List.of())).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> place("c", Double.NaN, 1, 1, 1));
  }

  @Test
  void hazardsOfAPlace() {
    assertThat(Hazard.of(new Hazard.Facts(false, false, Flue.NATURAL_DRAFT, 4.9))).isEmpty();
    assertThat(Hazard.of(new Hazard.Facts(true, true, Flue.NATURAL_DRAFT, 5.1)))
        .containsExactly(Hazard.FUMES, Hazard.FLAME, Hazard.SHOP_UNDER_SUCTION);
    assertThat(Hazard.of(new Hazard.Facts(false, false, Flue.NONE, 80))).isEmpty();
  }
}
