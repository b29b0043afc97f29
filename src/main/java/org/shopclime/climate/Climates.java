package org.shopclime.climate;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The stations the program knows, and the ways to find one. Loading reads no more than the
 * stations; climates and typical years are read when they are asked for. May be shared by threads.
 */
public final class Climates {
  private static final String FOLDER = "/climate-data/";

  private final List<Station> stations;
  private final Function<Station, StationClimate> climates;
  private final Function<Station, Optional<TypicalYear>> years;
  private final Map<String, StationClimate> found = new ConcurrentHashMap<>();
  private final Map<String, Optional<TypicalYear>> foundYears = new ConcurrentHashMap<>();

  /**
   * Stations from any source, without typical years.
   *
   * @param climates one or more, of different stations
   * @throws IllegalArgumentException if there is none
   */
  public Climates(List<StationClimate> climates) {
    this(
        climates.stream().map(StationClimate::station).toList(),
        Climates::unknown,
        station -> Optional.empty());
    climates.forEach(climate -> found.put(climate.station().id(), climate));
  }

  private Climates(
      List<Station> stations,
      Function<Station, StationClimate> climates,
      Function<Station, Optional<TypicalYear>> years) {
    this.stations = stations;
    this.climates = climates;
    this.years = years;
    if (stations.isEmpty()) {
      throw new IllegalArgumentException("no stations");
    }
  }

  private static StationClimate unknown(Station station) {
    throw new IllegalArgumentException("no station " + station.id());
  }

  /**
   * The stations that travel with the program.
   *
   * @return all of them
   */
  public static Climates load() {
    try (Reader text = table(TableMaker.STATIONS)) {
      TableText table = StationTable.rows(text);
      List<Station> stations =
          IntStream.range(0, table.rows())
              .mapToObj(index -> StationTable.station(table, index))
              .toList();
      Map<String, Integer> rows = new HashMap<>();
      stations.forEach(station -> rows.put(station.id(), rows.size()));
      return new Climates(
          stations,
          station ->
              rows.containsKey(station.id())
                  ? StationTable.climate(table, rows.get(station.id()))
                  : unknown(station),
          Climates::shipped);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Optional<TypicalYear> shipped(Station station) {
    try (Reader types = table(TableMaker.DAY_TYPES);
        Reader shapes = table(TableMaker.SHAPES);
        Reader order = table(TableMaker.ORDER)) {
      return TypicalYearTable.find(station, types, shapes, order);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Reader table(String name) {
    InputStream bytes = Climates.class.getResourceAsStream(FOLDER + name);
    if (bytes == null) {
      throw new IllegalStateException("the program came without " + name);
    }
    return new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8));
  }

  /**
   * All stations, without their climates.
   *
   * @return in the order of the table; cannot be changed
   */
  public List<Station> stations() {
    return stations;
  }

  /**
   * The climate of a station.
   *
   * @param station one of the stations here
   * @return its climate
   * @throws IllegalArgumentException if there is none of its number
   */
  public StationClimate climate(Station station) {
    return found.computeIfAbsent(station.id(), id -> climates.apply(station));
  }

  /**
   * All climates. Each is read when it is got from the list; where the stations are enough take
   * {@link #stations}.
   *
   * @return in the order of the table; cannot be changed
   */
  public List<StationClimate> all() {
    return climates(stations);
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
    return new StationSearch(stations).find(idOrName).map(this::climate);
  }

  /**
   * Stations that may have been meant by a text.
   *
   * @param text a number or name that {@link #find} did not settle
   * @return up to five, the best first; those that fit, otherwise those spelt most alike
   */
  public List<StationClimate> suggestions(String text) {
    return climates(new StationSearch(stations).suggestions(text));
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
   * All climates by the distance of their station from a point. Each is read when it is got from
   * the list.
   *
   * @param latitudeDeg latitude, degrees, -90 to 90
   * @param longitudeDeg longitude, degrees, east positive, -180 to 180
   * @return all of them, the nearest first; cannot be changed
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public List<StationClimate> byDistance(double latitudeDeg, double longitudeDeg) {
    return climates(
        stations.stream()
            .sorted(
                Comparator.comparingDouble(
                    station -> station.distanceKm(latitudeDeg, longitudeDeg)))
            .toList());
  }

  /**
   * The typical year of a station as day types.
   *
   * @param station one of the stations here
   * @return its day types, or nothing where the tables have none for it
   */
  public Optional<TypicalYear> typicalYear(Station station) {
    return foundYears.computeIfAbsent(station.id(), id -> years.apply(station));
  }

  private List<StationClimate> climates(List<Station> of) {
    return new ReadWhenGot(of);
  }

  private final class ReadWhenGot extends AbstractList<StationClimate> implements RandomAccess {
    private final List<Station> of;

    ReadWhenGot(List<Station> of) {
      this.of = of;
    }

    @Override
    public StationClimate get(int index) {
      return climate(of.get(index));
    }

    @Override
    public int size() {
      return of.size();
    }
  }
}
