package org.shopclime.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shopclime.load.Line;
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.Change;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.ChangeTable;

/** The two tables of the form, as text. */
final class TableText {

  private TableText() {}

  /**
   * A table.
   *
   * @param heads heads of its columns
   * @param rows rows, each with one text for each column
   */
  record Table(List<String> heads, List<List<String>> rows) {

    Table {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
    }

    /** Heads and rows as a spreadsheet takes them: a tab between the texts of a line. */
    String asTabbed() {
      StringBuilder text = new StringBuilder();
      text.append(String.join("\t", heads).replace('\n', ' ')).append('\n');
      rows.forEach(row -> text.append(String.join("\t", row)).append('\n'));
      return text.toString();
    }
  }

  /** Where the heat comes from at the worst hour, the greatest first. */
  static Table heat(CoreAnswer core, UnitSystem units) {
    int hour = core.load().peakHour();
    double total = core.load().total().at(hour);
    double sensible = 0;
    double latent = 0;
    List<Line> lines = new ArrayList<>();
    for (RoomLoad room : core.load().rooms()) {
      lines.addAll(room.lines());
      sensible += room.sensible().at(hour);
      latent += room.latent().at(hour);
    }
    lines.sort(Comparator.comparingDouble((Line line) -> -heat(line, hour)));
    List<List<String>> rows = new ArrayList<>();
    // first, as it is the greatest and always in sight
    rows.add(
        List.of(
            "All together",
            bare(Kind.POWER, sensible, units),
            bare(Kind.POWER, latent, units),
            total > 0 ? "100 %" : "",
            "",
            ""));
    for (Line line : lines) {
      rows.add(
          List.of(
              line.name(),
              bare(Kind.POWER, line.sensible().at(hour), units),
              bare(Kind.POWER, line.latent().at(hour), units),
              total > 0 ? share(heat(line, hour) / total) : "",
              line.area() > 0 ? bare(Kind.AREA, line.area(), units) : "",
              line.uFactor() > 0 ? bare(Kind.U_FACTOR, line.uFactor(), units) : ""));
    }
    return new Table(
        List.of(
            "From",
            head("Dry heat", Kind.POWER, units),
            head("Moisture", Kind.POWER, units),
            "Share",
            head("Area", Kind.AREA, units),
            head("Lets through", Kind.U_FACTOR, units)),
        rows);
  }

  private static String share(double part) {
    return (Math.round(100 * part) + " %").replace('-', '−');
  }

  private static String head(String words, Kind kind, UnitSystem units) {
    return words + "\n" + Quantities.unit(kind, units);
  }

  /** A figure without the unit that stands at the head of its column; any other unit stays. */
  private static String bare(Kind kind, double si, UnitSystem units) {
    String text = Quantities.show(kind, si, units);
    String unit = Quantities.unit(kind, units);
    return (text.endsWith(unit) ? text.substring(0, text.length() - unit.length()).strip() : text)
        .replace('-', '−');
  }

  private static double heat(Line line, int hour) {
    return line.sensible().at(hour) + line.latent().at(hour);
  }

  /** What one change at a time would do, the one that helps most first, as in the report. */
  static Table changes(SizeAnswer answer, UnitSystem units) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ChangeTable.asItIs(answer, units));
    for (Change change : ChangeTable.sorted(answer)) {
      List<String> row = new ArrayList<>(ChangeTable.row(answer, change, units));
      row.set(0, FormText.capital(row.get(0)));
      rows.add(row);
    }
    return new Table(
        List.of("Change", head("More or less heat", Kind.POWER, units), "Inside", "Would hold"),
        rows);
  }
}
