package org.shopclime.climate;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The two tables of typical years as CSV: 60 day types a station, and 12 shapes. Statistics only;
 * no hour of any year is in them.
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
          "mean, low, high: dry bulb of the day, its lowest, its highest, °C; swing: of the mean course",
          "  of these days, K (less than high - low where the warmest hour varies); dew_point: °C; global,",
          "  direct: global horizontal and direct normal irradiance, mean of all 24 hours, W/m2;",
          "  opaque_cloud: part of the sky, 0-1; wind: at the station's mast, m/s.",
          "spread: standard deviation of the daily means among the days of the type; swing_by_sun: how",
          "  much wider a day swings whose global sun is one deviation above the mean, K.");

  private static final List<String> SHAPES_HEAD =
      List.of(
          "Course of dry bulb and wind through the usual day of a quarter of the year.",
          "id: number of the station; of: dry_bulb or wind; quarter: 0 (December to February) to 3;",
          "  hour_01 to hour_24: local standard time, dry bulb at the hour's end above the day's mean in",
          "  parts of the day's range; wind over the day's mean.");

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
          new Column("spread_global_W_m2", 0, type -> type.spread().global()),
          new Column("spread_direct_W_m2", 0, type -> type.spread().direct()),
          new Column("spread_cloud", 2, type -> type.spread().opaqueCloud()),
          new Column("spread_wind_m_s", 1, type -> type.spread().wind()),
          new Column("swing_by_sun_K", 1, type -> type.spread().swingBySun()));

  private static final int SHAPE_DECIMALS = 3;

  private static final String DRY_BULB = "dry_bulb";
  private static final String WIND = "wind";

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
            row.number("spread_global_W_m2"),
            row.number("spread_direct_W_m2"),
            row.number("spread_cloud"),
            row.number("spread_wind_m_s"),
            row.number("swing_by_sun_K")));
  }

  /**
   * Finds the typical year of one station.
   *
   * @param station the station
   * @param types the table of day types
   * @param shapes the table of shapes
   * @return its year, or nothing where the first table does not hold the station
   * @throws IOException if a table cannot be read
   * @throws IllegalArgumentException if a column or row is missing or a figure impossible
   */
  public static Optional<TypicalYear> find(Station station, Reader types, Reader shapes)
      throws IOException {
    TableText found = TableText.ofStation("day type", types, station.id());
    if (found.rows() == 0) {
      return Optional.empty();
    }
    TableText courses = TableText.ofStation("shape", shapes, station.id());
    return Optional.of(
        new TypicalYear(
            station,
            rows(found).map(row -> row.as(TypicalYearTable::type)).toList(),
            courses(courses, DRY_BULB),
            courses(courses, WIND)));
  }

  private static Stream<TableText.Row> rows(TableText table) {
    return IntStream.range(0, table.rows()).mapToObj(table::row);
  }

  private static List<Hours> courses(TableText table, String of) {
    return rows(table)
        .filter(row -> row.text("of").equals(of))
        .map(row -> row.as(TypicalYearTable::course))
        .toList();
  }

  private static Hours course(TableText.Row row) {
    return Hours.from(hour -> row.number(TableText.numbered("hour", hour)));
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
    List<String> heads = new ArrayList<>(List.of("id", "of", "quarter"));
    for (int hour = 1; hour <= Hours.COUNT; hour++) {
      heads.add(TableText.numbered("hour", hour));
    }
    TableText.write(
        file, head(SHAPES_HEAD), heads, years.stream().flatMap(year -> shapes(year)).iterator());
  }

  /** The rows of a station's shapes, as written. */
  static Stream<List<String>> shapes(TypicalYear year) {
    return Stream.concat(
        courses(year.station().id(), DRY_BULB, year.course()),
        courses(year.station().id(), WIND, year.windCourse()));
  }

  private static Stream<List<String>> courses(String id, String of, List<Hours> courses) {
    return IntStream.range(0, courses.size())
        .mapToObj(
            quarter -> {
              List<String> cells = new ArrayList<>(List.of(id, of, String.valueOf(quarter)));
              for (double part : courses.get(quarter).toArray()) {
                cells.add(TableText.fixed(SHAPE_DECIMALS, part));
              }
              return cells;
            });
  }

  private static List<String> head(List<String> own) {
    return Stream.concat(SOURCE.stream(), own.stream()).toList();
  }
}
