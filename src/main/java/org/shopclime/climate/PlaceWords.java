package org.shopclime.climate;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The words of a place's name, brought to one spelling: lower case, no accents, abbreviations
 * written out, what the printed names misspell put right.
 */
final class PlaceWords {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern QUOTES = Pattern.compile("['`’‘ʻ]");
  private static final Pattern INITIALS =
      Pattern.compile("(?<!\\p{L})(\\p{L})\\.(?=\\p{L}(?!\\p{L}))");
  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** Abbreviations of the printed names and of letters (common practice). */
  private static final Map<String, String> WRITTEN_OUT =
      Map.ofEntries(
          Map.entry("st", "saint"),
          Map.entry("ste", "sainte"),
          Map.entry("ft", "fort"),
          Map.entry("mt", "mount"),
          Map.entry("pt", "point"),
          Map.entry("n", "north"),
          Map.entry("s", "south"),
          Map.entry("e", "east"),
          Map.entry("w", "west"),
          Map.entry("intl", "international"),
          Map.entry("int", "international"),
          Map.entry("ap", "airport"),
          Map.entry("apt", "airport"),
          Map.entry("arp", "airport"),
          Map.entry("arpt", "airport"),
          Map.entry("muni", "municipal"),
          Map.entry("municip", "municipal"),
          Map.entry("municipl", "municipal"),
          Map.entry("rgnl", "regional"),
          Map.entry("rgn", "regional"),
          Map.entry("regl", "regional"),
          Map.entry("regio", "regional"),
          Map.entry("natl", "national"),
          Map.entry("mem", "memorial"),
          Map.entry("fld", "field"),
          Map.entry("co", "county"),
          Map.entry("cnty", "county"),
          Map.entry("cnyn", "canyon"),
          Map.entry("isl", "island"),
          Map.entry("univ", "university"));

  /** Slips of the printed names: what they print, and what the place is called (map). */
  private static final Map<String, String> MISPRINTED =
      Map.of(
          "worchester", "worcester",
          "sata", "santa",
          "gadsen", "gadsden",
          "granda", "grande",
          "aquadilla", "aguadilla",
          "passadena", "pasadena",
          "washngtn", "washington",
          "togiac", "togiak");

  private PlaceWords() {}

  /** Words as they stand, in lower case without accents. */
  static List<String> plain(String text) {
    String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    String joined =
        INITIALS
            .matcher(QUOTES.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll(""))
            .replaceAll("$1");
    return Arrays.stream(BETWEEN.split(joined)).filter(word -> !word.isEmpty()).toList();
  }

  /** Words brought to one spelling. */
  static List<String> of(String text) {
    return spelt(plain(text));
  }

  /** Plain words brought to one spelling. */
  static List<String> spelt(List<String> plain) {
    return plain.stream().map(PlaceWords::spelt).toList();
  }

  /** A plain word brought to one spelling. */
  static String spelt(String word) {
    String whole = WRITTEN_OUT.getOrDefault(word, word);
    return MISPRINTED.getOrDefault(whole, whole);
  }
}
