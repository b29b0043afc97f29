package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.LineChange;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.VentPoint;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;

/** The answer on places for the compressor as plain text, 100 columns or less. */
public final class AirlineText {

  private static final double SQUARE_FOOT = 0.3048 * 0.3048;

  private AirlineText() {}

  /**
   * The whole answer as plain text.
   *
   * @param answer the answer
   * @param units system of units to show
   * @return lines, each ended by a line feed
   */
  public static String of(AirlineAnswer answer, UnitSystem units) {
    AirlineWords words = new AirlineWords(answer, units);
    StringBuilder text = new StringBuilder();
    text.append(Shown.line(answer.shop().name())).append("\n\n");
    TextLines.wrapped(text, "", words.sentence());
    places(text, answer, units);
    text.append("\nWhy they stand so\n");
    AirReasons reasons = new AirReasons(answer, units);
    reasons.lines().forEach(line -> TextLines.wrapped(text, "- ", line));
    String best = answer.places().get(0).ranked().place().name();
    changes(
        text,
        "What a part added to the line of \"" + best + "\" does, usual hours",
        answer.changes(),
        units);
    changes(text, "The same in hours of nothing but blasting", answer.blasting(), units);
    curve(text, answer, units);
    closets(text, answer, units);
    text.append("\nTake care\n");
    words.cautions().forEach(caution -> TextLines.wrapped(text, "- ", caution));
    text.append("\nWhat this leaves out\n");
    words.limits().forEach(limit -> TextLines.wrapped(text, "- ", limit));
    return text.toString();
  }

  private static void places(StringBuilder text, AirlineAnswer answer, UnitSystem units) {
    text.append("\nPlaces on the hot day (")
        .append(Shown.temperatureUnit(units))
        .append(", ")
        .append(Shown.heatUnit(units))
        .append(", water in ")
        .append(AirTable.waterUnit(units))
        .append(", kWh of the day)\n");
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "", "there", "to room", "inside", "holds", "tank", "line", "dew pt", "kWh", "winter"));
    for (PlaceAnswer place : answer.places()) {
      String rank = place.ranked().rank().map(each -> each + ". ").orElse("-  ");
      rows.add(
          List.of(
              rank + AirTable.brief(place.placement().kind()),
              degrees(place.placePeak(), units),
              Shown.heat(place.roomLoad(), units),
              degrees(place.indoorPeak(), units),
              answer.shop().unit().isEmpty() ? "–" : place.holds() ? "yes" : "no",
              AirTable.water(place.tankWater(), units),
              AirTable.water(place.lineWater(), units),
              degrees(place.pressureDewPoint(), units),
              String.format(
                  Locale.ROOT,
                  "%.1f",
                  place.compressorKilowattHours() + place.coolingKilowattHours()),
              Shown.heat(place.winterHeat(), units)));
    }
    SizeText.columns(text, rows);
    text.append('\n');
    TextLines.wrapped(
        text,
        "  ",
        "There: hottest working hour where it stands. To room: most heat that the room gets by it,"
            + " against the shop without a compressor. Inside: hottest working hour of the room."
            + " Tank and line: water of the wettest working hour. Dew pt: where water drops out"
            + " under pressure; coldest stretch of the line "
            + Shown.temperature(answer.places().get(0).coldestStretch(), units)
            + ". Winter: heat the room gets by it on the winter design day, mean of working"
            + " hours.");
  }

  private static String degrees(double celsius, UnitSystem units) {
    return Shown.grouped(Math.round(Shown.degrees(celsius, units)));
  }

  private static void changes(
      StringBuilder text, String head, List<LineChange> changes, UnitSystem units) {
    text.append('\n').append(head).append('\n');
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "water in " + AirTable.waterUnit(units),
            "tank",
            "line",
            "dryer",
            AirTable.drainUnit(units) + " a day",
            "dew pt",
            "coldest"));
    for (LineChange change : changes) {
      rows.add(
          List.of(
              AirTable.change(change.kind(), units),
              AirTable.water(change.tankWater(), units),
              AirTable.water(change.lineWater(), units),
              AirTable.water(change.dryerWater(), units),
              String.format(Locale.ROOT, "%.1f", AirTable.drained(change.litresToDrain(), units)),
              Shown.temperature(change.pressureDewPoint(), units),
              Shown.temperature(change.coldestStretch(), units)));
    }
    SizeText.columns(text, rows);
  }

  private static void curve(StringBuilder text, AirlineAnswer answer, UnitSystem units) {
    text.append("\nCorner closet with two grilles to the room: hottest working hour\n");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("free area of each", "closet"));
    for (VentPoint point : answer.ventCurve()) {
      rows.add(
          List.of(
              units == UnitSystem.SI
                  ? Quantities.show(Kind.AREA, Math.rint(point.area() * 1000) / 1000, units)
                  : String.format(Locale.ROOT, "%.2f ft²", point.area() / SQUARE_FOOT),
              Shown.temperature(point.celsius(), units)));
    }
    SizeText.columns(text, rows);
  }

  private static void closets(StringBuilder text, AirlineAnswer answer, UnitSystem units) {
    text.append(
            "\nThe same vents in other walls: corner with bare partitions, with R-13, under a stair (")
        .append(Shown.temperatureUnit(units))
        .append(", ")
        .append(Shown.heatUnit(units))
        .append(")\n");
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "", "there", "R-13", "stair", "to room", "R-13", "stair", "inside", "R-13", "stair"));
    rows.addAll(AirTable.wallRows(answer.closets(), units));
    SizeText.columns(text, rows);
    text.append('\n');
    TextLines.wrapped(text, "  ", AirTable.walls(answer.closets(), units));
  }
}
