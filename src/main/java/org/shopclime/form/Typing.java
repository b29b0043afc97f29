package org.shopclime.form;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/**
 * Watches a text field: what is typed counts a moment after the last key, or at Enter, or on
 * leaving.
 */
final class Typing {

  /** Wait after the last key, ms. */
  static final int WAIT = 150;

  private final JTextComponent field;
  private final Timer timer;
  private boolean showing;

  /**
   * Watches a field.
   *
   * @param field the field
   * @param typed what to do with what is typed
   * @param left what to do besides when the field is left
   * @param back what to do at Escape
   */
  Typing(JTextComponent field, Runnable typed, Runnable left, Runnable back) {
    this.field = field;
    this.timer = new Timer(WAIT, event -> typed.run());
    timer.setRepeats(false);
    field
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent event) {
                changed();
              }

              @Override
              public void removeUpdate(DocumentEvent event) {
                changed();
              }

              @Override
              public void changedUpdate(DocumentEvent event) {
                changed();
              }
            });
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            field.selectAll();
          }

          @Override
          public void focusLost(FocusEvent event) {
            timer.stop();
            typed.run();
            left.run();
          }
        });
    on("ENTER", typed);
    on("ESCAPE", back);
  }

  private void on(String key, Runnable action) {
    field.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
    field
        .getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                timer.stop();
                action.run();
              }
            });
  }

  private void changed() {
    if (!showing) {
      timer.restart();
    }
  }

  /** Sets the text without taking it for typing. */
  void show(String text) {
    silently(() -> field.setText(text));
    field.setCaretPosition(0);
  }

  /** Does something to the field that is not typing. */
  void silently(Runnable change) {
    showing = true;
    try {
      change.run();
    } finally {
      showing = false;
    }
    timer.stop();
  }

  String text() {
    return field.getText();
  }
}
