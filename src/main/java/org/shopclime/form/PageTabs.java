package org.shopclime.form;

import com.formdev.flatlaf.ui.FlatTabbedPaneUI;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JTabbedPane;

/**
 * Tabs that go on in further lines where one has not enough room, in reading order: the first of
 * them in the upper line, wherever the chosen one is.
 */
final class PageTabs extends JTabbedPane {

  private static final long serialVersionUID = 1L;

  PageTabs() {
    super(TOP, WRAP_TAB_LAYOUT);
    putClientProperty("FlatLaf.style", "tabInsets: 4,8,4,8; rotateTabRuns: false");
  }

  @Override
  public void updateUI() {
    setUI(new DownwardUi()); // a theme would put back its own, which stacks lines upward
  }

  /** Lines stacked downward, their titles no wider than they need. */
  private static final class DownwardUi extends FlatTabbedPaneUI {

    @Override
    protected boolean shouldPadTabRun(int placement, int run) {
      return false;
    }

    @Override
    protected LayoutManager createLayoutManager() {
      return new FlatTabbedPaneLayout() {
        @Override
        protected void calculateTabRects(int placement, int count) {
          super.calculateTabRects(placement, count);
          int sum = count == 0 ? 0 : rects[0].y + rects[count - 1].y;
          for (int i = 0; i < count; i++) {
            Rectangle title = rects[i];
            title.y = sum - title.y;
          }
        }
      };
    }
  }
}
