package org.shopclime.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A part of the methods page that a test makes, between its mark and the end. */
public final class MethodsPart {

  private static final Path PAGE = Path.of("src/docs/METHODS.md");
  private static final String END = "<!-- end -->";

  private MethodsPart() {}

  /**
   * Fails unless the part says what it should. The page as it should be then lies in {@code
   * target}, to be copied.
   *
   * @param mark the line the part begins with, without its end
   * @param content what stands between mark and end
   * @throws IOException if the page cannot be read
   */
  public static void isFresh(String mark, String content) throws IOException {
    String page = Files.readString(PAGE);
    String fresh = renewed(page, mark + "\n", content);
    String name = mark.replaceAll("[^a-z]+", "-").replaceAll("^-|-$", "");
    Path target = Path.of("target", "METHODS-" + name + ".md");
    Files.createDirectories(target.getParent());
    Files.writeString(target, fresh);
    assertThat(page.equals(fresh)).as("copy %s to %s", target, PAGE).isTrue();
  }

  /** The page with one part renewed. */
  static String renewed(String page, String mark, String content) {
    int start = page.indexOf(mark);
    assertThat(start).as("mark %s in the page", mark).isNotNegative();
    int end = page.indexOf(END, start);
    assertThat(end).as("end after %s", mark).isNotNegative();
    return page.substring(0, start + mark.length()) + "\n" + content + page.substring(end);
  }
}
