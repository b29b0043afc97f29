package org.shopclime.report;

import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.shopclime.airline.AirCompressor;
import org.shopclime.airline.AirlineAnswer;
import org.shopclime.airline.Placement;
import org.shopclime.airline.VentPoint;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

/** How hot a corner closet gets against the free area of its two grilles. */
public final class VentChart {

  private static final float BOLD = 2.4f;
  private static final float PLAIN = 1.6f;
  private static final double DOT = 7;
  private static final double SQUARE_CENTIMETRES = 1e4;
  private static final double MARGIN = 1.04;

  private VentChart() {}

  /**
   * The chart.
   *
   * @param answer the answer
   * @param units system of units to show
   * @param look colours
   * @return chart with the curve, the most the machine takes, and the closet when shut
   */
  public static JFreeChart of(AirlineAnswer answer, UnitSystem units, ChartLook look) {
    NumberAxis area = new NumberAxis("Free area of each of two grilles, " + areaUnit(units));
    ChartStyle.axis(area, look);
    NumberAxis degrees =
        new NumberAxis("Hottest working hour in the closet, " + Shown.temperatureUnit(units));
    ChartStyle.axis(degrees, look);
    degrees.setAutoRangeIncludesZero(false);
    degrees.setNumberFormatOverride(ChartStyle.whole());
    XYSeriesCollection data = new XYSeriesCollection();
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
    double most =
        MARGIN
            * answer.ventCurve().stream()
                .mapToDouble(point -> inUnit(point.area(), units))
                .max()
                .orElse(1);
    XYSeries curve = new XYSeries("Closet with two grilles to the room");
    for (VentPoint point : answer.ventCurve()) {
      curve.add(inUnit(point.area(), units), Shown.degrees(point.celsius(), units));
    }
    add(data, lines, curve, look.indoor(), ChartStyle.line(BOLD));
    lines.setSeriesShapesVisible(0, true);
    lines.setSeriesShape(0, new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT));
    answer.places().stream()
        .filter(place -> place.placement().kind() == Placement.Kind.CLOSED_CLOSET)
        .findFirst()
        .ifPresent(
            shut ->
                add(
                    data,
                    lines,
                    level(
                        "Closet shut, " + Shown.temperature(shut.placePeak(), units),
                        shut.placePeak(),
                        most,
                        units),
                    look.heat(),
                    ChartStyle.dashed(PLAIN, 8)));
    add(
        data,
        lines,
        level(
            "Most the machine takes, " + Shown.temperature(AirCompressor.MOST_AMBIENT, units),
            AirCompressor.MOST_AMBIENT,
            most,
            units),
        look.ink(),
        ChartStyle.dashed(PLAIN, 3));
    area.setRange(0, most);
    XYPlot plot = new XYPlot(data, area, degrees, lines);
    ChartStyle.plot(plot, look);
    plot.setDomainGridlinePaint(look.grid());
    plot.setRangeGridlinePaint(look.grid());
    plot.setDomainGridlineStroke(ChartStyle.grid());
    plot.setRangeGridlineStroke(ChartStyle.grid());
    return ChartStyle.chart(plot, look);
  }

  private static XYSeries level(String name, double celsius, double most, UnitSystem units) {
    XYSeries series = new XYSeries(name);
    series.add(0, Shown.degrees(celsius, units));
    series.add(most, Shown.degrees(celsius, units));
    return series;
  }

  private static void add(
      XYSeriesCollection data,
      XYLineAndShapeRenderer lines,
      XYSeries series,
      Color colour,
      Stroke stroke) {
    data.addSeries(series);
    int index = data.getSeriesCount() - 1;
    lines.setSeriesPaint(index, colour);
    lines.setSeriesStroke(index, stroke);
  }

  /** An area as text. */
  static String area(double squareMetres, UnitSystem units) {
    double figure = inUnit(squareMetres, units);
    return (units == UnitSystem.SI
            ? Shown.grouped(10 * Math.round(figure / 10))
            : String.format(Locale.ROOT, figure < 1 ? "%.2f" : "%.1f", figure))
        + " "
        + areaUnit(units);
  }

  private static double inUnit(double squareMetres, UnitSystem units) {
    return units == UnitSystem.SI
        ? squareMetres * SQUARE_CENTIMETRES
        : Units.squareFeet(squareMetres);
  }

  private static String areaUnit(UnitSystem units) {
    return units == UnitSystem.SI ? "cm²" : "ft²";
  }
}
