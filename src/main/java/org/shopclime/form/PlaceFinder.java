package org.shopclime.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;

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
   * @param narrowed whether some stations are left out
   */
  record Found(List<Row> rows, String told, String from, boolean narrowed) {
    Found {
      rows = List.copyOf(rows);
    }

    Set<String> ids() {
      return rows.stream().map(row -> row.station().id()).collect(Collectors.toSet());
    }
  }

  private static final Pattern POINT =
      Pattern.compile("([+-]?\\d{1,2}(?:\\.\\d*)?)\\s*[,; ]\\s*([+-]?\\d{1,3}(?:\\.\\d*)?)");

  private final List<Station> stations;
  private final Optional<Station> near;

  /**
   * A finder.
   *
   * @param climates all stations
   * @param near the station chosen up to now, if it is known
   */
  PlaceFinder(Climates climates, Optional<Station> near) {
    this.stations = climates.all().stream().map(climate -> climate.station()).toList();
    this.near = near;
  }

  /** What fits a text; all stations where there is none. */
  Found find(String text) {
    String asked = text.strip();
    Matcher point = POINT.matcher(asked);
    if (asked.isEmpty()) {
      return all();
    }
    if (point.matches()) {
      double latitude = Double.parseDouble(point.group(1));
      double longitude = Double.parseDouble(point.group(2));
      if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) {
        return around(latitude, longitude, asked);
      }
    }
    return fitting(asked);
  }

  private Found all() {
    String count = String.format(Locale.ROOT, "%,d stations", stations.size());
    if (near.isEmpty()) {
      return new Found(rows(station -> true), count + " by name.", "", false);
    }
    return new Found(
        rows(station -> true),
        count + ", those near " + near.get().name() + " first.",
        near.get().name(),
        false);
  }

  private Found around(double latitude, double longitude, String asked) {
    List<Row> rows = new ArrayList<>();
    for (Station station : stations) {
      rows.add(new Row(station, OptionalDouble.of(station.distanceKm(latitude, longitude))));
    }
    rows.sort(Comparator.comparingDouble(row -> row.km().orElseThrow()));
    return new Found(rows, "Nearest to " + asked + " first.", asked, false);
  }

  private Found fitting(String asked) {
    List<String> words = List.of(asked.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}']+"));
    List<Row> rows = rows(station -> words.stream().allMatch(word -> fits(word, station)));
    if (rows.isEmpty()) {
      return new Found(
          List.of(),
          "No station fits \""
              + asked
              + "\". Try a city, a state such as AL, a station number, or a point such as"
              + " 30.7, -88.2.",
          "",
          true);
    }
    String count = rows.size() == 1 ? "1 station fits." : rows.size() + " stations fit.";
    return new Found(rows, count, near.map(Station::name).orElse(""), true);
  }

  private static boolean fits(String word, Station station) {
    return station.state().equalsIgnoreCase(word)
        || station.id().startsWith(word)
        || List.of(station.name().toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}']+")).stream()
            .anyMatch(part -> part.startsWith(word));
  }

  private List<Row> rows(Predicate<Station> wanted) {
    Comparator<Row> byName =
        Comparator.comparing((Row row) -> row.station().name())
            .thenComparing(row -> row.station().state());
    return stations.stream()
        .filter(wanted)
        .map(station -> new Row(station, distance(station)))
        .sorted(Comparator.comparingDouble((Row row) -> row.km().orElse(0)).thenComparing(byName))
        .toList();
  }

  private OptionalDouble distance(Station station) {
    return near.isPresent()
        ? OptionalDouble.of(station.distanceKm(near.get().latitudeDeg(), near.get().longitudeDeg()))
        : OptionalDouble.empty();
  }
}
