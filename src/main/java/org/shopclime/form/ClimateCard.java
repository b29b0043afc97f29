package org.shopclime.form;

import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jfree.chart.ChartPanel;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.TypicalYear;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.ClimateChart;
import org.shopclime.report.ClimateFacts;
import org.shopclime.report.Figure;

/** What weather a station has: the days that decide, and its year as a chart. */
final class ClimateCard {

  /** Least height of the whole card before it is scrolled, pixels at 100 %. */
  private static final int LEAST = 540;

  private static final int WIDTH = 520;

  private static final String CARD = "card";
  private static final String NONE = "none";

  private final UnitSystem units;
  private final CardLayout sides = new CardLayout();
  private final JPanel panel = new JPanel(sides);
  private final WidthPanel content =
      new WidthPanel(
          new MigLayout("insets 10 12 8 12, wrap 1, fill, gap 0 2", "[grow,fill]"), LEAST);
  private final JTextArea title = text("picker.card.title");
  private final JTextArea where = text("picker.card.where");
  private final JPanel figures =
      new JPanel(
          new MigLayout("insets 0, wrap 2, fillx, gap 10 3", "[0:38%:,fill][0:62%:,grow,fill]"));
  private final Map<String, JTextArea> values = new HashMap<>();
  private final JTextArea year = text("picker.card.year");
  private final JTextArea caution = text("picker.card.caution");
  private final ChartPanel chart = PicturesView.chart("picker.card.chart", "The year by months");

  private final JScrollPane scroll = new JScrollPane(content);
  private final JTextArea none = text("picker.card.none");

  /**
   * What is shown.
   *
   * @param climate days that decide
   * @param year typical year, where there is one
   */
  record Content(StationClimate climate, Optional<TypicalYear> year) {}

  ClimateCard(UnitSystem units) {
    this.units = units;
    Look.letters(title, 1.25, Font.BOLD);
    Look.letters(where, 1, "Shopclime.quiet");
    Look.letters(caution, 1, "Shopclime.quiet");
    caution.setText(ClimateFacts.caution());
    content.setBackground(Look.colour("Shopclime.paper"));
    figures.setOpaque(false);
    content.add(title, "wmin 60");
    content.add(where, "wmin 60, gapbottom 6");
    content.add(figures, "wmin 60");
    content.add(chart, "grow, push, wmin 60, hmin 230, gaptop 6");
    content.add(year, "wmin 60, gaptop 4");
    content.add(caution, "wmin 60, gaptop 4");
    scroll.setBorder(Look.line());
    scroll.setName("picker.card");
    Look.letters(none, 1, "Shopclime.quiet");
    none.setBorder(BorderFactory.createEmptyBorder(16, 16, 16, 16));
    JPanel empty = new JPanel(new MigLayout("insets 0, fill", "[grow,fill]", "[top]"));
    empty.setBorder(Look.line());
    empty.add(none, "wmin 60");
    Look.onResized(scroll.getViewport(), () -> fit());
    panel.setPreferredSize(new Dimension(Look.scaled(WIDTH), Look.scaled(LEAST)));
    panel.add(scroll, CARD);
    panel.add(empty, NONE);
    clear();
  }

  private static JTextArea text(String name) {
    JTextArea text = Look.wrapped("");
    text.setName(name);
    return text;
  }

  JComponent component() {
    return panel;
  }

  /** No station is chosen. */
  void clear() {
    fail("No station is chosen. Its weather will be shown here.");
  }

  /** Says why there is nothing to show. */
  void fail(String why) {
    none.setText(why);
    sides.show(panel, NONE);
  }

  void show(Content known) {
    sides.show(panel, CARD);
    StationClimate climate = known.climate();
    title.setText(ClimateFacts.name(climate.station()));
    where.setText(ClimateFacts.where(climate.station(), units));
    ClimateFacts.of(climate, units).forEach(this::show);
    chart.setChart(ClimateChart.of(climate, known.year(), units, Look.charts()));
    String words = ClimateFacts.year(climate, known.year(), units);
    year.setText(words);
    chart.getAccessibleContext().setAccessibleDescription(words);
    fit();
  }

  private void show(Figure figure) {
    values
        .computeIfAbsent(
            figure.key(),
            key -> {
              JTextArea label = text("picker." + key + ".label");
              label.setText(figure.label());
              Look.letters(label, 1, "Shopclime.quiet");
              JTextArea value = text("picker." + key);
              figures.add(label, "wmin 60, aligny top");
              figures.add(value, "wmin 60, aligny top");
              return value;
            })
        .setText(figure.value());
  }

  /** Lays out twice: the height of wrapped text is known only once it has its width. */
  private void fit() {
    for (int i = 0; i < 2; i++) {
      PartEditor.forgetSizes(content);
      scroll.validate();
    }
    scroll.revalidate();
    scroll.repaint();
  }
}
