package org.shopclime.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.UnitKind;
import org.shopclime.unit.CurveSet;

/** What the figures of a unit cover and what they leave out, beside those figures. */
public final class UnitLimits {

  private UnitLimits() {}

  /**
   * The limits.
   *
   * @param answer the whole answer
   * @param units system of units to show
   * @return sentences; none without a unit
   */
  public static List<String> lines(SizeAnswer answer, UnitSystem units) {
    return answer.shop().unit().map(unit -> lines(answer, unit, units)).orElse(List.of());
  }

  private static List<String> lines(SizeAnswer answer, CoolingUnit unit, UnitSystem units) {
    if (unit.isEvaporative()) {
      return List.of(
          "Airflow and pads are as you typed them; no maker's data are used. The air leaves the pads"
              + " that part of the way from its temperature to its wet bulb; the picture takes the"
              + " moisture of the hot day's air at all temperatures, and where air that cool cannot"
              + " hold it (left of the bend) saturated air.",
          "Not counted: wear, dried or clogged pads, hard water. As much air must leave as it blows"
              + " in: a window or door stands open while it runs.");
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "Capacity and efficiency are those you typed from the label; no maker's data are used. How"
            + " they change with heat and humidity is that of "
            + family(unit.kind(), units)
            + ".");
    Set<String> beyond = answer.core().unit().map(day -> day.beyond()).orElse(Set.of());
    lines.add(
        (beyond.isEmpty()
                ? "The hot day stays within what was tested."
                : "Some hours of the hot day lie beyond what was tested: " + words(beyond) + ".")
            + " Beyond it the figure at the edge is kept (dotted in the picture); in greater heat a"
            + " real unit gives less than that.");
    lines.add(
        (unit.airflow().likely() < 1
                ? "Dust leaves " + Shown.percent(unit.airflow().likely()) + " of the air"
                : "The coil counts as clean")
            + ". Not counted: wear, a wrong charge, sun on the"
            + " outdoor side or its own hot breath drawn in again.");
    return lines;
  }

  private static String family(UnitKind kind, UnitSystem units) {
    CurveSet window = CurveSet.windowUnit();
    if (kind == UnitKind.WINDOW) {
      return "six window units measured in a laboratory, " + range(window, units);
    }
    if (kind == UnitKind.PORTABLE_ONE_HOSE || kind == UnitKind.PORTABLE_TWO_HOSES) {
      return "window units measured in a laboratory, as nothing was at hand for portable ones, "
          + range(window, units).replace("outdoors", "at the condenser");
    }
    if (kind == UnitKind.HEAT_PUMP || kind == UnitKind.VARIABLE_HEAT_PUMP) {
      return "single-speed residential air conditioners, as nothing was at hand for ductless ones, "
          + range(CurveSet.residentialSingleSpeed(), units);
    }
    return "units of its kind as far as they were measured";
  }

  private static String range(CurveSet curves, UnitSystem units) {
    return "from "
        + Shown.range(curves.lowestOutdoor(), curves.highestOutdoor(), units).replace("–", " to ")
        + " outdoors and "
        + Shown.range(curves.lowestWetBulb(), curves.highestWetBulb(), units).replace("–", " to ")
        + " wet bulb at the coil";
  }

  private static String words(Set<String> beyond) {
    List<String> words = new ArrayList<>();
    say(words, beyond, "hotter outdoors", "OUTDOOR_HIGH");
    say(words, beyond, "cooler outdoors", "OUTDOOR_LOW");
    say(words, beyond, "damper air in the room", "WET_BULB_HIGH", "HUMIDITY_HIGH");
    say(words, beyond, "drier or cooler air in the room", "WET_BULB_LOW", "HUMIDITY_LOW");
    say(words, beyond, "a room too cold for it", "ROOM_LOW", "TOO_COLD");
    say(words, beyond, "a hotter room", "ROOM_HIGH");
    say(words, beyond, "less air through the coil", "AIRFLOW_LOW");
    say(words, beyond, "a coil below freezing, which ices over", "COIL_ICES");
    return Shown.row(words);
  }

  private static void say(List<String> words, Set<String> beyond, String what, String... limits) {
    for (String limit : limits) {
      if (beyond.contains(limit)) {
        words.add(what);
        return;
      }
    }
  }
}
