package org.shopclime.quantity;

/**
 * Something in the input that cannot be taken, in one line: where, what was found, what is taken.
 *
 * @param path place in the file or form, such as {@code rooms[0].faces[2].height}
 * @param found what stands there, as written
 * @param takes what is accepted, with an example
 */
public record Problem(String path, String found, String takes) {

  /**
   * The problem as one line for a person.
   *
   * @return {@code path: found "…"; takes …}
   */
  public String sentence() {
    return path + ": found " + found + "; takes " + takes;
  }
}
