package org.shopclime.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.BiFunction;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;

/** Someone at the window: finds components by name, types, picks, clicks, waits for the answer. */
final class Person implements AutoCloseable {

  private static final long PATIENCE = 120_000;

  /** Answers dialogs as told. */
  static final class Replies implements Questions {

    final Deque<Unsaved> unsaved = new ArrayDeque<>();
    final Deque<Path> opened = new ArrayDeque<>();
    final Deque<Path> saved = new ArrayDeque<>();
    final Deque<Path> folders = new ArrayDeque<>();
    final Deque<Shop> made = new ArrayDeque<>();
    BiFunction<Climates, Optional<Station>, Optional<Station>> placeAsked =
        (climates, current) -> Optional.empty();
    final List<String> asked = new ArrayList<>();
    final List<String> problems = new ArrayList<>();

    @Override
    public Unsaved unsaved(String question) {
      asked.add(question);
      return unsaved.remove();
    }

    @Override
    public Optional<Path> fileToOpen(Optional<Path> near) {
      return Optional.ofNullable(opened.poll());
    }

    @Override
    public Optional<Path> fileToSave(Optional<Path> near, String name) {
      return Optional.ofNullable(saved.poll());
    }

    @Override
    public Optional<Path> folderForReport(Optional<Path> near) {
      return Optional.ofNullable(folders.poll());
    }

    @Override
    public Optional<Shop> newShop(KnownNames names, UnitSystem units) {
      return Optional.ofNullable(made.poll());
    }

    @Override
    public Optional<Station> place(Climates climates, Optional<Station> current, UnitSystem units) {
      return placeAsked.apply(climates, current);
    }

    @Override
    public boolean goOnWithCopy(String name) {
      asked.add(name);
      return true;
    }

    @Override
    public void problems(String title, List<String> lines) {
      problems.add(title);
      problems.addAll(lines);
    }

    @Override
    public void say(String title, String text) {
      asked.add(text);
    }
  }

  final Replies replies = new Replies();
  final Answering answering;
  private final ShopWindow window;

  Person(Shop shop, Climates climates, Answering answering, Path settings) {
    this.answering = answering;
    this.window =
        on(
            () -> {
              Look.use(false);
              ShopWindow made =
                  new ShopWindow(
                      Optional.empty(),
                      shop,
                      () -> answering,
                      new FormSettings(settings),
                      frame -> replies);
              made.frame().setVisible(true);
              made.offer(KnownNames.of(climates));
              return made;
            });
  }

  static <T> T on(Callable<T> work) {
    FutureTask<T> task = new FutureTask<>(work);
    try {
      if (SwingUtilities.isEventDispatchThread()) {
        return work.call();
      }
      SwingUtilities.invokeAndWait(task);
      return task.get();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  static void onEventThread(Runnable work) {
    on(
        () -> {
          work.run();
          return true;
        });
  }

  ShopWindow window() {
    return window;
  }

  JFrame frame() {
    return window.frame();
  }

  Shop shop() {
    return on(() -> window.session().now());
  }

  <C extends Component> C find(String name, Class<C> type) {
    return on(
        () ->
            type.cast(
                all(frame()).stream()
                    .filter(each -> name.equals(each.getName()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("nothing is called " + name))));
  }

  boolean exists(String name) {
    return on(() -> all(frame()).stream().anyMatch(each -> name.equals(each.getName())));
  }

  static List<Component> all(Container in) {
    List<Component> all = new ArrayList<>();
    for (Component each : in.getComponents()) {
      all.add(each);
      if (each instanceof Container container) {
        all.addAll(all(container));
      }
    }
    return all;
  }

  void select(String path) {
    onEventThread(() -> window.select(ShopPath.parse(path)));
  }

  void type(String name, String text) {
    JTextComponent field = find(name, JTextComponent.class);
    onEventThread(() -> field.setText(text));
  }

  void pick(String name, String word) {
    JComboBox<?> box = find(name, JComboBox.class);
    onEventThread(() -> box.setSelectedItem(word));
    assertPicked(box, word);
  }

  private static void assertPicked(JComboBox<?> box, String word) {
    if (!word.equals(on(box::getSelectedItem))) {
      throw new AssertionError(box.getName() + " does not offer " + word);
    }
  }

  void click(String name) {
    AbstractButton button = find(name, AbstractButton.class);
    onEventThread(button::doClick);
  }

  void menu(ShopMenu.Deed deed) {
    AbstractButton item =
        on(
            () -> {
              var bar = frame().getJMenuBar();
              for (int i = 0; i < bar.getMenuCount(); i++) {
                for (Component each : bar.getMenu(i).getMenuComponents()) {
                  if (("menu." + deed).equals(each.getName())) {
                    return (AbstractButton) each;
                  }
                }
              }
              throw new AssertionError("no menu item for " + deed);
            });
    onEventThread(item::doClick);
  }

  /** A text, its figures parted from their units by plain spaces. */
  String text(String name) {
    Component found = find(name, Component.class);
    String text =
        on(
            () ->
                found instanceof JLabel label
                    ? label.getText()
                    : found instanceof AbstractButton button
                        ? button.getText()
                        : ((JTextComponent) found).getText());
    return text.replace('\u00a0', ' ');
  }

  /** Waits until something is so. */
  void until(String what, Callable<Boolean> so) {
    await(what, so);
  }

  /** Waits until something is so, in any window. */
  static void await(String what, Callable<Boolean> so) {
    long end = System.nanoTime() + PATIENCE * 1_000_000;
    while (!on(so)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("waited in vain until " + what);
      }
      try {
        Thread.sleep(20);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  void untilSettled() {
    until("the answer is there", window::isSettled);
  }

  BufferedImage picture() {
    return on(
        () -> {
          BufferedImage image =
              new BufferedImage(
                  frame().getWidth(), frame().getHeight(), BufferedImage.TYPE_INT_RGB);
          frame().paint(image.getGraphics());
          return image;
        });
  }

  @Override
  public void close() {
    onEventThread(window::close);
    try {
      if (!window.filing().close().isDone(PATIENCE)) {
        throw new IllegalStateException("copies are still being written");
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
