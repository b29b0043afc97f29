package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.climate.TypicalYearBias.WINTER_996_K;
import static org.shopclime.climate.TypicalYearBias.WINTER_99_K;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.docs.MethodsPart;

/**
 * Our figures from typical years against published ones from long records. A typical year leaves
 * out the rarest hours, so no single row is held; the mean distance is, and every row is told on
 * the methods page.
 */
class DesignTemperaturePublishedTest {
  private static final Map<String, String> COLUMNS = columns();

  private final Climates climates = Climates.load();

  private static Map<String, String> columns() {
    Map<String, String> columns = new LinkedHashMap<>();
    columns.put("dryBulb04", "0.4 % dry bulb");
    columns.put("wetBulb04", "0.4 % coincident wet bulb");
    columns.put("dryBulb1", "1 % dry bulb");
    columns.put("wetBulb1", "1 % coincident wet bulb");
    columns.put("dewPoint04", "0.4 % dew point");
    columns.put("range", "daily range of the hot month");
    columns.put("winter99", "winter 99 %");
    columns.put("winter996", "winter 99.6 %");
    return Collections.unmodifiableMap(columns);
  }

  @ParameterizedTest
  @CsvSource({
    "dryBulb04,-4,1.5",
    "wetBulb04,-4,1.5",
    "dryBulb1,-4,1.5",
    "wetBulb1,-4,1.5",
    "dewPoint04,-4,1.5",
    "range,-2,2",
    "winter996,-1.5,4",
    "winter99,-1.5,4"
  })
  void liesInTheMeanNearThePublishedFigures(String column, double low, double high)
      throws IOException {
    List<Distance> distances = distances(column);
    assertThat(distances).hasSizeGreaterThan(15);
    assertThat(mean(distances)).as("%s, °F, of %s", column, distances).isBetween(low, high);
  }

  @Test
  void everyRowOfTheCollectionIsThere() throws IOException {
    Set<String> ids = new TreeSet<>();
    rows().forEach(row -> ids.add(row.get("id")));
    assertThat(ids)
        .containsExactly(
            "L-01", "L-02", "L-03", "L-05", "L-07", "L-09", "L-10", "L-12", "L-14", "L-15", "L-16",
            "L-18", "L-19", "L-20", "L-21", "L-23", "L-24", "L-26", "L-28", "L-30", "L-31");
  }

  /**
   * The constant is the mean of the places it is shown for, so each place is also held against the
   * mean of the others only.
   */
  @ParameterizedTest
  @CsvSource({"winter99,1.3", "winter996,1.7"})
  void theWinterCorrectionIsTheMeanAndHelpsPlacesItWasNotFittedTo(String column, double kelvin)
      throws IOException {
    assertThat(column.equals("winter99") ? WINTER_99_K : WINTER_996_K).isEqualTo(kelvin);
    List<Distance> distances = distances(column);
    assertThat(mean(distances) / 1.8).isCloseTo(kelvin, within(0.1));
    assertThat(rootMeanSquare(leftOut(distances)))
        .as("each place left out of the fit it is held against")
        .isLessThan(0.75 * rootMeanSquare(distances));
  }

  @Test
  void theCorrectionIsTakenOff() {
    Winter winter = new Winter(-2, -4, 3);
    assertThat(TypicalYearBias.design99(winter)).isCloseTo(-3.3, within(1e-12));
    assertThat(TypicalYearBias.design996(winter)).isCloseTo(-5.7, within(1e-12));
  }

