package org.shopclime.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.function.IntToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.StackedXYBarRenderer;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.CategoryTableXYDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.shopclime.plan.YearAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;

/** A shop's year by months: usual days outdoors and inside, and the heat put in and taken out. */
public final class YearChart {

  private static final float PALE = 0.45f;
  private static final float LINE = 2;
  private static final float DASH = 5;
  private static final double MARK = 5;
  private static final double SWATCH = 9;
  private static final double MARGIN = 0.4;

  private final YearAnswer answer;
  private final YearFigures figures;
  private final UnitSystem units;
  private final ChartLook look;
  private final LegendItemCollection legend = new LegendItemCollection();

  private YearChart(YearAnswer answer, UnitSystem units, ChartLook look) {
    this.answer = answer;
    this.units = units;
    this.look = look;
    figures = new YearFigures(answer);
  }

  /**
   * The chart.
   *
   * @param answer the answer
   * @param units system of units to show; energy is in kWh in both
   * @param look colours
   * @return chart of two panels over one axis of months
   */
  public static JFreeChart of(YearAnswer answer, UnitSystem units, ChartLook look) {
    YearChart chart = new YearChart(answer, units, look);
    CombinedDomainXYPlot both = new CombinedDomainXYPlot(ClimateChart.months(look));
    both.setGap(10);
    both.add(chart.temperatures(), 4);
    both.add(chart.energy(), 4);
    both.setFixedLegendItems(chart.legend);
    ChartStyle.plot(both, look);
    return ChartStyle.chart(both, look);
  }

  private XYPlot temperatures() {
    XYPlot plot = ClimateChart.panel("Usual day, " + Shown.temperatureUnit(units), look);
    ((NumberAxis) plot.getRangeAxis()).setAutoRangeIncludesZero(false);
    YearResult year = answer.described();
    YearResult alone = answer.alone();
    int room = answer.room();
    String name = Shown.line(year.year().roomName(room));
    edges(plot, name, look.indoor(), false, hour -> year.at(Figure.AIR, room, hour));
    edges(
        plot, name + " left alone", look.without(), true, hour -> alone.at(Figure.AIR, room, hour));
    band(plot);
    return plot;
  }

  /** The outdoor air between its usual coolest and warmest hour. */
  private void band(XYPlot plot) {
    YIntervalSeries series = new YIntervalSeries("Outdoors");
    for (int month = 1; month <= YearFigures.MONTHS; month++) {
      double low = Shown.degrees(YearFigures.meanLow(figures::outdoor, month), units);
      double high = Shown.degrees(YearFigures.meanHigh(figures::outdoor, month), units);
      series.add(month - 1, (low + high) / 2, low, high);
    }
    YIntervalSeriesCollection dataset = new YIntervalSeriesCollection();
    dataset.addSeries(series);
    Color colour = ClimateChart.mixed(look.paper(), look.outdoor(), PALE);
    DeviationRenderer bands = new DeviationRenderer(false, false);
    bands.setSeriesFillPaint(0, colour);
    bands.setAlpha(1);
    ClimateChart.add(plot, dataset, bands);
    swatch("Outdoors", colour);
  }

  /** Two lines, along the usual coolest and the usual warmest hour. */
  private void edges(
      XYPlot plot, String name, Color colour, boolean dashed, IntToDoubleFunction ofHour) {
    BasicStroke stroke =
        (BasicStroke) (dashed ? ChartStyle.dashed(LINE, DASH) : ChartStyle.line(LINE));
    XYSeries low = new XYSeries(name + ", coolest hour");
    XYSeries high = new XYSeries(name + ", warmest hour");
    for (int month = 1; month <= YearFigures.MONTHS; month++) {
      low.add(month - 1, Shown.degrees(YearFigures.meanLow(ofHour, month), units));
      high.add(month - 1, Shown.degrees(YearFigures.meanHigh(ofHour, month), units));
    }
    XYSeriesCollection both = new XYSeriesCollection(low);
    both.addSeries(high);
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
    for (int series = 0; series < both.getSeriesCount(); series++) {
      lines.setSeriesPaint(series, colour);
      lines.setSeriesStroke(series, stroke);
    }
    lines.setDrawSeriesLineAsPath(true);
    ClimateChart.add(plot, both, lines);
    legend.add(
        new LegendItem(
            name, null, null, null, new Line2D.Double(-MARK, 0, MARK, 0), stroke, colour));
  }

  private XYPlot energy() {
    XYPlot plot = ClimateChart.panel("A month, kWh", look);
    if (figures.isCooledBy(YearAnswer.Plant.UNIT)) {
      drawn(plot);
    }
    CategoryTableXYDataset heat = new CategoryTableXYDataset();
    for (int month = 1; month <= YearFigures.MONTHS; month++) {
      heat.add(month - 1.0, figures.total(Figure.HEATING, month), "Heat put in");
      heat.add(month - 1.0, figures.total(Figure.COOLING, month), "Heat taken out");
    }
    StackedXYBarRenderer bars = new StackedXYBarRenderer(MARGIN);
    bars.setBarPainter(new StandardXYBarPainter());
    bars.setShadowVisible(false);
    bars.setSeriesPaint(0, look.heat());
    bars.setSeriesPaint(1, look.indoor());
    ClimateChart.add(plot, heat, bars);
    swatch("Heat put in", look.heat());
    swatch("Heat taken out", look.indoor());
    return plot;
  }

  /** What the unit draws, marked over the bars. */
  private void drawn(XYPlot plot) {
    XYSeries series = new XYSeries("Unit draws");
    for (int month = 1; month <= YearFigures.MONTHS; month++) {
      series.add(month - 1, figures.total(Figure.POWER, month));
    }
    Shape dot = new Ellipse2D.Double(-MARK, -MARK, 2 * MARK, 2 * MARK);
    XYLineAndShapeRenderer marks = new XYLineAndShapeRenderer(false, true);
    marks.setSeriesShape(0, dot);
    marks.setSeriesPaint(0, look.outdoor());
    marks.setUseOutlinePaint(true);
    marks.setSeriesOutlinePaint(0, look.ink());
    ClimateChart.add(plot, new XYSeriesCollection(series), marks);
    legend.add(new LegendItem("Unit draws", null, null, null, dot, look.outdoor()));
  }

  private void swatch(String name, Color colour) {
    Shape square = new Rectangle2D.Double(-SWATCH / 2, -SWATCH / 2, SWATCH, SWATCH);
    legend.add(new LegendItem(name, null, null, null, square, colour));
  }
}
