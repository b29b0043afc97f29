package org.shopclime.form;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** A panel that is as wide as the view it is scrolled in, so that its text wraps there. */
final class WidthPanel extends JPanel implements Scrollable {

  private static final int STEP = 24;

  private final int leastHeight;

  /** A panel as high as what is in it. */
  WidthPanel(LayoutManager layout) {
    this(layout, Integer.MAX_VALUE);
  }

  /** A panel as high as its view, but no less than some pixels at 100 %. */
  WidthPanel(LayoutManager layout, int leastHeight) {
    super(layout);
    this.leastHeight = leastHeight;
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return Look.scaled(STEP);
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return visible.height;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() == null || getParent().getWidth() >= getMinimumSize().width;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return leastHeight < Integer.MAX_VALUE
        && getParent() != null
        && getParent().getHeight() >= Look.scaled(leastHeight);
  }
}
