package org.shopclime.form;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.quantity.UnitSystem;

/** The window over the form in which a station is chosen. */
final class PlaceDialog {

  private static final int WIDTH = 1180;
  private static final int HEIGHT = 690;

  private final JDialog dialog;
  private final PlacePicker picker;
  private final JButton use = new JButton("Use this place");
  private Optional<Station> answer = Optional.empty();

  private PlaceDialog(
      Component over, Climates climates, Optional<Station> current, UnitSystem units) {
    dialog =
        new JDialog(
            over instanceof Window window ? window : SwingUtilities.getWindowAncestor(over),
            "Whose weather?",
            Dialog.ModalityType.APPLICATION_MODAL);
    picker = new PlacePicker(climates, climates::typicalYear, current, units, this::accept);
    JButton back = new JButton("Back");
    use.setName("picker.use");
    use.setMnemonic('U');
    back.setName("picker.back");
    back.setMnemonic('B');
    use.addActionListener(event -> accept());
    back.addActionListener(event -> dialog.dispose());
    picker.whenChosen(() -> use.setEnabled(picker.chosen().isPresent()));
    use.setEnabled(current.isPresent());
    JPanel buttons = new JPanel(new MigLayout("insets 0 10 10 10, fillx", "push[][]"));
    buttons.add(use, "sizegroup button");
    buttons.add(back, "sizegroup button");
    JPanel content = new JPanel(new BorderLayout());
    content.add(picker.component(), BorderLayout.CENTER);
    content.add(buttons, BorderLayout.SOUTH);
    dialog.setContentPane(content);
    dialog.setName("picker");
    dialog.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
    dialog.getRootPane().setDefaultButton(use);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    Rectangle screen = dialog.getGraphicsConfiguration().getBounds();
    dialog.setSize(
        new Dimension(
            Math.min(Look.scaled(WIDTH), screen.width),
            Math.min(Look.scaled(HEIGHT), screen.height)));
    dialog.setLocationRelativeTo(over);
  }

  private void accept() {
    if (use.isEnabled()) {
      answer = picker.chosen();
      dialog.dispose();
    }
  }

  /**
   * Lets someone choose; returns once they have.
   *
   * @param over what the window lies over
   * @param climates stations to choose from
   * @param current station chosen up to now
   * @param units system of units to show
   * @return the station, or nothing if they went back
   */
  static Optional<Station> choose(
      Component over, Climates climates, Optional<Station> current, UnitSystem units) {
    PlaceDialog asked = new PlaceDialog(over, climates, current, units);
    asked.dialog.setVisible(true);
    return asked.answer;
  }
}
