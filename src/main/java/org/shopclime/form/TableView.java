package org.shopclime.form;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.MouseWheelListener;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableColumn;
import net.miginfocom.swing.MigLayout;

/** A table to read, its columns as wide as what stands in them. */
final class TableView {

  private static final int GAP = 14;
  private static final int LEAST_GAP = 3;

  private final JPanel panel =
      new JPanel(new MigLayout("insets 8, fill, wrap 1", "[grow,fill]", "[][grow,fill]"));
  private final JTable table;
  private final JScrollPane scroll;
  private TableText.Table shown = new TableText.Table(List.of(), List.of());
  private boolean isWhole;

  TableView(String name, String meaning) {
    this.table =
        new JTable() {
          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    table.setName(name);
    table.getAccessibleContext().setAccessibleName(meaning);
    table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    table.setFillsViewportHeight(true);
    table.getTableHeader().setReorderingAllowed(false);
    JMenuItem copy = new JMenuItem("Copy table", 'C');
    copy.addActionListener(
        event ->
            Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(shown.asTabbed()), null));
    JPopupMenu menu = new JPopupMenu();
    menu.setName(name + ".menu");
    menu.add(copy);
    table.setComponentPopupMenu(menu);
    JTextArea text = Look.wrapped(meaning);
    text.setName(name + ".meaning");
    Look.letters(text, 0.95, "Shopclime.quiet");
    scroll = new JScrollPane(table);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    Look.onResized(scroll.getViewport(), () -> fit());
    panel.add(text, "wmin 60");
    panel.add(scroll, "wmin 60, hmin 40");
  }

  JComponent component() {
    return panel;
  }

  /** Shows all rows at once, for a page that is scrolled as a whole. */
  TableView whole() {
    isWhole = true;
    // the wheel then turns the page, also over the table
    for (MouseWheelListener listener : scroll.getMouseWheelListeners()) {
      scroll.removeMouseWheelListener(listener);
    }
    return this;
  }

  void show(TableText.Table text) {
    shown = text;
    Object[][] rows = text.rows().stream().map(List::toArray).toArray(Object[][]::new);
    Object[] heads =
        text.heads().stream()
            .map(head -> "<html><center>" + head.replace("\n", "<br>") + "</center></html>")
            .toArray();
    table.setModel(new DefaultTableModel(rows, heads));
    DefaultTableCellRenderer right = new DefaultTableCellRenderer();
    right.setHorizontalAlignment(SwingConstants.RIGHT);
    for (int column = 1; column < table.getColumnCount(); column++) {
      table.getColumnModel().getColumn(column).setCellRenderer(right);
    }
    fit();
    if (isWhole) {
      int high =
          table.getTableHeader().getPreferredSize().height
              + table.getPreferredSize().height
              + scroll.getHorizontalScrollBar().getPreferredSize().height;
      scroll.setMinimumSize(new Dimension(0, high));
      scroll.setPreferredSize(new Dimension(0, high));
    }
  }

  /** Columns as wide as what stands in them; where that is a little too much, with less between. */
  private void fit() {
    int wide = 0;
    for (int column = 0; column < table.getColumnCount(); column++) {
      wide += needed(column);
    }
    int room = scroll.getViewport().getWidth() - wide;
    int columns = Math.max(1, table.getColumnCount());
    int most = Look.scaled(GAP);
    int gap = room >= columns * Look.scaled(LEAST_GAP) ? Math.min(most, room / columns) : most;
    for (int column = 0; column < table.getColumnCount(); column++) {
      table.getColumnModel().getColumn(column).setPreferredWidth(needed(column) + gap);
    }
  }

  private int needed(int column) {
    TableColumn place = table.getColumnModel().getColumn(column);
    Component head =
        table
            .getTableHeader()
            .getDefaultRenderer()
            .getTableCellRendererComponent(table, place.getHeaderValue(), false, false, 0, column);
    int width = head.getPreferredSize().width;
    for (int row = 0; row < table.getRowCount(); row++) {
      Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
      width = Math.max(width, cell.getPreferredSize().width);
    }
    return width;
  }

  void makeStale(boolean stale) {
    table.setEnabled(!stale);
  }
}
