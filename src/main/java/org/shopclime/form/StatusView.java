package org.shopclime.form;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The bottom line: what goes on, what to mind, where the shop is kept. */
final class StatusView {

  private static final int LINES = 4;

  /**
   * Something to mind.
   *
   * @param path where it stands
   * @param text what it is
   */
  record Line(String path, String text) {

    @Override
    public String toString() {
      return text;
    }
  }

  private final JPanel panel =
      new JPanel(
          new MigLayout(
              "insets 3 10 4 10, fillx, hidemode 3, gap 8 3", "[][grow,fill][][][right]"));
  private final JToggleButton open = new JToggleButton(FormText.warnings(0));
  private final JLabel doing = new JLabel(" ");
  private final JProgressBar bar = new JProgressBar(0, 100);
  private final JButton cancel = new JButton("Cancel");
  private final JLabel kept = new JLabel(" ");
  private final DefaultListModel<Line> lines = new DefaultListModel<>();
  private final JList<Line> list = new JList<>(lines);
  private final JScrollPane scroll = new JScrollPane(list);

  StatusView(Runnable cancelled, Consumer<String> go) {
    open.setName("warnings.toggle");
    open.setMnemonic('N');
    open.setEnabled(false);
    open.addActionListener(event -> unfold());
    doing.setName("status.doing");
    bar.setName("status.progress");
    cancel.setName("status.cancel");
    cancel.setMnemonic('C');
    cancel.setToolTipText("Stops the reckoning; the next change starts it again.");
    cancel.addActionListener(event -> cancelled.run());
    kept.setName("status.kept");
    list.setName("warnings.list");
    list.setVisibleRowCount(LINES);
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.getAccessibleContext().setAccessibleName("Things to mind");
    list.addListSelectionListener(
        event -> {
          if (!event.getValueIsAdjusting() && list.getSelectedValue() != null) {
            go.accept(list.getSelectedValue().path());
          }
        });
    scroll.setBorder(Look.line());
    scroll.setVisible(false);
    panel.add(scroll, "span, growx, wmin 60, wrap");
    panel.add(open);
    panel.add(doing, "wmin 40");
    panel.add(bar, "width 60:110:160");
    panel.add(cancel);
    panel.add(kept);
    idle("");
  }

  JComponent component() {
    return panel;
  }

  private void unfold() {
    scroll.setVisible(open.isSelected());
    panel.revalidate();
  }

  void mind(List<Line> now) {
    open.setText(FormText.warnings(now.size()));
    open.setEnabled(!now.isEmpty());
    if (now.isEmpty() && open.isSelected()) {
      open.setSelected(false);
      unfold();
    }
    boolean same = lines.size() == now.size();
    for (int i = 0; same && i < now.size(); i++) {
      same = lines.get(i).equals(now.get(i));
    }
    if (!same) {
      lines.clear();
      now.forEach(lines::addElement);
      list.setVisibleRowCount(Math.max(1, Math.min(LINES, now.size())));
      panel.revalidate();
    }
  }

  void busy(String what, double done) {
    doing.setText(what);
    bar.setVisible(true);
    cancel.setVisible(true);
    bar.setIndeterminate(done < 0);
    bar.setValue((int) Math.round(100 * Math.max(0, done)));
  }

  void idle(String what) {
    doing.setText(what.isEmpty() ? " " : what);
    bar.setIndeterminate(false);
    bar.setVisible(false);
    cancel.setVisible(false);
  }

  void kept(String text) {
    kept.setText(text);
  }
}
