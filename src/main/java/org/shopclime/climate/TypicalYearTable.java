package org.shopclime.climate;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The three tables of typical years as CSV: 60 day types a station, its courses of a usual day, and
 * the order of its days. Statistics only; no hour of any year is in them.
 */
public final class TypicalYearTable {
  private static final List<String> SOURCE =
      List.of(
          "Statistics of typical years, computed by this program from the hourly files of",
          "Source: National Renewable Energy Laboratory, National Solar Radiation Data Base, Typical",
          "  Meteorological Year 3 (TMY3); S. Wilcox and W. Marion, Users Manual for TMY3 Data Sets,",
          "  NREL/TP-581-43156 (2008).");

  private static final List<String> TYPES_HEAD =
      List.of(
          "Days of a month sorted by their mean dry bulb and cut into fifths; means over such days.",
          "id: number of the station; month: 1-12; fifth: 1 (coldest days) to 5; days: how many.",
          "mean, low, high: dry bulb of the day, its lowest, its highest, °C; swing: of the usual",
          "  course of the month on these days, K; dew_point: °C; global, direct: global horizontal",
          "  and direct normal irradiance, mean of all 24 hours, W/m2; opaque_cloud: part of the sky,",
          "  0-1; wind: at the station's mast, m/s.",
          "spread: standard deviations among the days of the type, of their mean dry bulb first.",
          "wave: what hours leave of running mean and course, amplitude of its wave of 24 and of 12",
          "  hours, K.");

  private static final List<String> SHAPES_HEAD =
      List.of(
          "How weather goes through a usual day.",
          "id: number of the station; period: month 1-12 (dry_bulb, global, direct) or quarter of the",
          "  year 1-4, December to February first (cloud, wind); hour_01 to hour_24: local standard",
          "  time, in per cent: dry_bulb at the hour's end above the running mean, of the day's swing;",
          "  global, direct: of a clear sky of usual haze (aerosol depth 0.1, 1.5 cm of water); cloud:",
          "  of the sky, above the day's mean; wind: of the day's mean.");

  private static final List<String> ORDER_HEAD =
      List.of(
          "In which order the days followed each other: one character a day, 0-9 and A-U for 0-30.",
          "id: number of the station; of: warmth (rank of the day's mean dry bulb in its month, 0 the",
          "  coldest), sun (rank of its global sun among the days of its type, 0 the dullest), swing",
          "  (rank of its swing among the days of its type); month_01 to month_12.");

  /** A figure of a day type: its column, how many decimals are written, where it is found. */
  private record Column(String head, int decimals, ToDoubleFunction<DayType> figure) {}

  /** The order is that of the record, which {@link #type} makes again. */
  private static final List<Column> COLUMNS =
      List.of(
          new Column("mean_C", 1, DayType::mean),
          new Column("low_C", 1, DayType::low),
          new Column("high_C", 1, DayType::high),
          new Column("swing_K", 1, DayType::swing),
          new Column("dew_point_C", 1, DayType::dewPoint),
          new Column("global_W_m2", 0, DayType::global),
          new Column("direct_W_m2", 0, DayType::direct),
          new Column("opaque_cloud", 2, DayType::opaqueCloud),
          new Column("wind_m_s", 1, DayType::wind),
          new Column("spread_K", 1, type -> type.spread().dryBulb()),
          new Column("spread_swing_K", 1, type -> type.spread().swing()),
          new Column("spread_global_W_m2", 0, type -> type.spread().global()),
          new Column("spread_direct_W_m2", 0, type -> type.spread().direct()),
          new Column("spread_cloud", 2, type -> type.spread().opaqueCloud()),
          new Column("spread_wind_m_s", 1, type -> type.spread().wind()),
          new Column("wave_day_K", 1, type -> type.spread().dayWave()),
          new Column("wave_half_day_K", 1, type -> type.spread().halfDayWave()));

  private static final double PER_CENT = 100;

  /** A kind of course: its name in the table, and where it is found. */
  private record Kind(String name, Function<DayCourses, List<Hours>> courses) {}

  /** The order is that of the record, which {@link #courses} makes again. */
  private static final List<Kind> KINDS =
      List.of(
          new Kind("dry_bulb", DayCourses::dryBulb),
          new Kind("global", DayCourses::global),
          new Kind("direct", DayCourses::direct),
          new Kind("cloud", DayCourses::cloud),
          new Kind("wind", DayCourses::wind));

  private static final String WARMTH = "warmth";
  private static final String SUN = "sun";
  private static final String SWING = "swing";

  private TypicalYearTable() {}

  private static DayType type(TableText.Row row) {
    return new DayType(
        row.whole("month"),
        row.whole("fifth"),
        row.whole("days"),
        row.number("mean_C"),
        row.number("low_C"),
        row.number("high_C"),
        row.number("swing_K"),
        row.number("dew_point_C"),
        row.number("global_W_m2"),
        row.number("direct_W_m2"),
        row.number("opaque_cloud"),
        row.number("wind_m_s"),
        new DayType.Spread(
            row.number("spread_K"),
            row.number("spread_swing_K"),
            row.number("spread_global_W_m2"),
            row.number("spread_direct_W_m2"),
            row.number("spread_cloud"),
            row.number("spread_wind_m_s"),
            row.number("wave_day_K"),
            row.number("wave_half_day_K")));
  }

  /**
   * Finds the day types of one station.
   *
   * @param station the station
   * @param types the table of day types, or what it says of the station
   * @return its day types, or nothing where the table does not hold the station
   * @throws IllegalArgumentException if a column or row is missing or a figure impossible
   */
  static Optional<TypicalDays> days(Station station, String types) {
    TableText found = TableText.ofStation("day type", types, station.id());
    return found.rows() == 0
        ? Optional.empty()
        : Optional.of(
            new TypicalDays(rows(found).map(row -> row.as(TypicalYearTable::type)).toList()));
  }

