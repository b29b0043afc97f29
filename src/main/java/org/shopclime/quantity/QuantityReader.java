package org.shopclime.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns a text into a number: signs, fractions, thousands, units, compounds, compass points. */
final class QuantityReader {

  /** Nobody writes a quantity longer than this. */
  private static final int LONGEST = 100;

  private static final int LONGEST_SHOWN = 40;

  private static final MathContext DIGITS = new MathContext(60);

  private static final String DECIMAL = "(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d*)?|\\.\\d+";

  /** Groups: whole, numerator, denominator; or numerator, denominator; or decimal. */
  private static final String NUMBER =
      "(?:(\\d+)[\\s-]+(\\d+)/(\\d+)|(\\d+)/(\\d+)|((?:" + DECIMAL + ")(?:e[+-]?\\d{1,3})?))";

  private static final Pattern SINGLE = Pattern.compile("([+-]?)\\s*" + NUMBER + "(?![\\d.,])(.*)");

  private static final Pattern TERM =
      Pattern.compile("\\s*(?:-|,|and\\b)?\\s*" + NUMBER + "\\s*([a-z'\"]+)\\.?");

  private static final Pattern R_NAME = Pattern.compile("(r|rsi)\\s*-?\\s*(\\d.*|\\.\\d+)");

  private static final Pattern PITCH = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:in|/|:)\\s*12");

  private static final Map<String, Double> COMPASS =
      Map.ofEntries(
          Map.entry("n", 0.0),
          Map.entry("nne", 22.5),
          Map.entry("ne", 45.0),
          Map.entry("ene", 67.5),
          Map.entry("e", 90.0),
          Map.entry("ese", 112.5),
          Map.entry("se", 135.0),
          Map.entry("sse", 157.5),
          Map.entry("s", 180.0),
          Map.entry("ssw", 202.5),
          Map.entry("sw", 225.0),
          Map.entry("wsw", 247.5),
          Map.entry("w", 270.0),
          Map.entry("wnw", 292.5),
          Map.entry("nw", 315.0),
          Map.entry("nnw", 337.5));

  private QuantityReader() {}

  /**
   * Reads a text.
   *
   * @param kind what is measured
   * @param text text as written
   * @return number or complaint
   */
  static Reading read(Kind kind, String text) {
    Objects.requireNonNull(kind, "kind");
    UnitTable.Entry entry = UnitTable.of(kind);
    if (text.length() <= LONGEST) {
      Optional<BigDecimal> value = value(kind, entry, UnitText.keyboard(text));
      if (value.isPresent()) {
        double si = value.get().doubleValue();
        if (Double.isFinite(si)) {
          return new Reading.Good(si);
        }
      }
    }
    return new Reading.Bad(found(text), entry.takes());
  }

  private static Optional<BigDecimal> value(Kind kind, UnitTable.Entry entry, String text) {
    if (kind == Kind.ANGLE) {
      Optional<BigDecimal> named = compassOrPitch(text);
      if (named.isPresent() || text.indexOf('/') >= 0) {
        return named; // a fraction may be a pitch or a part of a degree
      }
    }
    Optional<BigDecimal> simple = simple(entry, text);
    if (simple.isPresent()) {
      return simple;
    }
    if (kind == Kind.R_VALUE) {
      Matcher named = R_NAME.matcher(text);
      if (named.matches()) {
        Matcher number = SINGLE.matcher(named.group(2));
        UnitSystem system = named.group(1).equals("r") ? UnitSystem.INCH_POUND : UnitSystem.SI;
        return number.matches() && number.group(8).isEmpty()
            ? number(number, 2).map(entry.usual(system).get(0)::toSi)
            : Optional.empty();
      }
    }
    boolean dollars = text.startsWith("$"); // "$450", "$0.15/kWh"
    Matcher single = SINGLE.matcher(dollars ? text.substring(1).strip() : text);
    if (single.matches()) {
      Optional<Unit> unit = unit(entry, dollars ? "$" + single.group(8).strip() : single.group(8));
      if (unit.isPresent()) {
        boolean negative = single.group(1).equals("-");
        return number(single, 2).map(n -> unit.get().toSi(negative ? n.negate() : n));
      }
    }
    return switch (kind) {
      case LENGTH, MASS, DURATION -> compound(entry, text);
      default -> Optional.empty();
    };
  }

  /**
   * Digits, perhaps a point and more digits, and a unit: what most texts are. Everything else, and
   * units not known, are left to the patterns, which take long where nothing is compiled.
   */
  private static Optional<BigDecimal> simple(UnitTable.Entry entry, String text) {
    int end = digits(text, 0);
    if (end > 0 && end < text.length() && text.charAt(end) == '.') {
      end = digits(text, end + 1);
    }
    int next = end;
    while (next < text.length() && text.charAt(next) == ' ') {
      next++;
    }
    char after = next < text.length() ? text.charAt(next) : ' ';
    boolean plain =
        end > 0
            && (after == ' ' || after == '%' || after == '"' || (after >= 'a' && after <= 'z'))
            && !(next == end && after == 'e')
            && isKeyboard(text);
    if (!plain) {
      return Optional.empty();
    }
    BigDecimal number = new BigDecimal(text.substring(0, end));
    return unit(entry, text.substring(end)).map(unit -> unit.toSi(number));
  }

  private static boolean isKeyboard(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
        return false;
      }
    }
    return true;
  }

  /** Where the digits that begin at a place end. */
  private static int digits(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at;
  }

  /** Terms of falling units, such as feet and inches. */
  private static Optional<BigDecimal> compound(UnitTable.Entry entry, String text) {
    boolean negative = text.startsWith("-");
    String rest = negative ? text.substring(1) : text;
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal last = null;
    Matcher term = TERM.matcher(rest);
    int at = 0;
    while (at < rest.length()) {
      term.region(at, rest.length());
      if (!term.lookingAt() || (at == 0 && !Character.isDigit(rest.charAt(0)))) {
        return Optional.empty();
      }
      Optional<Unit> unit = unit(entry, term.group(7));
      Optional<BigDecimal> number = number(term, 1);
      if (unit.isEmpty() || number.isEmpty()) {
        return Optional.empty();
      }
      BigDecimal size = unit.get().toSi(BigDecimal.ONE);
      if (last != null && size.compareTo(last) >= 0) {
        return Optional.empty();
      }
      last = size;
      sum = sum.add(unit.get().toSi(number.get()));
      at = term.end();
    }
    return last == null ? Optional.empty() : Optional.of(negative ? sum.negate() : sum);
  }

  private static Optional<BigDecimal> compassOrPitch(String text) {
    boolean isNumber = !text.isEmpty() && Character.isDigit(text.charAt(0));
    if (isNumber && !text.contains("in") && text.indexOf('/') < 0 && text.indexOf(':') < 0) {
      return Optional.empty();
    }
    String words =
        text.replaceAll("[\\s-]", "")
            .replace("north", "n")
            .replace("south", "s")
            .replace("east", "e")
            .replace("west", "w");
    if (COMPASS.containsKey(words)) {
      return Optional.of(BigDecimal.valueOf(COMPASS.get(words)));
    }
    Matcher pitch = PITCH.matcher(text);
    if (pitch.matches()) {
      double rise = Double.parseDouble(pitch.group(1));
      return Optional.of(BigDecimal.valueOf(Math.toDegrees(Math.atan2(rise, 12))));
    }
    return Optional.empty();
  }

  private static Optional<Unit> unit(UnitTable.Entry entry, String written) {
    String key = UnitText.plain(written);
    for (Unit unit : entry.all()) {
      if (unit.spellings().contains(key)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** The number in six groups of {@link #NUMBER}, of which the first is given. */
  private static Optional<BigDecimal> number(Matcher matcher, int first) {
    if (matcher.group(first) != null) {
      return ratio(matcher.group(first + 1), matcher.group(first + 2))
          .map(part -> part.add(new BigDecimal(matcher.group(first))));
    }
    if (matcher.group(first + 3) != null) {
      return ratio(matcher.group(first + 3), matcher.group(first + 4));
    }
    return Optional.of(new BigDecimal(matcher.group(first + 5).replace(",", "")));
  }

  private static Optional<BigDecimal> ratio(String above, String below) {
    BigDecimal divisor = new BigDecimal(below);
    return divisor.signum() == 0
        ? Optional.empty()
        : Optional.of(new BigDecimal(above).divide(divisor, DIGITS));
  }

  private static String found(String text) {
    String line = text.strip().replaceAll("\\p{Cntrl}", " ");
    if (line.isEmpty()) {
      return "nothing";
    }
    return '"'
        + (line.length() <= LONGEST_SHOWN ? line : line.substring(0, LONGEST_SHOWN) + "…")
        + '"';
  }
}
