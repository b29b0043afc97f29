package org.shopclime.app;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.Optional;

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
   * @param file a shop file that was read without problems; empty for the usual example
   */
  void open(Optional<Path> file);

  /**
   * A launcher that opens nothing, for as long as there is no window.
   *
   * @return launcher without a display
   */
  static FormLauncher none() {
    return new FormLauncher() {
      @Override
      public boolean hasDisplay() {
        return false;
      }

      @Override
      public void open(Optional<Path> file) {
        throw new IllegalStateException("no display");
      }
    };
  }

  /**
   * Whether this computer has a display that Java can draw on.
   *
   * @return true if so
   */
  static boolean isDisplayHere() {
    return !GraphicsEnvironment.isHeadless();
  }
}
