package org.shopclime.form;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.shopclime.plan.CoreAnswer;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.plan.UnitAnswer;
import org.shopclime.plan.Verdict;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.Reading;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;
import org.shopclime.shop.Warning;

/** What the form says in its own words. */
final class FormText {

  /** Longer exact texts are shown rounded. */
  private static final int LONGEST_EXACT = 10;

  static final String STEPS =
      """
      1. File, New: pick the building and the work most like yours, type its size and the
          figure on the cooling unit's label, choose the place.
      2. Read the top: the warmest hour in which you work on a hot day, and the smallest
          size that would keep the room as cool as you wish. Two temperatures with a dash
          are a range: not everything is known.
      3. Go through the parts on the left and mend what differs. Where you do not know,
          leave "don't know"; the line below the figures says what is worth finding out.
      4. "Changes" tells what helps most, "Compressor" where it stands best, "Damp" which
          wall to mind, "things to mind" at the bottom what may be unsafe or odd.
      5. File, Save keeps the shop; Write report makes a page with everything on it.
      The right button of the mouse copies a table or saves a picture.""";

  static final String ABOUT =
      """
      Shopclime reckons how warm a small shop gets on its hot day, whether a cooling unit is
      enough, and what would change that. Figures come from published standards and the
      shop as you describe it; they are estimates.

      It does not design wiring, gas, exhaust or fire protection. For these, local code and
      licensed trades have the word.""";

  /**
   * Figures shown at the top by their keys, those that matter most first, each with its meaning in
   * few words.
   */
  static final Map<String, String> KEYS = keys();

  private FormText() {}

  private static Map<String, String> keys() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("unit.indoorPeakF", "Warmest working hour");
    words.put("unit.keepsUpToF", "Keeps up until outside");
    words.put("unit.recommendedBtuh", "Smallest size that holds");
    words.put("peak.totalBtuh", "Most heat to take out");
    words.put("withoutUnit.indoorPeakF", "Without cooling");
    words.put("unit.operativePeakF", "Feels like, at worst");
    return Collections.unmodifiableMap(words);
  }

  /** A figure as it stands in a field: rounded, unless the exact text is short. */
  static String figure(Kind kind, double si, UnitSystem units) {
    String shown = Quantities.show(kind, si, units);
    if (Quantities.read(kind, shown) instanceof Reading.Good good && good.si() == si) {
      return shown;
    }
    String exact = Quantities.exact(kind, si, units);
    return exact.length() <= LONGEST_EXACT ? exact : shown;
  }

  /** A time of at most an hour: in minutes, also where there are none or sixty. */
  static String minutes(double seconds, UnitSystem units) {
    double minutes = seconds / 60;
    return minutes == Math.rint(minutes)
        ? (int) minutes + " min"
        : figure(Kind.DURATION, seconds, units);
  }

  /**
   * What was typed, with the unit of what stood there before if it has none: "26" after "24 ft" is
   * "26 ft".
   */
  static String withUnit(String typed, String stood) {
    String number = typed.strip();
    if (number.matches("[+-]?[\\d.,]+")
        && stood.matches("\\D*[\\d.,/ -]*\\d[^\\d]*")
        && !stood.matches("[\\d.,]+")) {
      int first = firstDigit(stood);
      int last = stood.length();
      while (last > 0 && !Character.isDigit(stood.charAt(last - 1))) {
        last--;
      }
      if (first >= 0 && last > first) {
        if (stood.startsWith("$")) {
          return "$" + number + stood.substring(last);
        }
        String before = stood.substring(0, first).replace("-", "").isBlank() ? "" : "R-";
        return stood.startsWith("R") ? before + number : number + stood.substring(last);
      }
    }
    return typed;
  }

  private static int firstDigit(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        return i;
      }
    }
    return -1;
  }

  static String span(Kind kind, Span span, UnitSystem units) {
    return "reckoned with "
        + figure(kind, span.low(), units)
        + " to "
        + figure(kind, span.high(), units)
        + ", likely "
        + figure(kind, span.likely(), units);
  }

  /** Words for a place: "Shop, West wall, Height". */
  static String place(Shop shop, String path) {
    List<String> words = new ArrayList<>();
    ShopPath at = ShopPath.SHOP;
    ShopPath whole;
    try {
      whole = ShopPath.parse(path);
    } catch (NumberFormatException | StringIndexOutOfBoundsException e) {
      return path;
    }
    for (ShopPath.Step step : whole.steps()) {
      Optional<Record> holder = at.record(shop);
      at = at.child(step.name(), step.index());
      Optional<String> name =
          step.index() < 0 ? Optional.empty() : at.record(shop).flatMap(FormText::nameOf);
      String label =
          holder
              .flatMap(
                  record ->
                      ShopParts.of(record.getClass()).stream()
                          .filter(entry -> entry.name().equals(step.name()))
                          .findFirst())
              .map(entry -> entry.say().label())
              .orElse(step.name());
      words.add(name.orElse(label));
    }
    return String.join(", ", words);
  }

  static Optional<String> nameOf(Record record) {
    return ShopParts.of(record.getClass()).stream()
        .filter(entry -> entry.name().equals("name") && entry.type() == String.class)
        .map(entry -> (String) ShopParts.value(record, "name"))
        .filter(name -> !name.isBlank())
        .findFirst();
  }

  static String problem(Shop shop, Problem problem) {
    return place(shop, problem.path())
        + ": found "
        + problem.found()
        + "; takes "
        + problem.takes();
  }

  static String warning(Shop shop, Warning warning) {
    return place(shop, warning.path()) + ": " + warning.text();
  }

  static String warnings(int count) {
    return switch (count) {
      case 0 -> "Nothing to mind";
      case 1 -> "1 thing to mind";
      default -> count + " things to mind";
    };
  }

  /** Name of the colour of the answer in the properties of a theme. */
  static String verdictColour(SizeAnswer answer) {
    return colour(answer.unit().map(UnitAnswer::verdict));
  }

  /** The same from the quick answer, which knows less. */
  static String verdictColour(CoreAnswer core) {
    return colour(core.unit().map(Verdict::quick));
  }

  private static String colour(Optional<Verdict> verdict) {
    return "Shopclime.verdict."
        + verdict.map(found -> found.name().toLowerCase(Locale.ROOT)).orElse("no_unit");
  }

  static String title(ShopSession session) {
    return (session.isDirty() ? "* " : "") + session.now().name() + " - Shopclime";
  }

  static String kept(ShopSession session) {
    String where =
        session.file().map(Path::getFileName).map(Path::toString).orElse("not in a file yet");
    return session.isDirty() ? where + " - changed, not saved" : where;
  }

  static String saveFirst(ShopSession session) {
    return "\"" + session.now().name() + "\" has changes that are not saved. Save them first?";
  }

  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
