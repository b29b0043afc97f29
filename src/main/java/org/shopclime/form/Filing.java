package org.shopclime.form;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.Timer;
import org.shopclime.quantity.Problem;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;
import org.shopclime.shop.ShopReading;
import org.shopclime.shop.Stations;

/** Opening and saving, the question about unsaved changes, and the copy set aside. */
final class Filing {

  /** How long a change may go without a copy set aside, ms. */
  private static final int COPY_AFTER = 10_000;

  private final ShopSession session;
  private final Questions questions;
  private final FormSettings settings;
  private final Supplier<Answering> answering;
  private final Runnable changed;
  private final Timer copying;
  private final CopyAside copy;

  /**
   * Files for a session.
   *
   * @param session shop on the desk
   * @param questions what is asked
   * @param settings what is remembered
   * @param answering where stations are looked up, off the event thread
   * @param changed told when the session holds another shop or is saved
   */
  Filing(
      ShopSession session,
      Questions questions,
      FormSettings settings,
      Supplier<Answering> answering,
      Runnable changed) {
    this.session = session;
    this.questions = questions;
    this.settings = settings;
    this.answering = answering;
    this.changed = changed;
    this.copying = new Timer(COPY_AFTER, event -> copyAside());
    copying.setRepeats(false);
    copy = new CopyAside(settings);
  }

  /** The window is closed: no more copies; what was begun is ended. */
  CopyAside close() {
    copying.stop();
    copy.close();
    return copy;
  }

  /** The shop was changed: before long a copy is set aside. */
  void touched() {
    if (session.isDirty() && !copying.isRunning()) {
      copying.start();
    }
  }

  /** Sets a copy of the unsaved shop aside. */
  void copyAside() {
    Shop shop = session.now();
    if (!session.isDirty()) {
      return;
    }
    copy.keep(shop);
  }

  private void dropCopy() {
    copying.stop();
    copy.drop();
  }

  /** Offers what an earlier run left behind. */
  void offerCopies() {
    Background.run(
        () -> {
          List<Path> copies = settings.leftCopies();
          return copies.isEmpty()
              ? Optional.<Left>empty()
              : Optional.of(new Left(copies.get(0), ShopFile.read(copies.get(0), Stations.any())));
        },
        left -> left.ifPresent(this::offer),
        failed -> {});
  }

  private record Left(Path copy, ShopReading first) {}

  private void offer(Left left) {
    if (left.first() instanceof ShopReading.Good good
        && questions.goOnWithCopy(good.shop().name())) {
      session.openUnsaved(session.now(), good.shop());
      copyAside();
      changed.run();
    }
    // copies of other windows are offered the next time
    copy.drop(left.copy());
  }

  /** Goes on only once unsaved changes are saved or given up. */
  void thenLeave(Runnable then) {
    if (!session.isDirty()) {
      dropCopy();
      then.run();
      return;
    }
    switch (questions.unsaved(FormText.saveFirst(session))) {
      case SAVE -> save(then);
      case DISCARD -> {
        dropCopy();
        then.run();
      }
      case BACK -> {}
    }
  }

  void open() {
    thenLeave(() -> questions.fileToOpen(session.file()).ifPresent(this::read));
  }

  void open(Path file) {
    thenLeave(() -> read(file));
  }

  private void read(Path file) {
    Background.run(
        () -> ShopFile.read(file, answering.get().stations()),
        reading -> {
          if (reading instanceof ShopReading.Good good) {
            session.open(Optional.of(file), good.shop());
            settings.keepRecent(file);
            changed.run();
          } else {
            List<Problem> problems = ((ShopReading.Bad) reading).problems();
            questions.problems(
                file.getFileName() + " cannot be taken; the shop on the desk stays",
                problems.stream().map(Problem::sentence).toList());
          }
        },
        failed -> questions.problems("The file could not be read", List.of(failed)));
  }

  void begin(Optional<Shop> made) {
    made.ifPresent(
        shop -> {
          session.open(Optional.empty(), shop);
          changed.run();
        });
  }

  void save(Runnable then) {
    Optional<Path> file = session.file();
    if (file.isPresent()) {
      write(file.get(), then);
    } else {
      saveAs(then);
    }
  }

  void saveAs(Runnable then) {
    questions.fileToSave(session.file(), session.now().name()).ifPresent(file -> write(file, then));
  }

  private void write(Path file, Runnable then) {
    Shop shop = session.now();
    Background.run(
        () -> {
          ShopFile.save(shop, file);
          return file;
        },
        done -> {
          session.saved(file, shop);
          settings.keepRecent(file);
          if (!session.isDirty()) {
            dropCopy();
          }
          changed.run();
          then.run();
        },
        failed ->
            questions.problems(
                "The shop could not be saved", List.of(file + " could not be written.", failed)));
  }
}
