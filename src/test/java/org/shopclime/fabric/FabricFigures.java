package org.shopclime.fabric;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.shopclime.balance.YearWeather;
import org.shopclime.run.YearResult.Figure;

/** The figures of the cases: those published, those of the first run, those of the last one. */
final class FabricFigures {

  static final Path RANGES = Path.of("src/test/resources/published/fabric/ranges.csv");
  static final Path MONTHS = Path.of("src/test/resources/published/fabric/months.csv");
  static final Path HOURS = Path.of("src/test/resources/published/fabric/hours.csv");
  static final Path FIRST = FabricFiles.FOLDER.resolve("first-run.csv");
  static final Path LAST = FabricFiles.FOLDER.resolve("last-run.csv");

  /** Cases for which no range is at hand: cases, then figures. */
  private static final List<String> OTHERS =
      List.of("630", "670", "685", "910", "930", "940", "950", "985");

  private static final List<String> LOADS =
      List.of("heating MWh", "cooling MWh", "peak heating kW", "peak cooling kW");

  private FabricFigures() {}

  /** A published range. */
  record Span(double low, double high, int decimals) {

    static Span of(CSVRecord row) {
      String low = row.get("low");
      int point = Math.max(low.indexOf('.'), row.get("high").indexOf('.'));
      String longer = low.length() > row.get("high").length() ? low : row.get("high");
      int dot = longer.indexOf('.');
      int decimals = point < 0 || dot < 0 ? 0 : longer.length() - dot - 1;
      return new Span(Double.parseDouble(low), Double.parseDouble(row.get("high")), decimals);
    }

    /** How far a figure lies outside, as a part of the nearer end; 0 inside. */
    double outside(double figure) {
      double half = 0.5 * Math.pow(10, -decimals);
      if (figure < low - half) {
        return figure / low - 1;
      }
      return figure > high + half ? figure / high - 1 : 0;
    }
  }

  static String key(CSVRecord row) {
    return row.get("case") + "," + row.get("room") + "," + row.get("figure");
  }

  /** Committed figures by case, room and figure. */
  static Map<String, Double> committed(Path file) {
    Map<String, Double> figures = new LinkedHashMap<>();
    FabricRun.rows(file).forEach(row -> figures.put(key(row), Double.valueOf(row.get("value"))));
    return figures;
  }

  /** All figures of runs, in the form in which they are committed. */
  static Map<String, String> of(Runs runs) {
    Map<String, String> figures = new LinkedHashMap<>();
    for (CSVRecord row : FabricRun.rows(RANGES)) {
      FabricRun run = runs.of(row.get("case"));
      figures.put(key(row), told(run.figure(Integer.parseInt(row.get("room")), row.get("figure"))));
    }
    for (String name : OTHERS) {
      for (String figure : LOADS) {
        figures.put(name + ",0," + figure, told(runs.of(name).figure(0, figure)));
      }
    }
    for (String figure : List.of("warmest C", "coldest C", "mean C")) {
      figures.put("950FF,0," + figure, told(runs.of("950FF").figure(0, figure)));
    }
    for (CSVRecord row : FabricRun.rows(MONTHS)) {
      FabricRun run = runs.of(row.get("case"));
      int month = Integer.parseInt(row.get("month"));
      Figure figure = Figure.valueOf(row.get("figure").toUpperCase(Locale.ROOT));
      figures.put(
          row.get("case") + ",0," + row.get("figure") + " of month " + month + " kWh",
          told(run.result().kilowattHours(figure, 0, month)));
    }
    for (CSVRecord row : FabricRun.rows(HOURS)) {
      Figure figure = Figure.valueOf(row.get("figure").toUpperCase(Locale.ROOT));
      int hour = runs.of(row.get("case")).result().peakHour(figure, 0);
      figures.put(
          row.get("case") + ",0,hour of peak " + row.get("figure"), Integer.toString(hour + 1));
    }
    return figures;
  }

  private static String told(double figure) {
    // adding 0 turns -0 into 0
    return String.format(Locale.ROOT, "%.4f", figure + 0.0);
  }

  /** Runs, each made once. */
  static final class Runs {

    private final YearWeather weather;
    private final Map<String, FabricRun> made = new TreeMap<>();

    Runs(YearWeather weather) {
      this.weather = weather;
    }

    FabricRun of(String name) {
      return made.computeIfAbsent(name, each -> FabricRun.of(each, weather));
    }
  }
}
