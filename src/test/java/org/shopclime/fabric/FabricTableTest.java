package org.shopclime.fabric;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.shopclime.docs.MethodsPart;

/** The case files and the table in the methods page are what they should be. */
class FabricTableTest {

  private static final String MARK = "<!-- fabric cases: from the runs of the standard's cases -->";

  private final Map<String, Double> first = FabricFigures.committed(FabricFigures.FIRST);
  private final Map<String, Double> last = FabricFigures.committed(FabricFigures.LAST);

  @Test
  void filesAreThoseOfTheirMaker() throws IOException {
    for (Map.Entry<String, String> file : FabricFiles.all().entrySet()) {
      assertThat(Files.readString(FabricFiles.FOLDER.resolve(file.getKey() + ".json")))
          .as("run FabricFiles: %s", file.getKey())
          .isEqualTo(file.getValue());
    }
  }

  @Test
  void theMethodsPageTellsThem() throws IOException {
    StringBuilder text = new StringBuilder();
    text.append("| case | figure | first run | last run | published range | inside |\n");
    text.append("|---|---|---|---|---|---|\n");
    int inside = 0;
    int rows = 0;
    for (CSVRecord row : FabricRun.rows(FabricFigures.RANGES)) {
      String key = FabricFigures.key(row);
      FabricFigures.Span span = FabricFigures.Span.of(row);
      double outside = span.outside(last.get(key));
      inside += outside == 0 ? 1 : 0;
      rows++;
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %s to %s | %s |\n",
              named(row),
              row.get("figure"),
              shown(first.get(key), span.decimals()),
              shown(last.get(key), span.decimals()),
              row.get("low"),
              row.get("high"),
              outside == 0 ? "yes" : String.format(Locale.ROOT, "no, %+.1f %%", 100 * outside)));
    }
    text.append(String.format(Locale.ROOT, "\n%d of %d figures inside.\n", inside, rows));
    hours(text);
    months(text);
    others(text);
    text.append('\n');
    MethodsPart.isFresh(MARK, text.toString());
  }

  private static String named(CSVRecord row) {
    return row.get("room").equals("0") ? row.get("case") : row.get("case") + ", second room";
  }

  private void hours(StringBuilder text) {
    text.append("\nHours of the greatest loads:\n\n| case | figure | ours | published |\n");
    text.append("|---|---|---|---|\n");
    for (CSVRecord row : FabricRun.rows(FabricFigures.HOURS)) {
      int hour = last.get(row.get("case") + ",0,hour of peak " + row.get("figure")).intValue() - 1;
      LocalDate date = LocalDate.ofYearDay(2025, hour / 24 + 1);
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | peak %s | %s | %s |\n",
              row.get("case"),
              row.get("figure"),
              when(date, hour % 24 + 1),
              when(
                  LocalDate.of(
                      2025, Integer.parseInt(row.get("month")), Integer.parseInt(row.get("day"))),
                  Integer.parseInt(row.get("hour")))));
    }
  }

  private static String when(LocalDate date, int hour) {
    return date.getDayOfMonth()
        + " "
        + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
        + ", hour "
        + hour;
  }

  private void months(StringBuilder text) {
    text.append("\nMonth by month, kWh, ours and the published range:\n\n");
    text.append(
        "| case | Jan | Feb | Mar | Apr | May | Jun | Jul | Aug | Sep | Oct | Nov | Dec |\n");
    text.append("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (CSVRecord row : FabricRun.rows(FabricFigures.MONTHS)) {
      if (row.get("month").equals("1")) {
        text.append("\n| ").append(row.get("case")).append(' ').append(row.get("figure"));
        text.append(" |");
      }
      String key = ",0," + row.get("figure") + " of month " + row.get("month") + " kWh";
      double ours = last.get(row.get("case") + key);
      FabricFigures.Span span = FabricFigures.Span.of(row);
      text.append(
          String.format(
              Locale.ROOT,
              " %s%.0f (%s to %s) |",
              span.outside(ours) == 0 ? "" : "outside: ",
              ours,
              row.get("low"),
              row.get("high")));
    }
    text.append('\n');
  }

  /** Cases run without a range to hold them against. */
  private void others(StringBuilder text) {
    text.append("\nRun as well, without a range at hand:\n\n| case | figure | last run |\n");
    text.append("|---|---|---|\n");
    last.forEach(
        (key, value) -> {
          String[] parts = key.split(",", -1);
          boolean month = parts[2].contains("month") || parts[2].contains("hour of");
          if (!first.containsKey(key) && !month) {
            text.append("| ").append(parts[0]).append(" | ").append(parts[2]).append(" | ");
            text.append(shown(value, 3)).append(" |\n");
          }
        });
  }

  private static String shown(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
