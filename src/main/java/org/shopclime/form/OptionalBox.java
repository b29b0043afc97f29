package org.shopclime.form;

import java.util.Map;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** A part that may be there or not. */
final class OptionalBox implements FieldEditor {

  private static final int INDENT = 18;

  private final Bench bench;
  private final ShopPath path;
  private final Class<?> type;
  private final JPanel panel =
      new JPanel(new MigLayout("insets 0, wrap 1, fillx, hidemode 3", "[grow,fill]"));
  private final JCheckBox check = new JCheckBox("There is one");
  private final Note note;
  private Optional<RecordEditor> inner = Optional.empty();
  private boolean narrow;

  OptionalBox(Bench bench, ShopPath path, Class<?> type, String help) {
    this.bench = bench;
    this.path = path;
    this.type = type;
    panel.setOpaque(false);
    check.setOpaque(false);
    check.setName(path + ".present");
    check.addActionListener(
        event ->
            bench
                .proposals()
                .propose(
                    path, check.isSelected() ? Optional.of(Starts.of(type)) : Optional.empty()));
    panel.add(check, "growx 0");
    note = new Note(help, path.toString());
    panel.add(note.component(), "wmin 40, gapleft " + INDENT);
  }

  JCheckBox check() {
    return check;
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent focus() {
    return check;
  }

  @Override
  public void show(Shop shop, UnitSystem units) {
    note.use(units);
    boolean present =
        path.value(shop).orElseThrow() instanceof Optional<?> value && value.isPresent();
    check.setSelected(present);
    if (present != inner.isPresent()) {
      inner.ifPresent(editor -> panel.remove(editor.component()));
      inner = present ? Optional.of(made()) : Optional.empty();
      inner.ifPresent(editor -> panel.add(editor.component(), "gapleft " + INDENT));
      panel.revalidate();
      panel.repaint();
    }
    inner.ifPresent(editor -> editor.show(shop, units));
  }

  private RecordEditor made() {
    RecordEditor editor = new RecordEditor(bench, path, type, false, RecordEditor.LABELS - INDENT);
    editor.makeNarrow(narrow);
    return editor;
  }

  @Override
  public void makeNarrow(boolean now) {
    narrow = now;
    inner.ifPresent(editor -> editor.makeNarrow(now));
  }

  @Override
  public void complain(Map<String, String> problems) {
    note.tell(Optional.ofNullable(problems.get(path.toString())));
    inner.ifPresent(editor -> editor.complain(problems));
  }

  @Override
  public boolean isReadable() {
    return inner.map(RecordEditor::isReadable).orElse(true);
  }
}
