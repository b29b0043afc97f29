package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.quantity.UnitSystem;

/** The part of the year's page on leaving the unit on or switching it on. */
final class HabitSection {

  private static final int WIDTH = 760;
  private static final int HEIGHT = 620;
  private static final double PRINT = 2;

  private HabitSection() {}

  static void write(Html page, HabitAnswer answer, UnitSystem units, boolean charts) {
    HabitText text = new HabitText(answer, units);
    page.element("h2", "Leaving it on or switching it on")
        .list(text.lines())
        .table(HabitText.head(), text.rows())
        .element("p", "note", HabitText.note());
    if (charts) {
      List<Integer> weeks = new ArrayList<>(List.of(answer.hotWeek()));
      answer.springWeek().ifPresent(weeks::add);
      for (int from : weeks) {
        page.picture(
            ChartImage.png(
                HabitChart.of(answer, from, units, ChartLook.light()), WIDTH, HEIGHT, PRINT),
            WIDTH,
            "Three charts over one week, one for each habit: room, dew point inside, coldest iron,"
                + " slab, outdoors. "
                + text.caption(from),
            text.caption(from));
      }
    }
  }
}
