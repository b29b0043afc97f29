package org.shopclime.form;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Help;

/** The line under a field: its help or, in its place, what is wrong with what was typed. */
final class Note {

  private final JTextArea area = Look.wrapped("");
  private final String both;
  private String help;
  private boolean calm = true;
  private boolean aside;
  private Optional<JComponent> described = Optional.empty();

  /**
   * A line of help.
   *
   * @param both help in both systems of units, inch-pound until told otherwise
   * @param name of the field it stands under
   */
  Note(String both, String name) {
    this.both = both;
    this.help = Help.in(both, UnitSystem.INCH_POUND);
    area.setName(name + ".note");
    calm();
  }

  JTextArea component() {
    return area;
  }

  /** Reads itself out with a field. */
  void describe(JComponent field) {
    described = Optional.of(field);
    field.getAccessibleContext().setAccessibleDescription(area.getText());
  }

  /** Puts the help in the units of the fields. */
  void use(UnitSystem units) {
    String now = Help.in(both, units);
    if (!now.equals(help)) {
      help = now;
      if (calm) {
        calm();
      }
    }
  }

  /** Hides it with its field, or shows it again. */
  void setAside(boolean hidden) {
    aside = hidden;
    showIfAny();
  }

  private void showIfAny() {
    area.setVisible(!aside && !area.getText().isEmpty());
  }

  void complain(String complaint) {
    calm = false;
    say("\u26A0 " + complaint, "Shopclime.complaint");
  }

  /** What is wrong at a place, if anything is. */
  void tell(Optional<String> problem) {
    problem.ifPresentOrElse(this::complain, this::calm);
  }

  void calm() {
    calm = true;
    say(help, "Shopclime.quiet");
  }

  void say(String text, String colour) {
    Look.letters(area, 0.9, colour);
    area.setText(text);
    described.ifPresent(field -> field.getAccessibleContext().setAccessibleDescription(text));
    showIfAny();
  }
}
