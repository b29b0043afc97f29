package org.shopclime.climate;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.regex.Pattern;

/**
 * Finds weather stations by whatever a person types: the name of a town or airport, a state, the
 * number of a station, latitude and longitude.
 *
 * <p>Wider than {@link Climates#find}, which must name one station: here everything that fits is
 * shown, and a person chooses.
 */
public final class PlaceSearch {
  private static final int MOST_ALIKE = 5;

  private static final Pattern NUMBER = Pattern.compile("\\d+");

  private static final String POINT =
      "latitude and longitude in degrees, -90 to 90 and -180 to 180 with the west negative, such as"
          + " 30.7,-88.2 or \"30.7N 88.2W\"";

  private static final String ANYTHING =
      "a town, a state, the number of a station, or latitude and longitude, such as Mobile,"
          + " \"Portland, OR\", TX, 722230 or 30.7,-88.2";

  private PlaceSearch() {}

  /**
   * Searches.
   *
   * <ul>
   *   <li>Latitude and longitude ("30.7,-88.2", "30.7 -88.2", "30.7N 88.2W", "30°41'N 88°15'W"):
   *       {@link PlacesFound.Near}, every station, the nearest first.
   *   <li>A state or territory by code or name: {@link PlacesFound.InState}.
   *   <li>A number of six digits: {@link PlacesFound.Fitting} with that station.
   *   <li>Words: {@link PlacesFound.Fitting} with every station whose name holds them or words that
   *       begin with them; whole names first, then names that begin so; main airports before
   *       others. Case, accents and the usual abbreviations (St, Ft, Mt, Intl, AP ...) make no
   *       difference. A state behind the name narrows.
   *   <li>Otherwise {@link PlacesFound.Nothing}, with stations spelt alike.
   * </ul>
   *
   * @param stations the stations to choose from
   * @param text what was typed
   * @return what was found; never an exception for the text's sake
   */
  public static PlacesFound of(List<Station> stations, String text) {
    String wanted = text.strip();
    if (wanted.isEmpty()) {
      return new PlacesFound.Nothing("nothing", ANYTHING, List.of());
    }
    if (NUMBER.matcher(wanted).matches()) {
      return numbered(stations, wanted);
    }
    Optional<PointText.Result> meant = PointText.read(wanted);
    if (meant.isPresent()) {
      PointText.Result result = meant.get();
      return result.point().isPresent()
          ? new PlacesFound.Near(result.point().get(), from(result.point().get(), stations))
          : new PlacesFound.Nothing(result.wrong(), POINT, List.of());
    }
    return UsState.of(PlaceWords.plain(wanted))
        .flatMap(state -> inState(stations, state))
        .orElseGet(() -> named(stations, wanted));
  }

  /**
   * All stations by their distance from a point.
   *
   * @param point the point
   * @param stations the stations
   * @return all of them, the nearest first
   */
  public static List<FoundPlace> from(GeoPoint point, List<Station> stations) {
    return stations.stream()
        .map(one -> found(point, one))
        .sorted(Comparator.comparingDouble(FoundPlace::distanceKm))
        .toList();
  }

  private static PlacesFound named(List<Station> stations, String wanted) {
    StationSearch search = new StationSearch(stations);
    List<Station> fitting = search.fitting(wanted);
    return fitting.isEmpty()
        ? new PlacesFound.Nothing("\"" + wanted + "\"", ANYTHING, search.alike(wanted))
        : new PlacesFound.Fitting(fromFirst(fitting));
  }

  private static PlacesFound numbered(List<Station> stations, String number) {
    List<Station> fitting = stations.stream().filter(one -> one.id().equals(number)).toList();
    if (!fitting.isEmpty()) {
      return new PlacesFound.Fitting(fromFirst(fitting));
    }
    ToIntFunction<Station> alike = one -> -inCommon(one.id(), number);
    return new PlacesFound.Nothing(
        "the number " + number,
        ANYTHING + "; no ZIP code",
        stations.stream().sorted(Comparator.comparingInt(alike)).limit(MOST_ALIKE).toList());
  }

  /** How many signs two numbers begin with in common. */
  static int inCommon(String one, String other) {
    int at = 0;
    while (at < one.length() && at < other.length() && one.charAt(at) == other.charAt(at)) {
      at++;
    }
    return at;
  }

  private static Optional<PlacesFound> inState(List<Station> stations, UsState state) {
    List<Station> named = new StationSearch(stations).beginning(state.name());
    List<Station> there =
        stations.stream()
            .filter(one -> one.state().equals(state.code()))
            .sorted(
                Comparator.<Station, Boolean>comparing(one -> !named.contains(one))
                    .thenComparing(Station::name))
            .toList();
    return there.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PlacesFound.InState(
                state.name(),
                fromFirst(there),
                named.stream().filter(one -> !one.state().equals(state.code())).toList()));
  }

  private static List<FoundPlace> fromFirst(List<Station> stations) {
    GeoPoint first = GeoPoint.of(stations.get(0));
    return stations.stream().map(one -> found(first, one)).toList();
  }

  private static FoundPlace found(GeoPoint from, Station station) {
    return new FoundPlace(station, station.distanceKm(from.latitudeDeg(), from.longitudeDeg()));
  }
}
