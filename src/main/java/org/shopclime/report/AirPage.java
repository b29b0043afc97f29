package org.shopclime.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jfree.chart.ui.Drawable;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.quantity.UnitSystem;

/** The page on places for the compressor and on water in its line. */
final class AirPage {

  private static final int WIDTH = 760;
  private static final int DAY_HEIGHT = 380;
  private static final int VENT_HEIGHT = 320;
  private static final int BAR = 44;
  private static final int BARS_REST = 90;
  private static final double PRINT = 2;

  private final AirlineAnswer answer;
  private final UnitSystem units;
  private final boolean charts;
  private final AirlineWords words;
  private final AirReasons reasons;
  private final Html page = new Html();

  AirPage(AirlineAnswer answer, UnitSystem units, boolean charts) {
    this.answer = answer;
    this.units = units;
    this.charts = charts;
    words = new AirlineWords(answer, units);
    reasons = new AirReasons(answer, units);
  }

  /** HTML that needs nothing from elsewhere. */
  String text(Collection<String> csvNames) {
    String name = Shown.line(answer.shop().name());
    page.raw("<!DOCTYPE html>")
        .raw("<html lang=\"en\"><head><meta charset=\"utf-8\" />")
        .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />")
        .element("title", name + ": the compressor's place")
        .raw("<style>" + SizePage.style() + "</style></head><body>")
        .element("h1", name);
    if (!answer.shop().note().isBlank()) {
      page.element("p", "note", answer.shop().note());
    }
    page.raw("<section class=\"answer open\">")
        .element("h2", "Where the compressor stays cool and the air line dry")
        .element("p", words.sentence())
        .raw("</section>");
    places();
    day();
    vents();
    closets();
    line();
    List<String> cautions = new ArrayList<>(reasons.hazards());
    cautions.addAll(words.cautions());
    page.element("h2", "Take care").list(cautions);
    page.element("h2", "What it cannot tell").list(words.limits());
    page.raw("<footer>")
        .element(
            "p",
            "Made by Shopclime from the description of this shop. The figures lie beside this page: "
                + String.join(", ", csvNames)
                + ".")
        .raw("</footer></body></html>");
    return page.toString();
  }

  private void places() {
    page.element("h2", "The places, the best first");
    if (charts) {
      PlacesPicture picture = new PlacesPicture(answer, units, ChartLook.light());
      picture(
          picture,
          (int) Math.ceil(picture.height(WIDTH)),
          "The shop in section with its compressor in each place. " + picture.words(),
          "The shop in section, not to scale. Temperatures are those of the hottest working hour.");
    } else {
      page.element("p", "note", HtmlReport.NO_CHARTS);
    }
    page.table(AirTable.heads(units), AirTable.rows(answer, units))
        .element("p", "note", AirTable.note(answer, units))
        .element("h2", "Why they stand so")
        .list(reasons.lines());
  }

  private void day() {
    if (charts) {
      page.element("h2", "Through the hot day");
      picture(
          AirDayChart.of(answer, units, ChartLook.light()),
          DAY_HEIGHT,
          "Temperatures over the hours of the hot day: the best place, the room, the hottest places,"
              + " outdoors, and the most the machine takes. The figures stand in air-hours.csv.",
          "Shaded: working hours.");
    }
  }

  private void vents() {
    if (answer.ventCurve().isEmpty()) {
      return;
    }
    page.element("h2", "How large the grilles of a closet must be");
    if (charts) {
      picture(
          VentChart.of(answer, units, ChartLook.light()),
          VENT_HEIGHT,
          "Temperature of a corner closet against the free area of its grilles. " + reasons.vents(),
          reasons.vents());
    } else {
      page.element("p", reasons.vents());
    }
  }

  private void closets() {
    page.element(
            "h2", "The same vents in other walls: a corner, bare or insulated, and under a stair")
        .table(AirTable.wallHeads(units), AirTable.wallRows(answer.closets(), units))
        .element("p", "note", AirTable.walls(answer.closets(), units));
  }

  private void line() {
    String best = "\"" + Shown.line(answer.places().get(0).ranked().place().name()) + "\"";
    page.element("h2", "Water on a day of nothing but blasting")
        .element("p", "note", "What a part added to the line of " + best + " changes.");
    if (charts) {
      picture(
          LineWaterChart.of(answer.blasting(), units, ChartLook.light()),
          answer.blasting().size() * BAR + BARS_REST,
          "Bars of the water of a day and where it drops out, for the line as it is and with one"
              + " thing added each; the same figures stand in the table below.",
          "");
    }
    page.table(AirTable.lineHeads(units), AirTable.lineRows(answer.blasting(), units))
        .element("h2", "The same in usual working hours")
        .table(AirTable.lineHeads(units), AirTable.lineRows(answer.changes(), units));
  }

  private void picture(Drawable drawing, int height, String alt, String caption) {
    page.picture(ChartImage.png(drawing, WIDTH, height, PRINT), WIDTH, alt, caption);
  }
}
