package org.shopclime.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/** The editor of the part that is selected. */
final class PartEditor {

  private final Bench.Proposals proposals;
  private final Supplier<KnownNames> names;
  private final JLabel title = new JLabel(" ");
  private final WidthPanel panel =
      new WidthPanel(new MigLayout("insets 10 12 12 12, wrap 1, fillx, hidemode 3", "[grow,fill]"));
  private final JScrollPane scroll = new JScrollPane(panel);
  private ShopPath path = ShopPath.SHOP;
  private Optional<FieldEditor> editor = Optional.empty();
  private Class<?> type = Void.class;
  private Note about = new Note("", "part.about");

  PartEditor(Bench.Proposals proposals, Supplier<KnownNames> names) {
    this.proposals = proposals;
    this.names = names;
    title.setName("part.title");
    Look.letters(title, 1.25, Font.BOLD);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    Look.onResized(scroll.getViewport(), () -> fit());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    KeyboardFocusManager.getCurrentKeyboardFocusManager()
        .addPropertyChangeListener("permanentFocusOwner", event -> reveal(event.getNewValue()));
  }

  JComponent component() {
    return scroll;
  }

  ShopPath path() {
    return path;
  }

  /** Sets labels above their fields if side by side they need more room than there is. */
  private void fit() {
    int width = scroll.getViewport().getWidth();
    if (width > 0) {
      editor.ifPresent(
          made -> {
            made.makeNarrow(false);
            forgetSizes(panel);
            made.makeNarrow(panel.getLayout().minimumLayoutSize(panel).width > width);
            forgetSizes(panel);
            panel.revalidate();
            // the height of wrapped text is known only once it has its width
            SwingUtilities.invokeLater(
                () -> {
                  forgetSizes(panel);
                  panel.revalidate();
                });
          });
    }
  }

  /**
   * Lets every layout measure anew. A panel tells those around it of a change only while they are
   * valid; one that was asked for its least width since is not, and would keep what it measured
   * before fields came into it.
   */
  static void forgetSizes(Container container) {
    for (Component part : container.getComponents()) {
      if (part instanceof Container inner) {
        forgetSizes(inner);
      }
    }
    container.invalidate();
  }

  /** Scrolls to a field that the keyboard led to. */
  private void reveal(Object focused) {
    if (focused instanceof JComponent field && SwingUtilities.isDescendingFrom(field, panel)) {
      field.scrollRectToVisible(new Rectangle(0, -8, field.getWidth(), field.getHeight() + 16));
    }
  }

  void show(ShopPath at, Shop shop, UnitSystem units) {
    Object value = at.value(shop).orElseThrow();
    Class<?> kind = typeAt(value);
    if (editor.isEmpty() || !at.equals(path) || kind != type) {
      path = at;
      type = kind;
      build(value);
    }
    title.setText(
        at.steps().isEmpty()
            ? "Your shop"
            : FormText.place(shop, at.toString()).replace(", ", " › "));
    editor.orElseThrow().show(shop, units);
    about.use(units);
    fit();
  }

  /** What the editor depends on: not the kind of a sealed part, which has a box of its own. */
  private static Class<?> typeAt(Object value) {
    if (value instanceof Optional<?>) {
      return Optional.class;
    }
    Class<?> sealed = value.getClass().getEnclosingClass();
    return sealed != null && sealed.isSealed() ? sealed : value.getClass();
  }

  private void build(Object value) {
    panel.removeAll();
    Bench bench = new Bench(proposals, names, new Mnemonics());
    FieldEditor made;
    if (type == Optional.class) {
      Class<?> held =
          ShopParts.of(Shop.class).stream()
              .filter(entry -> entry.name().equals(path.last().name()))
              .findFirst()
              .orElseThrow()
              .held();
      OptionalBox box = new OptionalBox(bench, path, held, "");
      box.check().setText("There is a cooling unit");
      made = box;
    } else if (type.isSealed()) {
      made = new KindBox(bench, path, type);
    } else {
      made = new RecordEditor(bench, path, value.getClass(), false, RecordEditor.LABELS);
    }
    editor = Optional.of(made);
    panel.add(title, "gapbottom 6");
    about = new Note(path.steps().isEmpty() ? "" : help(), path + ".about");
    panel.add(about.component(), "wmin 40, gapbottom 6");
    panel.add(made.component());
    panel.revalidate();
    panel.repaint();
    SwingUtilities.invokeLater(() -> scroll.getViewport().setViewPosition(new Point(0, 0)));
  }

  /** What is said of the whole part, where it is one that every shop has. */
  private String help() {
    return ShopParts.of(Shop.class).stream()
        .filter(entry -> path.steps().size() == 1 && entry.name().equals(path.last().name()))
        .map(entry -> entry.say().help())
        .findFirst()
        .orElse("");
  }

  void complain(Map<String, String> problems) {
    about.tell(Optional.ofNullable(problems.get(path.toString())));
    editor.ifPresent(made -> made.complain(problems));
  }

  boolean isReadable() {
    return editor.map(FieldEditor::isReadable).orElse(true);
  }

  void focusFirst() {
    editor.ifPresent(
        made -> {
          JComponent first = made.focus();
          first.requestFocusInWindow();
        });
  }
}
