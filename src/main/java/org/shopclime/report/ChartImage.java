package org.shopclime.report;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.jfree.chart.ui.Drawable;

/** Charts as PNG images. */
public final class ChartImage {

  private static final double LARGEST_SIDE = 20_000;

  private ChartImage() {}

  /**
   * Draws a chart.
   *
   * @param drawing chart or picture
   * @param width width that text and lines are drawn for, px
   * @param height height, px
   * @param scale image dots for each px, 2 for print; image sides at most 20,000 dots
   * @return PNG file (ISO/IEC 15948)
   * @throws IllegalArgumentException if a side is out of range
   */
  public static byte[] png(Drawable drawing, int width, int height, double scale) {
    side("width", width * scale);
    side("height", height * scale);
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(width * scale),
            (int) Math.round(height * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
      graphics.scale(scale, scale);
      drawing.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    } finally {
      graphics.dispose();
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      if (!ImageIO.write(image, "png", out)) {
        throw new IllegalStateException("this Java writes no PNG");
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /**
   * Whether charts can be drawn here: some servers have no font at all, and Java then fails at the
   * first letter.
   *
   * @return true if a letter can be drawn
   */
  public static boolean canDraw() {
    try {
      BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
      Graphics2D graphics = image.createGraphics();
      try {
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
        return graphics.getFontMetrics().stringWidth("8") > 0;
      } finally {
        graphics.dispose();
      }
    } catch (OutOfMemoryError full) {
      throw full;
    } catch (RuntimeException | Error noFonts) {
      // Java says so with a bare Error where there is no font, and with others where it lacks a
      // library.
      return false;
    }
  }

  private static void side(String name, double dots) {
    if (!(dots >= 1 && dots <= LARGEST_SIDE)) {
      throw new IllegalArgumentException(
          name + " " + dots + " dots; takes 1 to " + (int) LARGEST_SIDE);
    }
  }
}
