package org.shopclime.report;

import java.awt.Color;
import java.awt.Stroke;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.function.IntToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.Trace;
import org.shopclime.shop.Schedule;

/**
 * What pictures of a day share: two panels over one axis of time by the clock on the wall, working
 * hours shaded.
 */
final class DayPanels {

  static final float BOLD = 2.6f;
  static final float PLAIN = 1.8f;
  static final float DASH = 5;

  private static final int HOURS = 24;
  private static final double EVERY = 3;

  private final UnitSystem units;
  private final ChartLook look;
  private final WallClock clock;

  DayPanels(UnitSystem units, ChartLook look, WallClock clock) {
    this.units = units;
    this.look = look;
    this.clock = clock;
  }

  /** A chart of temperatures above and heat below. */
  JFreeChart chart(XYPlot temperatures, XYPlot heat) {
    CombinedDomainXYPlot both = new CombinedDomainXYPlot(time());
    both.setGap(14);
    both.add(temperatures, 3);
    both.add(heat, 2);
    ChartStyle.plot(both, look);
    return ChartStyle.chart(both, look);
  }

  /** A chart of one panel. */
  JFreeChart chart(XYPlot panel) {
    panel.setDomainAxis(time());
    return ChartStyle.chart(panel, look);
  }

  private NumberAxis time() {
    NumberAxis time = new NumberAxis("Time of day");
    ChartStyle.axis(time, look);
    int first = clock.hoursAhead();
    time.setRange(first, first + (double) HOURS);
    time.setTickUnit(new NumberTickUnit(EVERY, new TimeFormat()));
    return time;
  }

  XYPlot temperatures() {
    XYPlot plot = panel("Air, " + Shown.temperatureUnit(units));
    ((NumberAxis) plot.getRangeAxis()).setAutoRangeIncludesZero(false);
    return plot;
  }

  XYPlot heat() {
    return panel("Heat, " + Shown.heatUnit(units));
  }

  /** Whether the unit is off in an hour. */
  static boolean isOff(Trace trace, int hour) {
    return trace.canGive().at(hour) == 0 && trace.canGiveLatent().at(hour) == 0;
  }

  private XYPlot panel(String label) {
    NumberAxis axis = new NumberAxis(label);
    ChartStyle.axis(axis, look);
    axis.setNumberFormatOverride(ChartStyle.whole());
    XYPlot plot = new XYPlot(new XYSeriesCollection(), null, axis, new XYLineAndShapeRenderer());
    ((XYLineAndShapeRenderer) plot.getRenderer()).setDefaultShapesVisible(false);
    ((XYLineAndShapeRenderer) plot.getRenderer()).setDrawSeriesLineAsPath(true);
    plot.setDomainGridlinePaint(look.grid());
    plot.setRangeGridlinePaint(look.grid());
    plot.setDomainGridlineStroke(ChartStyle.grid());
    plot.setRangeGridlineStroke(ChartStyle.grid());
    ChartStyle.plot(plot, look);
    shadeWork(plot);
    return plot;
  }

  /** Working hours; what lies before the first hour shown belongs to the end of the day. */
  private void shadeWork(XYPlot plot) {
    double first = clock.hoursAhead();
    for (Schedule.Period period : clock.periods()) {
      double start = period.startMinute() / 60.0;
      double end = period.endMinute() / 60.0;
      if (start < first) {
        shade(plot, start + HOURS, Math.min(end, first) + HOURS);
      }
      if (end > first) {
        shade(plot, Math.max(start, first), end);
      }
    }
  }

  private void shade(XYPlot plot, double start, double end) {
    IntervalMarker marker = new IntervalMarker(start, end, look.shade());
    marker.setAlpha(1);
    plot.addDomainMarker(marker, Layer.BACKGROUND);
  }

  /** Adds a line; a point stands in the middle of its hour. */
  void line(XYPlot plot, String name, Color color, Stroke stroke, IntToDoubleFunction valueOfHour) {
    line(plot, name, color, stroke, valueOfHour, clock);
  }

  /** Adds a line of a day whose own clock may be ahead by another hour. */
  void line(
      XYPlot plot,
      String name,
      Color color,
      Stroke stroke,
      IntToDoubleFunction valueOfHour,
      WallClock own) {
    XYSeries series = new XYSeries(name);
    for (int hour = 1; hour <= HOURS; hour++) {
      series.add(hour - 0.5 + own.hoursAhead(), valueOfHour.applyAsDouble(hour));
    }
    XYSeriesCollection dataset = (XYSeriesCollection) plot.getDataset();
    dataset.addSeries(series);
    int index = dataset.getSeriesCount() - 1;
    plot.getRenderer().setSeriesPaint(index, color);
    plot.getRenderer().setSeriesStroke(index, stroke);
  }

  /** Hours of the clock: "6 am", "noon". */
  private static final class TimeFormat extends NumberFormat {

    private static final long serialVersionUID = 1L;

    @Override
    public StringBuffer format(double hour, StringBuffer text, FieldPosition position) {
      return text.append(WallClock.text((int) Math.round(hour * 60)));
    }

    @Override
    public StringBuffer format(long hour, StringBuffer text, FieldPosition position) {
      return format((double) hour, text, position);
    }

    @Override
    public Number parse(String text, ParsePosition position) {
      throw new UnsupportedOperationException("times are only written");
    }
  }
}
