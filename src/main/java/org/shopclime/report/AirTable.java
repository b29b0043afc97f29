package org.shopclime.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.ClosetWalls;
import org.shopclime.airline.LineChange;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.PlaceNames;
import org.shopclime.airline.Placement;
import org.shopclime.quantity.UnitSystem;

/** Places for the compressor, and changes of its line, as texts for tables. */
public final class AirTable {

  /** Grams of water in a US fluid ounce. */
  static final double GRAMS_PER_FLUID_OUNCE = 29.57;

  /** Litres in a US quart. */
  static final double LITRES_PER_QUART = 0.946352946;

  /** Heat of which no owner would speak, W. */
  private static final double SLIGHT = 15;

  private AirTable() {}

  /**
   * Heads of the table of places.
   *
   * @param units system of units to show
   * @return one for each column
   */
  public static List<String> heads(UnitSystem units) {
    String degrees = ", " + Shown.temperatureUnit(units);
    String heat = ", " + Shown.heatUnit(units);
    String water = ", " + waterUnit(units);
    return List.of(
        "Place",
        "Hottest there" + degrees,
        "Heat to room" + heat,
        "Room" + degrees,
        "Unit holds",
        "Tank water" + water,
        "Line water" + water,
        "Dew point" + degrees,
        "Electricity, kWh/day",
        "Winter heat" + heat);
  }

  /**
   * Rows in order of rank.
   *
   * @param answer the answer
   * @param units system of units to show
   * @return a row of texts for each place
   */
  public static List<List<String>> rows(AirlineAnswer answer, UnitSystem units) {
    return answer.places().stream().map(place -> row(answer, place, units)).toList();
  }

  private static List<String> row(AirlineAnswer answer, PlaceAnswer place, UnitSystem units) {
    return List.of(
        AirReasons.heading(place),
        degrees(place.placePeak(), units),
        Shown.heat(place.roomLoad(), units),
        degrees(place.indoorPeak(), units),
        answer.shop().unit().isEmpty() ? "no unit" : place.holds() ? "yes" : "no",
        water(place.tankWater(), units),
        water(place.lineWater(), units),
        degrees(place.pressureDewPoint(), units),
        decimal(place.compressorKilowattHours() + place.coolingKilowattHours()),
        Shown.heat(place.winterHeat(), units));
  }

  /**
   * What the columns mean.
   *
   * @param answer the answer
   * @param units system of units to show
   * @return sentences
   */
  public static String note(AirlineAnswer answer, UnitSystem units) {
    double coldest =
        answer.places().isEmpty() ? Double.NaN : answer.places().get(0).coldestStretch();
    return "Hottest there: the hottest working hour where the machine stands. Heat to room: the most"
        + " that the room gets by it, against the shop without a compressor. Room: its hottest"
        + " working hour. Tank and line water: what drops out at the machine and in pipe and hose"
        + " in the wettest working hour. Dew point: where water drops out under pressure; the"
        + " coldest stretch of the line is "
        + Shown.temperature(coldest, units)
        + ". Electricity: compressor, its fans and the cooling unit on the hot day. Winter heat:"
        + " what the room gets on the winter design day, mean of working hours; less than nothing"
        + " where warm air is thrown out.";
  }

  /**
   * Heads of the table of changes to the line.
   *
   * @param units system of units to show
   * @return one for each column
   */
  public static List<String> lineHeads(UnitSystem units) {
    String water = ", " + waterUnit(units);
    String degrees = ", " + Shown.temperatureUnit(units);
    return List.of(
        "With",
        "At the machine" + water,
        "In pipe and hose" + water,
        "In a dryer" + water,
        "To drain, " + drainUnit(units) + "/day",
        "Dew point" + degrees,
        "Coldest stretch" + degrees);
  }

  /**
   * Rows of the table of changes to the line.
   *
   * @param changes the changes
   * @param units system of units to show
   * @return a row of texts for each
   */
  public static List<List<String>> lineRows(List<LineChange> changes, UnitSystem units) {
    return changes.stream()
        .map(
            change ->
                List.of(
                    change(change.kind(), units),
                    water(change.tankWater(), units),
                    water(change.lineWater(), units),
                    water(change.dryerWater(), units),
                    decimal(drained(change.litresToDrain(), units)),
                    degrees(change.pressureDewPoint(), units),
                    degrees(change.coldestStretch(), units)))
        .toList();
  }

