package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.SoftAssertions.assertSoftly;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tables of typical years: written, read, and every row of those that are shipped. */
class TypicalYearTableTest {
  private static final Climates CLIMATES = Climates.load();

  @TempDir private Path folder;

  /** Lines of a shipped table without its comments. */
  private static List<String> lines(String table) throws IOException {
    try (BufferedReader text =
        new BufferedReader(
            new InputStreamReader(
                Climates.class.getResourceAsStream("/climate-data/" + table),
                StandardCharsets.UTF_8))) {
      return text.lines().filter(line -> !line.startsWith("#")).toList();
    }
  }

  /** Rows of a shipped table, those of each station together. */
  private static Map<String, List<String>> rows(String table) throws IOException {
    return lines(table).stream()
        .skip(1)
        .collect(Collectors.groupingBy(line -> line.substring(0, line.indexOf(','))));
  }

  @Test
  void allTablesHoldTheSameStations() throws IOException {
    Set<String> ids = new TreeSet<>(rows(TableMaker.STATIONS).keySet());
    assertThat(ids).hasSize(1020);
    Map<String, List<String>> types = rows(TableMaker.DAY_TYPES);
    assertThat(types.keySet()).isEqualTo(ids);
    assertThat(types.values()).allMatch(rows -> rows.size() == 60);
    Map<String, List<String>> shapes = rows(TableMaker.SHAPES);
    assertThat(shapes.keySet()).isEqualTo(ids);
    assertThat(shapes.values()).allMatch(rows -> rows.size() == 3 * 12 + 2 * DayCourses.QUARTERS);
    Map<String, List<String>> order = rows(TableMaker.ORDER);
    assertThat(order.keySet()).isEqualTo(ids);
    assertThat(order.values()).allMatch(rows -> rows.size() == 3);
  }

  @Test
  void everyYearIsPlausible() throws IOException {
    String typesHead = lines(TableMaker.DAY_TYPES).get(0) + "\n";
    String shapesHead = lines(TableMaker.SHAPES).get(0) + "\n";
    String orderHead = lines(TableMaker.ORDER).get(0) + "\n";
    Map<String, List<String>> types = rows(TableMaker.DAY_TYPES);
    Map<String, List<String>> shapes = rows(TableMaker.SHAPES);
    Map<String, List<String>> order = rows(TableMaker.ORDER);
    Map<String, TypicalYear> years = new HashMap<>();
    for (Station station : CLIMATES.stations()) {
      years.put(
          station.id(),
          TypicalYearTable.find(
                  station,
                  typesHead + String.join("\n", types.get(station.id())),
                  shapesHead + String.join("\n", shapes.get(station.id())),
                  orderHead + String.join("\n", order.get(station.id())))
              .orElseThrow());
    }
    assertSoftly(softly -> years.values().forEach(year -> isPlausible(softly, year)));
  }

  private static void isPlausible(SoftAssertions softly, TypicalYear year) {
    String name = year.station().id() + " " + year.station().name();
    StationClimate climate = CLIMATES.climate(year.station());
    for (int month = 1; month <= 12; month++) {
      List<DayType> types = year.month(month);
      softly
          .assertThat(types.stream().mapToInt(DayType::days).sum())
          .as(name)
          .isEqualTo(YearMonth.of(2025, month).lengthOfMonth());
      double before = -60;
      for (DayType type : types) {
        // Low, mean and high are ordered by the record itself.
        softly.assertThat(type.mean()).as("%s, month %d", name, month).isBetween(before, 45.0);
        before = type.mean();
        softly.assertThat(type.high()).as(name).isLessThan(56);
        // Bettles Field reports dew points above the dry bulb in hard frost.
        softly.assertThat(type.dewPoint()).as(name).isBetween(-60.0, type.mean() + 5);
        softly.assertThat(type.global()).as(name).isLessThan(420);
        softly.assertThat(type.direct()).as(name).isLessThan(560);
        softly.assertThat(type.wind()).as(name).isLessThan(30);
      }
      softly
          .assertThat(year.mean(month, DayType::mean))
          .as("%s, mean of month %d in both tables", name, month)
          .isCloseTo(climate.monthDryBulb().at(month), within(0.06));
    }
    // Whole per cents: the means of 24 of them.
    for (Hours course : year.courses().dryBulb()) {
      softly.assertThat(course.mean()).as(name).isCloseTo(0, within(0.005));
    }
    for (Hours course : year.courses().wind()) {
      softly.assertThat(course.mean()).as(name).isCloseTo(1, within(0.005));
    }
    for (Hours course : year.courses().cloud()) {
      softly.assertThat(course.mean()).as(name).isCloseTo(0, within(0.005));
    }
  }

