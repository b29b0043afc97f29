package org.shopclime.report;

import java.util.List;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;

/** The part of the page on damp in the walls. */
final class DampSection {

  private static final int WIDTH = 760;
  private static final int HEIGHT = 400;
  private static final double PRINT = 2;

  private DampSection() {}

  /** Writes it; nothing if the walls were not looked at. */
  static void write(Html page, SizeAnswer answer, UnitSystem units, boolean charts) {
    List<String> lines = DampText.lines(answer, units);
    if (lines.isEmpty()) {
      return;
    }
    page.element("h2", "Damp in the walls").list(lines);
    if (charts) {
      for (WallPicture picture : WallPicture.of(answer.damp().orElseThrow())) {
        page.picture(
            ChartImage.png(
                WallChart.of(picture.path(), picture.spell(), units, ChartLook.light()),
                WIDTH,
                HEIGHT,
                PRINT),
            WIDTH,
            "A slice through the wall with its layers, the temperature and the dew point across"
                + " them. "
                + WallChart.caption(picture.path(), picture.spell(), units),
            WallChart.caption(picture.path(), picture.spell(), units));
      }
    }
  }
}
