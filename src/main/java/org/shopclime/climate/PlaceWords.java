package org.shopclime.climate;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The words of a place's name, brought to one spelling: lower case, no accents, abbreviations
 * written out, what the printed names misspell put right.
 */
final class PlaceWords {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final String QUOTES = "'`’‘ʻ";

  private static final Set<String> KINDS =
      Set.of("airport", "county", "field", "international", "memorial", "municipal", "regional");

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

  /**
   * Runs of letters and digits as they stand, in lower case without accents. An apostrophe does not
   * part them, nor does a point between initials ("D.C.").
   */
  static List<String> plain(String text) {
    String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int i = 0; i <= bare.length(); i++) {
      char sign = at(bare, i);
      if (Character.isLetterOrDigit(sign)) {
        word.append(Character.toLowerCase(sign));
      } else if (QUOTES.indexOf(sign) < 0 && !isBetweenInitials(bare, i) && word.length() > 0) {
        words.add(word.toString());
        word.setLength(0);
      }
    }
    return words;
  }

  private static boolean isBetweenInitials(String text, int point) {
    return at(text, point) == '.'
        && !Character.isLetter(at(text, point - 2))
        && Character.isLetter(at(text, point - 1))
        && Character.isLetter(at(text, point + 1))
        && !Character.isLetter(at(text, point + 2));
  }

  /** The sign there, a blank outside the text. */
  private static char at(String text, int index) {
    return index >= 0 && index < text.length() ? text.charAt(index) : ' ';
  }

  /** Whether all words only say what kind of airport a place has. */
  static boolean areKinds(List<String> plain) {
    return KINDS.containsAll(spelt(plain));
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
