package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.plan.YearAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Warning;

/** A year's answer as plain text for a terminal, 100 columns or less. */
public final class YearText {

  private YearText() {}

  /**
   * The answer as plain text.
   *
   * @param answer the answer
   * @param units system of units to show
   * @return lines, each ended by a line feed; notes on the weather file are left to {@link
   *     #ofWeather}
   */
  public static String of(YearAnswer answer, UnitSystem units) {
    YearFacts facts = new YearFacts(answer, units);
    YearTable table = new YearTable(answer, units);
    StringBuilder text = new StringBuilder();
    text.append(Shown.line(answer.shop().name())).append("\n\n");
    TextLines.wrapped(text, "", facts.sentence());
    text.append('\n');
    facts.facts().forEach(fact -> TextLines.wrapped(text, "- ", fact));
    text.append("\nMonth by month (").append(table.monthUnits()).append(")\n");
    table(text, YearTable.monthHead(), table.monthRows());
    text.append('\n');
    TextLines.wrapped(text, "  ", table.monthNote());
    if (table.severalRooms()) {
      text.append("\nRoom by room (energy in kWh, hot work in hours)\n");
      table(text, YearTable.roomHead(), table.roomRows());
    }
    money(text, new BillText(answer));
    answer.habits().ifPresent(habits -> habits(text, new HabitText(habits, units)));
    if (!answer.warnings().isEmpty()) {
      text.append("\nTake care\n");
      for (Warning warning : answer.warnings()) {
        TextLines.wrapped(
            text,
            "- ",
            PathWords.of(answer.shop(), warning.path()) + ": " + Shown.line(warning.text()));
      }
    }
    text.append('\n');
    TextLines.wrapped(text, "", Assumptions.APPROVAL);
    return text.toString();
  }

  /**
   * What to know about the weather that was run.
   *
   * @param answer the answer
   * @param units system of units to show
   * @return a sentence each: how far another station lies from the shop's, what was filled; empty
   *     where there is nothing
   */
  public static List<String> ofWeather(YearAnswer answer, UnitSystem units) {
    return new YearFacts(answer, units).ofWeather();
  }

  private static void money(StringBuilder text, BillText bill) {
    if (bill.hasPaybacks()) {
      text.append("\nWhat changes save (energy in kWh a year, hot work in hours)\n");
      table(text, BillText.paybackHead(), bill.paybackRows());
      text.append('\n');
      TextLines.wrapped(text, "  ", bill.paybackNote());
    }
    bill.firstSteps()
        .ifPresent(
            first -> {
              text.append('\n');
              TextLines.wrapped(text, "", first);
            });
  }

  private static void habits(StringBuilder text, HabitText habits) {
    text.append("\nLeaving it on or switching it on\n");
    habits.lines().forEach(line -> TextLines.wrapped(text, "- ", line));
    text.append('\n');
    table(text, HabitText.head(), habits.rows());
    text.append('\n');
    TextLines.wrapped(text, "  ", HabitText.note());
  }

  private static void table(StringBuilder text, List<String> head, List<List<String>> body) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(head);
    rows.addAll(body);
    SizeText.columns(text, rows);
  }
}
