package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.shopclime.climate.FoundPlace;
import org.shopclime.climate.GeoPoint;
import org.shopclime.climate.PlacesFound;
import org.shopclime.climate.StationClimate;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/**
 * Places that were found, as they are shown.
 *
 * @param found all that was found, not empty
 * @param shown the first of them with their climates, in the same order
 * @param elevation height of the shop above the sea, m, where it is known
 */
public record PlaceList(PlacesFound found, List<Line> shown, OptionalDouble elevation) {

  /** Farther than this a station is no neighbour, km (150 mi; the program's own choice). */
  static final double FAR = Units.metresFromMiles(150) / 1000;

  /** A greater difference of height is told, m (1,000 ft; the program's own choice). */
  static final double HIGH = Units.metresFromFeet(1000);

  /** Less than half a foot is no difference, m. */
  private static final double LEVEL = 0.152;

  /** Copies the list; refuses an empty one. */
  public PlaceList {
    shown = List.copyOf(shown);
    if (shown.isEmpty() || shown.size() > found.places().size()) {
      throw new IllegalArgumentException(
          shown.size() + " places shown of " + found.places().size() + " found");
    }
  }

  /**
   * One place that is shown.
   *
   * @param place station and distance
   * @param climate climate of that station
   */
  public record Line(FoundPlace place, StationClimate climate) {}

  /** What to take care of with the first place. */
  List<String> warnings(UnitSystem units) {
    List<String> warnings = new ArrayList<>();
    FoundPlace first = shown.get(0).place();
    if (found instanceof PlacesFound.Near near && first.distanceKm() > FAR) {
      warnings.add(
          "The nearest station is "
              + distance(first.distanceKm(), units)
              + " away. Mountains and coast make a neighbour's weather different."
              + side(near.point()));
    }
    double above = first.station().elevationM() - elevation.orElse(Double.NaN);
    if (Math.abs(above) > HIGH) {
      warnings.add(
          first.station().name()
              + " lies "
              + beside(above, units)
              + ". Air is cooler higher up, by some "
              + (units == UnitSystem.SI ? "6.5 °C for every 1,000 m" : "3.6 °F for every 1,000 ft")
              + ", and mountain valleys have a weather of their own.");
    }
    return List.copyOf(warnings);
  }

  /** East of Greenwich there is no station but those of the Pacific: a minus may be missing. */
  private static String side(GeoPoint point) {
    return point.longitudeDeg() > 0
        ? " Longitudes of the Americas are west: write them with a minus or a W."
        : "";
  }

  /** Height of a place over the shop in words: "220 ft above you". */
  static String beside(double metresAbove, UnitSystem units) {
    if (Math.abs(metresAbove) < LEVEL) {
      return "as high as you";
    }
    return height(Math.abs(metresAbove), units) + (metresAbove < 0 ? " below you" : " above you");
  }

  /** A height in whole feet or metres. */
  static String height(double metres, UnitSystem units) {
    double whole =
        units == UnitSystem.SI
            ? Math.rint(metres)
            : Units.metresFromFeet(Math.rint(Units.feet(metres)));
    return Quantities.show(Kind.LENGTH, whole + 0.0, units).replace('-', '−');
  }

  /** A distance in miles or kilometres: one decimal below ten, else none. */
  static String distance(double km, UnitSystem units) {
    double figure = units == UnitSystem.SI ? km : Units.miles(km * 1000);
    String pattern = figure < 9.95 ? "%.1f" : "%,.0f";
    return String.format(Locale.ROOT, pattern, figure) + (units == UnitSystem.SI ? " km" : " mi");
  }
}