  private static TypicalYear made() {
    return DayTypes.of(
        new MadeYear()
            .with(
                WeatherColumn.DRY_BULB,
                hour -> WeatherYear.dayOf(hour) / 20.0 + WeatherYear.hourEnding(hour) % 24)
            .year());
  }

  @Test
  void readsWhatItWrote() throws IOException {
    Path types = folder.resolve("types.csv");
    Path shapes = folder.resolve("shapes.csv");
    Path order = folder.resolve("order.csv");
    TypicalYearTable.writeTypes(types, List.of(made()));
    TypicalYearTable.writeShapes(shapes, List.of(made()));
    TypicalYearTable.writeOrder(order, List.of(made()));
    assertThat(Files.readString(types)).startsWith("# ").contains("NREL/TP-581-43156");
    TypicalYear year =
        TypicalYearTable.find(
                MadeYear.PLACE,
                Files.readString(types),
                Files.readString(shapes),
                Files.readString(order))
            .orElseThrow();
    assertThat(TypicalYearTable.types(year)).containsExactlyElementsOf(types(made()));
    assertThat(TypicalYearTable.shapes(year).toList())
        .isEqualTo(TypicalYearTable.shapes(made()).toList());
    assertThat(year.sequence()).isEqualTo(made().sequence());
    // Day 1 to 6 are the coldest of January: means 11.55 to 11.8.
    assertThat(year.types().get(0).days()).isEqualTo(6);
    assertThat(year.types().get(0).mean()).isCloseTo(11.675, within(0.051));
    // Hours 1 to 23, then 0 for the last: 12 lies half an hour above the mean of a range of 23. In
    // June, far from the jump of the new year; written in whole per cents.
    assertThat(year.courses().dryBulb().get(5).at(12)).isCloseTo(0.5 / 23.0, within(0.006));
    assertThat(year.sequence().warmth(0)).isZero();
    assertThat(year.sequence().warmth(30)).isEqualTo(30);
  }

  @Test
  void saysWhichOrderOfDaysIsDamaged() {
    List<String> warmth = made().sequence().warmthWords();
    List<String> sun = made().sequence().sunWords();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DaySequence.read(warmth.subList(0, 11), sun, sun))
        .withMessage("334 days in 11 months; takes 365 in 12");
    List<String> twice = new ArrayList<>(warmth);
    twice.set(0, "00" + warmth.get(0).substring(2));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DaySequence.read(twice, sun, sun))
        .withMessage("a rank twice in month 1");
    twice.set(0, "Z" + warmth.get(0).substring(1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DaySequence.read(twice, sun, sun))
        .withMessageContaining("rank of a day");
  }

  private static List<List<String>> types(TypicalYear year) {
    return TypicalYearTable.types(year).toList();
  }

  @Test
  void saysWhereATableIsDamaged() throws IOException {
    Path types = folder.resolve("types.csv");
    Path shapes = folder.resolve("shapes.csv");
    Path order = folder.resolve("order.csv");
    TypicalYearTable.writeTypes(types, List.of(made()));
    TypicalYearTable.writeShapes(shapes, List.of(made()));
    TypicalYearTable.writeOrder(order, List.of(made()));
    String text = Files.readString(types);
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                TypicalYearTable.find(
                    MadeYear.PLACE,
                    text.replace("999990,1,2,6,", "999990,1,2,9,"),
                    Files.readString(shapes),
                    Files.readString(order)))
        .withMessageMatching("day type table, line \\d+: days: 9 is outside 5 to 7");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                TypicalYearTable.find(
                    MadeYear.PLACE,
                    text.replace("999990,1,2,", "999991,1,2,"),
                    Files.readString(shapes),
                    Files.readString(order)))
        .withMessageContaining("1 day types; takes 60");
  }

  @Test
  void tablesAreTheSameWhateverTheNumberOfThreads() throws IOException {
    Path hourly = Files.createDirectory(folder.resolve("hourly"));
    List<String> lines = MadeFile.lines();
    for (int i = 0; i < 5; i++) {
      lines.set(0, MadeFile.STATION.replace("722230", "72223" + i));
      Files.write(hourly.resolve("72223" + i + ".csv"), lines);
    }
    TableMaker.make(hourly, folder.resolve("one"), (r, a, n, p, w) -> {}, 1);
    TableMaker.make(hourly, folder.resolve("four"), (r, a, n, p, w) -> {}, 4);
    for (String table :
        List.of(TableMaker.STATIONS, TableMaker.DAY_TYPES, TableMaker.SHAPES, TableMaker.ORDER)) {
      assertThat(folder.resolve("four").resolve(table))
          .hasSameTextualContentAs(folder.resolve("one").resolve(table));
    }
  }
}
