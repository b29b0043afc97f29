package org.shopclime.form;

import java.io.IOException;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingWorker;

/** Reading and writing off the event thread. */
final class Background {

  /**
   * Something that may fail for want of a disk.
   *
   * @param <T> what it gives
   */
  interface Work<T> {
    T run() throws IOException;
  }

  private Background() {}

  /** Does some work, then tells on the event thread what came of it. */
  static <T> void run(Work<T> work, Consumer<T> then, Consumer<String> failed) {
    new SwingWorker<T, Void>() {
      @Override
      protected T doInBackground() throws IOException {
        return work.run();
      }

      @Override
      protected void done() {
        T result;
        try {
          result = get();
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          return;
        } catch (ExecutionException e) {
          failed.accept(reason(e.getCause()));
          return;
        }
        then.accept(result);
      }
    }.execute();
  }

  private static String reason(Throwable cause) {
    String kind =
        switch (cause.getClass().getSimpleName()) {
          case "AccessDeniedException" -> "Writing or reading there is not allowed.";
          case "NoSuchFileException" -> "There is no such folder or file.";
          default -> "";
        };
    String text =
        cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    // the file it names may be one set aside that nobody knows of; who asks names the right one
    return kind.isEmpty() ? text : kind;
  }
}
