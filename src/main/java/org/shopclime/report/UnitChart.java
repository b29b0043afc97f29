package org.shopclime.report;

import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.shopclime.climate.Hours;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitSight;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.UnitPoint;

/**
 * The unit against outdoor temperature: above, the heat it takes out and the heat that has to be
 * taken out; below, the power it draws. The hot day's range is shaded; beyond the temperatures the
 * curves were tested at, where their edge is held, lines are dotted.
 */
public final class UnitChart {

  private static final float BOLD = 2.6f;
  private static final float PLAIN = 1.8f;
  private static final float DASH = 5;
  private static final float DOT = 2;
  private static final double RING = 9;

  /** Height of a line of small letters and its room. */
  private static final double LINE = 20;

  private static final String WARMS = "below this it blows in air warmer than wished";

  private final UnitSight sight;
  private final SizeAnswer answer;
  private final UnitSystem units;
  private final ChartLook look;

  private UnitChart(UnitSight sight, SizeAnswer answer, UnitSystem units, ChartLook look) {
    this.sight = sight;
    this.answer = answer;
    this.units = units;
    this.look = look;
  }

  /**
   * The chart.
   *
   * @param sight the unit
   * @param answer the answer it belongs to
   * @param units system of units to show
   * @param look colours
   * @return chart of two panels over one axis of outdoor temperature
   */
  public static JFreeChart of(
      UnitSight sight, SizeAnswer answer, UnitSystem units, ChartLook look) {
    UnitChart unit = new UnitChart(sight, answer, units, look);
    NumberAxis outdoors = new NumberAxis("Outdoor temperature, " + Shown.temperatureUnit(units));
    ChartStyle.axis(outdoors, look);
    outdoors.setRange(unit.degrees(unit.first()), unit.degrees(unit.last()));
    CombinedDomainXYPlot both = new CombinedDomainXYPlot(outdoors);
    both.setGap(14);
    both.add(unit.heat(), 3);
    both.add(unit.power(), 1);
    ChartStyle.plot(both, look);
    return ChartStyle.chart(both, look);
  }

