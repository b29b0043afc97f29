package org.shopclime.shop;

/**
 * Something possible but unusual, or a caution, that stands beside the result.
 *
 * @param path place in the file or form, such as {@code rooms[0].faces[2].height}
 * @param text one or two sentences; a caution names the public authority behind it
 */
public record Warning(String path, String text) {

  /**
   * The warning as one line for a person.
   *
   * @return {@code path: text}
   */
  public String sentence() {
    return path + ": " + text;
  }
}
