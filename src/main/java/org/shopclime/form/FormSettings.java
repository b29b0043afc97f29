package org.shopclime.form;

import java.awt.Rectangle;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the form remembers from one time to the next, in one folder: recent files, light or dark,
 * the place of the window, and the copy of what was not saved. If it cannot be read or written,
 * nothing is remembered.
 */
final class FormSettings {

  private static final String COPY = "unsaved-";
  private static final int MOST_RECENT = 8;

  private final Path folder;

  FormSettings(Path folder) {
    this.folder = folder;
  }

  static FormSettings ofUser() {
    return new FormSettings(Path.of(System.getProperty("user.home"), ".shopclime"));
  }

  /** Where this run of the program keeps a copy of an unsaved shop. */
  Path unsavedCopy() {
    return folder.resolve(COPY + ProcessHandle.current().pid() + ".json");
  }

  /** Copies that earlier runs left behind. */
  List<Path> leftCopies() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(FormSettings::isLeft).sorted().toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static boolean isLeft(Path file) {
    Matcher name =
        Pattern.compile(COPY + "(\\d{1,18})\\.json").matcher(file.getFileName().toString());
    return name.matches() && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty();
  }

  /** Makes the folder. */
  void prepare() throws IOException {
    Files.createDirectories(folder);
  }

  boolean isDark() {
    return load().getProperty("look", "light").equals("dark");
  }

  void keepDark(boolean dark) {
    Properties properties = load();
    properties.setProperty("look", dark ? "dark" : "light");
    store(properties);
  }

  /** Where the window stood when it was last closed. */
  Optional<Rectangle> window() {
    Properties properties = load();
    try {
      return Optional.of(
          new Rectangle(
              Integer.parseInt(properties.getProperty("window.x", "")),
              Integer.parseInt(properties.getProperty("window.y", "")),
              Integer.parseInt(properties.getProperty("window.width", "")),
              Integer.parseInt(properties.getProperty("window.height", ""))));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  void keepWindow(Rectangle bounds) {
    Properties properties = load();
    properties.setProperty("window.x", String.valueOf(bounds.x));
    properties.setProperty("window.y", String.valueOf(bounds.y));
    properties.setProperty("window.width", String.valueOf(bounds.width));
    properties.setProperty("window.height", String.valueOf(bounds.height));
    store(properties);
  }

  List<Path> recent() {
    Properties properties = load();
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < MOST_RECENT; i++) {
      path(properties.getProperty("recent." + i, "")).ifPresent(files::add);
    }
    return files;
  }

  void keepRecent(Path file) {
    Path whole = file.toAbsolutePath();
    List<Path> files = new ArrayList<>(recent());
    files.remove(whole);
    files.add(0, whole);
    Properties properties = load();
    for (int i = 0; i < MOST_RECENT; i++) {
      String text = i < files.size() ? files.get(i).toString() : "";
      properties.setProperty("recent." + i, text);
    }
    store(properties);
  }

  private static Optional<Path> path(String text) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(Path.of(text));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private Path file() {
    return folder.resolve("form.properties");
  }

  private Properties load() {
    Properties properties = new Properties();
    if (Files.isReadable(file())) {
      try (Reader reader = Files.newBufferedReader(file())) {
        properties.load(reader);
      } catch (IOException | IllegalArgumentException e) {
        properties.clear(); // a damaged file is as good as none
      }
    }
    return properties;
  }

  private void store(Properties properties) {
    try {
      prepare();
      try (Writer writer = Files.newBufferedWriter(file())) {
        properties.store(writer, "What the form of Shopclime remembers");
      }
    } catch (IOException e) {
      // Not worth a word: the shop itself is safe, only a convenience is lost.
    }
  }
}
