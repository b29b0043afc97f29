package org.shopclime.climate;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The stations the program knows, and the ways to find one. */
public final class Climates {
  private static final String TABLE = "/climate-data/stations.csv";

  private final List<StationClimate> stations;

  /**
   * Stations from any source.
   *
   * @param stations one or more
   * @throws IllegalArgumentException if there is none
   */
  public Climates(List<StationClimate> stations) {
    this.stations = List.copyOf(stations);
    if (this.stations.isEmpty()) {
      throw new IllegalArgumentException("no stations");
    }
  }

  /**
   * The stations that travel with the program.
   *
   * @return all of them
   */
  public static Climates load() {
    try (InputStream bytes = Climates.class.getResourceAsStream(TABLE)) {
      if (bytes == null) {
        throw new IllegalStateException("the program came without " + TABLE);
      }
      try (Reader text = new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
        return new Climates(StationTable.read(text));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * All stations.
   *
   * @return in the order of the table; cannot be changed
   */
  public List<StationClimate> all() {
    return stations;
  }

  /**
   * All stations, without their climates.
   *
   * @return in the order of the table; cannot be changed
   */
  public List<Station> stations() {
    return stations.stream().map(StationClimate::station).toList();
  }

  private StationClimate climate(Station station) {
    return stations.stream().filter(one -> one.station().equals(station)).findFirst().orElseThrow();
  }

  /**
   * The station meant by a text: its number, or its name or the beginning of it, in any case, a
   * state behind it where one is needed ("Portland, OR" or "Portland, Oregon"). Of several in one
   * state that fit alike, one whose number ends in 0 (a station of the world network, usually the
   * city's main airport) goes before those whose does not.
   *
   * @param idOrName number or name
   * @return the station, or nothing where none fits or several fit alike
   */
  public Optional<StationClimate> find(String idOrName) {
    return new StationSearch(stations()).find(idOrName).map(this::climate);
  }

  /**
   * Stations that may have been meant by a text.
   *
   * @param text a number or name that {@link #find} did not settle
   * @return up to five, the best first; those that fit, otherwise those spelt most alike
   */
  public List<StationClimate> suggestions(String text) {
    return new StationSearch(stations()).suggestions(text).stream().map(this::climate).toList();
  }

  /**
   * The station nearest to a point.
   *
   * @param latitudeDeg latitude, degrees, -90 to 90
   * @param longitudeDeg longitude, degrees, east positive, -180 to 180
   * @return the station with the shortest great circle to it
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public StationClimate nearest(double latitudeDeg, double longitudeDeg) {
    return byDistance(latitudeDeg, longitudeDeg).get(0);
  }

  /**
   * All stations by their distance from a point.
   *
   * @param latitudeDeg latitude, degrees, -90 to 90
   * @param longitudeDeg longitude, degrees, east positive, -180 to 180
   * @return all stations, the nearest first
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public List<StationClimate> byDistance(double latitudeDeg, double longitudeDeg) {
    return stations.stream()
        .sorted(
            Comparator.comparingDouble(
                climate -> climate.station().distanceKm(latitudeDeg, longitudeDeg)))
        .toList();
  }

  /**
   * The typical year of a station as day types.
   *
   * @param station one of the stations here
   * @return its day types, or nothing where the tables have none for it
   */
  public Optional<TypicalYear> typicalYear(Station station) {
    return Optional.empty();
  }
}
