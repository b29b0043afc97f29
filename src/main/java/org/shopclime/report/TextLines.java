package org.shopclime.report;

/** Sentences broken into lines for a terminal. */
final class TextLines {

  private static final int WIDTH = 96;

  private TextLines() {}

  /** A sentence behind a mark; further lines stand under its first word. */
  static void wrapped(StringBuilder text, String mark, String sentence) {
    StringBuilder line = new StringBuilder(mark);
    boolean empty = true;
    for (String word : Unbroken.of(sentence).split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        text.append(line).append('\n');
        line = new StringBuilder(" ".repeat(mark.length()));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word.replace('\u00a0', ' '));
      empty = false;
    }
    text.append(line).append('\n');
  }
}
