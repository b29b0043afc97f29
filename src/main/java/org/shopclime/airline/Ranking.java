package org.shopclime.airline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Places in order, each with the criterion that put it there. */
public final class Ranking {

  private Ranking() {}

  /**
   * Ranks places by {@link Criterion}, first to last: pass before fail, less far off before
   * farther, then less electricity. A place that is not safe has no rank and comes last.
   *
   * @param places the places; equal ones keep their order
   * @return all of them, the best first
   */
  public static List<Ranked> of(List<Candidate> places) {
    List<Candidate> order = new ArrayList<>(places);
    order.sort(Ranking::compare);
    List<Ranked> ranked = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      Candidate place = order.get(i);
      boolean safe = Criterion.SAFETY.passes(place);
      // The best is told against the next, all others against the best.
      Optional<Candidate> other =
          order.size() < 2 ? Optional.empty() : Optional.of(order.get(i == 0 ? 1 : 0));
      ranked.add(
          new Ranked(
              safe ? Optional.of(i + 1) : Optional.empty(),
              place,
              safe ? reason(place, other) : unsafe(place)));
    }
    return List.copyOf(ranked);
  }

  private static int compare(Candidate one, Candidate other) {
    return decides(one, other).map(by -> by.compare(one, other)).orElse(0);
  }

  private static Optional<Criterion> decides(Candidate one, Candidate other) {
    return List.of(Criterion.values()).stream()
        .filter(by -> by.compare(one, other) != 0)
        .min(Comparator.naturalOrder());
  }

  private static Reason reason(Candidate place, Optional<Candidate> other) {
    Criterion by = other.flatMap(against -> decides(place, against)).orElse(Criterion.ENERGY);
    return new Reason(
        by,
        by.figure(place),
        other.map(by::figure).orElse(by.figure(place)),
        other.map(Candidate::name));
  }

  private static Reason unsafe(Candidate place) {
    return new Reason(Criterion.SAFETY, Criterion.SAFETY.figure(place), 0, Optional.empty());
  }

  /**
   * A place with its rank.
   *
   * @param rank from 1; none if it is excluded
   * @param place the place
   * @param reason why it stands there
   */
  public record Ranked(Optional<Integer> rank, Candidate place, Reason reason) {}

  /**
   * The first criterion that decided.
   *
   * @param criterion which
   * @param own its figure of this place: hazards, °C, °C, °C of dew point, kWh
   * @param other the same figure of the place it is told against; its own where there is none; 0
   *     hazards for a place that is excluded
   * @param against name of that place
   */
  public record Reason(Criterion criterion, double own, double other, Optional<String> against) {}
}
