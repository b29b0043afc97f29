package org.shopclime.form;

import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;

/**
 * The middle of the window: parts, fields and pictures side by side; where there is little room,
 * fields and pictures behind each other.
 */
final class Middle {

  /** Below it a picture beside tree and fields would be too narrow to read. */
  private static final double WIDE = 1180;

  private static final int PARTS = 310;
  private static final int FIELDS = 410;

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JComponent parts;
  private final JComponent fields;
  private final JComponent pictures;
  private final JTabbedPane tabs = new JTabbedPane();
  private final JSplitPane outer = split();
  private final JSplitPane inner = split();
  private boolean laidOut;
  private boolean wide;

  Middle(JComponent parts, JComponent fields, JComponent pictures) {
    this.parts = parts;
    this.fields = fields;
    this.pictures = pictures;
    tabs.setName("middle.tabs");
    panel.add(outer);
    outer.setName("middle.outer");
    inner.setName("middle.inner");
  }

  private static JSplitPane split() {
    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT);
    split.setBorder(BorderFactory.createEmptyBorder());
    split.setContinuousLayout(true);
    return split;
  }

  JComponent component() {
    return panel;
  }

  /** Lays out for a width in pixels at 100 %. */
  void fit(double width) {
    boolean now = width >= WIDE;
    if (laidOut && now == wide) {
      return;
    }
    laidOut = true;
    wide = now;
    tabs.removeAll();
    outer.setLeftComponent(parts);
    // the one that was put away missed every change of theme since
    (wide ? inner : tabs).updateUI();
    if (wide) {
      inner.setLeftComponent(fields);
      inner.setRightComponent(pictures);
      outer.setRightComponent(inner);
      inner.setDividerLocation(Look.scaled(FIELDS));
      inner.setResizeWeight(0.25);
    } else {
      tabs.addTab("Fields", null, fields, "What is typed of the part that is chosen (F7)");
      tabs.addTab("Answers", null, pictures, "Pictures, tables and figures (F8)");
      outer.setRightComponent(tabs);
    }
    double share = Math.min(PARTS, 0.35 * width) / PARTS;
    int least = parts.getMinimumSize().width;
    outer.setDividerLocation(Math.max(least, (int) (Look.scaled(PARTS) * share)));
    outer.setResizeWeight(0.1);
    panel.revalidate();
  }

  void showFields() {
    if (!wide) {
      tabs.setSelectedIndex(0);
    }
  }

  void showAnswers() {
    if (!wide) {
      tabs.setSelectedIndex(1);
    }
  }
}
