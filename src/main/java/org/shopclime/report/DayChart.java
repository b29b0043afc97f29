package org.shopclime.report;

import java.awt.Color;
import java.awt.Stroke;
import java.text.DecimalFormat;
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
import org.shopclime.load.RoomLoad;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.LivedDay;
import org.shopclime.run.Trace;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Shop;

/**
 * The hot day by the clock on the wall: temperatures above, and below them the heat to take out
 * against what the unit can give. Working hours are shaded.
 */
public final class DayChart {

  private static final int HOURS = 24;
  private static final double EVERY = 3;
  private static final float BOLD = 2.6f;
  private static final float PLAIN = 1.8f;
  private static final float DASH = 5;

  private final UnitSystem units;
  private final ChartLook look;
  private final WallClock clock;

  private DayChart(UnitSystem units, ChartLook look, WallClock clock) {
    this.units = units;
    this.look = look;
    this.clock = clock;
  }

  /**
   * The chart.
   *
   * @param core heart of the answer
   * @param shop the shop asked about
   * @param units system of units to show
   * @param look colours
   * @return chart of two panels over one axis of time; a point stands in the middle of its hour
   */
  public static JFreeChart of(CoreAnswer core, Shop shop, UnitSystem units, ChartLook look) {
    DayChart day = new DayChart(units, look, new WallClock(shop.work(), core.hotDay().date()));
    CombinedDomainXYPlot both = new CombinedDomainXYPlot(day.time());
    both.setGap(14);
    both.add(day.temperatures(core), 3);
    both.add(day.loads(core), 2);
    ChartStyle.plot(both, look);
    return ChartStyle.chart(both, look);
  }

  private NumberAxis time() {
    NumberAxis time = new NumberAxis("Time of day");
    ChartStyle.axis(time, look);
    int first = clock.hoursAhead();
    time.setRange(first, first + (double) HOURS);
    time.setTickUnit(new NumberTickUnit(EVERY, new TimeFormat()));
    return time;
  }

  private XYPlot temperatures(CoreAnswer core) {
    XYPlot plot = panel("Temperature, " + Shown.temperatureUnit(units));
    NumberAxis axis = (NumberAxis) plot.getRangeAxis();
    axis.setAutoRangeIncludesZero(false);
    LivedDay told = core.unit().orElse(core.without());
    line(plot, "Outdoors", look.outdoor(), ChartStyle.line(PLAIN), at(core.hotDay().dryBulb()::at));
    Trace without = core.without().trace();
    if (core.unit().isPresent()) {
      line(
          plot,
          "Inside, unit off",
          look.without(),
          ChartStyle.dashed(PLAIN, 2 * DASH),
          at(without.air()::at));
      line(
          plot,
          "Inside, with the unit",
          look.indoor(),
          ChartStyle.line(BOLD),
          at(told.trace().air()::at));
    } else {
      line(plot, "Inside", look.without(), ChartStyle.line(BOLD), at(without.air()::at));
    }
    line(
        plot,
        "Dew point inside",
        look.moisture(),
        ChartStyle.dashed(PLAIN, DASH),
        at(told.trace().dewPoint()::at));
    line(plot, "Wished inside", look.ink(), ChartStyle.dashed(1, 2), at(hour -> told.setPoint()));
    return plot;
  }

  private XYPlot loads(CoreAnswer core) {
    XYPlot plot = panel("Heat, " + Shown.heatUnit(units));
    for (RoomLoad load : core.load().rooms()) {
      if (load.room() == core.room()) {
        line(
            plot,
            "Heat to take out",
            look.heat(),
            ChartStyle.line(PLAIN),
            hour -> Shown.flow(load.sensible().at(hour), units));
        line(
            plot,
            "Moisture to take out",
            look.moisture(),
            ChartStyle.line(PLAIN),
            hour -> Shown.flow(load.latent().at(hour), units));
      }
    }
    core.unit()
        .map(LivedDay::trace)
        .ifPresent(
            trace -> {
              line(
                  plot,
                  "Heat the unit can take out",
                  look.indoor(),
                  ChartStyle.line(BOLD),
                  hour -> whileOn(trace, trace.canGive().at(hour), hour));
              line(
                  plot,
                  "Moisture it can take out",
                  look.indoor(),
                  ChartStyle.dashed(PLAIN, DASH),
                  hour -> whileOn(trace, trace.canGiveLatent().at(hour), hour));
            });
    return plot;
  }

  /** Nothing is drawn for hours in which the unit is off. */
  private double whileOn(Trace trace, double watts, int hour) {
    boolean off = trace.canGive().at(hour) == 0 && trace.canGiveLatent().at(hour) == 0;
    return off ? Double.NaN : Shown.flow(watts, units);
  }

  private IntToDoubleFunction at(IntToDoubleFunction celsius) {
    return hour -> Shown.degrees(celsius.applyAsDouble(hour), units);
  }

  private XYPlot panel(String label) {
    NumberAxis axis = new NumberAxis(label);
    ChartStyle.axis(axis, look);
    axis.setNumberFormatOverride(new DecimalFormat("#,##0"));
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

  private void line(
      XYPlot plot, String name, Color color, Stroke stroke, IntToDoubleFunction valueOfHour) {
    XYSeries series = new XYSeries(name);
    for (int hour = 1; hour <= HOURS; hour++) {
      series.add(hour - 0.5 + clock.hoursAhead(), valueOfHour.applyAsDouble(hour));
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
