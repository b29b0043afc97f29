package org.shopclime.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.UUID;

/** Writes a file aside, then moves it: a reader never sees half of it. */
public final class FileAside {

  private FileAside() {}

  /**
   * Writes a page and the figures beside it, which come first; other files in the folder stay.
   *
   * @return the page
   */
  static Path report(Path folder, String page, String text, Map<String, String> figures)
      throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, String> file : figures.entrySet()) {
      write(folder.resolve(file.getKey()), file.getValue().getBytes(StandardCharsets.UTF_8));
    }
    Path written = folder.resolve(page);
    write(written, text.getBytes(StandardCharsets.UTF_8));
    return written;
  }

  /**
   * Writes a file.
   *
   * @param file where it is to be; replaced if it is there
   * @param content all of it
   * @throws IOException if it cannot be written; what was there then stays
   */
  public static void write(Path file, byte[] content) throws IOException {
    Path target = file.toAbsolutePath();
    Path aside = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID());
    aside.toFile().deleteOnExit(); // where Ctrl-C comes between the two
    try {
      Files.write(aside, content, StandardOpenOption.CREATE_NEW);
      try {
        Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(aside);
    }
  }
}
