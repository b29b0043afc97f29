package org.shopclime.plan;

import java.util.List;

/** Words as a sentence joins them. */
public final class InWords {

  private InWords() {}

  /**
   * Words in a row.
   *
   * @param words any number
   * @return "a", "a and b", "a, b and c"; empty for none
   */
  public static String row(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
