package org.shopclime.form;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.shopclime.plan.AirAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.report.AirPicture;
import org.shopclime.report.AirText;
import org.shopclime.report.OvenText;

/** The air of the shop in one picture, and its ovens, in words. */
final class AirView {

  private static final int LEAST = 320;

  private final WidthPanel panel =
      new WidthPanel(new MigLayout("insets 10, wrap 1, fillx", "[grow,fill]"));
  private final JScrollPane scroll = new JScrollPane(panel);
  private final Drawn drawn = new Drawn();
  private final JTextArea caption = Look.wrapped(AirPicture.CAPTION);
  private final JTextArea words = Look.wrapped("");

  AirView() {
    scroll.setBorder(BorderFactory.createEmptyBorder());
    panel.setName("air");
    drawn.setName("air.picture");
    drawn
        .getAccessibleContext()
        .setAccessibleName("The air of the shop, what comes in and goes out");
    caption.setName("air.caption");
    words.setName("air.words");
    panel.add(drawn, "growx, wmin 0");
    panel.add(caption, "growx, wmin 60");
    panel.add(words, "growx, wmin 60, gaptop 8");
    // Wrapped text is as high as its last width made it.
    Look.onResized(panel, () -> panel.revalidate());
  }

  JComponent component() {
    return scroll;
  }

  void show(SizeAnswer answer, UnitSystem units) {
    drawn.show(answer.air(), units);
    List<String> lines = new ArrayList<>(OvenText.lines(answer, units));
    lines.addAll(AirText.lines(answer, units));
    words.setText(String.join("\n\n", lines));
    caption.setVisible(answer.air().isPresent());
    panel.revalidate();
    panel.repaint();
  }

  void makeStale(boolean stale) {
    caption.setEnabled(!stale);
    words.setEnabled(!stale);
  }

  /** The picture, its letters growing with all others. */
  private static final class Drawn extends JPanel {

    private transient Optional<AirAnswer> air = Optional.empty();
    private UnitSystem units = UnitSystem.INCH_POUND;

    Drawn() {
      setOpaque(false);
    }

    void show(Optional<AirAnswer> answer, UnitSystem system) {
      air = answer;
      units = system;
      int high = air.map(each -> picture(each).height()).orElse(0);
      setPreferredSize(new Dimension(Look.scaled(LEAST), Look.scaled(high)));
      setMinimumSize(new Dimension(0, Look.scaled(high)));
    }

    private AirPicture picture(AirAnswer of) {
      return new AirPicture(of, units, Look.charts());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      super.paintComponent(graphics);
      if (air.isPresent()) {
        Graphics2D copy = (Graphics2D) graphics.create();
        try {
          double scale = Look.scaled(1000) / 1000.0;
          copy.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
          copy.setRenderingHint(
              RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
          copy.scale(scale, scale);
          picture(air.get())
              .draw(copy, new Rectangle2D.Double(0, 0, getWidth() / scale, getHeight() / scale));
        } finally {
          copy.dispose();
        }
      }
    }
  }
}
