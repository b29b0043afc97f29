package org.shopclime.climate;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

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
          "ground: mean, amplitude and coldest day of the yearly wave of the air temperature.");

  private StationTable() {}

  /**
   * Reads a table.
   *
   * @param text the table
   * @return its stations, in its order
   * @throws IOException if it cannot be read
   * @throws IllegalArgumentException if a column is missing or a figure impossible; the message
   *     names the row's line
   */
  public static List<StationClimate> read(Reader text) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    List<StationClimate> stations = new ArrayList<>();
    try (CSVParser rows = format.parse(text)) {
      for (CSVRecord row : rows) {
        try {
          stations.add(climate(row));
        } catch (IllegalArgumentException wrong) {
          throw new IllegalArgumentException(
              "station table, line " + rows.getCurrentLineNumber() + ": " + wrong.getMessage(),
              wrong);
        }
      }
    }
    return List.copyOf(stations);
  }

  /**
   * Writes a table beside the place, then moves it there: a half-written table never stands.
   *
   * @param file where to
   * @param stations its rows, one or more
   * @throws IOException if it cannot be written; what stood there then still stands
   */
  public static void write(Path file, List<StationClimate> stations) throws IOException {
    Path place = file.toAbsolutePath();
    Files.createDirectories(place.getParent());
    Path aside = place.resolveSibling(place.getFileName() + ".part");
    try {
      try (BufferedWriter text = Files.newBufferedWriter(aside, StandardCharsets.UTF_8)) {
        write(text, stations);
      }
      Files.move(aside, place, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(aside);
    }
  }

  private static void write(Writer text, List<StationClimate> stations) throws IOException {
    for (String line : HEAD) {
      text.write("# " + line + "\n");
    }
    CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();
    try (CSVPrinter rows = new CSVPrinter(text, format)) {
      rows.printRecord(cells(stations.get(0)).keySet());
      for (StationClimate station : stations) {
        rows.printRecord(cells(station).values());
      }
    }
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
    cells.put("aerosol_source", climate.aerosol().source().label());
    for (int month = 1; month <= Months.COUNT; month++) {
      cells.put(key("aerosol", month), fixed(4, climate.aerosol().depth().at(month)));
    }
    for (int month = 1; month <= Months.COUNT; month++) {
      cells.put(key("water_cm", month), fixed(2, climate.waterCm().at(month)));
    }
    for (int month = 1; month <= Months.COUNT; month++) {
      cells.put(key("dry_bulb_C", month), fixed(2, climate.monthDryBulb().at(month)));
    }
    for (int hour = 1; hour <= Hours.COUNT; hour++) {
      cells.put(key("shape", hour), fixed(3, climate.shape().at(hour)));
    }
    for (int hour = 1; hour <= Hours.COUNT; hour++) {
      cells.put(key("wind_m_s", hour), fixed(2, climate.hotDayWind().at(hour)));
    }
    return cells;
  }

  private static StationClimate climate(CSVRecord row) {
    Map<Level, HotPoint> levels = new EnumMap<>(Level.class);
    for (Level level : Level.values()) {
      levels.put(
          level,
          new HotPoint(
              number(row, key(level, "dry_bulb_C")),
              number(row, key(level, "wet_bulb_C")),
              Integer.parseInt(row.get(key(level, "month")))));
    }
    return new StationClimate(
        new Station(
            row.get("id"),
            row.get("name"),
            row.get("state"),
            number(row, "time_zone_h"),
            number(row, "latitude_deg"),
            number(row, "longitude_deg"),
            number(row, "elevation_m")),
        number(row, "pressure_Pa"),
        levels,
        number(row, "range_K"),
        number(row, "month_range_K"),
        Hours.from(hour -> number(row, key("shape", hour))),
        new HumidPoint(
            number(row, "humid_dew_point_C"),
            number(row, "humid_dry_bulb_C"),
            Integer.parseInt(row.get("humid_month")),
            number(row, "humid_day_peak_C"),
            number(row, "humid_day_range_K")),
        new Winter(
            number(row, "winter_99_C"),
            number(row, "winter_99_6_C"),
            number(row, "winter_wind_m_s")),
        Hours.from(hour -> number(row, key("wind_m_s", hour))),
        number(row, "hot_hour_wind_m_s"),
        new Aerosol(
            Months.from(month -> number(row, key("aerosol", month))),
            AerosolSource.of(row.get("aerosol_source"))),
        Months.from(month -> number(row, key("water_cm", month))),
        Months.from(month -> number(row, key("dry_bulb_C", month))),
        new GroundTemperature(
            number(row, "ground_mean_C"),
            number(row, "ground_amplitude_K"),
            number(row, "ground_coldest_day")));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static String key(Level level, String what) {
    return level.name().toLowerCase(Locale.ROOT) + "_" + what;
  }

  private static String key(String what, int number) {
    return String.format(Locale.ROOT, "%s_%02d", what, number);
  }

  /** A figure with so many decimals; a negative nothing is written as nothing. */
  private static String fixed(int decimals, double value) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
  }
}
