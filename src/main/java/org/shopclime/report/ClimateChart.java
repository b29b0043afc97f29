package org.shopclime.report;

import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYBarDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.shopclime.climate.DayType;
import org.shopclime.climate.HotPoint;
import org.shopclime.climate.Level;
import org.shopclime.climate.Months;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.TypicalYear;
import org.shopclime.quantity.UnitSystem;

/**
 * A station's year by months: how warm its days are, and how moist; below them its sun. Where the
 * typical year is not known, the mean temperature alone.
 */
public final class ClimateChart {

  private static final float PLAIN = 1.8f;
  private static final float DASH = 5;
  private static final float PALE = 0.28f;
  private static final float DENSE = 0.6f;
  private static final double MARK = 5;
  private static final double SWATCH = 9;
  private static final double BAR = 0.6;

  private final StationClimate climate;
  private final UnitSystem units;
  private final ChartLook look;
  private final LegendItemCollection legend = new LegendItemCollection();

  private ClimateChart(StationClimate climate, UnitSystem units, ChartLook look) {
    this.climate = climate;
    this.units = units;
    this.look = look;
  }

  /**
   * The chart.
   *
   * @param climate what is known of the station
   * @param year its typical year, where there is one
   * @param units system of units to show
   * @param look colours
   * @return chart of two panels over one axis of months, or of one where there is no typical year
   */
  public static JFreeChart of(
      StationClimate climate, Optional<TypicalYear> year, UnitSystem units, ChartLook look) {
    ClimateChart chart = new ClimateChart(climate, units, look);
    CombinedDomainXYPlot both = new CombinedDomainXYPlot(months(look));
    both.setGap(10);
    both.add(chart.temperatures(year), 5);
    year.ifPresent(known -> both.add(chart.sun(known), 3));
    both.setFixedLegendItems(chart.legend);
    ChartStyle.plot(both, look);
    return ChartStyle.chart(both, look);
  }

  /** An axis of twelve months, January at 0. */
  static SymbolAxis months(ChartLook look) {
    String[] names =
        IntStream.rangeClosed(1, Months.COUNT)
            .mapToObj(month -> Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
            .toArray(String[]::new);
    SymbolAxis axis = new SymbolAxis(null, names);
    ChartStyle.axis(axis, look);
    axis.setGridBandsVisible(false);
    return axis;
  }

  private XYPlot temperatures(Optional<TypicalYear> year) {
    XYPlot plot = panel("Temperature, " + Shown.temperatureUnit(units), look);
    ((NumberAxis) plot.getRangeAxis()).setAutoRangeIncludesZero(false);
    mark(plot);
    if (year.isPresent()) {
      TypicalYear known = year.get();
      line(
          plot,
          "Dew point",
          look.moisture(),
          ChartStyle.dashed(PLAIN, DASH),
          month -> known.mean(month, DayType::dewPoint));
      band(
          plot,
          "Usual day",
          DENSE,
          month -> known.mean(month, DayType::low),
          month -> known.mean(month, DayType::high));
      band(
          plot,
          "Coldest to hottest days",
          PALE,
          month -> extreme(known, month, DayType::low, false),
          month -> extreme(known, month, DayType::high, true));
    } else {
      line(
          plot,
          "Mean temperature",
          look.outdoor(),
          ChartStyle.line(PLAIN),
          month -> climate.monthDryBulb().at(month));
    }
    return plot;
  }

  /** The coldest fifth's or the hottest fifth's figure. */
  private static double extreme(
      TypicalYear year, int month, ToDoubleFunction<DayType> figure, boolean highest) {
    var figures = year.month(month).stream().mapToDouble(figure);
    return (highest ? figures.max() : figures.min()).orElseThrow();
  }

  private XYPlot sun(TypicalYear year) {
    XYPlot plot = panel("Sun, " + ClimateFacts.sunUnit(units), look);
    XYSeries series = new XYSeries("Sun of a day");
    for (int month = 1; month <= Months.COUNT; month++) {
      series.add(month - 1, ClimateFacts.sun(year.mean(month, DayType::global), units));
    }
    XYBarRenderer bars = new XYBarRenderer();
    bars.setBarPainter(new StandardXYBarPainter());
    bars.setShadowVisible(false);
    bars.setSeriesPaint(0, look.heat());
    plot.setDataset(new XYBarDataset(new XYSeriesCollection(series), BAR));
    plot.setRenderer(bars);
    swatch(series.getKey().toString(), look.heat());
    return plot;
  }

  /** An empty panel to lie above an axis of months. */
  static XYPlot panel(String label, ChartLook look) {
    NumberAxis axis = new NumberAxis(label);
    ChartStyle.axis(axis, look);
    axis.setNumberFormatOverride(ChartStyle.whole());
    XYPlot plot = new XYPlot(null, null, axis, null);
    plot.setDomainGridlinePaint(look.grid());
    plot.setRangeGridlinePaint(look.grid());
    plot.setDomainGridlineStroke(ChartStyle.grid());
    plot.setRangeGridlineStroke(ChartStyle.grid());
    ChartStyle.plot(plot, look);
    return plot;
  }

  /** The hot day stands in its month. Added first, it lies over all else. */
  private void mark(XYPlot plot) {
    HotPoint hot = climate.at(Level.P1);
    XYSeries series = new XYSeries("Hot day");
    series.add(hot.month() - 1, Shown.degrees(hot.dryBulb(), units));
    XYLineAndShapeRenderer marks = new XYLineAndShapeRenderer(false, true);
    marks.setSeriesShape(0, diamond());
    marks.setSeriesPaint(0, look.ink());
    add(plot, new XYSeriesCollection(series), marks);
    legend.add(new LegendItem(series.getKey().toString(), null, null, null, diamond(), look.ink()));
  }

  private static Shape diamond() {
    Path2D.Double path = new Path2D.Double();
    path.moveTo(0, -MARK);
    path.lineTo(MARK, 0);
    path.lineTo(0, MARK);
    path.lineTo(-MARK, 0);
    path.closePath();
    return path;
  }

  private void line(
      XYPlot plot, String name, Color colour, Stroke stroke, IntToDoubleFunction celsius) {
    XYSeries series = new XYSeries(name);
    for (int month = 1; month <= Months.COUNT; month++) {
      series.add(month - 1, Shown.degrees(celsius.applyAsDouble(month), units));
    }
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, true);
    lines.setSeriesPaint(0, colour);
    lines.setSeriesStroke(0, stroke);
    lines.setSeriesShape(0, new Ellipse2D.Double(-2, -2, 4, 4));
    lines.setDrawSeriesLineAsPath(true);
    add(plot, new XYSeriesCollection(series), lines);
    legend.add(
        new LegendItem(
            name, null, null, null, new Line2D.Double(-MARK, 0, MARK, 0), stroke, colour));
  }

