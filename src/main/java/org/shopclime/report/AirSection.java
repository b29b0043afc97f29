package org.shopclime.report;

import java.util.List;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

/** The parts of the page on ovens and on the shop's air. */
final class AirSection {

  private static final int WIDTH = 760;
  private static final double PRINT = 2;

  private AirSection() {}

  /** Writes them; nothing where the air was not looked at. */
  static void write(Html page, SizeAnswer answer, UnitSystem units, boolean charts) {
    List<String> oven = OvenText.lines(answer, units);
    if (!oven.isEmpty()) {
      page.element("h2", "The oven on a working day").list(oven);
    }
    answer
        .air()
        .ifPresent(
            air -> {
              page.element("h2", "The air of the shop");
              if (charts) {
                AirPicture picture = new AirPicture(air, units, ChartLook.light());
                page.picture(
                    ChartImage.png(picture::draw, WIDTH, picture.height(), PRINT),
                    WIDTH,
                    "The shop as a box, with arrows as wide as their flow of air: on the left what"
                        + " comes in, on the right what goes out. The same figures stand in the"
                        + " table below.",
                    AirPicture.CAPTION);
              }
              page.table(AirText.heads(units), AirText.rows(air, units))
                  .element("p", "note", AirText.NOTE)
                  .list(AirText.lines(answer, units));
            });
  }
}
