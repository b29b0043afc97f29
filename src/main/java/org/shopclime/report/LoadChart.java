package org.shopclime.report;

import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.DefaultCategoryDataset;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.quantity.UnitSystem;

/** Where the heat comes from in the worst hour: one bar for each part, heat and moisture. */
public final class LoadChart {

  /** Most bars; with more parts the smallest share one. */
  static final int MOST = 12;

  private LoadChart() {}

  /**
   * The chart.
   *
   * @param core heart of the answer
   * @param units system of units to show
   * @param look colours
   * @return chart, greatest part on top; parts that take heat out go to the left of nothing
   */
  public static JFreeChart of(CoreAnswer core, UnitSystem units, ChartLook look) {
    return of(core, units, look, MOST);
  }

  /**
   * The chart with room for fewer bars.
   *
   * @param core heart of the answer
   * @param units system of units to show
   * @param look colours
   * @param most most bars to show, 2 or more; the smallest parts share one
   * @return chart
   */
  public static JFreeChart of(CoreAnswer core, UnitSystem units, ChartLook look, int most) {
    PeakLines peak = PeakLines.of(core.load());
    StackedBarRenderer bars = new StackedBarRenderer();
    bars.setBarPainter(new StandardBarPainter());
    bars.setShadowVisible(false);
    bars.setMaximumBarWidth(0.2);
    bars.setSeriesPaint(0, look.heat());
    bars.setSeriesPaint(1, look.moisture());
    CategoryAxis names = new CategoryAxis();
    ChartStyle.axis(names, look);
    names.setTickLabelFont(look.font());
    names.setMaximumCategoryLabelWidthRatio(0.45f);
    names.setCategoryMargin(0.25);
    names.setLowerMargin(0.01);
    names.setUpperMargin(0.01);
    NumberAxis heat = new NumberAxis("Heat to take out, " + Shown.heatUnit(units));
    heat.setNumberFormatOverride(ChartStyle.whole());
    ChartStyle.axis(heat, look);
    CategoryPlot plot = new CategoryPlot(dataset(peak, units, most), names, heat, bars);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setRangeGridlinePaint(look.grid());
    plot.setRangeGridlineStroke(ChartStyle.grid());
    plot.setRangeZeroBaselineVisible(true);
    plot.setRangeZeroBaselinePaint(look.ink());
    plot.setNoDataMessage("No room is cooled");
    ChartStyle.plot(plot, look);
    return ChartStyle.chart(plot, look);
  }

  private static DefaultCategoryDataset dataset(PeakLines peak, UnitSystem units, int most) {
    DefaultCategoryDataset dataset = new DefaultCategoryDataset();
    List<PeakLines.PeakLine> lines =
        peak.sorted().stream().filter(line -> line.total() != 0 || line.sensible() != 0).toList();
    // The smallest gains share a bar; what takes heat out is never hidden in a group.
    int gains = (int) lines.stream().filter(line -> line.total() > 0).count();
    int grouped = lines.size() > most ? Math.min(gains, lines.size() - most + 1) : 0;
    List<PeakLines.PeakLine> small = lines.subList(gains - grouped, gains);
    for (int i = 0; i < lines.size(); i++) {
      if (i < gains - grouped || i >= gains) {
        PeakLines.PeakLine line = lines.get(i);
        add(dataset, units, key(dataset, peak, line), line.sensible(), line.latent());
      } else if (i == gains - 1) {
        add(
            dataset,
            units,
            grouped + " smaller parts",
            small.stream().mapToDouble(PeakLines.PeakLine::sensible).sum(),
            small.stream().mapToDouble(PeakLines.PeakLine::latent).sum());
      }
    }
    return dataset;
  }

  private static void add(
      DefaultCategoryDataset dataset,
      UnitSystem units,
      String name,
      double sensible,
      double latent) {
    dataset.addValue(Shown.flow(sensible, units), "Heat", name);
    dataset.addValue(Shown.flow(latent, units), "Moisture", name);
  }

  /** A name of its own for each bar: two parts of one name would fall into one. */
  private static String key(
      DefaultCategoryDataset dataset, PeakLines peak, PeakLines.PeakLine line) {
    String name = Shown.line(line.name());
    String full = peak.severalRooms() ? Shown.line(line.room()) + ": " + name : name;
    String key = full;
    for (int again = 2; dataset.getColumnIndex(key) >= 0; again++) {
      key = full + " (" + again + ")";
    }
    return key;
  }
}
