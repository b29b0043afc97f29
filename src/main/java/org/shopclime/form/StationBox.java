package org.shopclime.form;

import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** The field of the station, and the button to the map beside it. */
final class StationBox implements FieldEditor {

  private final TextBox text;
  private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill]6[]"));

  StationBox(Bench bench, ShopPath path, TextBox text) {
    this.text = text;
    JButton map = new JButton("Map…");
    map.setName(path + ".map");
    map.setToolTipText("Choose from a map and a list, and see the weather there");
    map.getAccessibleContext().setAccessibleName("Choose the place from a map and a list");
    map.addActionListener(event -> bench.proposals().choosePlace());
    bench.mnemonics().give(map);
    panel.setOpaque(false);
    panel.add(text.component(), "wmin 60");
    panel.add(map);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent focus() {
    return text.focus();
  }

  @Override
  public Optional<Note> note() {
    return text.note();
  }

  @Override
  public void show(Shop shop, UnitSystem units) {
    text.show(shop, units);
  }

  @Override
  public void complain(Map<String, String> problems) {
    text.complain(problems);
  }

  @Override
  public boolean isReadable() {
    return text.isReadable();
  }
}
