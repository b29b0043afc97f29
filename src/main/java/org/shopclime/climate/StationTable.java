package org.shopclime.climate;

import static org.shopclime.climate.TableText.fixed;
import static org.shopclime.climate.TableText.numbered;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The table of stations as CSV: one row a station, a unit in every head, a commented head that
 * names the source. Statistics only; no hour of any year is in it.
 */
public final class StationTable {
  private static final List<String> HEAD =
      List.of(
          "Statistics of typical years, computed by this program from the hourly files of",
          "Source: National Renewable Energy Laboratory, National Solar Radiation Data Base, Typical",
          "  Meteorological Year 3 (TMY3); S. Wilcox and W. Marion, Users Manual for TMY3 Data Sets,",
          "  NREL/TP-581-43156 (2008).",
          "A typical year leaves out the rarest hours, most of all the coldest: see the methods page.",
          "Levels: dry bulb passed in no, 0.4, 1 and 2 % of 8,760 hours; mean wet bulb of the hours within",
          "  0.6 K of it; month (1-12) with most hours at or above it.",
          "Hot days: days that reach the 2 % dry bulb. range: their mean daily range; month_range: that of",
          "  all days of the 1 % month; shape: part of the range below the peak, mean of the hour ending.",
          "Humid: 0.4 % dew point, its coincident dry bulb, its month, peak and range of its days.",
          "aerosol: broadband depth; OWN, NEIGHBOUR with number and km, or INVERTED from clear noons.",
          "ground: mean, amplitude and coldest day of the yearly wave of the air temperature.",
          "heating, cooling: degree-days to base 18.3 °C of the days' (highest + lowest) / 2.");

  /** The first columns, which are the station itself. */
  private static final int STATION_COLUMNS = 7;

  private StationTable() {}

  /**
   * Reads a table.
   *
   * @param text the table
   * @return its stations, in its order
   * @throws IllegalArgumentException if a column is missing or a figure impossible; the message
   *     names the row's line
   */
  public static List<StationClimate> read(String text) {
    TableText table = rows(text);
    return IntStream.range(0, table.rows()).mapToObj(index -> climate(table, index)).toList();
  }

  /** The rows of a table, not yet read. */
  static TableText rows(String text) {
    return TableText.read("station", text);
  }

  /**
   * Writes a table beside the place, then moves it there: a half-written table never stands.
   *
   * @param file where to
   * @param stations its rows, one or more
   * @throws IOException if it cannot be written; what stood there then still stands
   */
  public static void write(Path file, List<StationClimate> stations) throws IOException {
    TableText.write(
        file,
        HEAD,
        List.copyOf(cells(stations.get(0)).keySet()),
        stations.stream().map(station -> cells(station).values()).iterator());
  }

