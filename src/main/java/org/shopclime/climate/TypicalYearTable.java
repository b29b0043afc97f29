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
          "mean, low, high: dry bulb of the day, its lowest, its highest, °C; spread: standard",
          "  deviation of the daily mean among these days, K; dew_point: °C; global, direct: global",
          "  horizontal and direct normal irradiance, mean of all 24 hours, W/m2; opaque_cloud: part of",
          "  the sky, 0-1; wind: at the station's mast, m/s.");

  private static final List<String> SHAPES_HEAD =
      List.of(
          "Course of the dry bulb through the mean day of a month.",
          "id: number of the station; month: 1-12; hour_01 to hour_24: part of the range, 0 at the",
          "  lowest and 1 at the highest, at the end of the hour, local standard time.");

  /** A figure of a day type: its column, how many decimals are written, where it is found. */
  private record Column(String head, int decimals, ToDoubleFunction<DayType> figure) {}

  /** The order is that of the record, which {@link #type} makes again. */
  private static final List<Column> COLUMNS =
      List.of(
          new Column("mean_C", 1, DayType::mean),
          new Column("low_C", 1, DayType::low),
          new Column("high_C", 1, DayType::high),
          new Column("spread_K", 2, DayType::spread),
          new Column("dew_point_C", 1, DayType::dewPoint),
          new Column("global_W_m2", 0, DayType::global),
          new Column("direct_W_m2", 0, DayType::direct),
          new Column("opaque_cloud", 2, DayType::opaqueCloud),
          new Column("wind_m_s", 1, DayType::wind));

  private static final int SHAPE_DECIMALS = 2;

  private TypicalYearTable() {}

  private static DayType type(TableText.Row row) {
    return new DayType(
        row.whole("month"),
        row.whole("fifth"),
        row.whole("days"),
        row.number("mean_C"),
        row.number("low_C"),
        row.number("high_C"),
        row.number("spread_K"),
        row.number("dew_point_C"),
        row.number("global_W_m2"),
        row.number("direct_W_m2"),
        row.number("opaque_cloud"),
        row.number("wind_m_s"));
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
            rows(courses).map(row -> row.as(TypicalYearTable::shape)).toList()));
  }

  private static Stream<TableText.Row> rows(TableText table) {
    return IntStream.range(0, table.rows()).mapToObj(table::row);
  }

  private static Hours shape(TableText.Row row) {
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
    List<String> heads = new ArrayList<>(List.of("id", "month"));
    for (int hour = 1; hour <= Hours.COUNT; hour++) {
      heads.add(TableText.numbered("hour", hour));
    }
    TableText.write(
        file, head(SHAPES_HEAD), heads, years.stream().flatMap(year -> shapes(year)).iterator());
  }

  /** The rows of a station's shapes, as written. */
  static Stream<List<String>> shapes(TypicalYear year) {
    return IntStream.rangeClosed(1, Months.COUNT)
        .mapToObj(
            month -> {
              List<String> cells =
                  new ArrayList<>(List.of(year.station().id(), String.valueOf(month)));
              for (double part : year.shape().get(month - 1).toArray()) {
                cells.add(TableText.fixed(SHAPE_DECIMALS, part));
              }
              return cells;
            });
  }

  private static List<String> head(List<String> own) {
    return Stream.concat(SOURCE.stream(), own.stream()).toList();
  }
}
