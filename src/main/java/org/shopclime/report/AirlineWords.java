package org.shopclime.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shopclime.airline.AirCompressor;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.LineCaution;
import org.shopclime.airline.LineChange;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.PlaceNames;
import org.shopclime.airline.Placement;
import org.shopclime.airline.StandingHeat;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.CompressedAir;

/** Sentences about the places of a compressor and its line. */
public final class AirlineWords {

  /** What is said of a shop without a compressor. */
  public static final String NO_COMPRESSOR =
      "This shop lists no compressor (heat from work, kind \"compressor\", 50 W or more), so there"
          + " is no place to choose for it.";

  /** Hottest that is told of a place, °C, and from where on it is told as that. */
  private static final double JOULES_PER_BTU = 1055.056;

  private static final double HOTTEST = 150;

  private static final double MOST_TOLD = 140;

  private final AirlineAnswer answer;
  private final UnitSystem units;
  private final WallClock clock;

  /**
   * Words for an answer.
   *
   * @param answer the answer
   * @param units system of units to show
   */
  public AirlineWords(AirlineAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
    clock = new WallClock(answer.shop().work(), answer.day().date());
  }

  /**
   * The answer in one sentence or two.
   *
   * @return which place is best, why, and what it means
   */
  public String sentence() {
    PlaceAnswer best = answer.places().get(0);
    String name = best.ranked().place().name();
    if (best.ranked().rank().isEmpty()) {
      return "None of the usual places is safe for this compressor: "
          + name
          + " is "
          + new AirReasons(answer, units).reason(best)
          + ".";
    }
    String hot =
        best.placePeak() <= AirCompressor.MOST_AMBIENT
            ? ""
            : ", hotter than the "
                + Shown.temperature(AirCompressor.MOST_AMBIENT, units)
                + " it is made for, but the best there is";
    return "Best place for the compressor: "
        + name
        + ". It reaches "
        + Shown.temperature(best.placePeak(), units)
        + " there ("
        + clock.during(best.peakHour())
        + ")"
        + hot
        + ", "
        + room(best)
        + ", and "
        + line(best)
        + "."
        + elsewhere(best);
  }

  /** Where the unit would hold, if it does not with the best place for the machine. */
  private String elsewhere(PlaceAnswer best) {
    if (best.holds() || answer.shop().unit().isEmpty()) {
      return "";
    }
    return answer.places().stream()
        .filter(place -> place.holds() && place.ranked().rank().isPresent())
        .min(Comparator.comparingDouble(PlaceAnswer::placePeak))
        .map(
            place ->
                " The unit would hold (at "
                    + Shown.temperature(place.indoorPeak(), units)
                    + ") with it here: "
                    + place.ranked().place().name()
                    + ". But there it gets "
                    + Shown.temperature(place.placePeak(), units)
                    + ", too hot for the machine; "
                    + (place.placement().kind() == Placement.Kind.OPEN_ROOF
                        ? "more free space around it brings"
                        : "larger openings or a stronger fan than assumed bring")
                    + " it nearer to the outdoor air.")
        .orElse("");
  }

  private String room(PlaceAnswer place) {
    String heat = Shown.power(Math.abs(place.roomLoad()), units);
    String load =
        place.roomLoad() >= 0
            ? "gives the room up to " + heat
            : "takes at least " + heat + " from the room";
    if (answer.shop().unit().isEmpty()) {
      return load + " (it reaches " + Shown.temperature(place.indoorPeak(), units) + " inside)";
    }
    return load
        + (place.holds() ? " and the unit holds" : " and the unit does not hold")
        + " ("
        + Shown.temperature(place.indoorPeak(), units)
        + " at most in working hours)";
  }

  private String line(PlaceAnswer place) {
    String tank = water(place.tankWater()) + " of water an hour drop out at the machine";
    return place.pressureDewPoint() < place.coldestStretch()
        ? tank + " and none in the line"
        : tank + " and " + water(place.lineWater()) + " in the line, which is wet";
  }

  /** Electricity of a day as "9.6 kWh". */
  static String kilowattHours(double kilowattHours) {
    return String.format(java.util.Locale.ROOT, "%.1f kWh", kilowattHours);
  }

  /** Water as "34 g" or, for an inch-pound reader, "1.1 fl oz": the unit of the tables. */
  private String water(double grams) {
    return AirTable.water(grams, units) + (units == UnitSystem.SI ? " g" : " fl oz");
  }

  /** What a change of the line is called. */
  static String change(LineChange.Kind kind) {
    return switch (kind) {
      case AS_IT_IS -> "as it is";
      case AFTERCOOLER -> "aftercooler before the tank";
      case DROP_LEG -> "50 ft of bare pipe, drained";
      case REFRIGERATED_DRYER -> "refrigerated dryer";
      case DESICCANT_DRYER -> "desiccant dryer";
      case ROOM_INTAKE -> "intake from the room";
      case OUTDOOR_INTAKE -> "intake from outdoors";
    };
  }

  /**
   * What the owner must heed, of the best place and of all.
   *
   * @return sentences
   */
  public List<String> cautions() {
    List<String> all = new ArrayList<>();
    answer.places().get(0).cautions().forEach(caution -> all.add(caution(caution)));
    all.add(runs() + standing());
    if (answer.places().get(0).placement().kind() == Placement.Kind.OPEN_ROOF) {
      all.add(
          "Outdoors, keep rain and its splash off motor, switch, pump head and intake: roof well over"
              + " the edge, feet off the ground, a foot or more free on all sides, and the tank looked"
              + " at for rust. Wiring outdoors is for a licensed electrician; neighbors hear it.");
    }
    all.add(
        "Drain tank and drop legs every day; keep relief valve and guards; blow"
            + " guns at no more than 30 psi at the tip (OSHA 1910.242(b)); no plastic pipe that is"
            + " not rated for compressed air.");
    all.add(
        "Keep what burns away from the hot head, and the machine out of air with solvent or powder."
            + " Local code and licensed trades decide on wiring, flues and openings in fire-rated"
            + " walls.");
    return all;
  }

