package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.climate.WeatherFile;
import org.shopclime.climate.WeatherReading;
import org.shopclime.docs.MethodsPart;

/**
 * Years of day types against the hourly years they were made from, by the table that the verb
 * {@code compare} wrote: forty stations, three shops.
 */
class YearComparisonTest {

  private static final Path TABLE = Path.of("src/docs/day-types.csv");
  private static final Path CAUSES = Path.of("src/docs/day-types-causes.csv");

  /** Fewer hours than these are the hours of one or two days. */
  private static final double FEW = 50;

  /** A figure compared: where it counts, and how far it may be off. */
  private enum Figure {
    COOLING("cooling", "kWh", 500, 0.03),
    HEATING("heating", "kWh", 1000, 0.02),
    HOT("hot", "h", 0, 0.15);

    private final String column;
    private final String unit;
    private final double counts;
    private final double limit;

    Figure(String column, String unit, double counts, double limit) {
      this.column = column;
      this.unit = unit;
      this.counts = counts;
      this.limit = limit;
    }

    /** How far day types are off, as a part of the hourly year; nothing where it is too small. */
    OptionalDouble error(CSVRecord row) {
      double hourly = Double.parseDouble(row.get(column + "_hourly_" + unit));
      double types = Double.parseDouble(row.get(column + "_types_" + unit));
      return hourly > counts ? OptionalDouble.of(types / hourly - 1) : OptionalDouble.empty();
    }

    boolean isOff(CSVRecord row, double times) {
      OptionalDouble error = error(row);
      return error.isPresent() && Math.abs(error.getAsDouble()) > times * limit;
    }
  }

