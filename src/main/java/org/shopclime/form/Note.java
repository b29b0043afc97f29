package org.shopclime.form;

import java.util.Optional;
import javax.swing.JTextArea;

/** The line under a field: its help or, in its place, what is wrong with what was typed. */
final class Note {

  private final JTextArea area = Look.wrapped("");
  private final String help;

  Note(String help, String name) {
    this.help = help;
    area.setName(name + ".note");
    calm();
  }

  JTextArea component() {
    return area;
  }

  void complain(String complaint) {
    say("\u26A0 " + complaint, "Shopclime.complaint");
  }

  /** What is wrong at a place, if anything is. */
  void tell(Optional<String> problem) {
    problem.ifPresentOrElse(this::complain, this::calm);
  }

  void calm() {
    say(help, "Shopclime.quiet");
  }

  void say(String text, String colour) {
    Look.letters(area, 0.9, colour);
    area.setText(text);
    area.setVisible(!text.isEmpty());
  }
}
