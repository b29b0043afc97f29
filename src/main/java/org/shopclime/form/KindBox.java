package org.shopclime.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/** A part of one of several kinds, each with fields of its own. */
final class KindBox implements FieldEditor {

  private final Bench bench;
  private final ShopPath path;
  private final List<Class<?>> kinds;
  private final JPanel panel = new JPanel(new MigLayout("insets 0, wrap 1, fillx", "[grow,fill]"));
  private final JComboBox<String> box;
  private Optional<RecordEditor> inner = Optional.empty();
  private Record shown;
  private boolean showing;
  private boolean narrow;

  KindBox(Bench bench, ShopPath path, Class<?> type) {
    this.bench = bench;
    this.path = path;
    this.kinds = ShopParts.kinds(type);
    this.box =
        new JComboBox<>(
            kinds.stream().map(ShopParts::kind).map(FormText::capital).toArray(String[]::new));
    panel.setOpaque(false);
    box.setName(path + ".kind");
    box.getAccessibleContext().setAccessibleName("Kind");
    box.setToolTipText("What kind it is; the fields below belong to it.");
    box.addActionListener(
        event -> {
          if (!showing && box.getSelectedIndex() >= 0) {
            Class<?> kind = kinds.get(box.getSelectedIndex());
            if (shown.getClass() != kind) {
              bench.proposals().propose(path, Starts.swapped(shown, kind));
            }
          }
        });
    panel.add(box);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent focus() {
    return box;
  }

  @Override
  public void show(Shop shop, UnitSystem units) {
    shown = path.record(shop).orElseThrow();
    showing = true;
    box.setSelectedIndex(kinds.indexOf(shown.getClass()));
    showing = false;
    if (inner.isEmpty() || inner.get().type() != shown.getClass()) {
      inner.ifPresent(editor -> panel.remove(editor.component()));
      RecordEditor editor =
          new RecordEditor(bench, path, shown.getClass(), false, RecordEditor.LABELS);
      editor.makeNarrow(narrow);
      inner = Optional.of(editor);
      panel.add(editor.component());
      panel.revalidate();
      panel.repaint();
    }
    inner.orElseThrow().show(shop, units);
  }

  @Override
  public void makeNarrow(boolean now) {
    narrow = now;
    inner.ifPresent(editor -> editor.makeNarrow(now));
  }

  @Override
  public void complain(Map<String, String> problems) {
    inner.ifPresent(editor -> editor.complain(problems));
  }

  @Override
  public boolean isReadable() {
    return inner.map(RecordEditor::isReadable).orElse(true);
  }
}
