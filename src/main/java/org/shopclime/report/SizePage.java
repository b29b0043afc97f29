package org.shopclime.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.shopclime.plan.Change;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.Verdict;
import org.shopclime.quantity.UnitSystem;

/** The page that a shop owner reads and prints. */
final class SizePage {

  private static final int DAY_WIDTH = 760;
  private static final int DAY_HEIGHT = 520;
  private static final int BAR = 26;
  private static final int BARS_REST = 100;
  private static final int ROW = 34;
  private static final double PRINT = 2;

  private final SizeAnswer answer;
  private final UnitSystem units;
  private final boolean charts;
  private final WallClock clock;
  private final PeakLines peak;
  private final Html page = new Html();

  SizePage(SizeAnswer answer, UnitSystem units, boolean charts) {
    this.answer = answer;
    this.units = units;
    this.charts = charts;
    this.clock = new WallClock(answer.shop().work(), answer.core().hotDay().date());
    this.peak = PeakLines.of(answer.core().load());
  }

  /**
   * The page.
   *
   * @param csvNames files that lie beside it
   * @return HTML that needs nothing from elsewhere
   */
  String text(Collection<String> csvNames) {
    String name = answer.shop().name();
    page.raw("<!DOCTYPE html>")
        .raw("<html lang=\"en\"><head><meta charset=\"utf-8\" />")
        .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />")
        .element("title", Shown.line(name) + ": is the cooling enough?")
        .raw("<style>" + style() + "</style></head><body>")
        .element("h1", name);
    if (!answer.shop().note().isBlank()) {
      page.element("p", "note", answer.shop().note());
    }
    page.raw("<section class=\"answer " + tone() + "\">")
        .element("h2", AnswerText.heading(answer))
        .element("p", AnswerText.sentence(answer, units))
        .raw("</section>")
        .list(AnswerText.facts(answer, units));
    dayChart();
    UnitSection.write(page, answer, units, charts);
    loads();
    scenarios();
    changes();
    AirSection.write(page, answer, units, charts);
    DampSection.write(page, answer, units, charts);
    page.element("h2", "What this rests on").list(new Assumptions(answer, units).lines());
    List<String> unknowns = new Assumptions(answer, units).unknowns();
    if (!unknowns.isEmpty()) {
      page.element("h2", "What you do not know, and what was taken instead").list(unknowns);
    }
    cautions();
    page.element("h2", "What it cannot tell").list(Assumptions.LIMITS);
    page.raw("<footer>")
        .element(
            "p",
            "Made by Shopclime from the description of this shop. The figures behind charts and"
                + " tables lie beside this page: "
                + String.join(", ", csvNames)
                + ".")
        .raw("</footer></body></html>");
    return page.toString();
  }

  private String tone() {
    return answer
        .unit()
        .map(
            unit ->
                unit.verdict() == Verdict.HOLDS
                    ? "good"
                    : unit.verdict() == Verdict.JUST_HOLDS ? "fair" : "poor")
        .orElse("open");
  }

  private void dayChart() {
    page.element("h2", "The hot day in the shop");
    if (!charts) {
      page.element("p", "note", HtmlReport.NO_CHARTS);
      return;
    }
    CoreAnswer core = answer.core();
    page.picture(
        ChartImage.png(
            DayChart.of(core, answer.shop(), units, ChartLook.light()),
            DAY_WIDTH,
            DAY_HEIGHT,
            PRINT),
        DAY_WIDTH,
        "Two charts over the hours of the hot day. Above, temperatures outdoors and inside; below,"
            + " the heat to take out against what the unit can give. In words: "
            + AnswerText.sentence(answer, units),
        "Above: air outdoors and inside. Below: what must be taken out to stay at the wished"
            + " temperature, and what the unit can take out while it is on. Shaded: working hours.");
  }

  private void loads() {
    if (peak.lines().isEmpty()) {
      return;
    }
    page.element("h2", "Where the heat comes from");
    if (charts) {
      int bars = Math.min(peak.lines().size(), LoadChart.MOST);
      page.picture(
          ChartImage.png(
              LoadChart.of(answer.core(), units, ChartLook.light()),
              DAY_WIDTH,
              bars * BAR + BARS_REST,
              PRINT),
          DAY_WIDTH,
          "Bars of the heat and moisture of each part of the load, greatest first; the same figures"
              + " stand in the table below.",
          "The worst hour, "
              + clock.during(peak.hour())
              + ", with the room held at the wished temperature.");
    }
    String unit = ", " + Shown.heatUnit(units);
    List<List<String>> rows = new ArrayList<>();
    peak.sorted().forEach(line -> rows.add(LoadTable.row(line, peak.severalRooms(), units)));
    rows.add(
        List.of(
            "All together",
            Shown.heat(peak.sensible(), units),
            Shown.heat(peak.latent(), units),
            peak.total() == 0 ? "" : "100 %",
            "",
            "",
            "",
            ""));
    page.raw("<div class=\"total\">")
        .table(
            List.of(
                "Part",
                "Heat" + unit,
                "Moisture" + unit,
                "Share",
                "Area",
                "U\u2011factor",
                "Drive",
                "By pencil" + unit),
            rows)
        .raw("</div>")
        .element("p", "note", LoadTable.note(units));
  }

  private void scenarios() {
    if (answer.scenarios().isEmpty()) {
      return;
    }
    page.element("h2", "Other work, other days");
    if (charts) {
      page.picture(
          ChartImage.png(
              ScenarioChart.of(answer, units, ChartLook.light()),
              DAY_WIDTH,
              answer.scenarios().size() * ROW + BARS_REST,
              PRINT),
          DAY_WIDTH,
          "A grid: a row for each kind of work or day, a column for each usual size, filled where"
              + " that size holds; the same stands in the table below.",
          "");
    }
    page.table(ScenarioTable.heads(answer), ScenarioTable.rows(answer, units))
        .element("p", "note", ScenarioTable.NOTE);
    if (charts) {
      UnitSection.days(page, answer, units);
    }
  }

  private void changes() {
    if (answer.changes().isEmpty()) {
      return;
    }
    page.element("h2", "What one change would do");
    List<List<String>> rows = new ArrayList<>();
    for (Change change : ChangeTable.sorted(answer)) {
      rows.add(ChangeTable.row(answer, change, units));
    }
    page.table(
            List.of(
                "Change",
                "Heat and moisture, " + Shown.heatUnit(units),
                "Warmest working hour",
                "Would hold"),
            rows)
        .element(
            "p",
            "note",
            "Each line is the whole shop run again with that one thing changed: heat and moisture to"
                + " take out at the worst hour, more (+) or less (−) than now. Changes do not simply"
                + " add up. "
                + ChangeTable.note(answer)
                + "Now: "
                + Shown.heat(peak.total(), units)
                + " "
                + Shown.heatUnit(units)
                + " and "
                + Shown.temperature(answer.core().indoorPeak(), units)
                + ".");
  }

  private void cautions() {
    Cautions cautions = new Cautions(answer);
    List<String> lines = cautions.lines();
    if (!lines.isEmpty()) {
      page.element("h2", "Take care").list(lines);
      if (cautions.hasDamp()) {
        page.element("p", "note", Cautions.DAMP);
      }
    }
  }

  /** Look of all pages. */
  static String style() {
    try (InputStream style = SizePage.class.getResourceAsStream("report.css")) {
      return new String(style.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