  @Test
  void theTablesOfTheMethodsPageAreFresh() throws IOException {
    StringBuilder text = new StringBuilder();
    text.append("| figure | places | mean | standard deviation | worst |\n|---|---|---|---|---|\n");
    for (Map.Entry<String, String> column : COLUMNS.entrySet()) {
      List<Distance> distances = distances(column.getKey());
      Distance worst =
          distances.stream()
              .max(Comparator.comparingDouble(distance -> Math.abs(distance.off())))
              .orElseThrow();
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %d | %.1f | %.1f | %.1f, %s |\n",
              column.getValue(),
              distances.size(),
              mean(distances),
              deviation(distances),
              worst.off(),
              worst.name()));
    }
    text.append(
        "\nWinter less its one constant, each place left out of the fit it is held against");
    for (String column : List.of("winter99", "winter996")) {
      List<Distance> distances = distances(column);
      List<Distance> left = leftOut(distances);
      text.append(
          String.format(
              Locale.ROOT,
              "%s %s: root mean square %.1f instead of %.1f °F, worst %.1f, half of the places"
                  + " within %.1f",
              column.equals("winter99") ? ":" : ";",
              COLUMNS.get(column),
              rootMeanSquare(left),
              rootMeanSquare(distances),
              worst(left),
              middle(left)));
    }
    text.append(".\n\nEach place, ours / published / difference, °F:\n\n| place |");
    COLUMNS.values().forEach(name -> text.append(' ').append(name).append(" |"));
    text.append("\n|---|").append("---|".repeat(COLUMNS.size())).append('\n');
    for (CSVRecord row : rows()) {
      StationClimate climate = climates.find(row.get("station")).orElseThrow();
      text.append("| ").append(climate.station().name()).append(" |");
      for (String column : COLUMNS.keySet()) {
        text.append(' ').append(cell(row, column, climate)).append(" |");
      }
      text.append('\n');
    }
    MethodsPart.isFresh(
        "<!-- design temperatures: from the published tables -->",
        text.append('\n').toString().replace("-0.0 ", "0.0 ").replace("+0.0 ", "0.0 "));
  }

  private static String cell(CSVRecord row, String column, StationClimate climate) {
    if (row.get(column).isEmpty()) {
      return "";
    }
    double published = Double.parseDouble(row.get(column));
    double ours = fahrenheit(column, climate);
    return String.format(Locale.ROOT, "%.1f / %s / %+.1f", ours, row.get(column), ours - published);
  }

  /** Ours less the published figure of a place, °F. */
  private record Distance(String name, double off) {}

  private List<Distance> distances(String column) throws IOException {
    List<Distance> distances = new ArrayList<>();
    for (CSVRecord row : rows()) {
      if (!row.get(column).isEmpty()) {
        StationClimate climate = climates.find(row.get("station")).orElseThrow();
        double ours = fahrenheit(column, climate);
        distances.add(
            new Distance(climate.station().name(), ours - Double.parseDouble(row.get(column))));
      }
    }
    return distances;
  }

  /** Each distance less the mean of the others. */
  private static List<Distance> leftOut(List<Distance> distances) {
    return distances.stream()
        .map(
            one ->
                new Distance(
                    one.name(),
                    one.off()
                        - mean(
                            distances.stream()
                                .filter(other -> !other.name().equals(one.name()))
                                .toList())))
        .toList();
  }

  private static double mean(List<Distance> distances) {
    return distances.stream().mapToDouble(Distance::off).average().orElseThrow();
  }

  private static double deviation(List<Distance> distances) {
    double mean = mean(distances);
    double squares =
        distances.stream().mapToDouble(distance -> Math.pow(distance.off() - mean, 2)).sum();
    return Math.sqrt(squares / (distances.size() - 1));
  }

  private static double rootMeanSquare(List<Distance> distances) {
    return Math.sqrt(
        distances.stream()
            .mapToDouble(distance -> distance.off() * distance.off())
            .average()
            .orElseThrow());
  }

  private static double worst(List<Distance> distances) {
    return distances.stream()
        .mapToDouble(Distance::off)
        .boxed()
        .max(Comparator.comparingDouble(Math::abs))
        .orElseThrow();
  }

  /** The middle size of the distances. */
  private static double middle(List<Distance> distances) {
    double[] rising =
        distances.stream().mapToDouble(distance -> Math.abs(distance.off())).sorted().toArray();
    return rising[rising.length / 2];
  }

  private static double fahrenheit(String column, StationClimate climate) {
    double ours = figure(column).applyAsDouble(climate);
    return column.equals("range") ? 1.8 * ours : 32 + 1.8 * ours;
  }

  private static ToDoubleFunction<StationClimate> figure(String column) {
    return switch (column) {
      case "dryBulb04" -> one -> one.at(Level.P0_4).dryBulb();
      case "wetBulb04" -> one -> one.at(Level.P0_4).wetBulb();
      case "dryBulb1" -> one -> one.at(Level.P1).dryBulb();
      case "wetBulb1" -> one -> one.at(Level.P1).wetBulb();
      case "dewPoint04" -> one -> one.humid().dewPoint();
      case "range" -> StationClimate::monthRange;
      case "winter996" -> one -> one.winter().dryBulb996();
      case "winter99" -> one -> one.winter().dryBulb99();
      default -> throw new IllegalArgumentException(column);
    };
  }

  private static List<CSVRecord> rows() throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (CSVParser rows =
        format.parse(
            new InputStreamReader(
                DesignTemperaturePublishedTest.class.getResourceAsStream(
                    "/published/climate/design-temperatures.csv"),
                StandardCharsets.UTF_8))) {
      return rows.getRecords();
    }
  }
}
