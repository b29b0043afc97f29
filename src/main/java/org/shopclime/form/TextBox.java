package org.shopclime.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** A value typed as text: a figure, a name, a schedule. Names may be picked from a list. */
final class TextBox implements FieldEditor {

  private static final int COLUMNS = 11;

  private final Bench bench;
  private final ShopPath path;
  private final Wording wording;
  private final BiFunction<Shop, String, Optional<String>> refused;
  private final Optional<BiFunction<Shop, ShopPath, List<String>>> offers;
  private final Note note;
  private final JTextField field;
  private final Optional<JComboBox<String>> combo;
  private final Typing typing;

  private Shop shop;
  private UnitSystem units;
  private Object shown;
  private Object stoodValue;
  private String stood = "";
  private boolean readable = true;

  /**
   * A text field.
   *
   * @param bench where proposals go
   * @param path place of the value
   * @param wording how it is written and read
   * @param help help under the field
   * @param offers names to pick from
   * @param refused why a text that can be read is still refused
   */
  TextBox(
      Bench bench,
      ShopPath path,
      Wording wording,
      String help,
      Optional<BiFunction<Shop, ShopPath, List<String>>> offers,
      BiFunction<Shop, String, Optional<String>> refused) {
    this.bench = bench;
    this.path = path;
    this.wording = wording;
    this.offers = offers;
    this.refused = refused;
    this.note = new Note(help, path.toString());
    this.combo = offers.map(ignored -> new JComboBox<>());
    this.field =
        combo
            .map(
                box -> {
                  box.setEditable(true);
                  box.setName(path + ".list");
                  box.setPrototypeDisplayValue("M".repeat(COLUMNS));
                  return (JTextField) box.getEditor().getEditorComponent();
                })
            .orElseGet(JTextField::new);
    field.setName(path.toString());
    field.setColumns(COLUMNS);
    field.putClientProperty("JTextField.placeholderText", "not set");
    combo.ifPresent(box -> box.putClientProperty("JTextField.placeholderText", "not set"));
    this.typing = new Typing(field, this::commit, this::settle, this::back);
  }

  @Override
  public JComponent component() {
    return combo.map(JComponent.class::cast).orElse(field);
  }

  @Override
  public JComponent focus() {
    return field;
  }

  @Override
  public Optional<Note> note() {
    return Optional.of(note);
  }

  @Override
  public void show(Shop now, UnitSystem system) {
    note.use(system);
    shop = now;
    boolean sameUnits = system == units;
    units = system;
    Object value = path.value(now).orElseThrow();
    combo.ifPresent(box -> offer(box, offers.orElseThrow().apply(now, path)));
    boolean untouched = typing.text().equals(stood);
    boolean sameWords = !untouched || wording.write(value, units).equals(stood);
    if (sameUnits && value.equals(shown) && sameWords) {
      return;
    }
    if (!readable && value.equals(shown)) {
      return; // what was typed stays until it can be taken
    }
    shown = value;
    write();
  }

  private void offer(JComboBox<String> box, List<String> names) {
    boolean same = box.getItemCount() == names.size();
    for (int i = 0; same && i < names.size(); i++) {
      same = names.get(i).equals(box.getItemAt(i));
    }
    if (!same) {
      String text = field.getText();
      typing.silently(
          () -> {
            box.setModel(new DefaultComboBoxModel<>(names.toArray(new String[0])));
            box.setSelectedItem(text);
          });
    }
  }

  private void write() {
    stood = wording.write(shown, units);
    stoodValue = shown;
    combo.ifPresent(box -> typing.silently(() -> box.setSelectedItem(stood)));
    typing.show(stood);
    makeReadable(true);
    note.calm();
  }

  private void commit() {
    String text = typing.text();
    Wording.Read read =
        text.equals(stood) ? Wording.Read.of(stoodValue) : wording.read(text, stood, units);
    Optional<String> refusal =
        read.value().isPresent() && !read.value().get().equals(shown)
            ? refused.apply(shop, text.strip())
            : Optional.empty();
    if (read.value().isEmpty() || refusal.isPresent()) {
      note.complain(refusal.orElse(read.complaint()));
      makeReadable(false);
      return;
    }
    if (!readable) {
      note.calm();
    }
    makeReadable(true);
    Object value = read.value().get();
    if (!value.equals(shown)) {
      shown = value;
      bench.proposals().propose(path, value);
    }
  }

  /** Once the field is left, what was typed is written as it will be shown from now on. */
  private void settle() {
    if (readable && !wording.write(shown, units).equals(typing.text())) {
      write();
    }
  }

  private void back() {
    write();
  }

  private void makeReadable(boolean now) {
    field.putClientProperty("JComponent.outline", now ? null : "warning");
    combo.ifPresent(box -> box.putClientProperty("JComponent.outline", now ? null : "warning"));
    if (now != readable) {
      readable = now;
      bench.proposals().readableChanged();
    }
  }

  @Override
  public void complain(Map<String, String> problems) {
    if (readable) {
      note.tell(Optional.ofNullable(problems.get(path.toString())));
    }
  }

  @Override
  public boolean isReadable() {
    return readable;
  }
}
