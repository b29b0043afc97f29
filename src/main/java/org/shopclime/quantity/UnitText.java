package org.shopclime.quantity;

import java.util.Locale;
import java.util.regex.Pattern;

/** Brings the many spellings of one unit down to one. */
final class UnitText {

  private static final Pattern SEPARATED_DIGIT = Pattern.compile("[\\s.*-]\\d");
  private static final Pattern SEPARATORS = Pattern.compile("[\\s.*()^-]");
  private static final Pattern DEGREE_WORD = Pattern.compile("degrees?");
  private static final Pattern DEGREE_OF = Pattern.compile("deg(?=[fckr])");

  private static final Pattern HOUR = Pattern.compile("hr(?!enheit)");
  private static final Pattern SQUARE_FOOT = Pattern.compile("(sq|square)(ft|feet|foot)");
  private static final Pattern SQUARE_INCH = Pattern.compile("(sq|square)in(ch(es)?)?");
  private static final Pattern CUBIC_FOOT = Pattern.compile("(cu|cubic)(ft|feet|foot)");

  private UnitText() {}

  /**
   * Lower case, with typographic signs replaced by those of a keyboard.
   *
   * @param text as written
   * @return the same in plain signs, stripped
   */
  static String keyboard(String text) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '²' -> plain.append('2');
        case '³' -> plain.append('3');
        case '·', '⋅', '•', '∙', '×' -> plain.append('*');
        case '−', '–', '—', '‐', '‑' -> plain.append('-');
        case '′', '’', '‘' -> plain.append('\'');
        case '″', '”', '“' -> plain.append('"');
        case '½' -> plain.append(" 1/2");
        case '¼' -> plain.append(" 1/4");
        case '¾' -> plain.append(" 3/4");
        case '⅛' -> plain.append(" 1/8");
        case '⅜' -> plain.append(" 3/8");
        case '⅝' -> plain.append(" 5/8");
        case '⅞' -> plain.append(" 7/8");
        case '⁄' -> plain.append('/');
        case '°', 'º', '˚' -> plain.append(" deg ");
        case '℉' -> plain.append(" f");
        case '℃' -> plain.append(" c");
        case '\u00a0', '\u2009', '\u202f' -> plain.append(' ');
        default -> plain.append(c);
      }
    }
    return plain.toString().toLowerCase(Locale.ROOT).replace("''", "\"").strip();
  }

  /**
   * The key under which a unit is looked up: no separators, one slash, short words. A digit after a
   * separator is not a power ("7 m 2"), so such text has no key.
   *
   * @param unit unit in keyboard signs
   * @return the key; a text that no unit has if there is none
   */
  static String plain(String unit) {
    String stripped = unit.strip();
    return isSimple(stripped) ? stripped : plainBySearching(stripped);
  }

  /** Whether none of the searches can find anything; they take long where nothing is compiled. */
  private static boolean isSimple(String unit) {
    int slashes = 0;
    for (int i = 0; i < unit.length(); i++) {
      char c = unit.charAt(i);
      if (c == '/') {
        slashes++;
      } else if (!((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || "\"'%".indexOf(c) >= 0)) {
        return false;
      }
    }
    return slashes <= 1
        && !unit.contains("btuh")
        && !unit.contains("deg")
        && !unit.contains("sq")
        && !unit.contains("cu")
        && !unit.contains("hr");
  }

  private static String plainBySearching(String stripped) {
    if (SEPARATED_DIGIT.matcher(stripped).find()) {
      return "?";
    }
    String key = SEPARATORS.matcher(stripped).replaceAll("").replace("btuh", "btu/h");
    int slash = key.indexOf('/');
    if (slash >= 0) {
      key = key.substring(0, slash + 1) + key.substring(slash + 1).replace("/", "");
    }
    key = DEGREE_WORD.matcher(key).replaceAll("deg");
    key = DEGREE_OF.matcher(key).replaceAll("");
    key = SQUARE_FOOT.matcher(key).replaceAll("ft2");
    key = SQUARE_INCH.matcher(key).replaceAll("in2");
    key = CUBIC_FOOT.matcher(key).replaceAll("ft3");
    return HOUR.matcher(key).replaceAll("h");
  }
}
