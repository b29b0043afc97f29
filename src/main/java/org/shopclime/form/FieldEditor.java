package org.shopclime.form;

import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** A value of a shop on the screen: shown in, proposed out. Showing tells nobody. */
interface FieldEditor {

  /** What stands in the form. */
  JComponent component();

  /** What the label leads to. */
  JComponent focus();

  /** The line below, if there is one. */
  default Optional<Note> note() {
    return Optional.empty();
  }

  void show(Shop shop, UnitSystem units);

  /** Sets labels above their fields where there is little room. */
  default void makeNarrow(boolean narrow) {}

  /** Shows what a check found, by path. */
  void complain(Map<String, String> problems);

  /** Whether what stands in it can be taken. */
  boolean isReadable();
}
