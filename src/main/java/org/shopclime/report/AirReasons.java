package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shopclime.airline.AirCompressor;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.Criterion;
import org.shopclime.airline.Hazard;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.Placement;
import org.shopclime.airline.Ranking;
import org.shopclime.airline.VentPoint;
import org.shopclime.plan.Sizing;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Gain;
import org.shopclime.shop.LineCompressor;
import org.shopclime.shop.Room;

/** Whole sentences on the places of a compressor: why each stands where it does, and hazards. */
public final class AirReasons {

  private final AirlineAnswer answer;
  private final UnitSystem units;

  /**
   * Sentences for an answer.
   *
   * @param answer the answer
   * @param units system of units to show
   */
  public AirReasons(AirlineAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
  }

  /**
   * Why each place stands where it does; neighbors that the same thing put there share a sentence.
   *
   * @return sentences, the best first
   */
  public List<String> lines() {
    List<List<PlaceAnswer>> groups = new ArrayList<>();
    for (PlaceAnswer place : answer.places()) {
      if (groups.isEmpty() || !isLike(place, groups.get(groups.size() - 1).get(0))) {
        groups.add(new ArrayList<>());
      }
      groups.get(groups.size() - 1).add(place);
    }
    List<String> all = new ArrayList<>();
    for (List<PlaceAnswer> group : groups) {
      PlaceAnswer first = group.get(0);
      all.add(group.size() == 1 ? heading(first) + ": " + reason(first) + "." : together(group));
    }
    return all;
  }

  /** Whether two places are told against the same one for the same reason; never the best. */
  private static boolean isLike(PlaceAnswer one, PlaceAnswer other) {
    Ranking.Reason reason = one.ranked().reason();
    return one.ranked().rank().orElse(1) > 1
        && other.ranked().rank().orElse(1) > 1
        && reason.criterion() != Criterion.SAFETY
        && reason.criterion() == other.ranked().reason().criterion()
        && reason.against().equals(other.ranked().reason().against());
  }

  /** Several places below the same one. */
  private String together(List<PlaceAnswer> group) {
    Ranking.Reason reason = group.get(0).ranked().reason();
    String other = "\"" + Shown.line(reason.against().orElseThrow()) + "\"";
    String its = degrees(reason.other());
    String why =
        switch (reason.criterion()) {
          case SAFETY -> throw new IllegalStateException("told one by one");
          case PLACE_LIMIT ->
              ", where it is "
                  + its
                  + ", because their place gets hotter than the "
                  + limit()
                  + " the machine takes: ";
          case SHOP_HOLDS ->
              ", with which the shop reaches " + its + ", because the unit does not hold it: ";
          case DRY_LINE ->
              ", where water drops out only below "
                  + its
                  + ", because it drops out in their line sooner: ";
          case ENERGY ->
              ", which takes "
                  + AirlineWords.kilowattHours(reason.other())
                  + " a day with the unit's, because they take more electricity: ";
        };
    String each =
        group.stream()
            .map(place -> heading(place) + " " + figure(place.ranked().reason()))
            .collect(Collectors.joining("; "));
    return "Below " + other + why + each + ".";
  }

  private String figure(Ranking.Reason reason) {
    return reason.criterion() == Criterion.ENERGY
        ? AirlineWords.kilowattHours(reason.own())
        : degrees(reason.own());
  }

  /** Rank and name, such as "1. Loft"; a dash where there is no rank. */
  static String heading(PlaceAnswer place) {
    return place.ranked().rank().map(rank -> rank + ". ").orElse("– ") + name(place);
  }

  /** A place's name as a heading. */
  static String name(PlaceAnswer place) {
    String name = Shown.line(place.ranked().place().name());
    return name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
  }

  /**
   * Why a place stands where it does.
   *
   * @param place one of the answer's
   * @return a sentence that names the first thing that decided
   */
  public String why(PlaceAnswer place) {
    String reason = reason(place);
    return reason.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + reason.substring(1) + ".";
  }

  /**
   * The same within a sentence.
   *
   * @param place one of the answer's
   * @return words without a capital and without a full stop
   */
  public String reason(PlaceAnswer place) {
    Ranking.Ranked ranked = place.ranked();
    Ranking.Reason reason = ranked.reason();
    if (ranked.rank().isEmpty()) {
      return "excluded because "
          + ranked.place().hazards().stream()
              .map(AirReasons::because)
              .collect(Collectors.joining(", and "));
    }
    if (reason.against().isEmpty()) {
      return "the only place there is";
    }
    boolean best = ranked.rank().get() == 1;
    String other = "\"" + Shown.line(reason.against().get()) + "\"";
    String stands = (best ? "ranked above " : "ranked below ") + other;
    String own = degrees(reason.own());
    String its = degrees(reason.other());
    String limit = limit();
    return switch (reason.criterion()) {
      case SAFETY -> stands + " because it is safe and that is not";
      case PLACE_LIMIT ->
          best
              ? stands
                  + ", whose place reaches "
                  + its
                  + " where the machine takes "
                  + limit
                  + "; here it is "
                  + own
              : stands
                  + " because its place reaches "
                  + own
                  + " where the machine takes "
                  + limit
                  + "; there it is "
                  + its;
      case SHOP_HOLDS ->
          best
              ? stands
                  + " because the unit still holds the shop, at "
                  + own
                  + "; there it reaches "
                  + its
              : stands
                  + " because the shop reaches "
                  + own
                  + " and the unit does not hold it;"
                  + " there it is "
                  + its;
      case DRY_LINE ->
          best
              ? stands
                  + " because its line is dry: water would drop out only below "
                  + own
                  + "; there below "
                  + its
              : stands
                  + " because water drops out in its line, below "
                  + own
                  + "; there below "
                  + its;
      case ENERGY -> stands + energy(reason, best);
    };
  }

