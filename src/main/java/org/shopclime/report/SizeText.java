package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shopclime.plan.Change;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

/** The answer as plain text for a terminal, 100 columns or less. */
public final class SizeText {

  private static final int NAME = 26;

  private SizeText() {}

  /**
   * The whole answer as plain text.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return lines, each ended by a line feed
   */
  public static String of(SizeAnswer answer, UnitSystem units) {
    StringBuilder text = new StringBuilder();
    text.append(Shown.line(answer.shop().name())).append("\n\n");
    TextLines.wrapped(text, "", AnswerText.sentence(answer, units));
    text.append('\n');
    AnswerText.facts(answer, units).forEach(fact -> TextLines.wrapped(text, "- ", fact));
    components(text, answer, units);
    scenarios(text, answer, units);
    changes(text, answer, units);
    air(text, answer, units);
    List<String> damp = DampText.lines(answer, units);
    if (!damp.isEmpty()) {
      text.append("\nDamp in the walls\n");
      damp.forEach(line -> TextLines.wrapped(text, "- ", line));
    }
    Cautions cautions = new Cautions(answer);
    List<String> care = cautions.lines();
    if (!care.isEmpty()) {
      text.append("\nTake care\n");
      care.forEach(line -> TextLines.wrapped(text, "- ", line));
      if (cautions.hasDamp()) {
        text.append('\n');
        TextLines.wrapped(text, "  ", Cautions.DAMP);
      }
    }
    text.append('\n');
    TextLines.wrapped(text, "", Assumptions.APPROVAL);
    return text.toString();
  }

  private static void components(StringBuilder text, SizeAnswer answer, UnitSystem units) {
    PeakLines peak = PeakLines.of(answer.core().load());
    if (peak.lines().isEmpty()) {
      return;
    }
    WallClock clock = new WallClock(answer.shop().work(), answer.core().hotDay().date());
    text.append("\nWhere the heat comes from, ")
        .append(clock.during(peak.hour()))
        .append(", held at the wished temperature (")
        .append(Shown.heatUnit(units))
        .append(")\n");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "heat", "moisture", "share", "area", "U-factor", "drive", "by pencil"));
    for (PeakLines.PeakLine line : peak.sorted()) {
      rows.add(LoadTable.row(line, peak.severalRooms(), units));
    }
    rows.add(
        List.of(
            "All together",
            Shown.heat(peak.sensible(), units),
            Shown.heat(peak.latent(), units),
            Shown.percent(peak.total() == 0 ? 0 : 1),
            "",
            "",
            "",
            ""));
    columns(text, rows);
    text.append('\n');
    TextLines.wrapped(text, "  ", LoadTable.note(units));
  }

  private static void scenarios(StringBuilder text, SizeAnswer answer, UnitSystem units) {
    if (answer.scenarios().isEmpty()) {
      return;
    }
    text.append("\nOther work, other days\n");
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        ScenarioTable.heads(answer).stream().map(head -> head.toLowerCase(Locale.ROOT)).toList());
    rows.addAll(ScenarioTable.rows(answer, units));
    columns(text, rows);
    text.append('\n');
    TextLines.wrapped(text, "  ", ScenarioTable.NOTE);
  }

  private static void changes(StringBuilder text, SizeAnswer answer, UnitSystem units) {
    if (answer.changes().isEmpty()) {
      return;
    }
    text.append("\nWhat one change would do (")
        .append(Shown.heatUnit(units))
        .append(" more or less at the worst hour; warmest working hour inside)\n");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "heat and moisture", "inside", "would hold"));
    for (Change change : ChangeTable.sorted(answer)) {
      rows.add(ChangeTable.row(answer, change, units));
    }
    columns(text, rows);
    text.append('\n');
    TextLines.wrapped(text, "  ", ChangeTable.note(answer) + "Changes do not simply add up.");
  }

  private static void air(StringBuilder text, SizeAnswer answer, UnitSystem units) {
    List<String> oven = OvenText.lines(answer, units);
    if (!oven.isEmpty()) {
      text.append("\nThe oven on a working day\n");
      oven.forEach(line -> TextLines.wrapped(text, "- ", line));
    }
    answer
        .air()
        .ifPresent(
            air -> {
              text.append("\nThe air of the shop (").append(AirText.units(units)).append(")\n");
              List<List<String>> rows = new ArrayList<>();
              rows.add(AirText.PLAIN_HEADS);
              rows.addAll(AirText.rows(air, units));
              columns(text, rows);
              text.append('\n');
              TextLines.wrapped(text, "  ", AirText.NOTE);
              AirText.lines(answer, units).forEach(line -> TextLines.wrapped(text, "- ", line));
            });
  }

  /** First column to the left, the others to the right, each as wide as it must be. */
  static void columns(StringBuilder text, List<List<String>> rows) {
    int[] width = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < width.length; i++) {
        width[i] = Math.max(width[i], row.get(i).length());
      }
    }
    width[0] = Math.max(width[0], NAME);
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder("  " + row.get(0));
      line.append(" ".repeat(width[0] - row.get(0).length()));
      for (int i = 1; i < width.length; i++) {
        line.append(" ".repeat(2 + width[i] - row.get(i).length())).append(row.get(i));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
  }
}
