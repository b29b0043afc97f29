package org.shopclime.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jfree.chart.ChartPanel;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampPath;
import org.shopclime.balance.DampSpell;
import org.shopclime.plan.DampWords;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.DampText;
import org.shopclime.report.WallChart;

/** Damp in the walls: a slice through the wall and time chosen, and what was found in all. */
final class DampView {

  private final WidthPanel panel =
      new WidthPanel(new MigLayout("insets 10, wrap 4, fillx", "[][grow,fill][][grow,fill]"));
  private final JScrollPane scroll = new JScrollPane(panel);
  private final JComboBox<String> walls = new JComboBox<>();
  private final JComboBox<String> times = new JComboBox<>();
  private final ChartPanel chart =
      PicturesView.chart("chart.wall", "Temperature and dew point through the wall");
  private final JTextArea caption = Look.wrapped("");
  private final JTextArea words = Look.wrapped("");
  private List<DampFinding> findings = List.of();
  private UnitSystem units = UnitSystem.INCH_POUND;
  private boolean filling;

  DampView() {
    scroll.setBorder(javax.swing.BorderFactory.createEmptyBorder());
    walls.setName("damp.wall");
    times.setName("damp.time");
    caption.setName("damp.caption");
    words.setName("damp.words");
    panel.setName("damp");
    panel.add(label("Wall", walls));
    panel.add(walls, "wmin 60");
    panel.add(label("When", times));
    panel.add(times, "wmin 60");
    panel.add(chart, "span 4, growx, hmin 360, wmin 0");
    panel.add(caption, "span 4, growx, wmin 60");
    panel.add(words, "span 4, growx, wmin 60, gaptop 8");
    // Wrapped text is as high as its last width made it.
    Look.onResized(panel, () -> panel.revalidate());
    walls.addActionListener(
        event -> {
          if (!filling) {
            fillTimes(OptionalInt.empty());
            draw();
          }
        });
    times.addActionListener(
        event -> {
          if (!filling) {
            draw();
          }
        });
  }

  private static JLabel label(String text, JComponent of) {
    JLabel label = new JLabel(text);
    label.setLabelFor(of);
    return label;
  }

  JComponent component() {
    return scroll;
  }

  /** Shows an answer; wall and time stay chosen if they are still there. */
  void show(SizeAnswer answer, UnitSystem system) {
    units = system;
    Object wall = walls.getSelectedItem();
    int time = times.getSelectedIndex();
    findings =
        answer
            .damp()
            .map(
                damp ->
                    damp.findings().stream()
                        .filter(each -> !each.path().spells().isEmpty())
                        .toList())
            .orElse(List.of());
    List<String> names = new ArrayList<>();
    findings.forEach(each -> names.add(name(each.path())));
    filling = true;
    walls.removeAllItems();
    names.forEach(walls::addItem);
    boolean same = wall != null && names.contains(wall);
    if (same) {
      walls.setSelectedItem(wall);
    } else if (!findings.isEmpty()) {
      walls.setSelectedIndex(first());
    }
    filling = false;
    fillTimes(same && time >= 0 ? OptionalInt.of(time) : OptionalInt.empty());
    words.setText(String.join("\n\n", DampText.lines(answer, units)));
    draw();
  }

  /** The wall that is shown first: one in which something was found. */
  private int first() {
    for (int i = 0; i < findings.size(); i++) {
      if (findings.get(i).kind() == DampFinding.Kind.CONDENSES) {
        return i;
      }
    }
    for (int i = 0; i < findings.size(); i++) {
      if (findings.get(i).worst().isPresent()) {
        return i;
      }
    }
    return 0;
  }

  private static String name(DampPath path) {
    String way = DampWords.way(path.way());
    return path.component().name() + (way.isEmpty() ? "" : ", " + way);
  }

  private Optional<DampFinding> chosen() {
    int index = walls.getSelectedIndex();
    return index < 0 ? Optional.empty() : Optional.of(findings.get(index));
  }

  /** Times of the wall chosen; without a wish its worst one. */
  private void fillTimes(OptionalInt wished) {
    filling = true;
    times.removeAllItems();
    chosen()
        .ifPresent(
            finding -> {
              List<DampSpell> spells = finding.path().spells();
              spells.forEach(each -> times.addItem(FormText.capital(WallChart.time(each))));
              int worst = finding.worst().map(spells::indexOf).orElse(Math.min(1, spells.size()));
              int index = wished.orElse(worst);
              times.setSelectedIndex(Math.min(index, spells.size() - 1));
            });
    filling = false;
  }

  private void draw() {
    Optional<DampFinding> finding = chosen();
    int time = times.getSelectedIndex();
    if (finding.isPresent() && time >= 0) {
      DampPath path = finding.get().path();
      DampSpell spell = path.spells().get(time);
      chart.setChart(WallChart.of(path, spell, units, Look.charts()));
      caption.setText(
          WallChart.caption(path, spell, units) + " " + DampWords.sentence(finding.get()));
    } else {
      chart.setChart(null);
      caption.setText("No wall of a held room was looked at.");
    }
    panel.revalidate();
    panel.repaint();
  }

  void makeStale(boolean stale) {
    caption.setEnabled(!stale);
    words.setEnabled(!stale);
  }
}
