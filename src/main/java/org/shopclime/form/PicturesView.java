package org.shopclime.form;

import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.Figure;
import org.shopclime.report.ScenarioTable;
import org.shopclime.shop.Shop;

/** The pictures of the answer and, behind further tabs, its tables and figures. */
final class PicturesView {

  /** Least height of both pictures together, pixels at 100 %. */
  private static final int LEAST = 500;

  private final JTabbedPane tabs = new PageTabs();
  private final ChartPanel load =
      chart("chart.load", "Where the heat comes from at the worst hour");
  private final ChartPanel day = chart("chart.day", "The hot day, hour by hour");
  private final TableView changes =
      new TableView(
          "table.changes",
          "What one change at a time would do, the best first. Heat: what is to be taken out at the"
              + " worst hour, moisture included. Inside: the warmest working hour. Would hold: the"
              + " smallest usual size that does. Changes do not simply add up.");
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
  private final UnitView unit = new UnitView();
  private final CompressorView compressor = new CompressorView();
  private final DampView damp = new DampView();
  private final HabitView habits;
  private final AirView air = new AirView();
  private final FiguresView figures = new FiguresView();

  PicturesView(Function<Shop, Optional<HabitAnswer>> habitsOf) {
    habits = new HabitView(habitsOf);
    JSplitPane charts = new JSplitPane(JSplitPane.VERTICAL_SPLIT, load, day);
    charts.setName("charts");
    charts.setResizeWeight(0.45);
    charts.setDividerLocation(Look.scaled(LEAST * 45 / 100));
    charts.setBorder(BorderFactory.createEmptyBorder());
    charts.setContinuousLayout(true);
    tabs.setName("answer.tabs");
    tabs.getAccessibleContext().setAccessibleName("Pages of the answer");
    WidthPanel tall = new WidthPanel(new MigLayout("insets 0, fill"), LEAST);
    tall.add(charts, "grow, hmin " + LEAST);
    JScrollPane scroll = new JScrollPane(tall);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scrollByKeys();
    add("Pictures", "Where the heat comes from, and the hot day", scroll);
    add("Unit", "The unit in the heat and on other days", unit.component());
    add(
        "Compressor",
        "Where the compressor stays cool and the air line dry",
        compressor.component());
    add("Changes", "What would change it", changes.component());
    add("Other days", "Other work, other days", others());
    add("Heat by part", "Heat, part by part", heat.component());
    add("Damp", "Damp in the walls", damp.component());
    add("Air and oven", "The air of the shop, and its oven", air.component());
    add("Habits", "Leaving it on, or switching it on", habits.component());
    add("Figures", "All figures", figures.component());
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

  /** A page that takes no focus itself is scrolled from its tab. */
  private void scrollByKeys() {
    for (int way : new int[] {-1, 1}) {
      String deed = way < 0 ? "pageBack" : "pageOn";
      tabs.getInputMap(JComponent.WHEN_FOCUSED)
          .put(KeyStroke.getKeyStroke(way < 0 ? "PAGE_UP" : "PAGE_DOWN"), deed);
      tabs.getActionMap()
          .put(
              deed,
              new AbstractAction() {
                private static final long serialVersionUID = 1L;

                @Override
                public void actionPerformed(ActionEvent event) {
                  if (tabs.getSelectedComponent() instanceof JScrollPane page) {
                    JScrollBar bar = page.getVerticalScrollBar();
                    bar.setValue(bar.getValue() + way * bar.getBlockIncrement(way));
                  }
                }
              });
    }
  }

  /** Adds a tab of a short title; the menu of pages leads to it by the key that is told here. */
  private void add(String title, String meaning, JComponent component) {
    char key = ShopMenu.pageKey(tabs.getTabCount());
    tabs.addTab(title, null, component, meaning + " (Alt+" + key + ")");
  }

  /** Titles of the pages, in their order. */
  List<String> titles() {
    return IntStream.range(0, tabs.getTabCount()).mapToObj(tabs::getTitleAt).toList();
  }

  /** Shows a page, and the keyboard goes to it. */
  void open(int page) {
    tabs.setSelectedIndex(page);
    tabs.requestFocusInWindow();
  }

  /** The keyboard goes to the page that is shown. */
  void focus() {
    tabs.requestFocusInWindow();
  }

  /** A panel for a chart; its letters grow with all others. */
  static ChartPanel chart(String name, String meaning) {
    ChartPanel panel = new ChartPanel(null, true);
    panel.setName(name);
    panel.getAccessibleContext().setAccessibleName(meaning);
    panel.setMinimumDrawWidth(0);
    panel.setMinimumDrawHeight(0);
    Look.onResized(
        panel,
        () -> { // drawn for 100 % and enlarged, so that its letters grow with all others
          double scale = Look.scaled(1000) / 1000.0;
          panel.setMaximumDrawWidth((int) Math.ceil(panel.getWidth() / scale));
          panel.setMaximumDrawHeight((int) Math.ceil(panel.getHeight() / scale));
          panel.setRefreshBuffer(true);
          panel.repaint();
        });
    panel.setMinimumSize(new Dimension(0, 0));
    panel.setPreferredSize(new Dimension(Look.scaled(460), Look.scaled(230)));
    panel.setPopupMenu(PictureMenu.of(panel));
    panel.setMouseZoomable(false);
    panel.setFocusable(false);
    return panel;
  }

  JComponent component() {
    return tabs;
  }

  CompressorView compressor() {
    return compressor;
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

  void showWhole(SizeAnswer answer, UnitSystem units) {
    unit.show(answer, units);
    damp.show(answer, units);
    air.show(answer, units);
  }

  void showHabits(SizeAnswer answer, UnitSystem units) {
    habits.show(answer.shop(), units);
  }

  void makeStale(boolean quick, boolean whole) {
    unit.makeStale(whole);
    habits.makeStale(whole);
    damp.makeStale(whole);
    air.makeStale(whole);
    heat.makeStale(quick);
    changes.makeStale(whole);
    scenarios.makeStale(whole);
    figures.makeStale(whole);
  }
}