  /**
   * Heads of the table of closets.
   *
   * @param units system of units to show
   * @return one for each column
   */
  public static List<String> wallHeads(UnitSystem units) {
    String degrees = ", " + Shown.temperatureUnit(units);
    String heat = ", " + Shown.heatUnit(units);
    return List.of(
        "Closet",
        "There, bare" + degrees,
        "There, R-13" + degrees,
        "There, stair" + degrees,
        "To room, bare" + heat,
        "To room, R-13" + heat,
        "To room, stair" + heat,
        "Room, bare" + degrees,
        "Room, R-13" + degrees,
        "Room, stair" + degrees);
  }

  /**
   * Rows of the table of closets.
   *
   * @param closets closets with both kinds of partitions
   * @param units system of units to show
   * @return a row of texts for each
   */
  public static List<List<String>> wallRows(List<ClosetWalls> closets, UnitSystem units) {
    List<List<String>> rows = new ArrayList<>();
    for (ClosetWalls closet : closets) {
      List<ClosetWalls.Case> cases = List.of(closet.bare(), closet.insulated(), closet.stair());
      List<String> row = new ArrayList<>(List.of(brief(closet.kind())));
      cases.forEach(each -> row.add(degrees(each.placePeak(), units)));
      cases.forEach(each -> row.add(Shown.heat(each.roomLoad(), units)));
      cases.forEach(each -> row.add(degrees(each.indoorPeak(), units)));
      rows.add(row);
    }
    return rows;
  }

  /**
   * What insulated partitions do, in a few sentences.
   *
   * @param closets closets with both kinds of partitions, at least one
   * @param units system of units to show
   * @return the sentences
   */
  public static String walls(List<ClosetWalls> closets, UnitSystem units) {
    ClosetWalls most = Collections.max(closets, Comparator.comparing(ClosetWalls::keptOut));
    ClosetWalls hottest = Collections.max(closets, Comparator.comparing(ClosetWalls::hotter));
    String kept =
        most.keptOut() < SLIGHT
            ? "R-13 in the partitions keeps hardly any of the heat out of the room"
            : "R-13 in the partitions keeps at most "
                + Shown.power(most.keptOut(), units)
                + " out of the room ("
                + brief(most.kind())
                + ")";
    String price =
        hottest.hotter() < 0.5
            ? "."
            : ", and makes the closet up to "
                + Shown.difference(hottest.hotter(), units)
                + " hotter ("
                + brief(hottest.kind())
                + ").";
    return kept
        + price
        + " It pays where air from outdoors passes the closet; where the room's air does, that"
        + " carries the heat anyway. A closet under a stair has the room on all sides and gives it"
        + " more. Sound is another matter, and not computed.";
  }

  /** A name that leaves room for the figures. */
  static String brief(Placement.Kind kind) {
    return switch (kind) {
      case IN_ROOM, CLOSED_CLOSET, LOFT, LEAN_TO -> PlaceNames.of(kind);
      case OPEN_ROOF -> "open roof outdoors";
      case CLOSED_INSULATED_CLOSET -> "closed closet, insulated";
      case UNDER_STAIR -> "closed, under a stair";
      case GRILLES_TO_ROOM -> "closet, grilles to room";
      case FAN_TO_ROOM -> "closet, fan to room";
      case STACK_OUTDOORS -> "closet, stack to outdoors";
      case FAN_OUTDOORS -> "closet, fan to outdoors";
      case OUTDOOR_LOOP -> "closet, vents of outdoors";
      case OUTDOOR_LOOP_FAN -> "closet, fan of outdoors";
    };
  }

  /** What a change of the line is called. */
  static String change(LineChange.Kind kind, UnitSystem units) {
    return kind == LineChange.Kind.DROP_LEG && units == UnitSystem.SI
        ? "15 m of bare pipe, drained"
        : capital(AirlineWords.change(kind));
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** Water of an hour: whole grams or tenths of a fluid ounce. */
  static String water(double grams, UnitSystem units) {
    return units == UnitSystem.SI
        ? Shown.grouped(Math.round(grams))
        : decimal(grams / GRAMS_PER_FLUID_OUNCE);
  }

  static String waterUnit(UnitSystem units) {
    return units == UnitSystem.SI ? "g/h" : "fl oz/h";
  }

  static double drained(double litres, UnitSystem units) {
    return units == UnitSystem.SI ? litres : litres / LITRES_PER_QUART;
  }

  static String drainUnit(UnitSystem units) {
    return units == UnitSystem.SI ? "liters" : "quarts";
  }

  private static String degrees(double celsius, UnitSystem units) {
    return Shown.grouped(Math.round(Shown.degrees(celsius, units)));
  }

  private static String decimal(double figure) {
    return String.format(Locale.ROOT, "%,.1f", figure + 0.0);
  }
}
