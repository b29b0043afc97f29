package org.shopclime.form;

import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTree;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import javax.swing.TransferHandler;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreeNode;
import javax.swing.tree.TreePath;
import javax.swing.tree.TreeSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** The parts of the shop as a tree, with buttons to add, double and remove them. */
final class PartsView {

  /** What the window does at the buttons. */
  interface Wishes {

    /** Another part is selected. */
    void selected(ShopPath path);

    /** Something is to be added. */
    void add(Outline.Addition addition);

    /** The selected part is to be doubled. */
    void duplicate();

    /** The selected part is to be taken away. */
    void remove();

    /** The keyboard goes on to the editor. */
    void edit();
  }

  private final Wishes wishes;
  private final JPanel panel =
      new JPanel(
          new MigLayout("insets 8 8 8 4, fill, wrap 1, gap 4 6", "[grow,fill]", "[][grow,fill][]"));
  private final DefaultTreeModel model = new DefaultTreeModel(new DefaultMutableTreeNode());
  private final JTree tree = new NarrowTree(model);
  private final JButton add = new JButton("Add \u25BE");
  private final JButton duplicate = new JButton("Duplicate");
  private final JButton remove = new JButton("Remove");
  private Outline.Node shown;
  private Shop shop;
  private ShopPath selected = ShopPath.SHOP;
  private boolean showing;

  PartsView(Wishes wishes) {
    this.wishes = wishes;
    JLabel label = new JLabel("Parts of the shop");
    label.setDisplayedMnemonic('T');
    label.setLabelFor(tree);
    label.setName("parts.label");
    tree.setName("parts.tree");
    tree.setToggleClickCount(0);
    tree.setShowsRootHandles(false);
    tree.getSelectionModel().setSelectionMode(TreeSelectionModel.SINGLE_TREE_SELECTION);
    tree.addTreeSelectionListener(event -> selectionChanged());
    DefaultTreeCellRenderer plain = new DefaultTreeCellRenderer();
    plain.setLeafIcon(null);
    plain.setOpenIcon(null);
    plain.setClosedIcon(null);
    tree.setCellRenderer(plain);
    ToolTipManager.sharedInstance().registerComponent(tree);
    on("ENTER", wishes::edit);
    on("DELETE", () -> click(remove));
    on("INSERT", this::showAdditions);
    add.setName("parts.add");
    add.setMnemonic('A');
    add.setToolTipText("Adds a wall, a door, a fan, heat from work, a room.");
    add.addActionListener(event -> showAdditions());
    duplicate.setName("parts.duplicate");
    duplicate.setMnemonic('D');
    duplicate.setToolTipText("Puts the same once more beside the selected part.");
    duplicate.addActionListener(event -> wishes.duplicate());
    remove.setName("parts.remove");
    remove.setMnemonic('R');
    remove.setToolTipText("Takes the selected part away; Undo brings it back.");
    remove.addActionListener(event -> wishes.remove());
    JScrollPane scroll = new JScrollPane(tree);
    scroll.setBorder(Look.line());
    for (JButton button : List.of(add, duplicate, remove)) {
      button.putClientProperty("FlatLaf.style", "margin: 2,8,2,8; minimumWidth: 0");
    }
    panel.add(label);
    panel.add(scroll, "wmin 80, hmin 60");
    panel.add(add, "split 3, growx, wmin pref");
    panel.add(duplicate, "growx, wmin pref");
    panel.add(remove, "growx, wmin pref");
  }

  /** A tree as wide as its place; what is cut off there is told at the pointer. */
  private static final class NarrowTree extends JTree {

    private static final long serialVersionUID = 1L;

    NarrowTree(DefaultTreeModel model) {
      super(model);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
      return true;
    }

    @Override
    public String getToolTipText(MouseEvent event) {
      TreePath at = getPathForLocation(event.getX(), event.getY());
      Rectangle row = at == null ? null : getPathBounds(at);
      return row == null || row.x + row.width <= getWidth()
          ? null
          : String.valueOf(at.getLastPathComponent());
    }
  }

