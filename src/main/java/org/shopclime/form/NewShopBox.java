package org.shopclime.form;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.shopclime.climate.Climates;
import org.shopclime.climate.StationClimate;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.ShellPreset;
import org.shopclime.shop.ShellPresets;
import org.shopclime.shop.ShellSize;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.WorkPreset;
import org.shopclime.shop.WorkPresets;

/** Picks a building and a kind of work, stretches it to size, turns it and puts it somewhere. */
final class NewShopBox {

  private static final List<String> COMPASS = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");

  private final UnitSystem units;
  private final JPanel panel =
      new JPanel(new MigLayout("insets 4, wrap 2, fillx, hidemode 3", "[shrink 0]10[grow,fill]"));
  private final List<ShellPreset> shells = ShellPresets.all();
  private final List<WorkPreset> works = WorkPresets.all();
  private final JComboBox<String> shell =
      new JComboBox<>(shells.stream().map(ShellPreset::name).toArray(String[]::new));
  private final JComboBox<String> work =
      new JComboBox<>(works.stream().map(WorkPreset::name).toArray(String[]::new));
  private final JComboBox<String> station;
  private final JTextField length = new JTextField(8);
  private final JTextField width = new JTextField(8);
  private final JTextField height = new JTextField(8);
  private final JTextField unit = new JTextField(8);
  private final JComboBox<String> facing = new JComboBox<>(COMPASS.toArray(new String[0]));
  private final JTextArea assumptions = Look.wrapped("");
  private final JTextArea complaint = Look.wrapped("");
  private final Mnemonics mnemonics = new Mnemonics();

  NewShopBox(KnownNames names, UnitSystem units) {
    this.units = units;
    station = new JComboBox<>(names.stations().toArray(new String[0]));
    station.setEditable(true);
    station.setSelectedItem(""); // nobody's weather is taken unasked
    station.putClientProperty("JTextField.placeholderText", "pick a place near you");
    facing.setEditable(true);
    row("Building", shell, "new.shell");
    row("Length, front to back", length, "new.length");
    row("Width of the front", width, "new.width");
    row("Height of the walls", height, "new.height");
    row("The big door faces", facing, "new.facing");
    row("Work", work, "new.work");
    row("Cooling unit, by its label", unit, "new.unit");
    unit.putClientProperty("JTextField.placeholderText", "none");
    row("Weather of", station, "new.station");
    names.climates().ifPresent(this::addMap);
    assumptions.setName("new.assumptions");
    assumptions.setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
    assumptions.setFocusable(true);
    JScrollPane scroll = new JScrollPane(assumptions);
    scroll.setPreferredSize(new Dimension(Look.scaled(470), Look.scaled(150)));
    JLabel taken = new JLabel("Assumed until you change it");
    taken.setLabelFor(assumptions);
    panel.add(taken, "span 2, gaptop 6");
    panel.add(scroll, "span 2, growx, wmin 100, hmin 60");
    Look.letters(complaint, 1.0, "Shopclime.complaint");
    complaint.setName("new.complaint");
    complaint.setVisible(false);
    panel.add(complaint, "span 2, growx, wmin 100");
    unit.setText(usualUnit());
    shell.addActionListener(event -> showUsual());
    work.addActionListener(event -> showAssumptions());
    shell.setSelectedIndex(Math.min(1, shells.size() - 1));
    showUsual();
  }

  private void row(String words, JComponent field, String name) {
    JLabel label = new JLabel(words);
    label.setLabelFor(field);
    mnemonics.give(label);
    field.setName(name);
    panel.add(label);
    panel.add(field, "growx");
  }

  /** A button that opens the map, beside the weather. */
  private void addMap(Climates climates) {
    JButton map = new JButton("Find it on the map…");
    map.setName("new.map");
    map.addActionListener(
        event ->
            PlaceDialog.choose(
                    panel,
                    climates,
                    climates
                        .find(String.valueOf(station.getSelectedItem()))
                        .map(StationClimate::station),
                    units)
                .ifPresent(found -> station.setSelectedItem(KnownNames.name(found))));
    panel.add(map, "skip 1, alignx left");
  }

