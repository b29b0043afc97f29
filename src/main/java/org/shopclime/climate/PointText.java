package org.shopclime.climate;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Latitude and longitude as people write them: "30.7,-88.2", "30.7N 88.2W", "30°41'N 88°15'W". */
final class PointText {
  private static final int LONGEST = 100;
  private static final int PER_DEGREE = 60;

  /** Whatever holds figures and otherwise only signs and sides is meant as a point. */
  private static final Pattern MEANT = Pattern.compile("[-+\\d.,;/°'\"\\snsew]*");

  private static final Pattern WORD_OF_SIDES = Pattern.compile("[nsew]{2}");

  private static final String NUMBER = "(\\d+(?:\\.\\d*)?|\\.\\d+)";
  private static final String ARC =
      NUMBER + "(?:\\s*°(?:\\s*" + NUMBER + "\\s*'(?:\\s*" + NUMBER + "\\s*\")?)?)?";

  /** Groups: side, degrees, minutes, seconds; or sign, degrees, minutes, seconds, side. */
  private static final String ANGLE =
      "(?:([nsew])\\s*" + ARC + "|([+-]?)\\s*" + ARC + "(?:\\s*([nsew])(?![\\d.]))?)";

  private static final int GROUPS = 9;

  private static final Pattern PAIR =
      Pattern.compile(ANGLE + "(?:\\s*[,;/]\\s*|\\s+|(?<=[nsew°'\"]))" + ANGLE);

  private PointText() {}

  /**
   * What became of a text that was meant as a point.
   *
   * @param point the point, where it is one
   * @param wrong what is wrong with it, where it is none
   */
  record Result(Optional<GeoPoint> point, String wrong) {
    private static Result wrong(String what) {
      return new Result(Optional.empty(), what);
    }
  }

  /** One angle, degrees, and its side, 'n', 's', 'e', 'w' or a blank. */
  private record Angle(double degrees, char side) {
    boolean isLongitude() {
      return side == 'e' || side == 'w';
    }

    double signed() {
      return side == 's' || side == 'w' ? -degrees : degrees;
    }
  }

  /** A point or a complaint; nothing where the text is not meant as a point. */
  static Optional<Result> read(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    String plain = keyboard(text);
    boolean meant =
        MEANT.matcher(plain).matches()
            && !WORD_OF_SIDES.matcher(plain).find()
            && plain.chars().anyMatch(Character::isDigit);
    if (!meant) {
      return Optional.empty();
    }
    Matcher pair = PAIR.matcher(plain);
    if (!pair.matches()) {
      return Optional.of(Result.wrong("\"" + text.strip() + "\""));
    }
    Optional<Angle> first = angle(pair, 1);
    Optional<Angle> second = angle(pair, 1 + GROUPS);
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.of(Result.wrong("\"" + text.strip() + "\""));
    }
    return Optional.of(point(first.get(), second.get(), text.strip()));
  }

  private static Result point(Angle first, Angle second, String text) {
    boolean turned = first.isLongitude();
    Angle latitude = turned ? second : first;
    Angle longitude = turned ? first : second;
    if (latitude.isLongitude() || longitude.side() == 'n' || longitude.side() == 's') {
      return Result.wrong("\"" + text + "\"");
    }
    if (!(Math.abs(latitude.degrees()) <= 90)) {
      return Result.wrong("a latitude of " + shown(latitude.signed()));
    }
    if (!(Math.abs(longitude.degrees()) <= 180)) {
      return Result.wrong("a longitude of " + shown(longitude.signed()));
    }
    // Adding nothing turns a negative zero into nothing.
    return new Result(
        Optional.of(new GeoPoint(latitude.signed() + 0.0, longitude.signed() + 0.0)), "");
  }

  /** The angle in the groups from the first on; nothing for 60 minutes or sign and side at once. */
  private static Optional<Angle> angle(Matcher pair, int first) {
    boolean sideBefore = pair.group(first) != null;
    int degrees = sideBefore ? first + 1 : first + 5;
    double minutes = number(pair.group(degrees + 1));
    double seconds = number(pair.group(degrees + 2));
    String side = sideBefore ? pair.group(first) : pair.group(first + 8);
    String sign = sideBefore ? "" : pair.group(first + 4);
    if (minutes >= PER_DEGREE || seconds >= PER_DEGREE || (side != null && !sign.isEmpty())) {
      return Optional.empty();
    }
    double size = number(pair.group(degrees)) + (minutes + seconds / PER_DEGREE) / PER_DEGREE;
    return Optional.of(
        new Angle(sign.equals("-") ? -size : size, side == null ? ' ' : side.charAt(0)));
  }

  private static double number(String text) {
    return text == null ? 0 : Double.parseDouble(text);
  }

  private static String shown(double degrees) {
    return degrees == Math.rint(degrees) && Math.abs(degrees) < 1e9
        ? String.format(Locale.ROOT, "%.0f°", degrees)
        : degrees + "°";
  }

  private static String keyboard(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replaceAll("[−–—‐‑]", "-")
        .replaceAll("[º˚]", "°")
        .replaceAll("[′’‘`]", "'")
        .replaceAll("[″”“]|''", "\"")
        .replaceAll("\\b(?:latitude|lat|longitude|long|lng|lon)\\b\\s*[:=]?", " ")
        .replaceAll("\\s*\\b(?:degrees?|deg)\\b\\.?", "°")
        .replaceAll("(?<=\\d)deg(?:rees?)?(?![a-z])", "°")
        .replaceAll("north|south|east|west", "$0 ")
        .replaceAll("north", "n")
        .replaceAll("south", "s")
        .replaceAll("east", "e")
        .replaceAll("west", "w")
        .replaceAll("[()\\[\\]]", " ")
        .strip();
  }
}
