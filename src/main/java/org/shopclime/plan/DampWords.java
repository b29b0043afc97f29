package org.shopclime.plan;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shopclime.balance.DampFinding;
import org.shopclime.balance.DampPath;
import org.shopclime.balance.DampTime;
import org.shopclime.shop.Warning;

/** Damp in walls in an owner's words. */
public final class DampWords {

  /** What is said where nothing is found; never that a wall is safe. */
  public static final String NONE =
      "no condensation found by this method; that does not make the wall safe";

  /** What the method leaves out. */
  public static final String LIMITS =
      "Steady diffusion in monthly means (ISO 13788) leaves out air leaking through the wall, which"
          + " usually carries far more water than diffusion, rain, water drawn along or stored by"
          + " the materials, laps and seams, and single nights. Follow your building code, and ask"
          + " your building department before you close a wall.";

  private static final String FROM_ROOM =
      "The vapor comes from the room: a vapor retarder belongs on the room side here, and which"
          + " class is for local code to say";

  private static final String BOTH =
      "The vapor comes from the room in the cold, but from outdoors in the warm months: seal the"
          + " leaks of the lining first; a tight sheet on the room side would hold summer's vapor in"
          + " the wall. Local code says which class of vapor retarder it takes";

  private static final String ON_FACE = "A warmer face (insulation) or drier room air helps.";

  private static final String FROM_OUTDOORS =
      "The vapor comes from outdoors: keep plastic sheet, foil and vinyl off the room side so that"
          + " the wall can dry inwards; local code says which class of vapor retarder it takes";

  private static final double GRAMS = 1000;

  /** Pounds on 100 ft² for each kg/m²: 9.290304 m² over 0.45359237 kg. */
  private static final double POUNDS_ON_HUNDRED_FEET = 9.290304 / 0.45359237;

  private DampWords() {}

  /**
   * A layer as owners call it.
   *
   * @param name name of the layer
   * @return such as "drywall"
   */
  public static String layer(String name) {
    if (name.startsWith("gypsum board")) {
      return "drywall";
    }
    return switch (name) {
      case "cavity insulation" -> "insulation";
      case "core" -> "door's core";
      default -> name;
    };
  }

  /**
   * Where a plane lies.
   *
   * @param path path through a wall
   * @param plane number of the plane
   * @return such as "between the insulation and the drywall"
   */
  public static String plane(DampPath path, int plane) {
    String outer = layer(path.outerLayer(plane));
    String inner = layer(path.innerLayer(plane));
    if (outer.isEmpty() || inner.isEmpty()) {
      boolean isHeldSide = inner.isEmpty() == path.heldInside();
      return "on the " + (isHeldSide ? "room side" : "far side") + " of the " + outer + inner;
    }
    return outer.equals(inner)
        ? "inside the " + outer
        : "between the " + outer + " and the " + inner;
  }

  /**
   * Where something was found.
   *
   * @param finding the finding
   * @return as {@link #plane}; empty where nothing was found
   */
  public static String where(DampFinding finding) {
    return finding.plane() < 0 ? "" : plane(finding.path(), finding.plane());
  }

  /**
   * Which path through a face.
   *
   * @param way the path
   * @return such as "between the framing"; empty where there is but one
   */
  public static String way(DampPath.Way way) {
    return switch (way) {
      case WHOLE -> "";
      case SPACE -> "between the framing";
      case MEMBER -> "at the framing";
      case BOARDS -> "behind the boards";
      case LEAF -> "where no board covers it";
    };
  }

  /**
   * When something was found.
   *
   * @param times hot day, humid day, months
   * @return such as "on the humid day and in December to February"
   */
  public static String times(List<DampTime> times) {
    List<String> words = new ArrayList<>();
    for (DampTime time : times) {
      if (time.kind() == DampTime.Kind.HOT_DAY) {
        words.add("on the hot day");
      } else if (time.kind() == DampTime.Kind.HUMID_DAY) {
        words.add("on the humid day");
      }
    }
    String months = months(times.stream().filter(DampTime::isMonth).map(DampTime::month).toList());
    if (!months.isEmpty()) {
      words.add("in " + months);
    }
    return InWords.row(words);
  }

  /**
   * Months in a row, over the turn of the year too.
   *
   * @param months 1 to 12, in order
   * @return such as "November to February and July"
   */
  public static String months(List<Integer> months) {
    List<String> runs = new ArrayList<>();
    if (months.size() == 12) {
      return "every month";
    }
    for (int month : months) {
      int before = month == 1 ? 12 : month - 1;
      if (!months.contains(before)) {
        int last = month;
        int length = 1;
        while (months.contains(last % 12 + 1)) {
          last = last % 12 + 1;
          length++;
        }
        String joint = length == 2 ? " and " : " to ";
        runs.add(length == 1 ? month(month) : month(month) + joint + month(last));
      }
    }
    return InWords.row(runs);
  }

