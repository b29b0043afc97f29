package org.shopclime.form;

import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/**
 * A line for who opens the form for the first time: this shop is an example; how to get one's own.
 */
final class Welcome {

  private final JPanel panel =
      new JPanel(new MigLayout("insets 4 10 4 10, fillx, gap 8", "[grow,fill][][]", "[center]"));

  Welcome(String shop, Runnable describe, Runnable open) {
    JTextArea words =
        Look.wrapped(
            "This is an example, \""
                + shop
                + "\". Describe your own from its length, width and kind; then refine it part by"
                + " part.");
    words.setName("welcome.words");
    JButton own = new JButton("Describe my shop…");
    own.setName("welcome.new");
    own.setToolTipText("Asks for building, size, work and place; all else is taken as usual.");
    own.addActionListener(event -> describe.run());
    JButton file = new JButton("Open a file…");
    file.setName("welcome.open");
    file.setToolTipText("Opens a shop that was saved before; a file can also be dropped here.");
    file.addActionListener(event -> open.run());
    panel.setName("welcome");
    panel.setBorder(BorderFactory.createCompoundBorder(Look.line(), panel.getBorder()));
    panel.add(words, "growx, wmin 100");
    panel.add(own, "wmin pref");
    panel.add(file, "wmin pref");
  }

  JComponent component() {
    return panel;
  }

  /** No longer wanted: another shop is on the desk, or this one was saved. */
  void leave() {
    panel.setVisible(false);
  }
}
