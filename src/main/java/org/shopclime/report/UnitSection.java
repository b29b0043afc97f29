package org.shopclime.report;

import java.util.List;
import java.util.Optional;
import org.shopclime.plan.Scenario;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitSight;
import org.shopclime.quantity.UnitSystem;

/** The parts of the page on the unit: against outdoor temperature, and on other days. */
final class UnitSection {

  private static final int WIDTH = 760;
  private static final int CURVE_HEIGHT = 440;
  private static final int DAY_HEIGHT = 480;
  private static final double PRINT = 2;

  private UnitSection() {}

  /** The unit in the heat and its limits; nothing without a unit. */
  static void write(Html page, SizeAnswer answer, UnitSystem units, boolean charts) {
    Optional<UnitSight> sight = UnitSight.of(answer);
    if (sight.isEmpty()) {
      return;
    }
    String caption = UnitChart.caption(sight.get(), answer, units);
    page.element("h2", "The unit in the heat");
    if (charts) {
      page.picture(
          ChartImage.png(
              UnitChart.of(sight.get(), answer, units, ChartLook.light()),
              WIDTH,
              CURVE_HEIGHT,
              PRINT),
          WIDTH,
          "Two charts over outdoor temperature. Above, heat and moisture the unit can take out, and"
              + " the heat to take out; below, the power it draws. "
              + caption,
          caption);
    } else {
      page.element("p", caption);
    }
    page.element("p", "What these figures cover:").list(UnitLimits.lines(answer, units));
  }

  /** The shop as it stands and the case that gets warmest, one over the other. */
  static void days(Html page, SizeAnswer answer, UnitSystem units) {
    List<Scenario> cases = CaseChart.cases(answer);
    Optional<Scenario> first = CaseChart.asItIs(cases);
    if (first.isEmpty()) {
      return;
    }
    Optional<Scenario> second =
        CaseChart.warmest(cases).filter(each -> !each.name().equals(first.get().name()));
    String caption =
        CaseChart.sentence(answer, first.get(), units)
            + second
                .map(other -> " Dashed: " + CaseChart.sentence(answer, other, units))
                .orElse("");
    page.picture(
        ChartImage.png(
            CaseChart.of(answer, first.get(), second, units, ChartLook.light()),
            WIDTH,
            DAY_HEIGHT,
            PRINT),
        WIDTH,
        "Two charts over the hours of the day, for the shop as it stands and for the case that gets"
            + " warmest: above, temperatures and dew point; below, heat to take out against what"
            + " the unit can give.",
        caption);
  }
}
