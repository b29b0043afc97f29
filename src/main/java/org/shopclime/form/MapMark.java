package org.shopclime.form;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import javax.swing.Icon;
import org.shopclime.report.ChartLook;

/** The marks of the map; they differ by size and ring as well as by colour. */
enum MapMark implements Icon {
  /** A station while nothing is searched. */
  PLAIN(2.0, 0),
  /** A station that fits the search. */
  FITS(4, 1.2),
  /** A station that does not. */
  OTHER(1.6, 0),
  /** The station that is chosen. */
  CHOSEN(4, 2.4);

  private static final int ICON = 18;

  private final double radius;
  private final double ring;

  /**
   * A mark.
   *
   * @param radius radius of the dot, pixels at 100 %
   * @param ring width of the ring around it, pixels at 100 %; 0: none
   */
  MapMark(double radius, double ring) {
    this.radius = radius;
    this.ring = ring;
  }

  private Color colour() {
    ChartLook look = Look.charts();
    return switch (this) {
      case PLAIN, FITS -> look.indoor();
      case OTHER -> Look.colour("Shopclime.quiet");
      case CHOSEN -> look.heat();
    };
  }

  /** Draws the mark; {@code closer} makes dots larger where the map is. */
  void paint(Graphics2D ink, Point2D.Double at, double closer) {
    double unit = Look.scaled(100) / 100.0;
    double r = radius * unit * Math.min(2, closer);
    if (this == CHOSEN) {
      double outer = r + 4 * unit;
      ink.setColor(Look.colour("Shopclime.paper"));
      ink.fill(circle(at, outer));
      ink.setColor(Look.charts().ink());
      ink.setStroke(new BasicStroke((float) (ring * unit)));
      ink.draw(circle(at, outer));
    }
    ink.setColor(colour());
    ink.fill(circle(at, r));
    if (this == FITS) {
      ink.setColor(Look.charts().ink());
      ink.setStroke(new BasicStroke((float) (ring * unit)));
      ink.draw(circle(at, r));
    }
  }

  private static Ellipse2D.Double circle(Point2D.Double at, double r) {
    return new Ellipse2D.Double(at.x - r, at.y - r, 2 * r, 2 * r);
  }

  @Override
  public void paintIcon(Component on, Graphics graphics, int x, int y) {
    Graphics2D ink = (Graphics2D) graphics.create();
    ink.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    paint(ink, new Point2D.Double(x + getIconWidth() / 2.0, y + getIconHeight() / 2.0), 1);
    ink.dispose();
  }

  @Override
  public int getIconWidth() {
    return Look.scaled(ICON);
  }

  @Override
  public int getIconHeight() {
    return Look.scaled(ICON);
  }
}
