package org.shopclime.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.load.Line;
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.Change;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;

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

  /** What one change at a time would do. */
  static Table changes(SizeAnswer answer, UnitSystem units) {
    boolean unit = answer.unit().isPresent();
    List<List<String>> rows = new ArrayList<>();
    double now = 0;
    int hour = answer.core().load().peakHour();
    now += answer.core().load().total().at(hour);
    rows.add(
        row(
            "As it is",
            answer.core().indoorPeak(),
            now,
            answer.recommended(),
            unit ? answer.core().unit().map(day -> day.holds()) : Optional.empty(),
            units));
    for (Change change : answer.changes()) {
      rows.add(
          row(
              FormText.capital(change.name()),
              change.indoorPeak(),
              change.peakSensible() + change.peakLatent(),
              change.recommended(),
              unit ? Optional.of(change.holds()) : Optional.empty(),
              units));
    }
    return new Table(
        List.of(
            "Change",
            head("Hottest", Kind.TEMPERATURE, units),
            head("Heat", Kind.POWER, units),
            head("Size", Kind.POWER, units),
            "Yours\nholds"),
        rows);
  }

  private static List<String> row(
      String name,
      double peak,
      double load,
      OptionalDouble size,
      Optional<Boolean> holds,
      UnitSystem units) {
    return List.of(
        name,
        bare(Kind.TEMPERATURE, peak, units),
        bare(Kind.POWER, load, units),
        size.isPresent() ? bare(Kind.POWER, size.getAsDouble(), units) : "none",
        holds.map(yes -> yes ? "yes" : "no").orElse("no unit"));
  }
}