  /** A row by column, in the order of the table. */
  static Map<String, String> cells(StationClimate climate) {
    Map<String, String> cells = new LinkedHashMap<>();
    Station station = climate.station();
    cells.put("id", station.id());
    cells.put("name", station.name());
    cells.put("state", station.state());
    cells.put("time_zone_h", fixed(1, station.timeZoneHours()));
    cells.put("latitude_deg", fixed(3, station.latitudeDeg()));
    cells.put("longitude_deg", fixed(3, station.longitudeDeg()));
    cells.put("elevation_m", fixed(0, station.elevationM()));
    cells.put("pressure_Pa", fixed(0, climate.pressure()));
    for (Level level : Level.values()) {
      HotPoint point = climate.at(level);
      cells.put(key(level, "dry_bulb_C"), fixed(2, point.dryBulb()));
      cells.put(key(level, "wet_bulb_C"), fixed(2, point.wetBulb()));
      cells.put(key(level, "month"), String.valueOf(point.month()));
    }
    cells.put("range_K", fixed(2, climate.dailyRange()));
    cells.put("month_range_K", fixed(2, climate.monthRange()));
    HumidPoint humid = climate.humid();
    cells.put("humid_dew_point_C", fixed(2, humid.dewPoint()));
    cells.put("humid_dry_bulb_C", fixed(2, humid.dryBulb()));
    cells.put("humid_month", String.valueOf(humid.month()));
    cells.put("humid_day_peak_C", fixed(2, humid.dayPeak()));
    cells.put("humid_day_range_K", fixed(2, humid.dayRange()));
    cells.put("winter_99_C", fixed(2, climate.winter().dryBulb99()));
    cells.put("winter_99_6_C", fixed(2, climate.winter().dryBulb996()));
    cells.put("winter_wind_m_s", fixed(2, climate.winter().wind()));
    cells.put("hot_hour_wind_m_s", fixed(2, climate.hotHourWind()));
    cells.put("ground_mean_C", fixed(2, climate.ground().annualMean()));
    cells.put("ground_amplitude_K", fixed(2, climate.ground().amplitude()));
    cells.put("ground_coldest_day", fixed(1, climate.ground().dayOfMinimum()));
    cells.put("heating_K_day", fixed(0, climate.degreeDays().heating()));
    cells.put("cooling_K_day", fixed(0, climate.degreeDays().cooling()));
    cells.put("aerosol_source", climate.aerosol().source().label());
    for (int month = 1; month <= Months.COUNT; month++) {
      cells.put(numbered("aerosol", month), fixed(4, climate.aerosol().depth().at(month)));
    }
    for (int month = 1; month <= Months.COUNT; month++) {
      cells.put(numbered("water_cm", month), fixed(2, climate.waterCm().at(month)));
    }
    for (int month = 1; month <= Months.COUNT; month++) {
      cells.put(numbered("dry_bulb_C", month), fixed(2, climate.monthDryBulb().at(month)));
    }
    for (int hour = 1; hour <= Hours.COUNT; hour++) {
      cells.put(numbered("shape", hour), fixed(3, climate.shape().at(hour)));
    }
    for (int hour = 1; hour <= Hours.COUNT; hour++) {
      cells.put(numbered("wind_m_s", hour), fixed(2, climate.hotDayWind().at(hour)));
    }
    return cells;
  }

  /** The station of a row, of which no more is read. */
  static Station station(TableText table, int index) {
    return table.beginning(index, STATION_COLUMNS).as(StationTable::station);
  }

  /** The whole of a row. */
  static StationClimate climate(TableText table, int index) {
    return table.row(index).as(StationTable::climate);
  }

  private static StationClimate climate(TableText.Row row) {
    Map<Level, HotPoint> levels = new EnumMap<>(Level.class);
    for (Level level : Level.values()) {
      levels.put(
          level,
          new HotPoint(
              row.number(key(level, "dry_bulb_C")),
              row.number(key(level, "wet_bulb_C")),
              row.whole(key(level, "month"))));
    }
    return new StationClimate(
        station(row),
        row.number("pressure_Pa"),
        levels,
        row.number("range_K"),
        row.number("month_range_K"),
        Hours.from(hour -> row.number(numbered("shape", hour))),
        new HumidPoint(
            row.number("humid_dew_point_C"),
            row.number("humid_dry_bulb_C"),
            row.whole("humid_month"),
            row.number("humid_day_peak_C"),
            row.number("humid_day_range_K")),
        new Winter(
            row.number("winter_99_C"), row.number("winter_99_6_C"), row.number("winter_wind_m_s")),
        Hours.from(hour -> row.number(numbered("wind_m_s", hour))),
        row.number("hot_hour_wind_m_s"),
        new Aerosol(
            Months.from(month -> row.number(numbered("aerosol", month))),
            AerosolSource.of(row.text("aerosol_source"))),
        Months.from(month -> row.number(numbered("water_cm", month))),
        Months.from(month -> row.number(numbered("dry_bulb_C", month))),
        new GroundTemperature(
            row.number("ground_mean_C"),
            row.number("ground_amplitude_K"),
            row.number("ground_coldest_day")),
        new DegreeDays(row.number("heating_K_day"), row.number("cooling_K_day")));
  }

  private static Station station(TableText.Row row) {
    return new Station(
        row.text("id"),
        row.text("name"),
        row.text("state"),
        row.number("time_zone_h"),
        row.number("latitude_deg"),
        row.number("longitude_deg"),
        row.number("elevation_m"));
  }

  private static String key(Level level, String what) {
    return level.name().toLowerCase(Locale.ROOT) + "_" + what;
  }
}
