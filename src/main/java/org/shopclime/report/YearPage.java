package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shopclime.balance.SurfaceSun;
import org.shopclime.plan.YearAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.shop.Warning;

/** The page of a year that a shop owner reads and prints. */
final class YearPage {

  private static final int WIDTH = 760;
  private static final int HEIGHT = 560;
  private static final double PRINT = 2;

  private final YearAnswer answer;
  private final UnitSystem units;
  private final boolean charts;
  private final YearFacts facts;
  private final YearTable table;
  private final Html page = new Html();

  YearPage(YearAnswer answer, UnitSystem units, boolean charts) {
    this.answer = answer;
    this.units = units;
    this.charts = charts;
    facts = new YearFacts(answer, units);
    table = new YearTable(answer, units);
  }

  /** HTML that needs nothing from elsewhere. */
  String text() {
    String name = Shown.line(answer.shop().name());
    page.raw("<!DOCTYPE html>")
        .raw("<html lang=\"en\"><head><meta charset=\"utf-8\" />")
        .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />")
        .element("title", name + ": the year")
        .raw("<style>" + SizePage.style() + "</style></head><body>")
        .element("h1", name);
    if (!answer.shop().note().isBlank()) {
      page.element("p", "note", answer.shop().note());
    }
    page.raw("<section class=\"answer open\">")
        .element("h2", "The year")
        .element("p", facts.sentence())
        .raw("</section>")
        .list(facts.facts());
    chart();
    page.element("h2", "Month by month")
        .element("p", "note", "In the table: " + table.monthUnits() + ".")
        .raw("<div class=\"total\">")
        .table(YearTable.monthHead(), table.monthRows())
        .raw("</div>")
        .element("p", "note", table.monthNote());
    if (table.severalRooms()) {
      page.element("h2", "Room by room")
          .element("p", "note", "In the table: energy in kWh, hot work in hours.")
          .table(YearTable.roomHead(), table.roomRows());
    }
    money();
    answer.habits().ifPresent(habits -> HabitSection.write(page, habits, units, charts));
    sun();
    cautions();
    page.element("h2", "What it cannot tell").list(Assumptions.limitsOfYear());
    page.raw("<footer>")
        .element(
            "p",
            "Made by Shopclime from the description of this shop. The months lie beside this page: "
                + YearReport.MONTHS
                + ".")
        .raw("</footer></body></html>");
    return page.toString();
  }

  private void chart() {
    page.element("h2", "Temperature and energy through the year");
    if (!charts) {
      page.element("p", "note", HtmlReport.NO_CHARTS);
      return;
    }
    page.picture(
        ChartImage.png(YearChart.of(answer, units, ChartLook.light()), WIDTH, HEIGHT, PRINT),
        WIDTH,
        "Two charts over the months. Above, the usual day outdoors and inside; below, heat put in and"
            + " taken out and what the unit draws. The same figures stand in the table below. In"
            + " words: "
            + facts.sentence(),
        "Above: the band and each pair of lines run along the coolest and the warmest hour of the"
            + " month's mean day, nights and days off counted. Below: heat put in and taken out, all"
            + " rooms together.");
  }

  private void money() {
    BillText bill = new BillText(answer);
    if (bill.hasPaybacks()) {
      page.element("h2", "What changes save")
          .table(BillText.paybackHead(), bill.paybackRows())
          .element("p", "note", bill.paybackNote());
    }
    bill.firstSteps().ifPresent(first -> page.element("p", first));
  }

  private void sun() {
    List<SurfaceSun> surfaces = answer.described().year().surfaces();
    if (surfaces.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (SurfaceSun sun : surfaces) {
      String name = Shown.line(sun.name());
      rows.add(
          List.of(
              table.severalRooms() ? Shown.line(sun.room()) + ": " + name : name,
              perArea(sun.incident()),
              sun.transmitted() > 0 ? perArea(sun.transmitted()) : "–"));
    }
    String unit = units == UnitSystem.SI ? ", kWh/m²" : ", kWh/ft²";
    page.element("h2", "Sun of the year")
        .table(List.of("Surface", "On it" + unit, "Through its glass" + unit), rows)
        .element(
            "p",
            "note",
            "On it: shade of overhangs, fins and trees left out. Through its glass: shade counted,"
                + " for one unit of glass area.");
  }

  private String perArea(double perSquareMetre) {
    double figure =
        units == UnitSystem.SI
            ? perSquareMetre
            : perSquareMetre * Units.SQUARE_METRES_PER_SQUARE_FOOT;
    return String.format(Locale.ROOT, units == UnitSystem.SI ? "%,.0f" : "%.1f", figure);
  }

  private void cautions() {
    List<String> lines = new ArrayList<>();
    facts.ofWeather().forEach(note -> lines.add("Weather: " + note));
    for (Warning warning : answer.warnings()) {
      lines.add(PathWords.of(answer.shop(), warning.path()) + ": " + warning.text());
    }
    if (!lines.isEmpty()) {
      page.element("h2", "Take care").list(lines);
    }
  }
}
