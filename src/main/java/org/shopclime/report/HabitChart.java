package org.shopclime.report;

import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.shopclime.balance.YearWeeks;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.plan.HabitYear;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.YearResult.Figure;

/** A week of the shop under each habit: room, dew point, coldest iron and slab. */
public final class HabitChart {

  private static final int DAY = 24;
  private static final double MARGIN = 2;
  private static final float THICK = 2;
  private static final float THIN = 1.3f;
  private static final float DASH = 4;
  private static final double MARK = 6;

  private final HabitAnswer answer;
  private final HabitText text;
  private final int from;
  private final UnitSystem units;
  private final ChartLook look;
  private final LegendItemCollection legend = new LegendItemCollection();
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  private HabitChart(HabitAnswer answer, int from, UnitSystem units, ChartLook look) {
    this.answer = answer;
    this.from = from;
    this.units = units;
    this.look = look;
    text = new HabitText(answer, units);
  }

  /**
   * The chart.
   *
   * @param answer the answer; the owner's days are drawn
   * @param from first hour of the week, 0 to 8,759
   * @param units system of units to show
   * @param look colours
   * @return chart of one panel for each habit over one axis of days, by the wall clock
   */
  public static JFreeChart of(HabitAnswer answer, int from, UnitSystem units, ChartLook look) {
    HabitChart chart = new HabitChart(answer, from, units, look);
    CombinedDomainXYPlot all = new CombinedDomainXYPlot(chart.days());
    all.setGap(8);
    for (HabitYear year : answer.own()) {
      all.add(chart.panel(year), 1);
    }
    for (Object panel : all.getSubplots()) {
      ((XYPlot) panel).getRangeAxis().setRange(chart.low - MARGIN, chart.high + MARGIN);
    }
    all.setFixedLegendItems(chart.legend);
    ChartStyle.plot(all, look);
    return ChartStyle.chart(all, look);
  }

  private NumberAxis days() {
    NumberAxis axis = new NumberAxis();
    ChartStyle.axis(axis, look);
    axis.setRange(0, YearWeeks.HOURS);
    axis.setTickUnit(new NumberTickUnit(DAY, new DayNames()));
    return axis;
  }

  private XYPlot panel(HabitYear year) {
    XYPlot plot = ClimateChart.panel(text.name(year.habit()), look);
    ((NumberAxis) plot.getRangeAxis())
        .setNumberFormatOverride(ChartStyle.figures("#,##0 " + Shown.temperatureUnit(units)));
    work(plot, year);
    boolean first = legend.getItemCount() == 0;
    Stroke solid = ChartStyle.line(THICK);
    Stroke thin = ChartStyle.line(THIN);
    line(plot, first, "Dew point inside", look.moisture(), solid, year.rust()::dewPoint);
    line(plot, first, "Coldest iron", look.heat(), thin, year.rust()::iron);
    if (Double.isFinite(year.rust().slab(from))) {
      line(plot, first, "Slab", look.ink(), ChartStyle.dashed(THIN, DASH), year.rust()::slab);
    }
    line(
        plot,
        first,
        "Room",
        look.indoor(),
        solid,
        hour -> year.year().at(Figure.AIR, year.room(), hour));
    line(
        plot,
        first,
        "Outdoors",
        look.outdoor(),
        thin,
        hour -> year.year().year().weather().dryBulb(hour));
    return plot;
  }

  private void line(
      XYPlot plot,
      boolean first,
      String name,
      Color colour,
      Stroke stroke,
      IntToDoubleFunction ofHour) {
    XYSeries series = new XYSeries(name);
    for (int hour = from; hour < from + YearWeeks.HOURS; hour++) {
      double shown = Shown.degrees(ofHour.applyAsDouble(hour), units);
      series.add(clock(hour) + 0.5, shown);
      low = Math.min(low, shown);
      high = Math.max(high, shown);
    }
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
    lines.setSeriesPaint(0, colour);
    lines.setSeriesStroke(0, stroke);
    lines.setDrawSeriesLineAsPath(true);
    ClimateChart.add(plot, new XYSeriesCollection(series), lines);
    if (first) {
      legend.add(
          new LegendItem(
              name, null, null, null, new Line2D.Double(-MARK, 0, MARK, 0), stroke, colour));
    }
  }

  /** Hours since midnight before Monday, by the wall clock, at the start of an hour. */
  private double clock(int hour) {
    return hour - from + answer.own().get(0).year().year().minutesAhead(hour) / 60.0;
  }

  private void work(XYPlot plot, HabitYear year) {
    int end = from + YearWeeks.HOURS;
    int hour = from;
    while (hour < end) {
      int begin = hour;
      while (hour < end && year.year().year().working(hour) > 0) {
        hour++;
      }
      if (hour > begin) {
        IntervalMarker mark = new IntervalMarker(clock(begin), clock(hour - 1) + 1, look.shade());
        mark.setAlpha(1);
        plot.addDomainMarker(mark, Layer.BACKGROUND);
      }
      hour++;
    }
  }

  /** Names of days at their midnights. */
  private static final class DayNames extends NumberFormat {

    private static final long serialVersionUID = 1;

    @Override
    public StringBuffer format(double hour, StringBuffer into, FieldPosition position) {
      return format(Math.round(hour), into, position);
    }

    @Override
    public StringBuffer format(long hour, StringBuffer into, FieldPosition position) {
      return hour < 0 || hour >= YearWeeks.HOURS
          ? into
          : into.append(
              DayOfWeek.of((int) (hour / DAY) + 1).getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
    }

    @Override
    public Number parse(String text, ParsePosition position) {
      throw new UnsupportedOperationException("an axis only writes");
    }
  }
}
