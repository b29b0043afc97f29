package org.shopclime.quantity;

/** What became of a text a person wrote: a number, or a complaint fit to be shown. */
public sealed interface Reading permits Reading.Good, Reading.Bad {

  /**
   * The text was understood.
   *
   * @param si value in the SI unit of its {@link Kind}; always finite
   */
  record Good(double si) implements Reading {}

  /**
   * The text was not understood.
   *
   * @param found the text in quotes, or the word "nothing"
   * @param takes what is taken, with an example
   */
  record Bad(String found, String takes) implements Reading {

    /**
     * The complaint as one line for a person.
     *
     * @return {@code found "8"; takes a length with its unit, such as …}
     */
    public String sentence() {
      return "found " + found + "; takes " + takes;
    }

    /**
     * The complaint with the place where the text stands.
     *
     * @param path place in the file or form, such as {@code rooms[0].faces[2].height}
     * @return the problem to be listed
     */
    public Problem at(String path) {
      return new Problem(path, found, takes);
    }
  }
}
