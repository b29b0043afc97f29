package org.shopclime.report;

import java.awt.Color;
import java.text.DecimalFormat;
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

  private static final String MACHINE = "At the machine, drained";
  private static final String DRYER = "In a dryer, drained";
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
    water.setNumberFormatOverride(new DecimalFormat("0.#"));
    CategoryPlot plot = new CategoryPlot(dataset(changes, units), names, water, bars);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setRangeGridlinePaint(look.grid());
    plot.setRangeGridlineStroke(ChartStyle.grid());
    plot.setNoDataMessage("No air is used");
    ChartStyle.plot(plot, look);
    return ChartStyle.chart(plot, look);
  }

  /** What is to be drained in a day, shared as in its worst hour. */
  private static DefaultCategoryDataset dataset(List<LineChange> changes, UnitSystem units) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (LineChange change : changes) {
      double hour = change.tankWater() + change.dryerWater() + change.lineWater();
      double day = AirTable.drained(change.litresToDrain(), units);
      double each = hour > 0 ? day / hour : 0;
      String name = AirTable.capital(AirlineWords.change(change.kind()));
      data.addValue(each * change.tankWater(), MACHINE, name);
      data.addValue(each * change.dryerWater(), DRYER, name);
      data.addValue(each * change.lineWater(), LINE, name);
    }
    return data;
  }
}
