package org.shopclime.shop;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Known names nearest to an unknown one, by the number of letters to change. */
final class Nearest {

  private static final int LONGEST = 60;

  private Nearest() {}

  /**
   * Nearest names.
   *
   * @param typed name as typed
   * @param known names there are
   * @param most how many to give at most
   * @return nearest first; of equal ones in the order of {@code known}
   */
  static List<String> to(String typed, Collection<String> known, int most) {
    String wanted = typed.substring(0, Math.min(typed.length(), LONGEST)).toLowerCase(Locale.ROOT);
    List<String> names = new ArrayList<>(known);
    names.sort(Comparator.comparingInt(name -> changes(wanted, name.toLowerCase(Locale.ROOT))));
    return List.copyOf(names.subList(0, Math.min(most, names.size())));
  }

  /** Letters to insert, delete or replace (Levenshtein distance), row by row. */
  private static int changes(String from, String to) {
    int[] above = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int[] row = new int[to.length() + 1];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int replaced = above[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[to.length()];
  }
}
