package org.shopclime.report;

import java.awt.Color;
import java.awt.Stroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.shopclime.airline.AirCompressor;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.PlaceAnswer;
import org.shopclime.airline.Placement;
import org.shopclime.quantity.UnitSystem;

/** Places for the compressor through the hot day: the best, today's and the hottest ones. */
public final class AirDayChart {

  private static final int HOTTEST = 2;

  private AirDayChart() {}

  /**
   * The chart.
   *
   * @param answer the answer
   * @param units system of units to show
   * @param look colours
   * @return chart over the clock on the wall, working hours shaded
   */
  public static JFreeChart of(AirlineAnswer answer, UnitSystem units, ChartLook look) {
    DayPanels day =
        new DayPanels(units, look, new WallClock(answer.shop().work(), answer.day().date()));
    XYPlot plot = day.temperatures();
    Optional<PlaceAnswer> best = answer.places().stream().findFirst();
    Optional<PlaceAnswer> today = new AirReasons(answer, units).today();
    List<PlaceAnswer> drawn = new ArrayList<>();
    List<PlaceAnswer> hot = hottest(answer, best, today);
    for (int i = 0; i < hot.size(); i++) {
      Stroke stroke =
          i == 0
              ? ChartStyle.line(DayPanels.PLAIN)
              : ChartStyle.dashed(DayPanels.PLAIN, 2 * DayPanels.DASH);
      line(day, plot, hot.get(i), "", look.heat(), stroke, units, drawn);
    }
    answer.places().stream()
        .filter(place -> place.placement().kind() == Placement.Kind.IN_ROOM)
        .filter(place -> !best.equals(Optional.of(place)))
        .forEach(
            place ->
                line(
                    day,
                    plot,
                    place,
                    today.equals(Optional.of(place))
                        ? ": the room, and today's place"
                        : ": the room",
                    look.without(),
                    ChartStyle.line(DayPanels.BOLD),
                    units,
                    drawn));
    today
        .filter(place -> !drawn.contains(place) && !best.equals(today))
        .ifPresent(
            place ->
                line(
                    day,
                    plot,
                    place,
                    ": today's place",
                    look.moisture(),
                    ChartStyle.dashed(DayPanels.PLAIN, DayPanels.DASH),
                    units,
                    drawn));
    best.ifPresent(
        place ->
            line(
                day,
                plot,
                place,
                best.equals(today) ? ": the best, and today's place" : ": the best",
                look.indoor(),
                ChartStyle.line(DayPanels.BOLD),
                units,
                drawn));
    day.line(
        plot,
        "Outdoors",
        look.outdoor(),
        ChartStyle.line(DayPanels.PLAIN),
        hour -> Shown.degrees(answer.day().dryBulb().at(hour), units));
    double limit = Shown.degrees(AirCompressor.MOST_AMBIENT, units);
    day.line(
        plot,
        "Most the machine takes, " + Shown.temperature(AirCompressor.MOST_AMBIENT, units),
        look.ink(),
        ChartStyle.dashed(1.4f, 3),
        hour -> limit);
    return day.chart(plot);
  }

  /** The hottest places beside those that are drawn in any case. */
  static List<PlaceAnswer> hottest(
      AirlineAnswer answer, Optional<PlaceAnswer> best, Optional<PlaceAnswer> today) {
    return answer.places().stream()
        .filter(place -> !best.equals(Optional.of(place)) && !today.equals(Optional.of(place)))
        .filter(place -> place.placement().kind() != Placement.Kind.IN_ROOM)
        .sorted(Comparator.comparingDouble(place -> -place.placePeak()))
        .limit(HOTTEST)
        .toList();
  }

  private static void line(
      DayPanels day,
      XYPlot plot,
      PlaceAnswer place,
      String said,
      Color colour,
      Stroke stroke,
      UnitSystem units,
      List<PlaceAnswer> drawn) {
    drawn.add(place);
    day.line(
        plot,
        AirReasons.name(place) + said,
        colour,
        stroke,
        hour -> Shown.degrees(place.air().at(hour), units));
  }
}
