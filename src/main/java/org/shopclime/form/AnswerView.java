package org.shopclime.form;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.shopclime.report.Figure;

/** The answer: a word, a sentence, and the figures that matter most, each with its meaning. */
final class AnswerView {

  private static final int GAP = 18;
  private static final int MOST = 6;
  private static final String CHIP = "insets 8 14 8 14, fill";
  private static final String SMALL_CHIP = "insets 4 8 4 8, fill";

  private final JPanel panel =
      new JPanel(
          new MigLayout("insets 8 10 8 10, fillx, hidemode 3", "[shrink 0]14[grow,fill]", "[]"));
  private final JPanel chip = new JPanel(new MigLayout(CHIP, "[center]", "[center]"));
  private final JLabel word = new JLabel("Reckoning");
  private final JTextArea sentence = Look.wrapped("One moment: the climate tables are being read.");
  private final JTextArea note = Look.wrapped(" ");
  private final JPanel cells = new JPanel(new MigLayout("insets 0"));
  private List<Figure> figures = List.of();
  private final List<JPanel> made = new ArrayList<>();
  private String chipColour = "Shopclime.verdict.waiting";
  private int columns;
  private boolean isShort;
  private boolean staleSentence;
  private boolean staleFigures;

  AnswerView() {
    word.setName("answer.verdict");
    word.setForeground(Look.colour("Shopclime.verdict.text"));
    word.putClientProperty("FlatLaf.style", "font: bold 150%; foreground: $Shopclime.verdict.text");
    chip.setName("answer.colour");
    chip.add(word);
    chip.setBackground(Look.colour(chipColour));
    sentence.setName("answer.sentence");
    sentence.setFocusable(true);
    sentence.getAccessibleContext().setAccessibleName("Answer");
    Look.letters(sentence, 1.45, "TextArea.foreground");
    note.setName("answer.note");
    Look.letters(note, 0.95, "Shopclime.quiet");
    cells.setOpaque(false);
    cells.setName("answer.figures");
    panel.setName("answer");
    panel.setBackground(Look.colour("Shopclime.paper"));
    JPanel right =
        new JPanel(new MigLayout("insets 0, fillx, wrap 1, gap 0 3, hidemode 3", "[grow,fill]"));
    right.setOpaque(false);
    right.setName("answer.words");
    right.add(sentence, "growx, wmin 100");
    right.add(cells, "growx, wmin 0");
    right.add(note, "growx, wmin 100");
    panel.add(chip, "aligny top, growy, wmin pref");
    panel.add(right, "growx, wmin 100");
    Look.onResized(panel, () -> layOut(false));
  }

  JComponent component() {
    return panel;
  }

  /** On short windows only one row of figures is shown. */
  void makeShort(boolean now) {
    if (now != isShort) {
      isShort = now;
      chip.setLayout(new MigLayout(now ? SMALL_CHIP : CHIP, "[center]", "[center]"));
      layOut(true);
    }
  }

  void show(String verdict, String colour, String text, List<Figure> all) {
    word.setText(verdict);
    chipColour = colour;
    chip.setBackground(Look.colour(colour));
    sentence.setText(text);
    List<Figure> chosen = new ArrayList<>();
    for (String key : FormText.KEYS.keySet()) {
      all.stream().filter(figure -> figure.key().equals(key)).forEach(chosen::add);
    }
    boolean same = keys(chosen).equals(keys(figures));
    figures = chosen;
    layOut(!same);
    if (same) {
      write();
    }
    grey();
  }

  private static List<String> keys(List<Figure> figures) {
    return figures.stream().map(Figure::key).toList();
  }

  private void layOut(boolean always) {
    if (always) {
      word.putClientProperty(
          "FlatLaf.style",
          "font: bold " + (isShort ? 115 : 150) + "%; foreground: $Shopclime.verdict.text");
      Look.letters(sentence, isShort ? 1.15 : 1.45, "TextArea.foreground");
      made.clear();
      figures.stream().limit(MOST).forEach(figure -> made.add(cell(figure)));
    }
    int wanted = fitting();
    if (!always && wanted == columns) {
      return;
    }
    columns = wanted;
    cells.removeAll();
    cells.setLayout(new MigLayout("insets 0, gap " + GAP + " 4, wrap " + columns, ""));
    int most = isShort ? Math.min(columns, made.size()) : made.size();
    made.subList(0, most).forEach(cells::add);
    grey();
    panel.revalidate();
    panel.repaint();
  }

  /** How many cells fit side by side. */
  private int fitting() {
    int room = panel.getWidth() - chip.getPreferredSize().width - Look.scaled(60);
    for (int count = made.size(); count > 1; count--) {
      int width = 0;
      for (int column = 0; column < count; column++) {
        int widest = 0;
        for (int i = column; i < made.size(); i += count) {
          widest = Math.max(widest, made.get(i).getPreferredSize().width);
        }
        width += widest + Look.scaled(GAP);
      }
      if (width <= room) {
        return count;
      }
    }
    return 1;
  }

  private static JPanel cell(Figure figure) {
    JPanel cell = new JPanel(new MigLayout("insets 0, wrap 1, gap 0 0", "[]"));
    cell.setOpaque(false);
    cell.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createMatteBorder(0, Look.scaled(2), 0, 0, Look.colour("Shopclime.line")),
            BorderFactory.createEmptyBorder(0, Look.scaled(8), 0, 0)));
    JLabel value = new JLabel(figure.value());
    value.setName("key." + figure.key());
    Look.letters(value, 1.25, Font.BOLD);
    JLabel label = new JLabel(FormText.KEYS.get(figure.key()));
    label.setToolTipText(figure.label());
    label.setName("key." + figure.key() + ".label");
    Look.letters(label, 0.92, "Shopclime.quiet");
    value.getAccessibleContext().setAccessibleName(figure.label() + ": " + figure.value());
    cell.add(value);
    cell.add(label);
    return cell;
  }

  private void write() {
    for (int i = 0; i < made.size(); i++) {
      Figure figure = figures.get(i);
      JLabel value = (JLabel) made.get(i).getComponent(0);
      value.setText(figure.value());
      value.getAccessibleContext().setAccessibleName(figure.label() + ": " + figure.value());
    }
    layOut(false);
  }

  /** Greys what is no longer, or not yet, the answer to what stands in the form. */
  void makeStale(boolean oldSentence, boolean oldFigures) {
    staleSentence = oldSentence;
    staleFigures = oldFigures;
    grey();
  }

  private void grey() {
    sentence.setEnabled(!staleSentence);
    for (var cell : cells.getComponents()) {
      for (var label : ((JPanel) cell).getComponents()) {
        label.setEnabled(!staleFigures);
      }
    }
  }

  /** Says why the answer is grey, or why it is a range. */
  void say(String text) {
    note.setText(text.isEmpty() ? " " : text);
  }

  /** After a change of theme. */
  void recolour() {
    panel.setBackground(Look.colour("Shopclime.paper"));
    chip.setBackground(Look.colour(chipColour));
    layOut(true);
  }
}
