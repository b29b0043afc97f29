package org.shopclime.form;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.climate.TypicalYear;
import org.shopclime.quantity.UnitSystem;

/** Search, list, map and climate card: which station's weather a shop gets. */
final class PlacePicker {

  private static final int PAGE = 8;

  private final Climates climates;
  private final Function<Station, Optional<TypicalYear>> years;
  private final PlaceFinder finder;
  private final Runnable accept;
  private final JPanel panel = new JPanel(new MigLayout("insets 10, fill", "[grow,fill]"));
  private final JTextField search = new JTextField();
  private final JTextArea told = Look.wrapped("");
  private final PlaceTable rows;
  private final JTable list;
  private final MapView map;
  private final ClimateCard card;
  private PlaceFinder.Found found;
  private Optional<Station> chosen;
  private boolean showing;

  /**
   * A picker.
   *
   * @param climates stations to choose from
   * @param years their typical years
   * @param current station chosen up to now, if it is one of them
   * @param units system of units to show
   * @param accept what a double click or Enter in the list does
   */
  PlacePicker(
      Climates climates,
      Function<Station, Optional<TypicalYear>> years,
      Optional<Station> current,
      UnitSystem units,
      Runnable accept) {
    this.climates = climates;
    this.years = years;
    this.accept = accept;
    this.chosen = current;
    this.finder = new PlaceFinder(climates.stations(), current);
    this.found = finder.find("");
    this.rows = new PlaceTable(units);
    this.list = new JTable(rows);
    this.map = new MapView(new StationMap(climates.stations()), this::clicked);
    this.card = new ClimateCard(units);
    dressSearch();
    dressList();
    layOut();
    show();
  }

  private void dressSearch() {
    search.setName("picker.search");
    search.putClientProperty(
        "JTextField.placeholderText", "city, state, station number, or 30.7, -88.2");
    search.putClientProperty("JTextField.showClearButton", true);
    search
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent event) {
                typed();
              }

              @Override
              public void removeUpdate(DocumentEvent event) {
                typed();
              }