  JComponent component() {
    return panel;
  }

  private ShellSize usual() {
    return shells.get(shell.getSelectedIndex()).usual();
  }

  /** What was typed, with the unit of what stood there at first if it has none. */
  private String withUnit(JTextField field, double usual) {
    return FormText.withUnit(field.getText(), FormText.figure(Kind.LENGTH, usual, units));
  }

  private String usualUnit() {
    return FormText.figure(Kind.POWER, StartShop.USUAL_UNIT, units);
  }

  /** Capacity of the unit, W; none where nothing is typed. */
  private OptionalDouble unit(List<String> complaints) {
    String typed = unit.getText().strip();
    if (typed.isEmpty() || typed.equalsIgnoreCase("none")) {
      return OptionalDouble.empty();
    }
    Reading reading =
        ShopParts.of(CoolingUnit.class).stream()
            .filter(entry -> entry.name().equals("capacity"))
            .map(entry -> ShopParts.read(entry.say(), FormText.withUnit(typed, usualUnit()), units))
            .findFirst()
            .orElseThrow();
    if (reading instanceof Reading.Good good) {
      return good.si() > 0 ? OptionalDouble.of(good.si()) : OptionalDouble.empty();
    }
    complaints.add("Cooling unit: " + ((Reading.Bad) reading).sentence() + ", or nothing");
    return OptionalDouble.empty();
  }

  private void showUsual() {
    ShellSize usual = usual();
    length.setText(FormText.figure(Kind.LENGTH, usual.length(), units));
    width.setText(FormText.figure(Kind.LENGTH, usual.width(), units));
    height.setText(FormText.figure(Kind.LENGTH, usual.height(), units));
    facing.setSelectedItem(COMPASS.get((int) Math.round(usual.facing() / 45) % COMPASS.size()));
    showAssumptions();
  }

  private void showAssumptions() {
    assumptions.setText(
        StartShop.assumptions(
            shells.get(shell.getSelectedIndex()), works.get(work.getSelectedIndex())));
    assumptions.setCaretPosition(0);
  }

  /** The shop, or nothing and a complaint in the box. */
  Optional<Shop> shop() {
    List<String> complaints = new ArrayList<>();
    double[] figures = {
      figure("Length", Kind.LENGTH, withUnit(length, usual().length()), complaints),
      figure("Width", Kind.LENGTH, withUnit(width, usual().width()), complaints),
      figure("Height", Kind.LENGTH, withUnit(height, usual().height()), complaints),
      figure("Direction", Kind.ANGLE, String.valueOf(facing.getSelectedItem()), complaints)
    };
    OptionalDouble cooling = unit(complaints);
    String place = String.valueOf(station.getSelectedItem());
    if (place.isBlank() || station.getSelectedItem() == null) {
      complaints.add("Weather: takes a place of the list or a station number.");
    }
    if (complaints.isEmpty()) {
      try {
        ShellSize size = new ShellSize(figures[0], figures[1], figures[2], figures[3]);
        ShellPreset building = shells.get(shell.getSelectedIndex());
        return Optional.of(
            StartShop.of(
                building, size, works.get(work.getSelectedIndex()), place, cooling, units));
      } catch (IllegalArgumentException e) {
        complaints.add(
            "A building takes "
                + Quantities.show(Kind.LENGTH, 2, units)
                + " to "
                + Quantities.show(Kind.LENGTH, 60, units)
                + " of length and width, and walls from "
                + Quantities.show(Kind.LENGTH, 1.8, units)
                + " to "
                + Quantities.show(Kind.LENGTH, 10, units)
                + ".");
      }
    }
    complaint.setText(String.join("\n", complaints));
    complaint.setVisible(true);
    return Optional.empty();
  }

  private double figure(String what, Kind kind, String text, List<String> complaints) {
    Reading reading = Quantities.read(kind, text);
    if (reading instanceof Reading.Good good) {
      return good.si();
    }
    complaints.add(what + ": " + ((Reading.Bad) reading).sentence());
    return Double.NaN;
  }
}
