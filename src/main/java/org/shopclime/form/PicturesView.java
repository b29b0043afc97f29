package org.shopclime.form;

import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.Figure;
import org.shopclime.report.ScenarioTable;

/** The pictures of the answer and, behind further tabs, its tables and figures. */
final class PicturesView {

  /** Least height of both pictures together, pixels at 100 %. */
  private static final int LEAST = 500;

  private final JTabbedPane tabs = new JTabbedPane();
  private final ChartPanel load =
      chart("chart.load", "Where the heat comes from at the worst hour");
  private final ChartPanel day = chart("chart.day", "The hot day, hour by hour");
  private final TableView changes =
      new TableView(
          "table.changes",
          "What one change at a time would do. Hottest: the warmest working hour. Heat: what must"
              + " be taken out at the worst hour. Size: the smallest unit that holds.");
  private final ChartPanel matrix =
      chart("chart.scenarios", "Which size holds at which work and on which day");
  private final TableView scenarios =
      new TableView(
          "table.scenarios",
          "The same shop at other work, with a dusty coil, on other days. " + ScenarioTable.NOTE);
  private final TableView heat =
      new TableView(
          "table.heat",
          "What must be taken out to hold the wished temperature, at the hour when it is most."
              + " Moisture counts as heat: it must be wrung out of the air. Lets through: the"
              + " U-factor, heat for each area and degree.");
  private final DampView damp = new DampView();
  private final AirView air = new AirView();
  private final FiguresView figures = new FiguresView();

  PicturesView() {
    JSplitPane charts = new JSplitPane(JSplitPane.VERTICAL_SPLIT, load, day);
    charts.setName("charts");
    charts.setResizeWeight(0.45);
    charts.setDividerLocation(Look.scaled(LEAST * 45 / 100));
    charts.setBorder(BorderFactory.createEmptyBorder());
    charts.setContinuousLayout(true);
    tabs.setName("answer.tabs");
    tabs.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
    WidthPanel tall = new WidthPanel(new MigLayout("insets 0, fill"), LEAST);
    tall.add(charts, "grow, hmin " + LEAST);
    JScrollPane scroll = new JScrollPane(tall);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    add("Pictures", scroll, '1');
    add("What would change it", changes.component(), '2');
    add("Other work, other days", others(), '3');
    add("Heat, part by part", heat.component(), '4');
    add("Damp in the walls", damp.component(), '5');
    add("All figures", figures.component(), '6');
    add("Air and oven", air.component(), '7');
  }

  private JComponent others() {
    JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, matrix, scenarios.component());
    split.setName("scenarios");
    split.setResizeWeight(0.5);
    split.setDividerLocation(Look.scaled(LEAST / 2));
    split.setBorder(BorderFactory.createEmptyBorder());
    split.setContinuousLayout(true);
    return split;
  }

  private void add(String title, JComponent component, char key) {
    tabs.addTab(title, null, component, title + " (Alt+" + key + ")");
    tabs.setMnemonicAt(tabs.getTabCount() - 1, key);
  }

  /** A panel for a chart; its letters grow with all others. */
  static ChartPanel chart(String name, String meaning) {
    ChartPanel panel = new ChartPanel(null, true);
    panel.setName(name);
    panel.getAccessibleContext().setAccessibleName(meaning);
    panel.setMinimumDrawWidth(0);
    panel.setMinimumDrawHeight(0);
    panel.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            // drawn for 100 % and enlarged, so that its letters grow with all others
            double scale = Look.scaled(1000) / 1000.0;
            panel.setMaximumDrawWidth((int) Math.ceil(panel.getWidth() / scale));
            panel.setMaximumDrawHeight((int) Math.ceil(panel.getHeight() / scale));
            panel.setRefreshBuffer(true);
            panel.repaint();
          }
        });
    panel.setMinimumSize(new Dimension(0, 0));
    panel.setPreferredSize(new Dimension(Look.scaled(460), Look.scaled(230)));
    panel.setPopupMenu(null);
    panel.setMouseZoomable(false);
    panel.setFocusable(false);
    return panel;
  }

  JComponent component() {
    return tabs;
  }

  void show(JFreeChart loadChart, JFreeChart dayChart, TableText.Table parts) {
    load.setChart(loadChart);
    day.setChart(dayChart);
    heat.show(parts);
  }

  void show(
      TableText.Table whatIf,
      JFreeChart sizes,
      TableText.Table others,
      List<Figure> all,
      List<String> facts) {
    changes.show(whatIf);
    matrix.setChart(sizes);
    scenarios.show(others);
    figures.show(all, facts);
  }

  void showDamp(SizeAnswer answer, UnitSystem units) {
    damp.show(answer, units);
    air.show(answer, units);
  }

  void makeStale(boolean quick, boolean whole) {
    damp.makeStale(whole);
    air.makeStale(whole);
    heat.makeStale(quick);
    changes.makeStale(whole);
    scenarios.makeStale(whole);
    figures.makeStale(whole);
  }
}
