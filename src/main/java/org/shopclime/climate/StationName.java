package org.shopclime.climate;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of stations as a person reads and types them. */
final class StationName {
  /** Kept in capitals: airport, forces, kinds of automatic station. */
  private static final Set<String> CAPITALS =
      Set.of(
          "AP", "AFB", "AF", "AAF", "ANGB", "ARB", "ASC", "ASOS", "AWOS", "AMOS", "FAA", "MCAS",
          "MCAF", "NAS", "NAF", "NAAS", "NF", "NASA", "NWS", "WSO", "WSFO", "WFO", "WB", "ISL",
          "DC", "NDB");

  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}']+");

  private StationName() {}

  /**
   * The printed name in upper and lower case, without the measuring network in brackets and with an
   * apostrophe for the back tick of the files.
   */
  static String readable(String printed) {
    String name =
        printed.replaceAll("\\[.*?\\]", " ").replace('`', '\'').replaceAll("\\s+", " ").strip();
    Matcher words = WORD.matcher(name);
    StringBuilder readable = new StringBuilder();
    while (words.find()) {
      words.appendReplacement(readable, Matcher.quoteReplacement(cased(words.group())));
    }
    words.appendTail(readable);
    return readable.toString();
  }

  private static String cased(String word) {
    return CAPITALS.contains(word)
        ? word
        : word.substring(0, 1).toUpperCase(Locale.ROOT)
            + word.substring(1).toLowerCase(Locale.ROOT);
  }
}
