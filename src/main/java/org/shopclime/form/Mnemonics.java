package org.shopclime.form;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JLabel;

/** Hands out the keys that lead to fields with Alt, none of them twice. */
final class Mnemonics {

  /** Keys of the menus and of the buttons that are always there. */
  static final String ALWAYS = "FEVPHARDCTN";

  private final Set<Character> taken = new HashSet<>();

  Mnemonics() {
    for (int i = 0; i < ALWAYS.length(); i++) {
      taken.add(ALWAYS.charAt(i));
    }
  }

  void give(JLabel label) {
    int at = free(label.getText());
    if (at >= 0) {
      label.setDisplayedMnemonic(key(label.getText(), at));
      label.setDisplayedMnemonicIndex(at);
    }
  }

  void give(AbstractButton button) {
    int at = free(button.getText());
    if (at >= 0) {
      button.setMnemonic(key(button.getText(), at));
      button.setDisplayedMnemonicIndex(at);
    }
  }

  private int free(String text) {
    String upper = text.toUpperCase(Locale.ROOT);
    for (int i = 0; i < upper.length() && upper.length() == text.length(); i++) {
      char key = upper.charAt(i);
      if (key >= 'A' && key <= 'Z' && taken.add(key)) {
        return i;
      }
    }
    return -1;
  }

  private static char key(String text, int at) {
    return text.toUpperCase(Locale.ROOT).charAt(at);
  }
}