  private XYPlot heat() {
    XYPlot plot = panel("Heat, " + Shown.heatUnit(units));
    curve(plot, "Heat it can take out", UnitPoint::sensible, BOLD, look.indoor());
    if (!blows()) { // a cooler with wet pads takes no moisture out
      curve(plot, "Heat and moisture it can take out", UnitPoint::total, PLAIN, look.moisture());
    }
    if (!sight.loads().isEmpty()) {
      XYSeries loads = new XYSeries("Heat to take out in the worst working hour", false);
      for (UnitSight.LoadPoint load : sight.loads()) {
        loads.add(degrees(load.outdoor()), Shown.flow(load.sensible(), units));
      }
      line(plot, loads, look.heat(), ChartStyle.line(PLAIN), true);
      UnitSight.LoadPoint now = sight.loads().get(sight.hotDay());
      XYSeries ring = new XYSeries("The same on the hot day");
      ring.add(degrees(now.outdoor()), Shown.flow(now.sensible(), units));
      int index = line(plot, ring, look.heat(), ChartStyle.line(PLAIN), true);
      XYLineAndShapeRenderer renderer = (XYLineAndShapeRenderer) plot.getRenderer();
      renderer.setSeriesLinesVisible(index, false);
      renderer.setSeriesShapesVisible(index, true);
      renderer.setSeriesShape(index, new Ellipse2D.Double(-RING / 2, -RING / 2, RING, RING));
    }
    Marker hot = shade(plot);
    if (blows()) { // below, its line goes down
      label(hot, "the hot day", RectangleAnchor.TOP_LEFT, TextAnchor.TOP_LEFT);
    } else {
      label(hot, "the hot day", RectangleAnchor.BOTTOM_LEFT, TextAnchor.BOTTOM_LEFT);
    }
    sight
        .coolEdge()
        .ifPresent(
            edge ->
                label(
                    edge(plot, edge),
                    "tested from here",
                    RectangleAnchor.TOP_RIGHT,
                    TextAnchor.TOP_LEFT));
    sight
        .hotEdge()
        .ifPresent(
            edge ->
                label(
                    edge(plot, edge),
                    "tested to here",
                    RectangleAnchor.TOP_LEFT,
                    TextAnchor.TOP_RIGHT));
    keepsUpTo()
        .ifPresent(
            peak -> {
              ValueMarker marker =
                  new ValueMarker(degrees(peak), look.indoor(), ChartStyle.line(1));
              plot.addDomainMarker(marker, Layer.BACKGROUND);
              boolean right = 2 * peak > first() + last();
              String words = "keeps up to " + Shown.temperature(peak, units);
              // a line beside the name of the hot day, wherever the two meet
              if (blows()) {
                label(
                    marker,
                    words,
                    right ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT,
                    right ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
                marker.setLabelOffset(new RectangleInsets(LINE, 4, 3, 4));
              } else {
                label(
                    marker,
                    words,
                    right ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.BOTTOM_RIGHT,
                    right ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT);
                marker.setLabelOffset(new RectangleInsets(3, 4, LINE, 4));
              }
            });
    ((NumberAxis) plot.getRangeAxis()).setAutoRangeIncludesZero(true);
    if (blows()) {
      frame(plot);
    }
    return plot;
  }

  private boolean blows() {
    return answer.shop().unit().map(unit -> unit.isEvaporative()).orElse(false);
  }

  /**
   * A cooler with wet pads gives several times the load in mild air, and warms the room by as much
   * in hot damp air: what is near the load is drawn.
   */
  private void frame(XYPlot plot) {
    double load =
        Math.max(
            Math.abs(sight.at(answer.core().hotDay().peak()).sensible()),
            sight.loads().stream().mapToDouble(each -> each.sensible()).max().orElse(0));
    double least = sight.curve().stream().mapToDouble(UnitPoint::sensible).min().orElse(0);
    double most = sight.curve().stream().mapToDouble(UnitPoint::sensible).max().orElse(0);
    double low = Math.max(Math.min(least, 0), -load);
    double high = Math.max(Math.min(most, 3 * load), load) * 1.05;
    plot.getRangeAxis().setRange(Shown.flow(low * 1.05, units), Shown.flow(high, units));
    if (low < 0) {
      ValueMarker zero = new ValueMarker(0, look.ink(), ChartStyle.line(1));
      plot.addRangeMarker(zero, Layer.BACKGROUND);
      label(zero, WARMS, RectangleAnchor.BOTTOM_RIGHT, TextAnchor.TOP_RIGHT);
    }
  }

  private XYPlot power() {
    XYPlot plot = panel("Power, W");
    curve(plot, "Power it draws", UnitPoint::power, PLAIN, look.without());
    shade(plot);
    sight.coolEdge().ifPresent(edge -> edge(plot, edge));
    sight.hotEdge().ifPresent(edge -> edge(plot, edge));
    return plot;
  }

  private double first() {
    return sight.curve().get(0).outdoor();
  }

  private double last() {
    return sight.curve().get(sight.curve().size() - 1).outdoor();
  }

  private OptionalDouble keepsUpTo() {
    OptionalDouble peak =
        answer.unit().map(unit -> unit.keepsUpTo()).orElse(OptionalDouble.empty());
    return peak.isPresent() && peak.getAsDouble() > first() && peak.getAsDouble() < last()
        ? peak
        : OptionalDouble.empty();
  }

  /** A line of the unit, dotted beyond the temperatures tested. */
  private void curve(
      XYPlot plot, String name, ToDoubleFunction<UnitPoint> watts, float width, Color color) {
    double low = sight.coolEdge().orElse(Double.NEGATIVE_INFINITY);
    double high = sight.hotEdge().orElse(Double.POSITIVE_INFINITY);
    boolean heat = !"Power it draws".equals(name);
    ToDoubleFunction<UnitPoint> shown =
        point -> heat ? Shown.flow(watts.applyAsDouble(point), units) : watts.applyAsDouble(point);
    Stroke dots = ChartStyle.dashed(width, DOT);
    line(
        plot,
        part(name, shown, at -> at >= low && at <= high),
        color,
        ChartStyle.line(width),
        true);
    line(plot, part(name + ", below", shown, at -> at <= low), color, dots, false);
    line(plot, part(name + ", beyond", shown, at -> at >= high), color, dots, false);
  }

  private XYSeries part(String name, ToDoubleFunction<UnitPoint> shown, Predicate<Double> inside) {
    XYSeries series = new XYSeries(name);
    for (UnitPoint point : sight.curve()) {
      if (inside.test(point.outdoor())) {
        series.add(degrees(point.outdoor()), shown.applyAsDouble(point));
      }
    }
    return series;
  }

  private int line(XYPlot plot, XYSeries series, Color color, Stroke stroke, boolean named) {
    XYSeriesCollection dataset = (XYSeriesCollection) plot.getDataset();
    dataset.addSeries(series);
    int index = dataset.getSeriesCount() - 1;
    plot.getRenderer().setSeriesPaint(index, color);
    plot.getRenderer().setSeriesStroke(index, stroke);
    plot.getRenderer().setSeriesVisibleInLegend(index, named);
    return index;
  }

  private XYPlot panel(String label) {
    NumberAxis axis = new NumberAxis(label);
    ChartStyle.axis(axis, look);
    axis.setNumberFormatOverride(ChartStyle.whole());
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    XYPlot plot = new XYPlot(new XYSeriesCollection(), null, axis, renderer);
    plot.setDomainGridlinePaint(look.grid());
    plot.setRangeGridlinePaint(look.grid());
    plot.setDomainGridlineStroke(ChartStyle.grid());
    plot.setRangeGridlineStroke(ChartStyle.grid());
    ChartStyle.plot(plot, look);
    return plot;
  }

  private Marker shade(XYPlot plot) {
    Hours hot = answer.core().hotDay().dryBulb();
    IntervalMarker marker =
        new IntervalMarker(degrees(hot.min()), degrees(hot.max()), look.shade());
    marker.setAlpha(1);
    plot.addDomainMarker(marker, Layer.BACKGROUND);
    return marker;
  }

  private Marker edge(XYPlot plot, double celsius) {
    ValueMarker marker = new ValueMarker(degrees(celsius), look.ink(), ChartStyle.dashed(1, DASH));
    plot.addDomainMarker(marker, Layer.BACKGROUND);
    return marker;
  }

  private void label(Marker marker, String text, RectangleAnchor at, TextAnchor anchor) {
    marker.setLabel(text);
    marker.setLabelFont(look.smallFont());
    marker.setLabelPaint(look.ink());
    marker.setLabelAnchor(at);
    marker.setLabelTextAnchor(anchor);
    marker.setLabelOffset(new RectangleInsets(3, 4, 3, 4));
    marker.setLabelBackgroundColor(new Color(0, 0, 0, 0));
  }

  /** What a unit takes out of the room, or brings into it. */
  private static String given(UnitPoint then, UnitSystem units) {
    String heat = Shown.power(Math.abs(then.sensible()), units) + " of heat";
    String water = Shown.power(Math.abs(then.latent()), units) + " of moisture";
    if (then.sensible() < 0) {
      return "brings in "
          + heat
          + (then.latent() < 0 ? " and " + water : "")
          + ", as it blows in air warmer than the room is to be";
    }
    return "takes out " + heat + (then.latent() < 0 ? ", brings in " + water : " and " + water);
  }

  private double degrees(double celsius) {
    return Shown.degrees(celsius, units);
  }

  /**
   * What the picture shows, in words.
   *
   * @param sight the unit
   * @param answer the answer it belongs to
   * @param units system of units to show
   * @return some sentences
   */
  public static String caption(UnitSight sight, SizeAnswer answer, UnitSystem units) {
    List<String> words = new ArrayList<>();
    double peak = answer.core().hotDay().peak();
    UnitPoint then = sight.at(peak);
    words.add(
        "With "
            + Shown.temperature(sight.room(), units)
            + " inside (dew point "
            + Shown.temperature(sight.dewPoint(), units)
            + ") and "
            + Shown.temperature(peak, units)
            + " outdoors, the hot day's hottest hour, the unit "
            + given(then, units)
            + ", and draws "
            + Shown.grouped(Math.round(then.power() / 10) * 10)
            + " W.");
    if (!sight.loads().isEmpty()) {
      words.add(
          sight.meets().isPresent()
              ? "The lines of heat meet at about "
                  + Shown.temperature(sight.meets().getAsDouble(), units)
                  + " outdoors: beyond, more comes in than goes out."
              : sight.loads().get(sight.hotDay()).sensible() > then.sensible()
                  ? "More heat comes in than it takes out at all temperatures drawn."
                  : "It takes out more heat than comes in at all temperatures drawn.");
    }
    answer
        .unit()
        .filter(unit -> unit.keepsUpTo().isPresent())
        .ifPresent(
            unit ->
                words.add(
                    "Hour by hour, with what walls and floor take up and the "
                        + (units == UnitSystem.SI ? "0.6 K" : "1 °F")
                        + " that is allowed, it keeps up until a day of "
                        + Shown.temperature(unit.keepsUpTo().getAsDouble(), units)
                        + "."));
    return String.join(" ", words);
  }
}
