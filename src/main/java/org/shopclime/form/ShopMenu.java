package org.shopclime.form;

import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;

/** The menus of the window. */
final class ShopMenu {

  /** What can be done by menu. */
  enum Deed {
    /** A new shop from presets. */
    NEW,
    /** Opens a file. */
    OPEN,
    /** Saves. */
    SAVE,
    /** Saves in another file. */
    SAVE_AS,
    /** Writes the report. */
    REPORT,
    /** Prints a sheet. */
    PRINT,
    /** Closes the window. */
    CLOSE,
    /** Takes back the last change. */
    UNDO,
    /** Makes it again. */
    REDO,
    /** Figures in feet, °F, BTU/h. */
    INCH_POUND,
    /** Figures in metres, °C, W. */
    SI,
    /** Dark letters on light. */
    LIGHT,
    /** Light letters on dark. */
    DARK,
    /** The station is chosen from map and list. */
    PLACE,
    /** The keyboard goes to the tree. */
    PARTS,
    /** The keyboard goes to the editor. */
    EDITOR,
    /** The keyboard goes to the answers. */
    ANSWERS,
    /** What to do first, and how to read the answer. */
    STEPS,
    /** What this is and is not. */
    ABOUT
  }

  private final JMenuBar bar = new JMenuBar();
  private final Consumer<Deed> doer;
  private final Consumer<Path> opener;
  private final JMenu recent = new JMenu("Open recent");
  private final JMenuItem undo;
  private final JMenuItem redo;
  private final JRadioButtonMenuItem inchPound;
  private final JRadioButtonMenuItem si;

  /**
   * The menus.
   *
   * @param doer does what is chosen
   * @param opener opens a recent file
   * @param pages titles of the pages of the answer
   * @param turner opens a page by its index
   * @param dark whether the colours are dark
   */
  ShopMenu(
      Consumer<Deed> doer,
      Consumer<Path> opener,
      List<String> pages,
      IntConsumer turner,
      boolean dark) {
    this.doer = doer;
    this.opener = opener;
    int menuKey = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    int shifted = menuKey | InputEvent.SHIFT_DOWN_MASK;
    JMenu file = menu("File", 'F');
    item(file, "New…", 'N', Deed.NEW, key(KeyEvent.VK_N, menuKey));
    item(file, "Open…", 'O', Deed.OPEN, key(KeyEvent.VK_O, menuKey));
    recent.setMnemonic('T');
    recent.setName("menu.recent");
    file.add(recent);
    file.addSeparator();
    item(file, "Save", 'S', Deed.SAVE, key(KeyEvent.VK_S, menuKey));
    item(file, "Save as…", 'A', Deed.SAVE_AS, key(KeyEvent.VK_S, shifted));
    file.addSeparator();
    item(file, "Write report…", 'R', Deed.REPORT, key(KeyEvent.VK_E, menuKey));
    item(file, "Print sheet…", 'P', Deed.PRINT, key(KeyEvent.VK_P, menuKey));
    file.addSeparator();
    item(file, "Close", 'C', Deed.CLOSE, key(KeyEvent.VK_W, menuKey));
    JMenu edit = menu("Edit", 'E');
    undo = item(edit, "Undo", 'U', Deed.UNDO, key(KeyEvent.VK_Z, menuKey));
    redo = item(edit, "Redo", 'R', Deed.REDO, key(KeyEvent.VK_Y, menuKey));
    edit.addSeparator();
    item(edit, "Choose the place…", 'C', Deed.PLACE, key(KeyEvent.VK_L, menuKey));
    edit.addSeparator();
    item(edit, "Go to the parts", 'P', Deed.PARTS, key(KeyEvent.VK_F6, 0));
    item(edit, "Go to the fields", 'F', Deed.EDITOR, key(KeyEvent.VK_F7, 0));
    item(edit, "Go to the answers", 'A', Deed.ANSWERS, key(KeyEvent.VK_F8, 0));
    JMenu view = menu("View", 'V');
    inchPound = radio(view, "Feet, °F, BTU/h", 'F', Deed.INCH_POUND);
    si = radio(view, "Meters, °C, watts", 'M', Deed.SI);
    group(inchPound, si);
    view.addSeparator();
    JRadioButtonMenuItem light = radio(view, "Light", 'L', Deed.LIGHT);
    JRadioButtonMenuItem night = radio(view, "Dark", 'D', Deed.DARK);
    group(light, night);
    (dark ? night : light).setSelected(true);
    JMenu leaves = menu("Pages", 'P');
    for (int i = 0; i < pages.size(); i++) {
      int page = i;
      JMenuItem item = new JMenuItem(pages.get(i));
      item.setName("menu.page." + i);
      item.setAccelerator(key(pageKey(i), InputEvent.ALT_DOWN_MASK));
      item.addActionListener(event -> turner.accept(page));
      leaves.add(item);
    }
    JMenu help = menu("Help", 'H');
    item(help, "First steps", 'F', Deed.STEPS, key(KeyEvent.VK_F1, 0));
    item(
        help,
        "What this is, and is not",
        'W',
        Deed.ABOUT,
        key(KeyEvent.VK_F1, InputEvent.SHIFT_DOWN_MASK));
  }

  /** The digit that leads to a page with Alt; the tenth has the nought. */
  static char pageKey(int page) {
    return (char) ('0' + (page + 1) % 10);
  }

  JMenuBar component() {
    return bar;
  }

  private JMenu menu(String words, char mnemonic) {
    JMenu menu = new JMenu(words);
    menu.setMnemonic(mnemonic);
    menu.setName("menu." + words.toLowerCase(java.util.Locale.ROOT));
    bar.add(menu);
    return menu;
  }

  private static KeyStroke key(int code, int modifiers) {
    return KeyStroke.getKeyStroke(code, modifiers);
  }

  private JMenuItem item(JMenu menu, String words, char mnemonic, Deed deed, KeyStroke key) {
    JMenuItem item = new JMenuItem(words, mnemonic);
    item.setName("menu." + deed);
    item.setAccelerator(key);
    item.addActionListener(event -> doer.accept(deed));
    menu.add(item);
    return item;
  }

  private JRadioButtonMenuItem radio(JMenu menu, String words, char mnemonic, Deed deed) {
    JRadioButtonMenuItem item = new JRadioButtonMenuItem(words);
    item.setMnemonic(mnemonic);
    item.setName("menu." + deed);
    item.addActionListener(event -> doer.accept(deed));
    menu.add(item);
    return item;
  }

  private static void group(JRadioButtonMenuItem... items) {
    ButtonGroup group = new ButtonGroup();
    for (JRadioButtonMenuItem item : items) {
      group.add(item);
    }
  }

  void show(ShopSession session, boolean isSi, List<Path> files) {
    undo.setEnabled(session.canUndo());
    redo.setEnabled(session.canRedo());
    (isSi ? si : inchPound).setSelected(true);
    recent.setEnabled(!files.isEmpty());
    recent.removeAll();
    for (int i = 0; i < files.size(); i++) {
      Path path = files.get(i);
      JMenuItem item = new JMenuItem((i + 1) + "  " + path.getFileName());
      item.setMnemonic('1' + i);
      item.setToolTipText(path.toString());
      item.addActionListener(event -> opener.accept(path));
      recent.add(item);
    }
  }
}
