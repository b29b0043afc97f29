package org.shopclime.report;

import java.awt.Color;
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
import org.shopclime.airline.LineChange;
import org.shopclime.quantity.UnitSystem;

/** Water of a day that drops out, and where, with the line as it is and with parts added to it. */
public final class LineWaterChart {

  private static final String MACHINE = "At the machine";
  private static final String DRYER = "In a dryer";
  private static final String LINE = "In pipe and hose";

  private LineWaterChart() {}

  /**
   * The chart.
   *
   * @param changes the line as it is first, then with one thing added each
   * @param units system of units to show
   * @param look colours
   * @return chart, a bar for each
   */
  public static JFreeChart of(List<LineChange> changes, UnitSystem units, ChartLook look) {
    StackedBarRenderer bars = new StackedBarRenderer();
    bars.setBarPainter(new StandardBarPainter());
    bars.setShadowVisible(false);
    bars.setMaximumBarWidth(0.2);
    List<Color> colours = List.of(look.indoor(), look.moisture(), look.heat());
    for (int i = 0; i < colours.size(); i++) {
      bars.setSeriesPaint(i, colours.get(i));
    }
    bars.setDrawBarOutline(true);
    bars.setDefaultOutlinePaint(look.paper());
    CategoryAxis names = new CategoryAxis();
    ChartStyle.axis(names, look);
    names.setTickLabelFont(look.font());
    names.setMaximumCategoryLabelWidthRatio(0.45f);
    names.setMaximumCategoryLabelLines(2);
    names.setCategoryMargin(0.25);
    names.setLowerMargin(0.01);
    names.setUpperMargin(0.01);
    NumberAxis water = new NumberAxis("Water of the day, " + AirTable.drainUnit(units));
    ChartStyle.axis(water, look);
    water.setNumberFormatOverride(ChartStyle.figures("0.#"));
    CategoryPlot plot = new CategoryPlot(dataset(changes, units), names, water, bars);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setRangeGridlinePaint(look.grid());
    plot.setRangeGridlineStroke(ChartStyle.grid());
    plot.setNoDataMessage("No air is used");
    ChartStyle.plot(plot, look);
    return ChartStyle.chart(plot, look);
  }

  /** Days of as many of the worst hours as there are hours of work. */
  private static DefaultCategoryDataset dataset(List<LineChange> changes, UnitSystem units) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    // A desiccant blows off what it takes out, so the hours are those of the line as it is.
    double hours =
        changes.stream()
            .findFirst()
            .map(
                first ->
                    first.litresToDrain()
                        / (first.tankWater() + first.lineWater() + first.dryerWater()))
            .filter(Double::isFinite)
            .orElse(0.0);
    for (LineChange change : changes) {
      double each = AirTable.drained(hours, units);
      String name = AirTable.change(change.kind(), units);
      data.addValue(each * change.tankWater(), MACHINE, name);
      data.addValue(each * change.dryerWater(), DRYER, name);
      data.addValue(each * change.lineWater(), LINE, name);
    }
    return data;
  }
}
