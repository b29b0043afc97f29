package org.shopclime.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.shopclime.climate.FoundPlace;
import org.shopclime.climate.GeoPoint;
import org.shopclime.climate.PlaceSearch;
import org.shopclime.climate.PlacesFound;
import org.shopclime.climate.Station;
import org.shopclime.report.ClimateFacts;

/** Finds the stations to choose from while someone types. */
final class PlaceFinder {

  /**
   * A station to choose.
   *
   * @param station the station
   * @param km distance, km, from what {@link Found#from} says; nothing where that is not known
   */
  record Row(Station station, OptionalDouble km) {}

  /**
   * What fits.
   *
   * @param rows stations, the best first
   * @param told a sentence on what they are, or why there are none
   * @param from what the distances are taken from, empty if there are none
   * @param kind how the rows are meant
   */
  record Found(List<Row> rows, String told, String from, Kind kind) {
    Found {
      rows = List.copyOf(rows);
    }

    Set<String> ids() {
      return rows.stream().map(row -> row.station().id()).collect(Collectors.toSet());
    }
  }

  /** How rows are meant. */
  enum Kind {
    /** All stations there are. */
    ALL,
    /** Those that fit what was typed. */
    FITTING,
    /** Nothing fits; those spelt most alike. */
    ALIKE
  }

  /** Digits of a whole station number. */
  private static final int DIGITS = 6;

  private final List<Station> stations;
  private final Optional<Station> near;

  /**
   * A finder.
   *
   * @param stations all stations
   * @param near the station chosen up to now, if it is known
   */
  PlaceFinder(List<Station> stations, Optional<Station> near) {
    this.stations = List.copyOf(stations);
    this.near = near;
  }

  /** What fits a text; all stations where there is none. */
  Found find(String text) {
    String asked = text.strip();
    if (asked.isEmpty()) {
      return all();
    }
    if (asked.matches("\\d{1," + (DIGITS - 1) + "}")) {
      List<Station> begun = stations.stream().filter(one -> one.id().startsWith(asked)).toList();
      if (!begun.isEmpty()) {
        return fitting(begun, count(begun.size(), "begins", "begin") + " so.");
      }
    }
    PlacesFound found = PlaceSearch.of(stations, asked);
    if (found instanceof PlacesFound.Near point) {
      String from = ClimateFacts.point(point.point());
      return new Found(
          point.places().stream().map(PlaceFinder::row).toList(),
          count(stations.size(), "", "") + ", those nearest to " + from + " first.",
          from,
          Kind.ALL);
    }
    if (found instanceof PlacesFound.InState state) {
      List<Station> rows = new ArrayList<>(stationsOf(state));
      rows.addAll(state.namesakes());
      String elsewhere =
          state.namesakes().isEmpty()
              ? "."
              : "; at the end " + state.namesakes().size() + " elsewhere of that name.";
      return fitting(
          rows, count(state.places().size(), "", "") + " in " + state.name() + elsewhere);
    }
    if (found instanceof PlacesFound.Nothing nothing) {
      String alike =
          nothing.alike().isEmpty() ? "" : " Those most alike are listed; none is chosen.";
      return new Found(
          rows(nothing.alike()),
          "Nothing fits: found " + nothing.found() + "; takes " + nothing.takes() + "." + alike,
          from(),
          Kind.ALIKE);
    }
    return fitting(stationsOf(found), count(found.places().size(), "fits", "fit") + ".");
  }

  private static String count(int count, String one, String several) {
    return count == 1
        ? ("1 station " + one).strip()
        : (String.format(Locale.ROOT, "%,d stations ", count) + several).strip();
  }

  private static List<Station> stationsOf(PlacesFound found) {
    return found.places().stream().map(FoundPlace::station).toList();
  }

  private Found fitting(List<Station> fitting, String told) {
    String away = from().isEmpty() ? "" : " Distances are from " + from() + ".";
    return new Found(rows(fitting), told + away, from(), Kind.FITTING);
  }

  private Found all() {
    String count = count(stations.size(), "", "");
    if (near.isEmpty()) {
      List<Station> byName =
          stations.stream()
              .sorted(Comparator.comparing(Station::name).thenComparing(Station::state))
              .toList();
      return new Found(rows(byName), count + " by name.", "", Kind.ALL);
    }
    return new Found(
        PlaceSearch.from(GeoPoint.of(near.get()), stations).stream().map(PlaceFinder::row).toList(),
        count + ", those near " + near.get().name() + " first.",
        from(),
        Kind.ALL);
  }

  private String from() {
    return near.map(Station::name).orElse("");
  }

  private static Row row(FoundPlace found) {
    return new Row(found.station(), OptionalDouble.of(found.distanceKm()));
  }

  private List<Row> rows(List<Station> found) {
    return found.stream()
        .map(
            station ->
                new Row(
                    station,
                    near.isPresent()
                        ? OptionalDouble.of(
                            station.distanceKm(near.get().latitudeDeg(), near.get().longitudeDeg()))
                        : OptionalDouble.empty()))
        .toList();
  }
}
