package org.shopclime.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Board;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.Electricity;
import org.shopclime.shop.Shop;

/** Layers, boards, tiers or prices, one under the other, to be added, moved and taken away. */
final class ListBox implements FieldEditor {

  private final Bench bench;
  private final ShopPath path;
  private final Class<?> type;
  private final String word;
  private final JPanel panel =
      new JPanel(new MigLayout("insets 0, wrap 1, fillx, hidemode 3", "[grow,fill]"));
  private final JButton add;
  private final Note note;
  private final List<RecordEditor> elements = new ArrayList<>();
  private List<?> shown = List.of();
  private boolean built;
  private boolean narrow;

  ListBox(Bench bench, ShopPath path, Class<?> type, String help) {
    this.bench = bench;
    this.path = path;
    this.type = type;
    this.word = word(type);
    panel.setOpaque(false);
    add = new JButton("Add " + word);
    add.setName(path + ".add");
    add.addActionListener(
        event -> bench.proposals().propose(path, NextElement.appended(shown, type)));
    note = new Note(help, path.toString());
  }

  private static String word(Class<?> type) {
    if (type == Board.class) {
      return "board";
    } else if (type == BuildLayer.class) {
      return "layer";
    } else if (type == Electricity.Tier.class) {
      return "tier";
    } else if (type == Electricity.PricedHours.class) {
      return "hours";
    }
    return "change";
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent focus() {
    return elements.isEmpty() ? add : elements.get(0).focus();
  }

  @Override
  public void show(Shop shop, UnitSystem units) {
    note.use(units);
    shown = (List<?>) path.value(shop).orElseThrow();
    if (!built || shown.size() != elements.size()) {
      build();
    }
    elements.forEach(element -> element.show(shop, units));
  }

  private void build() {
    built = true;
    panel.removeAll();
    elements.clear();
    for (int i = 0; i < shown.size(); i++) {
      ShopPath at = new ShopPath(path.steps()).parent().child(path.last().name(), i);
      RecordEditor editor = new RecordEditor(bench, at, type, true, 0);
      editor.makeNarrow(narrow);
      elements.add(editor);
      JPanel row = new JPanel(new MigLayout("insets 6 8 6 8, fillx, wrap 1", "[grow,fill]"));
      row.setOpaque(false);
      row.setBorder(Look.line());
      row.add(editor.component());
      JPanel buttons = new JPanel(new MigLayout("insets 0, gap 6 2", ""));
      buttons.setOpaque(false);
      buttons.add(button("Up", at + ".up", i > 0, i, -1));
      buttons.add(button("Down", at + ".down", i < shown.size() - 1, i, 1));
      buttons.add(button("Remove", at + ".remove", true, i, 0));
      row.add(buttons);
      panel.add(row);
    }
    panel.add(note.component(), "growx, wmin 40");
    panel.add(add, "growx 0");
    panel.revalidate();
    panel.repaint();
  }

  private JButton button(String text, String name, boolean enabled, int index, int move) {
    JButton button = new JButton(text);
    button.setName(name);
    button.setEnabled(enabled);
    button.putClientProperty("FlatLaf.style", "margin: 1,8,1,8; minimumWidth: 0");
    String from =
        type == Board.class || type == BuildLayer.class ? ", counted from the outside" : "";
    button.setToolTipText(text + ": " + word + " " + (index + 1) + from);
    button
        .getAccessibleContext()
        .setAccessibleName(text + " " + word.toLowerCase(Locale.ROOT) + " " + (index + 1));
    button.addActionListener(
        event -> {
          List<Object> list = new ArrayList<>(shown);
          if (move == 0) {
            list.remove(index);
          } else {
            Collections.swap(list, index, index + move);
          }
          bench.proposals().propose(path, list);
        });
    return button;
  }

  @Override
  public void makeNarrow(boolean now) {
    narrow = now;
    elements.forEach(element -> element.makeNarrow(now));
  }

  @Override
  public void complain(Map<String, String> problems) {
    note.tell(Optional.ofNullable(problems.get(path.toString())));
    elements.forEach(element -> element.complain(problems));
  }

  @Override
  public boolean isReadable() {
    return elements.stream().allMatch(RecordEditor::isReadable);
  }
}
