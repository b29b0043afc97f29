package org.shopclime.form;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.JPanel;
import org.shopclime.report.PlacesPicture;

/** The picture of all places, as high as it must be for the width it gets. */
final class AirPictureBox extends JPanel {

  private static final long serialVersionUID = 1L;
  private static final int USUAL = 700;

  private transient Optional<PlacesPicture> picture = Optional.empty();

  AirPictureBox() {
    setName("air.picture");
    setOpaque(false);
    setFocusable(true);
    getAccessibleContext()
        .setAccessibleName("The shop in section with its compressor in each place");
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent event) {
            repaint();
          }
        });
  }

  void show(PlacesPicture now) {
    picture = Optional.of(now);
    getAccessibleContext().setAccessibleDescription(now.words());
    revalidate();
    repaint();
  }

  private static double scale() {
    return Look.scaled(1000) / 1000.0;
  }

  @Override
  public Dimension getPreferredSize() {
    double width = (getWidth() > 0 ? getWidth() : Look.scaled(USUAL)) / scale();
    double height = picture.map(each -> each.height(width)).orElse(0.0);
    return new Dimension(Look.scaled(USUAL), (int) Math.ceil(height * scale()));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D ink = (Graphics2D) graphics.create();
    ink.scale(scale(), scale());
    picture.ifPresent(
        each ->
            each.draw(
                ink, new Rectangle2D.Double(0, 0, getWidth() / scale(), getHeight() / scale())));
    ink.dispose();
    if (isFocusOwner()) {
      graphics.setColor(Look.colour("Component.focusedBorderColor"));
      graphics.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    }
  }
}
