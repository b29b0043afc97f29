package org.shopclime.envelope;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Looking a name up in a table as a person types it, and the near misses. */
final class Names {

  private static final int SHOWN = 3;
  private static final Pattern SPACES = Pattern.compile("\\s+");

  private Names() {}

  /** Key under which a name is kept: lower case, single spaces, one spelling of aluminium. */
  static String key(String name) {
    return name.strip()
        .toLowerCase(Locale.ROOT)
        .transform(SPACES::matcher)
        .replaceAll(" ")
        .replace("aluminum", "aluminium");
  }

  /** The three names most like the one typed, most alike first. */
  static List<String> nearest(String typed, Collection<String> names) {
    String key = key(typed);
    return names.stream()
        .sorted(
            Comparator.comparingDouble((String name) -> unlikeness(key, key(name)))
                .thenComparing(Comparator.naturalOrder()))
        .limit(SHOWN)
        .toList();
  }

  /** Edits per letter; half as much where one holds the other whole, as "plywood" in its sizes. */
  private static double unlikeness(String typed, String name) {
    double edits =
        (double) edits(typed, name) / Math.max(1, Math.max(typed.length(), name.length()));
    boolean holds = !typed.isEmpty() && (name.contains(typed) || typed.contains(name));
    return holds ? edits / 2 : edits;
  }

  /** Levenshtein's distance: letters to insert, delete or change. */
  private static int edits(String a, String b) {
    int[] before = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      before[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(change, 1 + Math.min(before[j], now[j - 1]));
      }
      before = now;
    }
    return before[b.length()];
  }
}
