package org.shopclime.form;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopFile;

/**
 * The copy of a shop that is not saved. Copies are written and dropped one after the other, in the
 * order asked for, so that none is left behind; what was begun is ended before the program ends.
 */
final class CopyAside {

  private final FormSettings settings;
  private final ThreadPoolExecutor one =
      new ThreadPoolExecutor(
          1,
          1,
          1,
          TimeUnit.SECONDS,
          new LinkedBlockingQueue<>(),
          new ThreadPoolExecutor.DiscardPolicy());

  CopyAside(FormSettings settings) {
    this.settings = settings;
    one.allowCoreThreadTimeOut(true);
  }

  /** Keeps a copy of a shop. If it cannot be written the shop is not in danger: the next may. */
  void keep(Shop shop) {
    work(
        () -> {
          settings.prepare();
          ShopFile.save(shop, settings.unsavedCopy());
        });
  }

  /** Drops the copy of this run. */
  void drop() {
    drop(settings.unsavedCopy());
  }

  /** Drops a copy. */
  void drop(Path copy) {
    work(() -> Files.deleteIfExists(copy));
  }

  /** Nothing more is taken; what was asked for is done. */
  void close() {
    one.shutdown();
  }

  /** Whether all is done once closed, waiting for it if need be. */
  boolean isDone(long milliseconds) throws InterruptedException {
    return one.awaitTermination(milliseconds, TimeUnit.MILLISECONDS);
  }

  private interface Work {
    void run() throws IOException;
  }

  private void work(Work work) {
    one.execute(
        () -> {
          try {
            work.run();
          } catch (IOException e) {
            // Only a copy: nothing is lost, and the next change tries again.
          }
        });
  }
}
