package org.shopclime.climate;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * The stations the program knows, and the ways to find one. Loading reads no row of the tables;
 * stations, climates and typical years are read when they are asked for. May be shared by threads.
 */
public final class Climates {
  /** Digits that the numbers of two stations have in common if one may be meant for the other. */
  private static final int ALIKE_DIGITS = 3;

  private static final int MOST_SUGGESTED = 5;

  private static final String FOLDER = "/climate-data/";

  private final Supplier<List<Station>> stations;
  private final Function<String, Optional<Station>> numbered;
  private final Function<Station, StationClimate> climates;
  private final Function<Station, Optional<TypicalDays>> days;
  private final Function<Station, Optional<TypicalYear>> years;
  private final Map<String, StationClimate> found = new ConcurrentHashMap<>();
  private final Map<String, Optional<TypicalDays>> foundDays = new ConcurrentHashMap<>();
  private final Map<String, Optional<TypicalYear>> foundYears = new ConcurrentHashMap<>();

  /**
   * Stations from any source, without typical years.
   *
   * @param climates one or more, of different stations
   * @throws IllegalArgumentException if there is none
   */
  public Climates(List<StationClimate> climates) {
    this(
        always(climates.stream().map(StationClimate::station).toList()),
        number -> Optional.empty(),
        Climates::unknown,
        station -> Optional.empty(),
        station -> Optional.empty());
    if (climates.isEmpty()) {
      throw new IllegalArgumentException("no stations");
    }
    climates.forEach(climate -> found.put(climate.station().id(), climate));
  }

  private Climates(
      Supplier<List<Station>> stations,
      Function<String, Optional<Station>> numbered,
      Function<Station, StationClimate> climates,
      Function<Station, Optional<TypicalDays>> days,
      Function<Station, Optional<TypicalYear>> years) {
    this.stations = stations;
    this.numbered = numbered;
    this.climates = climates;
    this.days = days;
    this.years = years;
  }

  private static Supplier<List<Station>> always(List<Station> stations) {
    return () -> stations;
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
    TableText table = StationTable.rows(table(TableMaker.STATIONS));
    return new Climates(
        new ReadOnce(table),
        number ->
            row(table, number)
                .map(index -> StationTable.station(table, index))
                .filter(station -> station.id().equals(number)),
        station ->
            row(table, station.id())
                .map(index -> StationTable.climate(table, index))
                .orElseGet(() -> unknown(station)),
        station -> TypicalYearTable.days(station, cut(TableMaker.DAY_TYPES, station)),
        Climates::shipped);
  }

  private static Optional<Integer> row(TableText table, String number) {
    return table.rowOf(number).stream().boxed().findFirst();
  }

  private static Optional<TypicalYear> shipped(Station station) {
    return TypicalYearTable.find(
        station,
        cut(TableMaker.DAY_TYPES, station),
        cut(TableMaker.SHAPES, station),
        cut(TableMaker.ORDER, station));
  }

  private static String table(String name) {
    return read(name, bytes -> new String(bytes.readAllBytes(), StandardCharsets.UTF_8));
  }

  private static String cut(String name, Station station) {
    return read(name, bytes -> StationCut.of(bytes, station.id()));
  }

  /** Makes something of a table's bytes. */
  private interface Reading {
    String of(InputStream bytes) throws IOException;
  }

  private static String read(String name, Reading reading) {
    try (InputStream bytes = Climates.class.getResourceAsStream(FOLDER + name)) {
      if (bytes == null) {
        throw new IllegalStateException("the program came without " + name);
      }
      return reading.of(bytes);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * All stations, without their climates.
   *
   * @return in the order of the table; cannot be changed
   */
  public List<Station> stations() {
    return stations.get();
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
    return climates(stations());
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
    return numbered
        .apply(idOrName.strip())
        .or(() -> new StationSearch(stations()).find(idOrName))
        .map(this::climate);
  }

  /**
   * Stations that may have been meant by a text.
   *
   * @param text a number or name that {@link #find} did not settle
   * @return up to five, the best first; those that fit, otherwise those spelt most alike; of a
   *     number only those that begin as it does, and none for an empty text
   */
  public List<StationClimate> suggestions(String text) {
    if (text.chars().noneMatch(Character::isLetter)) {
      String number = text.strip();
      return climates(
          stations().stream()
              .filter(one -> PlaceSearch.inCommon(one.id(), number) >= ALIKE_DIGITS)
              .sorted(
                  Comparator.comparingInt((Station one) -> -PlaceSearch.inCommon(one.id(), number)))
              .limit(MOST_SUGGESTED)
              .toList());
    }
    return climates(new StationSearch(stations()).suggestions(text));
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
        stations().stream()
            .sorted(
                Comparator.comparingDouble(
                    station -> station.distanceKm(latitudeDeg, longitudeDeg)))
            .toList());
  }

  /**
   * The day types of a station, without what lays them out as a year: quicker to read.
   *
   * @param station one of the stations here
   * @return its day types, or nothing where the tables have none for it
   */
  public Optional<TypicalDays> typicalDays(Station station) {
    return foundDays.computeIfAbsent(station.id(), id -> days.apply(station));
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

  /** The stations of a table, read when they are first asked for. */
  private static final class ReadOnce implements Supplier<List<Station>> {
    private final TableText table;
    private List<Station> stations = List.of();

    ReadOnce(TableText table) {
      this.table = table;
    }

    @Override
    public synchronized List<Station> get() {
      if (stations.isEmpty()) {
        stations =
            IntStream.range(0, table.rows())
                .mapToObj(index -> StationTable.station(table, index))
                .toList();
      }
      return stations;
    }
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