  private static String energy(Ranking.Reason reason, boolean best) {
    String own = AirlineWords.kilowattHours(reason.own());
    String its = AirlineWords.kilowattHours(reason.other());
    if (own.equals(its)) {
      return " by a hair of electricity only: " + own + " a day with both";
    }
    return " because it takes "
        + (best ? "less" : "more")
        + " electricity with the unit's together, "
        + own
        + " a day; there "
        + its;
  }

  private static String because(Hazard hazard) {
    return switch (hazard) {
      case FUMES -> "solvent fumes or powder reach its motor, its switch or the air it draws";
      case FLAME -> "a flame or things that burn are next to its hot head";
      case SHOP_UNDER_SUCTION -> "its draught sucks at the shop's flue";
    };
  }

  /** What excludes a place, in a few words. */
  static String excluded(PlaceAnswer place) {
    return "Excluded: "
        + Shown.row(
            place.ranked().place().hazards().stream()
                .map(
                    hazard ->
                        switch (hazard) {
                          case FUMES -> "fumes or powder in its air";
                          case FLAME -> "flame or rags beside it";
                          case SHOP_UNDER_SUCTION -> "sucks at the flue";
                        })
                .toList());
  }

  /**
   * Hazards that exclude places of this shop, each with who decides in the end.
   *
   * @return sentences; none where nothing is excluded
   */
  public List<String> hazards() {
    List<String> all = new ArrayList<>();
    answer.places().stream()
        .flatMap(place -> place.ranked().place().hazards().stream())
        .distinct()
        .sorted()
        .forEach(hazard -> all.add(caution(hazard)));
    return all;
  }

  private static String caution(Hazard hazard) {
    return switch (hazard) {
      case FUMES ->
          "Fumes and powder: a motor or pressure switch can set fire to solvent vapor and powder"
              + " clouds, and what is drawn in comes out at the mask or the gun. Spraying and powder"
              + " work fall under OSHA 1910.107 and NFPA 33: ask the fire authority and a licensed"
              + " electrician before any machine stands in such air.";
      case FLAME ->
          "Flame: pump and discharge pipe get hot enough to light rags and dust. Keep them apart;"
              + " the fire authority and local code say how far.";
      case SHOP_UNDER_SUCTION ->
          "Flue: a shop under suction can draw a flue's gases, carbon monoxide among them, into the"
              + " room. Let a licensed heating contractor test the flue with every fan running, keep"
              + " an alarm, and follow the local fuel-gas code.";
    };
  }

  /**
   * What the curve of the closet says.
   *
   * @return a sentence; empty where there is no curve
   */
  public String vents() {
    List<VentPoint> curve = answer.ventCurve();
    if (curve.isEmpty()) {
      return "";
    }
    Optional<VentPoint> enough =
        curve.stream().filter(point -> point.celsius() <= AirCompressor.MOST_AMBIENT).findFirst();
    VentPoint last = curve.get(curve.size() - 1);
    return "A corner closet with one grille low and one high, both to the room, "
        + enough
            .map(
                point ->
                    "stays within the "
                        + limit()
                        + " that the machine takes from "
                        + VentChart.area(point.area(), units)
                        + " of free area in each")
            .orElseGet(
                () ->
                    "is too hot at every size tried: "
                        + degrees(last.celsius())
                        + " even with "
                        + VentChart.area(last.area(), units)
                        + " of free area in each, where the machine takes "
                        + limit())
        + ". A louver leaves about half of its size free.";
  }

  /**
   * Where the compressor stands by the shop's description.
   *
   * @return that place; empty if it is none of those compared
   */
  public Optional<PlaceAnswer> today() {
    List<Room> rooms = answer.shop().rooms();
    for (Room room : rooms) {
      boolean here =
          room.gains().stream()
              .anyMatch(
                  gain ->
                      gain instanceof Gain.Compressor machine
                          && machine.power() >= LineCompressor.LEAST_POWER);
      if (here) {
        Placement.Kind kind =
            Sizing.room(answer.shop()) == rooms.indexOf(room)
                ? Placement.Kind.IN_ROOM
                : Placement.Kind.LOFT;
        return place(kind).filter(found -> kind == Placement.Kind.IN_ROOM || isAbove(room));
      }
    }
    return Optional.empty();
  }

  private boolean isAbove(Room room) {
    Room work = answer.shop().rooms().get(Sizing.room(answer.shop()));
    return work.faces().stream().anyMatch(face -> face.behind().equals(room.name()));
  }

  /** One of the places by its kind. */
  Optional<PlaceAnswer> place(Placement.Kind kind) {
    return answer.places().stream().filter(each -> each.placement().kind() == kind).findFirst();
  }

  /** The most the machine takes around it, as text. */
  String limit() {
    return degrees(AirCompressor.MOST_AMBIENT);
  }

  private String degrees(double celsius) {
    return Shown.temperature(celsius, units);
  }
}
