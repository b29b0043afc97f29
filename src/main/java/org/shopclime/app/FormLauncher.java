package org.shopclime.app;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.Optional;
import org.shopclime.form.ShopWindow;
import org.shopclime.shop.Shop;

/** Opens the window in which a shop is described and answered. */
public interface FormLauncher {

  /**
   * Whether a window can be shown here.
   *
   * @return true if there is a display
   */
  boolean hasDisplay();

  /**
   * Opens the window.
   *
   * @param file the file it was read from; empty for the usual example
   * @param shop a shop without problems
   */
  void open(Optional<Path> file, Shop shop);

  /**
   * The launcher of the program's own window.
   *
   * @return launcher
   */
  static FormLauncher window() {
    return new FormLauncher() {
      @Override
      public boolean hasDisplay() {
        return isDisplayHere();
      }

      @Override
      public void open(Optional<Path> file, Shop shop) {
        ShopWindow.open(file, shop);
      }
    };
  }

  /**
   * Whether this computer has a display that Java can draw on. A display that is named but does not
   * answer counts as none.
   *
   * @return true if so
   */
  static boolean isDisplayHere() {
    if (GraphicsEnvironment.isHeadless()) {
      return false;
    }
    try {
      return GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
    } catch (HeadlessException | AWTError e) {
      return false;
    }
  }
}
