package org.shopclime.form;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;

/** Notes every touch of a component off the event thread. */
final class EventThreadGuard extends RepaintManager {

  private final List<Throwable> touches = new CopyOnWriteArrayList<>();

  static EventThreadGuard install() {
    EventThreadGuard guard = new EventThreadGuard();
    RepaintManager.setCurrentManager(guard);
    return guard;
  }

  /** What touched a component from another thread. */
  List<Throwable> touches() {
    return List.copyOf(touches);
  }

  private void look() {
    if (!SwingUtilities.isEventDispatchThread()) {
      touches.add(new IllegalStateException("touched by " + Thread.currentThread().getName()));
    }
  }

  @Override
  public synchronized void addInvalidComponent(JComponent component) {
    look();
    super.addInvalidComponent(component);
  }

  @Override
  public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
    look();
    super.addDirtyRegion(component, x, y, width, height);
  }
}
