package org.shopclime.report;

import java.awt.BasicStroke;
import java.awt.Stroke;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** Applies a look to one chart, never to all. */
final class ChartStyle {

  private static final float THIN = 0.75f;

  private ChartStyle() {}

  /** A chart of a plot with its legend below. */
  static JFreeChart chart(Plot plot, ChartLook look) {
    JFreeChart chart = new JFreeChart(null, look.font(), plot, false);
    chart.setBackgroundPaint(look.paper());
    chart.setPadding(new RectangleInsets(6, 6, 4, 10));
    LegendTitle legend = new LegendTitle(plot);
    legend.setPosition(RectangleEdge.BOTTOM);
    legend.setItemFont(look.font());
    legend.setItemPaint(look.ink());
    legend.setBackgroundPaint(look.paper());
    legend.setItemLabelPadding(new RectangleInsets(1, 3, 1, 12));
    chart.addLegend(legend);
    return chart;
  }

  static void plot(Plot plot, ChartLook look) {
    plot.setBackgroundPaint(look.paper());
    plot.setOutlineVisible(false);
    plot.setNoDataMessageFont(look.font());
    plot.setNoDataMessagePaint(look.ink());
  }

  /** Whole numbers in groups of three, those below nothing with a minus, in every country. */
  static NumberFormat whole() {
    return figures("#,##0");
  }

  /** Figures of a pattern, those below nothing with a minus, in every country. */
  static NumberFormat figures(String pattern) {
    DecimalFormatSymbols signs = DecimalFormatSymbols.getInstance(Locale.US);
    signs.setMinusSign('−');
    return new DecimalFormat(pattern, signs);
  }

  static void axis(Axis axis, ChartLook look) {
    axis.setLabelFont(look.font());
    axis.setLabelPaint(look.ink());
    axis.setTickLabelFont(look.smallFont());
    axis.setTickLabelPaint(look.ink());
    axis.setAxisLinePaint(look.grid());
    axis.setTickMarkPaint(look.grid());
  }

  static Stroke grid() {
    return new BasicStroke(THIN);
  }

  static Stroke line(float width) {
    return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  static Stroke dashed(float width, float dash) {
    return new BasicStroke(
        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash}, 0);
  }
}
