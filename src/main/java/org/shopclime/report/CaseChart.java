package org.shopclime.report;

import java.awt.Color;
import java.awt.Stroke;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.shopclime.balance.Profile;
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.CaseDay;
import org.shopclime.plan.Scenario;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.Trace;

/**
 * The day of one case, or of two laid over each other: full lines for the first, dashed for the
 * second; a colour stands for the same thing in both.
 */
public final class CaseChart {

  private final SizeAnswer answer;
  private final UnitSystem units;
  private final ChartLook look;
  private final DayPanels panels;
  private final XYPlot air;
  private final XYPlot heat;

  private CaseChart(SizeAnswer answer, CaseDay first, UnitSystem units, ChartLook look) {
    this.answer = answer;
    this.units = units;
    this.look = look;
    this.panels = new DayPanels(units, look, clock(answer, first));
    this.air = panels.temperatures();
    this.heat = panels.heat();
  }

  /**
   * The chart.
   *
   * @param answer the whole answer
   * @param first a case of it whose day is kept
   * @param second another to lay over it
   * @param units system of units to show
   * @param look colours
   * @return chart of two panels over one axis of time; a point stands in the middle of its hour
   */
  public static JFreeChart of(
      SizeAnswer answer,
      Scenario first,
      Optional<Scenario> second,
      UnitSystem units,
      ChartLook look) {
    CaseDay day = first.day().orElseThrow();
    CaseChart chart = new CaseChart(answer, day, units, look);
    boolean oneWeather =
        second
            .map(other -> other.day().orElseThrow().weather().dryBulb())
            .map(day.weather().dryBulb()::equals)
            .orElse(true);
    chart.outdoors(day, second.isPresent() && !oneWeather ? name(first) : "", false);
    if (!oneWeather) {
      second.ifPresent(other -> chart.outdoors(other.day().orElseThrow(), name(other), true));
    }
    chart.inside(day, second.isPresent() ? name(first) : "", false);
    second.ifPresent(other -> chart.inside(other.day().orElseThrow(), name(other), true));
    Optional<Profile> load = chart.load(day);
    boolean oneLoad =
        second.map(other -> chart.load(other.day().orElseThrow()).equals(load)).orElse(true);
    load.ifPresent(watts -> chart.heat(day, watts, oneLoad ? "" : name(first), false));
    if (!oneLoad) {
      CaseDay other = second.orElseThrow().day().orElseThrow();
      chart.load(other).ifPresent(watts -> chart.heat(other, watts, name(second.get()), true));
    }
    chart.unit(day, second.isPresent() ? name(first) : "", false);
    second.ifPresent(other -> chart.unit(other.day().orElseThrow(), name(other), true));
    chart.panels.line(
        chart.air,
        "Wished inside",
        look.ink(),
        ChartStyle.dashed(1, 2),
        hour -> Shown.degrees(day.lived().setPoint(), units));
    return chart.panels.chart(chart.air, chart.heat);
  }

  private static String name(Scenario of) {
    return ": " + Shown.line(of.name());
  }

  private static WallClock clock(SizeAnswer answer, CaseDay day) {
    return new WallClock(answer.shop().work(), day.weather().date());
  }

  private void outdoors(CaseDay day, String name, boolean dashed) {
    panels.line(
        air,
        "Outdoors" + name,
        look.outdoor(),
        stroke(DayPanels.PLAIN, dashed),
        hour -> Shown.degrees(day.weather().dryBulb().at(hour), units),
        clock(answer, day));
  }

  private void inside(CaseDay day, String name, boolean dashed) {
    WallClock clock = clock(answer, day);
    Trace trace = day.lived().trace();
    boolean unit = answer.unit().isPresent();
    Color inside = unit ? look.indoor() : look.without();
    panels.line(
        air,
        "Inside" + name,
        inside,
        stroke(DayPanels.BOLD, dashed),
        hour -> Shown.degrees(trace.air().at(hour), units),
        clock);
    panels.line(
        air,
        "Dew point inside" + name,
        look.moisture(),
        stroke(DayPanels.PLAIN, dashed),
        hour -> Shown.degrees(trace.dewPoint().at(hour), units),
        clock);
  }

  private Optional<Profile> load(CaseDay day) {
    return day.load().rooms().stream()
        .filter(each -> each.room() == answer.core().room())
        .map(RoomLoad::sensible)
        .findFirst();
  }

  private void heat(CaseDay day, Profile watts, String name, boolean dashed) {
    panels.line(
        heat,
        "Heat to take out" + name,
        look.heat(),
        stroke(DayPanels.PLAIN, dashed),
        hour -> Shown.flow(watts.at(hour), units),
        clock(answer, day));
  }

  private void unit(CaseDay day, String name, boolean dashed) {
    Trace trace = day.lived().trace();
    if (answer.unit().isPresent()) {
      panels.line(
          heat,
          "Heat the unit can take out" + name,
          look.indoor(),
          stroke(DayPanels.BOLD, dashed),
          hour ->
              DayPanels.isOff(trace, hour)
                  ? Double.NaN
                  : Shown.flow(trace.canGive().at(hour), units),
          clock(answer, day));
    }
  }

  private static Stroke stroke(float width, boolean dashed) {
    return dashed ? ChartStyle.dashed(width, DayPanels.DASH) : ChartStyle.line(width);
  }

  /**
   * Cases whose day is kept.
   *
   * @param answer the whole answer
   * @return in the order of the answer
   */
  public static List<Scenario> cases(SizeAnswer answer) {
    return answer.scenarios().stream().filter(each -> each.day().isPresent()).toList();
  }

  /**
   * The shop as it stands among its cases.
   *
   * @param cases cases whose day is kept
   * @return that case; the first if none is told to be; nothing if there are no cases
   */
  public static Optional<Scenario> asItIs(List<Scenario> cases) {
    return cases.stream()
        .filter(each -> each.day().orElseThrow().asItIs())
        .findFirst()
        .or(() -> cases.stream().findFirst());
  }

  /**
   * The case that gets warmest.
   *
   * @param cases cases whose day is kept
   * @return the first of the warmest; nothing if there are no cases
   */
  public static Optional<Scenario> warmest(List<Scenario> cases) {
    return cases.stream()
        .reduce((one, other) -> other.indoorPeak() > one.indoorPeak() ? other : one);
  }

  /**
   * What happens in a case, in words.
   *
   * @param answer the whole answer
   * @param of a case of it whose day is kept
   * @param units system of units to show
   * @return one sentence, such as "Work + oven: 86 °F from 4 to 5 pm …"
   */
  public static String sentence(SizeAnswer answer, Scenario of, UnitSystem units) {
    CaseDay day = of.day().orElseThrow();
    int hour = day.lived().peakHour();
    Trace trace = day.lived().trace();
    String name = Shown.line(of.name());
    return name.substring(0, 1).toUpperCase(Locale.ROOT)
        + name.substring(1)
        + ": at most "
        + Shown.temperature(trace.air().at(hour), units)
        + " from "
        + clock(answer, day).during(hour)
        + ", dew point "
        + Shown.temperature(trace.dewPoint().at(hour), units)
        + ", humidity "
        + Shown.percent(trace.relativeHumidity().at(hour))
        + (answer.unit().isEmpty()
            ? ""
            : of.holds() ? "; the unit holds" : "; the unit does not hold")
        + ".";
  }
}