  private void band(
      XYPlot plot,
      String name,
      float strength,
      IntToDoubleFunction lowCelsius,
      IntToDoubleFunction highCelsius) {
    YIntervalSeries series = new YIntervalSeries(name);
    for (int month = 1; month <= Months.COUNT; month++) {
      double low = Shown.degrees(lowCelsius.applyAsDouble(month), units);
      double high = Shown.degrees(highCelsius.applyAsDouble(month), units);
      series.add(month - 1, (low + high) / 2, low, high);
    }
    YIntervalSeriesCollection dataset = new YIntervalSeriesCollection();
    dataset.addSeries(series);
    Color colour = mixed(look.paper(), look.outdoor(), strength);
    DeviationRenderer bands = new DeviationRenderer(false, false);
    bands.setSeriesFillPaint(0, colour);
    bands.setAlpha(1);
    add(plot, dataset, bands);
    swatch(name, colour);
  }

  /** Adds data below what is there. */
  static void add(XYPlot plot, org.jfree.data.xy.XYDataset dataset, XYItemRenderer renderer) {
    int index = plot.getDataset() == null ? 0 : plot.getDatasetCount();
    plot.setDataset(index, dataset);
    plot.setRenderer(index, renderer);
  }

  private void swatch(String name, Color colour) {
    Shape square = new Rectangle2D.Double(-SWATCH / 2, -SWATCH / 2, SWATCH, SWATCH);
    legend.add(new LegendItem(name, null, null, null, square, colour));
  }

  /** A colour without transparency, so that bands look alike on screen and on paper. */
  static Color mixed(Color paper, Color ink, float strength) {
    float[] from = paper.getRGBColorComponents(null);
    float[] to = ink.getRGBColorComponents(null);
    float[] mix = new float[from.length];
    for (int i = 0; i < mix.length; i++) {
      mix[i] = from[i] + (to[i] - from[i]) * strength;
    }
    return new Color(mix[0], mix[1], mix[2]);
  }
}
