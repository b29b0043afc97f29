package org.shopclime.form;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jfree.chart.ChartPanel;
import org.shopclime.plan.HabitAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.HabitChart;
import org.shopclime.report.HabitText;
import org.shopclime.shop.Shop;

/**
 * Leaving the unit on or switching it on: a week under each habit, and what the year comes to.
 * Years are run only while the page is looked at.
 */
final class HabitView {

  private static final String NONE =
      "This is told of a shop with a unit that cools its room, in which somebody works.";

  private final Function<Shop, Optional<HabitAnswer>> source;
  private final WidthPanel panel =
      new WidthPanel(new MigLayout("insets 10, wrap 2, fillx, hidemode 3", "[][grow,fill]"));
  private final JScrollPane scroll = new JScrollPane(panel);
  private final JLabel label = new JLabel("Week");
  private final JComboBox<String> weeks = new JComboBox<>();
  private final ChartPanel chart =
      PicturesView.chart("chart.habits", "A week with the unit left on, set back, on demand");
  private final JTextArea caption = Look.wrapped("");
  private final JTextArea words = Look.wrapped("");
  private Optional<Shop> wanted = Optional.empty();
  private Optional<Shop> asked = Optional.empty();
  private Optional<HabitAnswer> answer = Optional.empty();
  private UnitSystem units = UnitSystem.INCH_POUND;
  private boolean filling;

  /**
   * The page.
   *
   * @param source answers of a shop; asked off the event thread
   */
  HabitView(Function<Shop, Optional<HabitAnswer>> source) {
    this.source = source;
    scroll.setBorder(BorderFactory.createEmptyBorder());
    label.setLabelFor(weeks);
    weeks.setName("habits.week");
    caption.setName("habits.caption");
    words.setName("habits.words");
    panel.setName("habits");
    panel.add(label);
    panel.add(weeks, "wmin 60");
    panel.add(chart, "span 2, growx, hmin 460, wmin 0");
    panel.add(caption, "span 2, growx, wmin 60");
    panel.add(words, "span 2, growx, wmin 60, gaptop 8");
    weeks.addActionListener(
        event -> {
          if (!filling) {
            draw();
          }
        });
    // Wrapped text is as high as its last width made it.
    Look.onResized(panel, () -> panel.revalidate());
    scroll.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentShown(ComponentEvent event) {
            ask();
          }
        });
    draw();
  }

  JComponent component() {
    return scroll;
  }

  /** Another shop is answered; its years are run when they are looked at. */
  void show(Shop shop, UnitSystem system) {
    units = system;
    wanted = Optional.of(shop);
    draw();
    if (scroll.isShowing()) {
      ask();
    }
  }

  private void ask() {
    if (wanted.isEmpty() || wanted.equals(asked)) {
      return;
    }
    Shop shop = wanted.get();
    asked = wanted;
    caption.setText("Running the year by each habit.");
    Background.run(
        () -> source.apply(shop),
        found -> {
          if (asked.equals(Optional.of(shop))) {
            answer = found;
            draw();
          }
        },
        why -> {
          if (asked.equals(Optional.of(shop))) {
            answer = Optional.empty();
            draw();
            caption.setText("The year could not be run: " + why);
          }
        });
  }

  private void draw() {
    filling = true;
    int chosen = Math.max(0, weeks.getSelectedIndex());
    weeks.removeAllItems();
    List<Integer> first = new ArrayList<>();
    answer.ifPresent(
        known -> {
          first.add(known.hotWeek());
          weeks.addItem("The hottest week");
          known
              .springWeek()
              .ifPresent(
                  from -> {
                    first.add(from);
                    weeks.addItem("The damp week of spring");
                  });
        });
    boolean known = !first.isEmpty();
    label.setVisible(known);
    weeks.setVisible(known);
    chart.setVisible(known);
    if (known) {
      int index = Math.min(chosen, first.size() - 1);
      weeks.setSelectedIndex(index);
      HabitText text = new HabitText(answer.orElseThrow(), units);
      chart.setChart(HabitChart.of(answer.orElseThrow(), first.get(index), units, Look.charts()));
      caption.setText(text.caption(first.get(index)));
      words.setText(String.join("\n\n", text.lines()));
    } else {
      chart.setChart(null);
      caption.setText(NONE);
      words.setText("");
    }
    filling = false;
    panel.revalidate();
    panel.repaint();
  }

  void makeStale(boolean stale) {
    caption.setEnabled(!stale);
    words.setEnabled(!stale);
  }
}