  private static List<CSVRecord> table(Path file) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();
    try (BufferedReader text = Files.newBufferedReader(file);
        CSVParser rows = format.parse(text)) {
      return rows.getRecords();
    }
  }

  private static String name(CSVRecord row) {
    return row.get("station") + ", " + row.get("state") + ", " + row.get("shop");
  }

  private static List<Station> stations(Climates climates) {
    return YearComparison.stations(
        climates.stations().stream().sorted(Comparator.comparing(Station::id)).toList());
  }

  @Test
  void theTableHoldsThreeShopsAtFortyStations() throws IOException {
    List<String> expected = new ArrayList<>();
    for (Station station : stations(Climates.load())) {
      YearComparison.SHOPS.forEach(shop -> expected.add(station.id() + " " + shop));
    }
    assertThat(table(TABLE).stream().map(row -> row.get("id") + " " + row.get("shop")).toList())
        .hasSize(120)
        .isEqualTo(expected);
  }

  private static String key(CSVRecord row, Figure figure) {
    return row.get("id") + " " + row.get("shop") + " " + figure.column;
  }

  private static Map<String, String> causes() throws IOException {
    Map<String, String> causes = new TreeMap<>();
    for (CSVRecord row : table(CAUSES)) {
      causes.put(row.get("id") + " " + row.get("shop") + " " + row.get("figure"), row.get("cause"));
    }
    return causes;
  }

  /** Each pair outside its limit is named with its cause, and no other. */
  @Test
  void eachMissIsNamedWithItsCause() throws IOException {
    List<String> outside = new ArrayList<>();
    for (CSVRecord row : table(TABLE)) {
      for (Figure figure : Figure.values()) {
        if (figure.isOff(row, 1)) {
          outside.add(key(row, figure));
        }
      }
    }
    assertThat(causes().keySet()).containsExactlyInAnyOrderElementsOf(outside);
    assertThat(causes().values()).noneMatch(String::isBlank);
  }

  /**
   * Heating and cooling lie within twice their limits everywhere, and 95 of 100 of all three
   * figures within their limits. Hours above 85 °F do not where they are fewer than fifty: there
   * the hours of one or two days decide.
   */
  @Test
  void sumsStandForHourlyYears() throws IOException {
    int counted = 0;
    int inside = 0;
    for (CSVRecord row : table(TABLE)) {
      for (Figure figure : Figure.values()) {
        if (figure.error(row).isPresent()) {
          counted++;
          inside += figure.isOff(row, 1) ? 0 : 1;
          boolean few = figure == Figure.HOT && Double.parseDouble(row.get("hot_hourly_h")) < FEW;
          assertThat(!few && figure.isOff(row, 2)).as(key(row, figure)).isFalse();
        }
      }
    }
    assertThat((double) inside / counted).isGreaterThan(0.95);
  }

  /** Mean, spread and worst of each figure and shop, and the pairs outside, as the page tells. */
  @Test
  void theMethodsPageTellsIt() throws IOException {
    StringBuilder text = new StringBuilder();
    text.append("| shop | figure | pairs | mean | worst | inside | beyond twice |\n");
    text.append("|---|---|---|---|---|---|---|\n");
    for (String shop : YearComparison.SHOPS) {
      for (Figure figure : Figure.values()) {
        List<CSVRecord> rows =
            table(TABLE).stream()
                .filter(row -> row.get("shop").equals(shop) && figure.error(row).isPresent())
                .toList();
        double mean = 0;
        double worst = 0;
        for (CSVRecord row : rows) {
          double error = figure.error(row).getAsDouble();
          mean += error / rows.size();
          worst = Math.abs(error) > Math.abs(worst) ? error : worst;
        }
        text.append(
            String.format(
                Locale.ROOT,
                "| %s | %s (%.0f %%) | %d | %+.1f %% | %+.1f %% | %d | %d |\n",
                shop,
                figure.column,
                100 * figure.limit,
                rows.size(),
                100 * mean,
                100 * worst,
                rows.stream().filter(row -> !figure.isOff(row, 1)).count(),
                rows.stream().filter(row -> figure.isOff(row, 2)).count()));
      }
    }
    Map<String, String> causes = causes();
    text.append("\n| pair outside | hourly | day types | off | cause |\n|---|---|---|---|---|\n");
    for (CSVRecord row : table(TABLE)) {
      for (Figure figure : Figure.values()) {
        if (figure.isOff(row, 1)) {
          text.append(
              String.format(
                  Locale.ROOT,
                  "| %s, %s | %s %s | %s | %+.1f %% | %s |\n",
                  name(row),
                  figure.column,
                  row.get(figure.column + "_hourly_" + figure.unit),
                  figure.unit,
                  row.get(figure.column + "_types_" + figure.unit),
                  100 * figure.error(row).getAsDouble(),
                  causes.get(key(row, figure))));
        }
      }
    }
    text.append("\n");
    MethodsPart.isFresh("<!-- day types: from the table of the comparison -->", text.toString());
  }

  /** One station run again gives the figures of the table. */
  @Test
  @EnabledIfSystemProperty(named = "shopclime.weather", matches = ".+")
  void aStationRunAgainGivesTheTable() throws IOException {
    Climates climates = Climates.load();
    Station station = stations(climates).get(11);
    Path file =
        Path.of(System.getProperty("shopclime.weather"), "hourly", station.id() + ".csv.xz");
    WeatherReading.Good good = (WeatherReading.Good) WeatherFile.read(file);
    Map<String, String> found = new LinkedHashMap<>();
    for (YearComparison.Pair pair :
        YearComparison.at(
            good.year(), climates.climate(station), climates.typicalYear(station).orElseThrow())) {
      found.put(pair.shop(), pair.row());
    }
    Map<String, String> told = new TreeMap<>();
    for (String line : Files.readAllLines(TABLE)) {
      for (String shop : YearComparison.SHOPS) {
        if (line.startsWith(station.id()) && line.contains("," + shop + ",")) {
          told.put(shop, line);
        }
      }
    }
    assertThat(new TreeMap<>(found)).isEqualTo(told);
  }
}