              @Override
              public void changedUpdate(DocumentEvent event) {
                typed();
              }
            });
    step("UP", -1);
    step("DOWN", 1);
    step("PAGE_UP", -PAGE);
    step("PAGE_DOWN", PAGE);
    told.setName("picker.told");
  }

  /** Keys that go through the list without leaving the search. */
  private void step(String key, int rowsOn) {
    search.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
    search.getActionMap().put(key, action(() -> move(rowsOn)));
  }

  private static AbstractAction action(Runnable deed) {
    return new AbstractAction() {
      private static final long serialVersionUID = 1L;

      @Override
      public void actionPerformed(ActionEvent event) {
        deed.run();
      }
    };
  }

  private void move(int rowsOn) {
    int count = found.rows().size();
    if (count > 0) {
      int at = Math.max(0, Math.min(count - 1, list.getSelectedRow() + rowsOn));
      list.setRowSelectionInterval(at, at);
    }
  }

  private void dressList() {
    list.setName("picker.list");
    list.getAccessibleContext().setAccessibleName("Stations that fit");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setFillsViewportHeight(true);
    list.getTableHeader().setReorderingAllowed(false);
    list.getTableHeader().putClientProperty("FlatLaf.style", "height: 26");
    list.getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!showing && list.getSelectedRow() >= 0) {
                chosen = Optional.of(found.rows().get(list.getSelectedRow()).station());
                showChosen();
              }
            });
    list.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke("ENTER"), "accept");
    list.getActionMap().put("accept", action(accept));
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            if (event.getClickCount() == 2 && list.rowAtPoint(event.getPoint()) >= 0) {
              accept.run();
            }
          }
        });
    // Tab leaves the list instead of going from cell to cell
    list.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    list.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    DefaultTableCellRenderer right = new DefaultTableCellRenderer();
    right.setHorizontalAlignment(JLabel.RIGHT);
    int[] widths = {270, 50, 80, 80};
    for (int column = 0; column < widths.length; column++) {
      list.getColumnModel().getColumn(column).setPreferredWidth(Look.scaled(widths[column]));
      if (column > 1) {
        list.getColumnModel().getColumn(column).setCellRenderer(right);
      }
    }
  }

  private void layOut() {
    JLabel label = new JLabel("Search");
    label.setName("picker.search.label");
    label.setDisplayedMnemonic('S');
    label.setLabelFor(search);
    JScrollPane scroll = new JScrollPane(list);
    scroll.setPreferredSize(new Dimension(Look.scaled(560), Look.scaled(170)));
    JPanel left =
        new JPanel(
            new MigLayout("insets 0 0 0 6, fill, wrap 2", "[][grow,fill]", "[][][][grow][]"));
    left.add(label);
    left.add(search, "wmin 120");
    left.add(told, "span 2, growx, wmin 100");
    left.add(scroll, "span 2, grow, hmin 70, hmax 34%, wmin 200");
    JPanel paper = new JPanel(new MigLayout("insets 1, fill", "[grow,fill]", "[grow,fill]"));
    paper.setBorder(Look.line());
    paper.add(map, "wmin 200, hmin 150");
    left.add(paper, "span 2, grow, push");
    left.add(legend(), "span 2, growx");
    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, card.component());
    split.setName("picker.split");
    split.setBorder(BorderFactory.createEmptyBorder());
    split.setContinuousLayout(true);
    split.setResizeWeight(0.55);
    panel.add(split, "grow");
  }

  /** What the marks of the map mean, and the buttons that go closer. */
  private JComponent legend() {
    JPanel row = new JPanel(new MigLayout("insets 0, gap 8 0", "[][][]push[][][]"));
    row.add(mark(MapMark.CHOSEN, "chosen"));
    row.add(mark(MapMark.FITS, "fits the search"));
    row.add(mark(MapMark.OTHER, "another station"));
    row.add(button("Closer", 'L', "picker.closer", map::closer));
    row.add(button("Further", 'F', "picker.further", map::further));
    row.add(button("Whole map", 'W', "picker.whole", map::whole));
    return row;
  }

  private static JLabel mark(MapMark mark, String words) {
    JLabel label = new JLabel(words, mark, JLabel.LEADING);
    label.setName("picker.mark." + mark);
    return label;
  }

  private static JButton button(String words, char mnemonic, String name, Runnable deed) {
    JButton button = new JButton(words);
    button.setName(name);
    button.setMnemonic(mnemonic);
    button.addActionListener(event -> deed.run());
    return button;
  }

  JComponent component() {
    return panel;
  }

  JTextField search() {
    return search;
  }

  /** The station that is chosen; none where nothing fits. */
  Optional<Station> chosen() {
    return chosen;
  }

  /** Asks to be told whenever another station is chosen, or none. */
  void whenChosen(Runnable listener) {
    panel.addPropertyChangeListener("chosen", event -> listener.run());
  }

  private void typed() {
    if (showing) {
      return;
    }
    found = finder.find(search.getText());
    if (!search.getText().isBlank()) {
      chosen =
          found.kind() == PlaceFinder.Kind.ALIKE
              ? Optional.empty() // Enter must not take what was not meant
              : found.rows().stream().findFirst().map(PlaceFinder.Row::station);
    }
    show();
  }

  /** A station clicked on the map; if it does not fit the search, the search is over. */
  private void clicked(Station station) {
    chosen = Optional.of(station);
    if (!found.ids().contains(station.id())) {
      showing = true;
      search.setText("");
      showing = false;
      found = finder.find("");
    }
    show();
  }

  private void show() {
    showing = true;
    rows.show(found);
    told.setText(found.told());
    Look.letters(
        told,
        1,
        found.kind() == PlaceFinder.Kind.ALIKE ? "Shopclime.complaint" : "Shopclime.quiet");
    list.clearSelection();
    chosen.ifPresent(
        station -> {
          for (int i = 0; i < found.rows().size(); i++) {
            if (found.rows().get(i).station().id().equals(station.id())) {
              list.setRowSelectionInterval(i, i);
            }
          }
        });
    showing = false;
    showChosen();
  }

  private void showChosen() {
    int row = list.getSelectedRow();
    Rectangle cell = list.getCellRect(Math.max(0, row), 0, true);
    list.scrollRectToVisible(cell);
    map.show(found.ids(), found.kind() != PlaceFinder.Kind.ALL, chosen);
    panel.firePropertyChange("chosen", false, true);
    if (chosen.isEmpty()) {
      card.clear();
      return;
    }
    Station asked = chosen.get();
    Background.run(
        () -> new ClimateCard.Content(climates.climate(asked), years.apply(asked)),
        content -> {
          if (chosen.equals(Optional.of(asked))) {
            card.show(content);
          }
        },
        failed -> card.fail("The weather of this station could not be read: " + failed));
  }
}
