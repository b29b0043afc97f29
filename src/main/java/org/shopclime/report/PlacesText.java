package org.shopclime.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shopclime.climate.ClimateKind;
import org.shopclime.climate.Level;
import org.shopclime.climate.PlacesFound;
import org.shopclime.climate.Station;
import org.shopclime.climate.StationClimate;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/** Places that were found, as plain text for a terminal, 100 columns or less. */
public final class PlacesText {

  private static final int JANUARY = 1;
  private static final int JULY = 7;
  private static final int MOST_NAMESAKES = 6;
  private static final String UNDER = "    ";

  private PlacesText() {}

  /**
   * The places with distance, elevation and climate, what to take care of, and how to use the
   * first.
   *
   * @param list the places
   * @param units system of units to show
   * @return lines, each ended by a line feed
   */
  public static String of(PlaceList list, UnitSystem units) {
    StringBuilder text = new StringBuilder();
    TextLines.wrapped(text, "", head(list, units));
    for (String warning : list.warnings(units)) {
      TextLines.wrapped(text, "Take care: ", warning);
    }
    text.append('\n');
    List<List<String>> heads = list.shown().stream().map(one -> head(list, one, units)).toList();
    List<String> lines = aligned(heads);
    for (int i = 0; i < lines.size(); i++) {
      text.append(lines.get(i)).append('\n');
      TextLines.wrapped(text, UNDER, climate(list.shown().get(i).climate(), units));
    }
    int more = list.found().places().size() - list.shown().size();
    if (more > 0) {
      text.append('\n');
      TextLines.wrapped(text, "", more + " more; --all shows them.");
    }
    namesakes(text, list);
    text.append('\n');
    TextLines.wrapped(text, "", note(units));
    if (list.found() instanceof PlacesFound.Near && list.elevation().isEmpty()) {
      TextLines.wrapped(
          text,
          "",
          "With --elevation and your shop's height above the sea it tells how much higher or lower"
              + " each lies.");
    }
    TextLines.wrapped(text, "", use(list.shown().get(0).place().station()));
    return text.toString();
  }

  private static String note(UnitSystem units) {
    String dry = Shown.temperature(Units.celsius(55), units);
    String humid = Shown.temperature(Units.celsius(65), units);
    return "Summers: the temperature passed in 1 % of the hours of a typical year, and the dew point"
        + " then ("
        + dry
        + " and less feels dry, "
        + humid
        + " and more humid). Winters: the temperature passed in 99 % of the hours. July and"
        + " January: means of day and night.";
  }

  private static String head(PlaceList list, UnitSystem units) {
    PlacesFound found = list.found();
    if (found instanceof PlacesFound.Near near) {
      return "Weather stations near "
          + degrees(near.point().latitudeDeg(), "N", "S")
          + ", "
          + degrees(near.point().longitudeDeg(), "E", "W")
          + own(list, units)
          + ", the nearest first";
    }
    if (found instanceof PlacesFound.InState state) {
      return "Weather stations of " + state.name() + own(list, units);
    }
    return (found.places().size() == 1
            ? "One weather station"
            : "Weather stations that fit, the best first; distances from it")
        + own(list, units);
  }

  private static String own(PlaceList list, UnitSystem units) {
    return list.elevation().isPresent()
        ? ", your shop at " + PlaceList.height(list.elevation().getAsDouble(), units)
        : "";
  }

  private static String degrees(double value, String positive, String negative) {
    String figure = BigDecimal.valueOf(Math.abs(value)).stripTrailingZeros().toPlainString();
    return figure + "° " + (value < 0 ? negative : positive);
  }

  private static List<String> head(PlaceList list, PlaceList.Line one, UnitSystem units) {
    Station station = one.place().station();
    List<String> cells = new ArrayList<>();
    cells.add(station.id());
    cells.add(station.name() + ", " + station.state());
    // Of a state there is no place to count from.
    cells.add(
        list.found() instanceof PlacesFound.InState
            ? ""
            : PlaceList.distance(one.place().distanceKm(), units));
    cells.add(PlaceList.height(station.elevationM(), units));
    cells.add(
        list.elevation().isPresent()
            ? PlaceList.beside(station.elevationM() - list.elevation().getAsDouble(), units)
            : "");
    return cells;
  }

  /** Number and name to the left, figures to the right. */
  private static List<String> aligned(List<List<String>> rows) {
    int[] width = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < width.length; i++) {
        width[i] = Math.max(width[i], row.get(i).length());
      }
    }
    return rows.stream()
        .map(
            row -> {
              StringBuilder line = new StringBuilder();
              for (int i = 0; i < width.length; i++) {
                if (width[i] == 0) {
                  continue;
                }
                String gap = " ".repeat(width[i] - row.get(i).length());
                line.append("  ").append(i < 2 ? row.get(i) + gap : gap + row.get(i));
              }
              return line.toString().stripTrailing();
            })
        .toList();
  }

  private static String climate(StationClimate climate, UnitSystem units) {
    ClimateKind kind = ClimateKind.of(climate);
    String july = Shown.temperature(climate.monthDryBulb().at(JULY), units);
    return kind.summerWords()
        + " summers ("
        + Shown.temperature(climate.at(Level.P1).dryBulb(), units)
        + ", dew point "
        + Shown.temperature(ClimateKind.hotDewPoint(climate), units)
        + "), "
        + kind.winterWords()
        + " winters ("
        + Shown.temperature(climate.winter().dryBulb99(), units)
        + "); July "
        + july.replace(Shown.temperatureUnit(units), "").strip()
        + ", January "
        + Shown.temperature(climate.monthDryBulb().at(JANUARY), units);
  }

  private static void namesakes(StringBuilder text, PlaceList list) {
    if (list.found() instanceof PlacesFound.InState state && !state.namesakes().isEmpty()) {
      text.append('\n');
      TextLines.wrapped(
          text,
          "",
          "Also named so: "
              + state.namesakes().stream()
                  .limit(MOST_NAMESAKES)
                  .map(one -> one.id() + " " + one.name() + ", " + one.state())
                  .collect(Collectors.joining("; "))
              + ".");
    }
  }

  private static String use(Station station) {
    return "In the shop file: \"place\": {\"station\": \"" + station.id() + "\"}";
  }
}
