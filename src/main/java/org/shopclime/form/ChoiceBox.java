package org.shopclime.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Words;

/** One of a few words. */
final class ChoiceBox implements FieldEditor {

  private final ShopPath path;
  private final List<Object> constants;
  private final JComboBox<String> box;
  private final Note note;
  private boolean showing;

  ChoiceBox(Bench bench, ShopPath path, ShopParts.Entry entry) {
    this.path = path;
    this.constants = List.of(entry.type().getEnumConstants());
    this.note = new Note(entry.say().help(), path.toString());
    this.box =
        new JComboBox<>(
            Words.all(entry.type()).stream().map(FormText::capital).toArray(String[]::new));
    box.setName(path.toString());
    box.setMaximumRowCount(12);
    box.addActionListener(
        event -> {
          if (!showing && box.getSelectedIndex() >= 0) {
            bench.proposals().propose(path, constants.get(box.getSelectedIndex()));
          }
        });
  }

  @Override
  public JComponent component() {
    return box;
  }

  @Override
  public JComponent focus() {
    return box;
  }

  @Override
  public Optional<Note> note() {
    return Optional.of(note);
  }

  @Override
  public void show(Shop shop, UnitSystem units) {
    note.use(units);
    showing = true;
    box.setSelectedIndex(constants.indexOf(path.value(shop).orElseThrow()));
    showing = false;
  }

  @Override
  public void complain(Map<String, String> problems) {
    note.tell(Optional.ofNullable(problems.get(path.toString())));
  }

  @Override
  public boolean isReadable() {
    return true;
  }
}
