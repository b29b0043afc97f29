package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ComponentKind;
import org.shopclime.load.Line;
import org.shopclime.plan.Change;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

class SizeCsvTest {

  private static List<CSVRecord> read(Map<String, String> files, String name) throws IOException {
    return CSVFormat.RFC4180
        .builder()
        .setHeader()
        .setSkipHeaderRecord(true)
        .get()
        .parse(new StringReader(files.get(name)))
        .getRecords();
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  @Test
  void hoursReadBack() throws IOException {
    SizeAnswer answer = Answers.example();
    List<CSVRecord> rows = read(new SizeCsv(answer, UnitSystem.INCH_POUND).files(), "hours.csv");
    assertThat(rows).hasSize(24);
    var trace = answer.core().unit().orElseThrow().trace();
    for (CSVRecord row : rows) {
      int hour = (int) number(row, "hour");
      assertThat(number(row, "indoorF"))
          .isCloseTo(Units.fahrenheit(trace.air().at(hour)), offset(0.0051));
      assertThat(number(row, "loadSensibleBtuh"))
          .isCloseTo(
              Units.btuh(answer.core().load().rooms().get(0).sensible().at(hour)), offset(0.0051));
      assertThat(number(row, "canTakeLatentBtuh"))
          .isCloseTo(Units.btuh(trace.canGiveLatent().at(hour)), offset(0.0051));
      assertThat(number(row, "running")).isCloseTo(trace.running().at(hour), offset(0.000051));
    }
    assertThat(rows.get(14).get("wallClockEnd")).isEqualTo("4 pm");
  }

  @Test
  void siHeadingsSaySi() throws IOException {
    SizeAnswer answer = Answers.example();
    Map<String, String> files = new SizeCsv(answer, UnitSystem.SI).files();
    CSVRecord row = read(files, "hours.csv").get(11);
    assertThat(number(row, "outdoorC"))
        .isCloseTo(answer.core().hotDay().dryBulb().at(12), offset(0.0051));
    assertThat(read(files, "components.csv").get(0).toMap().keySet())
        .contains("areaM2", "uFactorWM2K", "driveK", "sensibleW", "latentW", "pencilW");
    assertThat(files.get("changes.csv")).startsWith("name,peakSensibleW,peakLatentW,indoorPeakC,");
  }

  @Test
  void componentsAndChangesReadBackWhateverTheNames() throws IOException {
    String nasty = "=1+1,\"quoted\"\nsecond line; <b>ß</b>";
    List<Line> lines = List.of(Answers.line(nasty, ComponentKind.WALL, 4000, 0));
    SizeAnswer answer =
        Answers.answer(
            Answers.SHOP,
            Answers.core(Optional.empty(), Answers.usualWithout(), lines),
            Optional.empty(),
            OptionalDouble.empty(),
            Answers.known(100));
    Map<String, String> files = new SizeCsv(answer, UnitSystem.INCH_POUND).files();
    CSVRecord component = read(files, "components.csv").get(0);
    assertThat(component.get("name")).isEqualTo(nasty);
    assertThat(number(component, "areaFt2")).isEqualTo(100);
    assertThat(number(component, "pencilBtuh")).isEqualTo(200); // 100 ft² x 0.1 x 20 °F by hand
    assertThat(number(component, "share")).isEqualTo(1);
    List<CSVRecord> changes = read(files, "changes.csv");
    assertThat(changes)
        .extracting(row -> row.get("name"))
        .containsExactlyElementsOf(answer.changes().stream().map(Change::name).toList());
    assertThat(changes.get(0).get("recommendedBtuh")).isEmpty();
    assertThat(changes.get(1).get("holds")).isEqualTo("true");
  }

  @Test
  void noFigureWhereNoHourIsJudged() throws IOException {
    SizeAnswer idle =
        Answers.withoutUnit(
            Answers.day(hour -> 90, Set.of(), hour -> 0),
            OptionalDouble.empty(),
            Answers.known(90));
    assertThat(new SizeCsv(idle, UnitSystem.SI).files().get("hours.csv"))
        .doesNotContain("NaN", "Infinity");
  }
}