  /**
   * Name of a month.
   *
   * @param month 1 to 12
   * @return such as "January"
   */
  public static String month(int month) {
    return Month.of(month).getDisplayName(TextStyle.FULL, Locale.US);
  }

  /**
   * What was found of a path.
   *
   * @param finding the finding
   * @return one or two sentences, without the face's name
   */
  public static String sentence(DampFinding finding) {
    return switch (finding.kind()) {
      case NONE -> capital(NONE) + ".";
      case NOT_JUDGED ->
          "Not judged: nothing tells how \""
              + finding.unknown()
              + "\" resists vapor; type its permeance or its sd.";
      case DEW ->
          "Dew may fall "
              + where(finding)
              + " "
              + times(finding.times())
              + ": it is colder there than the dew point of the room's air. "
              + ON_FACE;
      case NEAR ->
          "Damp "
              + where(finding)
              + " "
              + times(finding.times())
              + ": up to "
              + Math.round(100 * finding.humidity())
              + " % of saturation in the mean of the month, where mold may grow from 80 % (ISO"
              + " 13788). "
              + side(finding);
      case CONDENSES ->
          "At the dew point "
              + where(finding)
              + " "
              + times(finding.times())
              + ": "
              + water(finding)
              + ". "
              + side(finding);
    };
  }

  private static String side(DampFinding finding) {
    if (finding.isOnFace()) {
      return ON_FACE;
    }
    String advice = finding.fromRoom() ? (finding.turns() ? BOTH : FROM_ROOM) : FROM_OUTDOORS;
    return advice + finding.path().lining().map(DampWords::lining).orElse("") + ".";
  }

  /** As "; on the room side now: kraft facing, class II by its 0.79 perm". */
  private static String lining(DampPath.Lining lining) {
    double perms = lining.perms();
    return "; on the room side now: "
        + layer(lining.layer())
        + ", "
        + (lining.retarderClass().isEmpty() ? "no retarder" : "class " + lining.retarderClass())
        + " by its "
        + String.format(Locale.ROOT, perms < 1 ? "%.2f" : perms < 10 ? "%.1f" : "%.0f", perms)
        + (perms < 1.05 ? " perm" : " perms");
  }

  private static String water(DampFinding finding) {
    if (finding.months().isEmpty()) {
      return "about "
          + water(finding.worst().orElseThrow().rate() * 86_400)
          + " of water a day falls out, if it lasts";
    }
    String most =
        "up to "
            + water(finding.mostWater())
            + " of water gathers by the end of "
            + month(finding.wettestMonth());
    return finding.waterLeft() > 0
        ? most
            + ", and "
            + water(finding.waterLeft())
            + " is left after twelve months: it does not dry out by this method"
        : most + ", and it dries by the end of " + month(finding.dryMonth());
  }

  /** As "65 g/m² (1.3 lb on 100 ft²)": a bathroom scale tells an owner more than a gram does. */
  private static String water(double kilograms) {
    double pounds = kilograms * POUNDS_ON_HUNDRED_FEET;
    return grams(kilograms)
        + " g/m² ("
        + (pounds < 0.1
            ? "less than 0.1"
            : String.format(Locale.ROOT, pounds < 10 ? "%.1f" : "%.0f", pounds))
        + " lb on 100 ft²)";
  }

  /** Two digits are all it is worth. */
  private static String grams(double kilograms) {
    double grams = kilograms * GRAMS;
    if (grams < 1) {
      return "1";
    }
    double step = Math.pow(10, Math.max(0, Math.floor(Math.log10(grams)) - 1));
    return String.format(Locale.ROOT, "%,d", Math.round(Math.rint(grams / step) * step));
  }

  /**
   * What is to be minded of the walls, like faces together.
   *
   * @param answer what was found
   * @return one warning for each kind of finding that is one
   */
  public static List<Warning> warnings(DampAnswer answer) {
    List<Warning> warnings = new ArrayList<>();
    for (List<DampFinding> alike : answer.alike()) {
      DampFinding first = alike.get(0);
      if (first.isWarning()) {
        List<String> others =
            alike.stream().skip(1).map(each -> each.path().component().name()).distinct().toList();
        String way = way(first.path().way());
        warnings.add(
            new Warning(
                first.path().place(),
                (way.isEmpty() ? "" : capital(way) + ": ")
                    + (way.isEmpty() ? sentence(first) : lower(sentence(first)))
                    + (others.isEmpty() ? "" : " As much or less: " + InWords.row(others) + ".")));
      }
    }
    return warnings;
  }

  private static String lower(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