  /**
   * Finds the typical year of one station.
   *
   * @param station the station
   * @param types the table of day types; of this and the others, what they say of the station will
   *     do
   * @param shapes the table of shapes
   * @param order the table of the order of days
   * @return its year, or nothing where the first table does not hold the station
   * @throws IllegalArgumentException if a column or row is missing or a figure impossible
   */
  public static Optional<TypicalYear> find(
      Station station, String types, String shapes, String order) {
    Optional<TypicalDays> found = days(station, types);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    TableText courses = TableText.ofStation("shape", shapes, station.id());
    TableText words = TableText.ofStation("order", order, station.id());
    return Optional.of(
        new TypicalYear(
            station,
            found.get().types(),
            new DayCourses(
                courses(courses, KINDS.get(0)),
                courses(courses, KINDS.get(1)),
                courses(courses, KINDS.get(2)),
                courses(courses, KINDS.get(3)),
                courses(courses, KINDS.get(4))),
            DaySequence.read(words(words, WARMTH), words(words, SUN), words(words, SWING))));
  }

  private static Stream<TableText.Row> rows(TableText table) {
    return IntStream.range(0, table.rows()).mapToObj(table::row);
  }

  private static List<Hours> courses(TableText table, Kind kind) {
    return rows(table)
        .filter(row -> row.text("of").equals(kind.name()))
        .map(row -> row.as(TypicalYearTable::course))
        .toList();
  }

  private static Hours course(TableText.Row row) {
    return Hours.from(hour -> row.number(TableText.numbered("hour", hour)) / PER_CENT);
  }

  private static List<String> words(TableText table, String of) {
    return rows(table)
        .filter(row -> row.text("of").equals(of))
        .flatMap(
            row ->
                IntStream.rangeClosed(1, Months.COUNT)
                    .mapToObj(month -> row.text(TableText.numbered("month", month))))
        .toList();
  }

  /**
   * Writes the table of day types.
   *
   * @param file where to
   * @param years the stations' years
   * @throws IOException if it cannot be written; what stood there then still stands
   */
  public static void writeTypes(Path file, List<TypicalYear> years) throws IOException {
    List<String> heads = new ArrayList<>(List.of("id", "month", "fifth", "days"));
    COLUMNS.forEach(column -> heads.add(column.head()));
    TableText.write(
        file, head(TYPES_HEAD), heads, years.stream().flatMap(year -> types(year)).iterator());
  }

  /** The rows of a station's day types, as written. */
  static Stream<List<String>> types(TypicalYear year) {
    return year.types().stream().map(type -> cells(year.station().id(), type));
  }

  private static List<String> cells(String id, DayType type) {
    List<String> cells =
        Stream.concat(
                Stream.of(id),
                IntStream.of(type.month(), type.fifth(), type.days()).mapToObj(String::valueOf))
            .collect(Collectors.toCollection(ArrayList::new));
    for (Column column : COLUMNS) {
      cells.add(TableText.fixed(column.decimals(), column.figure().applyAsDouble(type)));
    }
    return cells;
  }

  /**
   * Writes the table of shapes.
   *
   * @param file where to
   * @param years the stations' years
   * @throws IOException if it cannot be written; what stood there then still stands
   */
  public static void writeShapes(Path file, List<TypicalYear> years) throws IOException {
    List<String> heads = new ArrayList<>(List.of("id", "of", "period"));
    for (int hour = 1; hour <= Hours.COUNT; hour++) {
      heads.add(TableText.numbered("hour", hour));
    }
    TableText.write(
        file, head(SHAPES_HEAD), heads, years.stream().flatMap(year -> shapes(year)).iterator());
  }

  /** The rows of a station's shapes, as written. */
  static Stream<List<String>> shapes(TypicalYear year) {
    return KINDS.stream()
        .flatMap(
            kind -> {
              List<Hours> courses = kind.courses().apply(year.courses());
              return IntStream.range(0, courses.size())
                  .mapToObj(
                      period -> {
                        List<String> cells =
                            new ArrayList<>(
                                List.of(
                                    year.station().id(), kind.name(), String.valueOf(period + 1)));
                        for (double part : courses.get(period).toArray()) {
                          cells.add(TableText.fixed(0, PER_CENT * part));
                        }
                        return cells;
                      });
            });
  }

  /**
   * Writes the table of the order of days.
   *
   * @param file where to
   * @param years the stations' years
   * @throws IOException if it cannot be written; what stood there then still stands
   */
  public static void writeOrder(Path file, List<TypicalYear> years) throws IOException {
    List<String> heads = new ArrayList<>(List.of("id", "of"));
    for (int month = 1; month <= Months.COUNT; month++) {
      heads.add(TableText.numbered("month", month));
    }
    TableText.write(
        file, head(ORDER_HEAD), heads, years.stream().flatMap(year -> order(year)).iterator());
  }

  /** The rows of a station's order of days, as written. */
  static Stream<List<String>> order(TypicalYear year) {
    return Stream.of(
        order(year, WARMTH, year.sequence().warmthWords()),
        order(year, SUN, year.sequence().sunWords()),
        order(year, SWING, year.sequence().swingWords()));
  }

  private static List<String> order(TypicalYear year, String of, List<String> words) {
    List<String> cells = new ArrayList<>(List.of(year.station().id(), of));
    cells.addAll(words);
    return cells;
  }

  private static List<String> head(List<String> own) {
    return Stream.concat(SOURCE.stream(), own.stream()).toList();
  }
}
