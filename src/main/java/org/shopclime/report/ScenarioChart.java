package org.shopclime.report;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.LookupPaintScale;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.data.xy.DefaultXYZDataset;
import org.shopclime.plan.Scenario;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.unit.StandardSizes;

/**
 * Which size holds when: a row for each case, a column for each usual size, filled where that size
 * holds; the shop's own size framed, with the warmest hour it leads to.
 */
public final class ScenarioChart {

  private static final double BLOCK = 0.92;
  private static final float FRAME = 2;

  /** Sizes told apart, W; labels of one size stray by a few BTU/h. */
  private static final double SAME = 3;

  private ScenarioChart() {}

  /**
   * The chart.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @param look colours
   * @return chart, first case on top
   */
  public static JFreeChart of(SizeAnswer answer, UnitSystem units, ChartLook look) {
    List<Double> sizes = sizes(answer);
    List<Scenario> rows = answer.scenarios();
    SymbolAxis across =
        new SymbolAxis(
            units == UnitSystem.SI ? "Rated size, kW" : "Rated size, thousand BTU/h",
            labels(sizes, units));
    ChartStyle.axis(across, look);
    across.setGridBandsVisible(false);
    SymbolAxis down =
        new SymbolAxis(
            null, rows.stream().map(row -> Shown.line(row.name())).toArray(String[]::new));
    ChartStyle.axis(down, look);
    down.setTickLabelFont(look.font());
    down.setInverted(true);
    down.setGridBandsVisible(false);
    XYBlockRenderer blocks = new XYBlockRenderer();
    blocks.setBlockWidth(BLOCK);
    blocks.setBlockHeight(BLOCK);
    LookupPaintScale paints = new LookupPaintScale(0, 2, look.grid());
    paints.add(0, look.grid());
    paints.add(0.5, look.indoor());
    blocks.setPaintScale(paints);
    XYPlot plot = new XYPlot(dataset(rows, sizes), across, down, blocks);
    plot.setRangeAxisLocation(AxisLocation.TOP_OR_LEFT);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    plot.setNoDataMessage("Nothing to show");
    ChartStyle.plot(plot, look);
    own(answer).ifPresent(size -> frame(plot, rows, column(sizes, size), units, look));
    plot.setFixedLegendItems(legend(answer, units, look));
    return ChartStyle.chart(plot, look);
  }

  private static Optional<Double> own(SizeAnswer answer) {
    return answer.unit().map(unit -> unit.rated()).filter(rated -> rated > 0);
  }

  /** The usual sizes, and the shop's own among them. */
  private static List<Double> sizes(SizeAnswer answer) {
    List<Double> sizes = new ArrayList<>(StandardSizes.watts());
    own(answer).filter(own -> column(sizes, own) < 0).ifPresent(sizes::add);
    sizes.sort(null);
    return sizes;
  }

  private static int column(List<Double> sizes, double size) {
    for (int i = 0; i < sizes.size(); i++) {
      if (Math.abs(sizes.get(i) - size) < SAME) {
        return i;
      }
    }
    return -1;
  }

  private static String[] labels(List<Double> sizes, UnitSystem units) {
    return sizes.stream()
        .map(
            size ->
                units == UnitSystem.INCH_POUND
                    ? thousands(Units.btuh(size))
                    : ChartStyle.figures("0.0#").format(Math.rint(size / 10) / 100))
        .toArray(String[]::new);
  }

  /** Short, so that each column has its name: "12", "11.5". */
  private static String thousands(double btuh) {
    return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.US))
        .format(Math.round(btuh) / 1000.0);
  }

  private static DefaultXYZDataset dataset(List<Scenario> rows, List<Double> sizes) {
    int count = rows.size() * sizes.size();
    double[][] cells = new double[3][count];
    int at = 0;
    for (int row = 0; row < rows.size(); row++) {
      double least = rows.get(row).recommended().orElse(Double.POSITIVE_INFINITY);
      for (int column = 0; column < sizes.size(); column++) {
        cells[0][at] = column;
        cells[1][at] = row;
        cells[2][at++] = sizes.get(column) > least - SAME ? 1 : 0;
      }
    }
    DefaultXYZDataset dataset = new DefaultXYZDataset();
    dataset.addSeries("sizes", cells);
    return dataset;
  }

  private static void frame(
      XYPlot plot, List<Scenario> rows, int column, UnitSystem units, ChartLook look) {
    double half = BLOCK / 2 + 0.03;
    // The lower corner first as it is seen: rows run down.
    plot.addAnnotation(
        new XYBoxAnnotation(
            column - half,
            rows.size() - 1 + half,
            column + half,
            -half,
            ChartStyle.line(FRAME),
            look.ink(),
            null));
    for (int row = 0; row < rows.size(); row++) {
      Scenario scenario = rows.get(row);
      XYTextAnnotation text =
          new XYTextAnnotation(
              Shown.temperature(scenario.indoorPeak(), units)
                  .replace(" " + Shown.temperatureUnit(units), ""),
              column,
              row);
      text.setFont(look.smallFont());
      text.setPaint(scenario.holds() ? look.paper() : look.ink());
      plot.addAnnotation(text);
    }
  }

  private static LegendItemCollection legend(SizeAnswer answer, UnitSystem units, ChartLook look) {
    LegendItemCollection legend = new LegendItemCollection();
    legend.add(new LegendItem("Holds the wished temperature", look.indoor()));
    legend.add(new LegendItem("Does not", look.grid()));
    if (own(answer).isPresent()) {
      legend.add(
          new LegendItem(
              "Framed: your unit, with its warmest working hour, " + Shown.temperatureUnit(units),
              look.ink()));
    }
    return legend;
  }
}