  private void on(String key, Runnable action) {
    tree.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), "shop." + key);
    tree.getActionMap()
        .put(
            "shop." + key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                action.run();
              }
            });
  }

  private static void click(JButton button) {
    if (button.isEnabled()) {
      button.doClick();
    }
  }

  JComponent component() {
    return panel;
  }

  void show(Shop now, UnitSystem units, ShopPath select) {
    shop = now;
    Outline.Node outline = Outline.of(now, units);
    showing = true;
    if (!outline.equals(shown)) {
      if (shown != null && paths(shown).equals(paths(outline))) {
        rename((DefaultMutableTreeNode) model.getRoot(), outline);
      } else {
        rebuild(outline);
      }
      shown = outline;
    }
    select(select);
    showing = false;
    duplicate.setEnabled(select.isElement());
    remove.setEnabled(Outline.canRemove(now, select));
  }

  private static List<ShopPath> paths(Outline.Node node) {
    List<ShopPath> paths = new ArrayList<>(List.of(node.path()));
    node.parts().forEach(part -> paths.addAll(paths(part)));
    return paths;
  }

  private void rename(DefaultMutableTreeNode at, Outline.Node node) {
    if (!node.toString().equals(String.valueOf(at.getUserObject()))) {
      at.setUserObject(node);
      model.nodeChanged(at);
    } else {
      at.setUserObject(node);
    }
    for (int i = 0; i < node.parts().size(); i++) {
      rename((DefaultMutableTreeNode) at.getChildAt(i), node.parts().get(i));
    }
  }

  private void rebuild(Outline.Node outline) {
    List<ShopPath> folded = new ArrayList<>();
    if (shown != null) {
      Enumeration<TreeNode> all = ((DefaultMutableTreeNode) model.getRoot()).preorderEnumeration();
      while (all.hasMoreElements()) {
        DefaultMutableTreeNode node = (DefaultMutableTreeNode) all.nextElement();
        if (!node.isLeaf() && tree.isCollapsed(new TreePath(node.getPath()))) {
          folded.add(path(node));
        }
      }
    }
    model.setRoot(tree(outline));
    for (int row = 0; row < tree.getRowCount(); row++) {
      DefaultMutableTreeNode node =
          (DefaultMutableTreeNode) tree.getPathForRow(row).getLastPathComponent();
      String at = path(node).toString();
      boolean later = at.startsWith("rooms[") && node.getLevel() == 1 && !at.equals("rooms[0]");
      if (!folded.contains(path(node)) && !(shown == null && later)) {
        tree.expandRow(row);
      }
    }
  }

  private static DefaultMutableTreeNode tree(Outline.Node node) {
    DefaultMutableTreeNode made = new DefaultMutableTreeNode(node);
    node.parts().forEach(part -> made.add(tree(part)));
    return made;
  }

  private static ShopPath path(DefaultMutableTreeNode node) {
    return ((Outline.Node) node.getUserObject()).path();
  }

  private void select(ShopPath path) {
    selected = path;
    Enumeration<TreeNode> all = ((DefaultMutableTreeNode) model.getRoot()).preorderEnumeration();
    while (all.hasMoreElements()) {
      DefaultMutableTreeNode node = (DefaultMutableTreeNode) all.nextElement();
      if (path(node).equals(path)) {
        TreePath place = new TreePath(node.getPath());
        if (!place.equals(tree.getSelectionPath())) {
          tree.setSelectionPath(place);
          SwingUtilities.invokeLater(() -> reveal(place));
        }
        return;
      }
    }
  }

  private void reveal(TreePath place) {
    Rectangle row = tree.getPathBounds(place);
    if (row != null) {
      tree.scrollRectToVisible(new Rectangle(0, row.y, 1, row.height));
    }
  }

  private void selectionChanged() {
    TreePath place = tree.getSelectionPath();
    if (!showing && place != null) {
      ShopPath path = path((DefaultMutableTreeNode) place.getLastPathComponent());
      if (!path.equals(selected)) {
        wishes.selected(path);
      }
    }
  }

  private void showAdditions() {
    JPopupMenu menu = new JPopupMenu();
    for (JMenuItem item : additions()) {
      menu.add(item);
    }
    menu.setName("parts.additions");
    menu.show(add, 0, add.getHeight());
  }

  /** What can be added at the selected part, as menu items. */
  List<JMenuItem> additions() {
    List<JMenuItem> items = new ArrayList<>();
    Mnemonics keys = new Mnemonics();
    for (Outline.Addition addition : Outline.additions(shop, selected)) {
      String holder =
          addition.list().parent().record(shop).flatMap(FormText::nameOf).orElse("the shop");
      JMenuItem item = new JMenuItem(addition.words() + " in " + holder);
      item.setName("add." + addition.words());
      keys.give(item);
      item.addActionListener(event -> wishes.add(addition));
      items.add(item);
    }
    return items;
  }

  /** Files dropped on the tree are taken, too. */
  void take(TransferHandler files) {
    tree.setTransferHandler(files);
  }

  void focus() {
    tree.requestFocusInWindow();
  }
}