  /** How long it runs in the best place; nothing where a caution has said so. */
  private String runs() {
    PlaceAnswer best = answer.places().get(0);
    double duty = 0;
    for (int hour = 1; hour <= 24; hour++) {
      duty = Math.max(duty, best.duty().at(hour));
    }
    boolean said =
        best.cautions().stream()
            .map(LineCaution::kind)
            .anyMatch(
                kind ->
                    kind == LineCaution.Kind.LONG_DUTY || kind == LineCaution.Kind.CANNOT_KEEP_UP);
    return said
        ? ""
        : "It runs up to "
            + Shown.percent(duty)
            + " of a working hour; such machines are made for "
            + Shown.percent(answer.line().machine().stages().mostDuty())
            + ". ";
  }

  /** What a hot head gives off when it has stopped. */
  private String standing() {
    StandingHeat pump = StandingHeat.of(answer.line().machine());
    String heat =
        units == UnitSystem.SI
            ? Shown.grouped(10 * Math.round(pump.stored() / 36_000)) + " Wh"
            : Shown.grouped(100 * Math.round(pump.stored() / JOULES_PER_BTU / 100)) + " BTU";
    return "After a long run its hot pump still holds about "
        + heat
        + " and gives off half of it in "
        + Math.round(pump.timeConstant() * Math.log(2) / 60)
        + " min: a fan that carries its heat off should run on that long, and what burns stays away"
        + " from it.";
  }

  private String caution(LineCaution caution) {
    String found = Shown.temperature(caution.found(), units);
    String limit = Shown.temperature(caution.limit(), units);
    return switch (caution.kind()) {
      case LONG_DUTY ->
          "It runs "
              + Shown.percent(caution.found())
              + " of the time; such machines are made for "
              + Shown.percent(caution.limit())
              + ".";
      case CANNOT_KEEP_UP ->
          "It cannot keep up: the tools ask for "
              + Shown.percent(caution.found())
              + " of what it delivers.";
      case HOT_PLACE ->
          "Its place reaches "
              + found
              + "; motors and compressors are made for "
              + limit
              + " around them.";
      case HOT_DRYER -> "The dryer stands in " + found + "; such dryers stop above " + limit + ".";
      case HOT_DRYER_INLET ->
          "Air comes into the dryer at " + found + "; such dryers stop above " + limit + ".";
      case SMALL_DRYER ->
          "The dryer is too small: dew point " + found + " in place of " + limit + ".";
      case LOW_PRESSURE ->
          "A tool wants "
              + Quantities.show(Kind.PRESSURE, caution.found(), units)
              + ", the tank holds "
              + Quantities.show(Kind.PRESSURE, caution.limit(), units)
              + ".";
      case WET_LINE ->
          "Water drops out in the line: pressure dew point "
              + found
              + ", coldest stretch "
              + limit
              + ".";
      case ICE_IN_LINE ->
          "Ice can form in the line: dew point " + found + ", coldest stretch " + limit + ".";
      case FROST ->
          "It freezes there (down to "
              + found
              + " in winter): water left in tank, drain, pump head or regulator turns to ice and can"
              + " stop drain and relief valves. Drain all of it after work, and take the oil its"
              + " maker names for the cold.";
    };
  }

  /**
   * What the answer does not know.
   *
   * @return sentences
   */
  public List<String> limits() {
    List<String> all = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (Placement.Kind kind : Placement.Kind.values()) {
      if (answer.places().stream().noneMatch(each -> each.placement().kind() == kind)) {
        missing.add("\"" + PlaceNames.of(kind) + "\"");
      }
    }
    if (!missing.isEmpty()) {
      all.add("This shop has no such place: " + Shown.row(missing) + ".");
    }
    if (answer.places().stream().anyMatch(each -> each.placePeak() > MOST_TOLD)) {
      all.add(
          "A place told with nearly "
              + Shown.temperature(HOTTEST, units)
              + " would get hotter still; the machine switches off long before.");
    }
    answer.places().stream()
        .filter(each -> each.placement().kind() == Placement.Kind.OPEN_ROOF)
        .forEach(each -> all.add(openRoof(each)));
    all.add(
        "Noise is not computed. Closets have no leaks but their vents, no wind helps them, and"
            + " grilles count by their free area: a louver leaves about half of its size.");
    return all;
  }

  /** How warm it is taken to be under an open roof, who says so, and what of it decides. */
  private String openRoof(PlaceAnswer place) {
    double rise = place.placement().openRise();
    String whose =
        rise == CompressedAir.OPEN_ROOF_RISE
            ? "the usual figure, as the shop gives no other"
            : "as the shop's description says";
    double most = rise + AirCompressor.MOST_AMBIENT - place.placePeak();
    String limit = Shown.temperature(AirCompressor.MOST_AMBIENT, units);
    String where =
        most > 0
            ? "From "
                + Shown.fineDifference(most, units)
                + " warmer on it is hotter there than the "
                + limit
                + " the machine takes: hold a thermometer there on a hot day."
            : "The outdoor air alone is hotter than the " + limit + " the machine takes.";
    return "Under an open roof it is taken as "
        + Shown.fineDifference(rise, units)
        + " warmer than outdoors ("
        + whose
        + "; field \"Open roof outdoors, warmer by\", air.openRoofRise), whatever the wind and the sun"
        + " on the roof. "
        + where;
  }
}
