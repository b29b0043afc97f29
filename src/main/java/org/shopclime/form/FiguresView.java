package org.shopclime.form;

import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.shopclime.report.Figure;

/** All figures of the answer, each with its meaning and unit, and the facts in sentences. */
final class FiguresView {

  /** Letters above which a value stands below its meaning. */
  private static final int LONG = 16;

  private final WidthPanel panel =
      new WidthPanel(new MigLayout("insets 10, wrap 2, fillx, gap 14 6", "[grow,fill][right]"));
  private final JScrollPane scroll = new JScrollPane(panel);
  private List<String> keys = List.of();

  FiguresView() {
    scroll.setBorder(BorderFactory.createEmptyBorder());
  }

  JComponent component() {
    return scroll;
  }

  void show(List<Figure> figures, List<String> facts) {
    List<String> now = figures.stream().map(Figure::key).toList();
    int at = 0;
    if (!now.equals(keys) || panel.getComponentCount() != 2 * now.size() + facts.size()) {
      keys = now;
      panel.removeAll();
      for (Figure figure : figures) {
        JLabel value = new JLabel();
        value.setName("figure." + figure.key());
        Look.letters(value, 1.0, java.awt.Font.BOLD);
        JTextArea label = Look.wrapped("");
        label.setName("figure." + figure.key() + ".label");
        // words would leave no room for what they mean
        boolean words = figure.value().chars().noneMatch(Character::isDigit);
        boolean spans = words && figure.value().length() > LONG;
        panel.add(label, spans ? "span 2, growx, wmin 60" : "wmin 60");
        panel.add(value, spans ? "span 2, alignx right" : "aligny top");
      }
      for (int i = 0; i < facts.size(); i++) {
        JTextArea fact = Look.wrapped("");
        fact.setName("fact." + i);
        panel.add(fact, "span 2, growx, wmin 60" + (i == 0 ? ", gaptop 12" : ""));
      }
    }
    for (Figure figure : figures) {
      ((JTextArea) panel.getComponent(at++)).setText(figure.label());
      ((JLabel) panel.getComponent(at++)).setText(figure.value());
    }
    for (String fact : facts) {
      ((JTextArea) panel.getComponent(at++)).setText(fact);
    }
    panel.revalidate();
    panel.repaint();
  }

  void makeStale(boolean stale) {
    for (var component : panel.getComponents()) {
      component.setEnabled(!stale);
    }
  }
}
