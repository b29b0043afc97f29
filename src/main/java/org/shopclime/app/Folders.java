package org.shopclime.app;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.shopclime.quantity.Problem;

/** Tries folders before anything long is begun. */
final class Folders {

  /** What a report is written to. */
  static final String TAKES = "a folder that can be written to";

  private Folders() {}

  /** What keeps a report from being written here; makes the folder if it is missing. */
  static Optional<Problem> problem(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      String found =
          Files.isRegularFile(folder)
              ? "a file"
              : Files.exists(folder) && !Files.isDirectory(folder)
                  ? "something that is no folder"
                  : reason(e);
      return Optional.of(new Problem(folder.toString(), found, TAKES));
    }
    return trial(folder).map(found -> new Problem(folder.toString(), found, TAKES));
  }

  /** What keeps a file from being written into a folder that is there. */
  static Optional<String> trial(Path folder) {
    try {
      Path trial = Files.createTempFile(folder, ".shopclime", ".trial");
      Files.delete(trial);
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(reason(e));
    }
  }

  static String reason(IOException e) {
    boolean known = e instanceof FileSystemException;
    String reason = known ? ((FileSystemException) e).getReason() : e.getMessage();
    return reason == null
        ? "a folder that cannot be written to"
        : "a folder that cannot be written to (" + reason + ")";
  }
}
