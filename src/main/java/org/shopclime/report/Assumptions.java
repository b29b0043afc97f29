package org.shopclime.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.shopclime.climate.HotDay;
import org.shopclime.leakage.DoorExchange;
import org.shopclime.plan.SizeAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.Cooling;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Door;
import org.shopclime.shop.DoorScreen;
import org.shopclime.shop.Duct;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.HotDayLevel;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Pads;
import org.shopclime.shop.Passage;
import org.shopclime.shop.PassageKind;
import org.shopclime.shop.PumpHeat;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;
import org.shopclime.shop.SpanPlace;
import org.shopclime.shop.Unknowns;
import org.shopclime.shop.Words;
import org.shopclime.unit.DuctlessHeatPump;

/** What an answer rests on, in sentences. */
final class Assumptions {

  /** What an answer is not. */
  static final String APPROVAL =
      "An estimate to choose by, not a design and not an approval: local code, the makers'"
          + " instructions and licensed trades decide.";

  /** What the method leaves out. */
  static final List<String> LIMITS =
      List.of(
          "The air of a room has one temperature: no hot layer below the ceiling, no cold draft at"
              + " the unit.",
          "The day is clear and repeats; the true worst day may be damper, or follow a hotter one.",
          "Heat and cold of the station are those of a typical year, which leaves out the rarest"
              + " days; hotter and colder ones than told here will come. Type the day you fear: its"
              + " hottest hour, its coldest night, or both, with the place.",
          "A unit's capacity in the heat is that of published curves for units of its kind, not of"
              + " yours; a worn or badly charged unit gives less.",
          "Air leaks by the published formula for small houses, with the leakage area told above;"
              + " a gusty day may double it.",
          "A warm wall or ceiling warms the air only through the thin film of air on it; the rest it"
              + " radiates to cooler faces. With little in the room the figures of walls and ceiling"
              + " are therefore smaller than by pencil; with much in it the truth lies nearer to the"
              + " pencil.",
          "A floor slab takes heat out of a shop that is hotter than the ground, and gives heat where"
              + " the ground is hotter; how much depends on soil that nobody measured.",
          "Work gives off the heat you typed, on the hours you typed.",
          APPROVAL);

  /** What a year leaves out: all of it but what is said of the hot day. */
  static List<String> limitsOfYear() {
    return LIMITS.stream().filter(line -> !line.startsWith("The day is clear")).toList();
  }

  /** Air below this counts as thin, Pa: some 3,000 ft up. */
  private static final double THIN_AIR = 91_000;

  private final Shop shop;
  private final HotDay day;
  private final UnitSystem units;
  private final WallClock clock;

  Assumptions(SizeAnswer answer, UnitSystem units) {
    this.shop = answer.shop();
    this.day = answer.core().hotDay();
    this.units = units;
    this.clock = new WallClock(shop.work(), day.date());
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(hotDay());
    lines.add(work());
    for (Room room : shop.rooms()) {
      lines.add(room(room));
      room.fans().forEach(fan -> fan.duct().ifPresent(duct -> lines.add(duct(fan, duct))));
    }
    for (Room room : shop.rooms()) {
      for (Face face : room.faces()) {
        face.passage().ifPresent(way -> lines.add(passage(way, room.name(), face.behind())));
        face.doors().forEach(door -> screen(lines, door));
      }
    }
    shop.unit().ifPresent(unit -> lines.add(unit(unit)));
    return lines;
  }

  /**
   * What the owner does not know, and what is reckoned with instead; the same at several places
   * stands once, with all the places.
   */
  List<String> unknowns() {
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (SpanPlace place : Unknowns.of(shop)) {
      places
          .computeIfAbsent(unknown(place), text -> new ArrayList<>())
          .add(PathWords.of(shop, place.path()));
    }
    return places.entrySet().stream()
        .map(entry -> String.join("; ", entry.getValue()) + ": " + entry.getKey())
        .toList();
  }

  private String hotDay() {
    int hottest = day.dryBulb().argMax();
    String level =
        shop.place().typedPeak().isPresent() ? "the peak you set" : rarity(shop.place().level());
    return "Hot day at "
        + day.station().name()
        + ", "
        + day.station().state()
        + " ("
        + day.station().id()
        + "), sun of "
        + month()
        + " 21, clear sky: "
        + temperature(day.peak())
        + " from "
        + clock.during(hottest)
        + " ("
        + level
        + "), "
        + temperature(day.dryBulb().min())
        + " in the coolest hour, wet bulb "
        + temperature(day.wetBulb().at(hottest))
        + " in the hottest.";
  }

  private static String rarity(HotDayLevel level) {
    return switch (level) {
      case HOTTEST -> "the hottest hour of the station's typical year";
      case P0_4 -> "passed in 35 hours of a typical year";
      case P1 -> "passed in 88 hours of a typical year";
      case P2 -> "passed in 175 hours of a typical year";
    };
  }

  private String month() {
    return day.date()
        .getMonth()
        .getDisplayName(java.time.format.TextStyle.FULL, java.util.Locale.ENGLISH);
  }

  private String work() {
    return "Work "
        + ScheduleText.write(shop.work().hours())
        + " by the clock on the wall, which "
        + (clock.hoursAhead() > 0 ? "follows daylight saving" : "shows standard time")
        + "; "
        + Quantities.show(Kind.DURATION, shop.work().pullDown(), units)
        + " are allowed to cool down. Held means: the mean of each working hour after that is at"
        + " most "
        + (units == UnitSystem.SI ? "0.6 K" : "1 °F")
        + " above the wish. The unit is off outside working hours.";
  }

  private String room(Room room) {
    String held =
        room.use() == RoomUse.COOLED
            ? "wished at "
                + temperature(room.setPoint())
                + " and, for the load, "
                + Shown.percent(room.wishedHumidity())
                + " humidity"
            : "left to itself";
    return Shown.line(room.name()) + ": " + held + "; leaks: " + leakage(room.leakage()) + ".";
  }

  private String duct(Fan fan, Duct duct) {
    return Shown.line(fan.name())
        + ": "
        + Quantities.show(Kind.AIR_FLOW, fan.moved(), units)
        + " by its duct of "
        + Quantities.show(Kind.LENGTH, duct.diameter(), units)
        + " with air at "
        + velocity(duct.velocity(fan.use()))
        + (duct.velocity().isPresent()
            ? ", as you typed."
            : ", which keeps such a duct clean (ACGIH); a clogged filter halves it, and the figure on"
                + " a collector is for no duct at all.");
  }

  /** Air in ducts is told in feet a minute. */
  private String velocity(double metresPerSecond) {
    return units == UnitSystem.SI
        ? Quantities.show(Kind.SPEED, metresPerSecond, units)
        : Shown.grouped(Math.round(60 * Units.feet(metresPerSecond))) + " ft/min";
  }

  private static void screen(List<String> lines, Door door) {
    if (door.openMinutes() == 0 || door.screen() == DoorScreen.NOTHING) {
      return;
    }
    boolean strips = door.screen() == DoorScreen.STRIPS;
    double stopped =
        (strips ? DoorExchange.Protection.STRIP_CURTAIN : DoorExchange.Protection.AIR_CURTAIN)
            .stopped();
    lines.add(
        Shown.line(door.name())
            + ", "
            + Words.of(door.screen())
            + " in the open doorway: "
            + Shown.percent(stopped)
            + " of the air that warmth would move through is held back, as measured with "
            + (strips
                ? "whole strips hanging closed (parted or worn ones hold back much less)"
                : "a well-set fan (50 to 80 %)")
            + "; nothing of what wind drives through.");
  }

  private String passage(Passage way, String here, String behind) {
    String flows =
        way.kind() == PassageKind.DOORWAY
            ? "as much air each way as the difference of temperature moves in still air"
            : "air changes places while it is colder above than below; while it is hotter above,"
                + " next to nothing, and nothing is counted";
    return Shown.line(way.name())
        + " between "
        + Shown.line(here)
        + " and "
        + Shown.line(behind)
        + ", "
        + Words.of(way.kind())
        + " of "
        + Quantities.show(Kind.LENGTH, way.width(), units)
        + " by "
        + Quantities.show(Kind.LENGTH, way.length(), units)
        + ", open "
        + open(way)
        + ": "
        + flows
        + ". People, fans and drafts move more.";
  }

  private static String open(Passage way) {
    String when = ScheduleText.write(way.openWhen());
    return when.equals("work") ? "during work" : when;
  }

  private String leakage(Leakage leakage) {
    if (leakage instanceof Leakage.Tightness tightness) {
      return tightness.grade() == Leakage.Grade.UNKNOWN
          ? "you don't know, taken as leaky"
          : Words.of(tightness.grade());
    } else if (leakage instanceof Leakage.BlowerDoor door) {
      return show(Kind.AIR_CHANGES, door.airChanges50()) + " at 50 Pa";
    } else if (leakage instanceof Leakage.AirChanges changes) {
      return show(Kind.AIR_CHANGES, changes.airChanges()) + " at all hours";
    } else if (leakage instanceof Leakage.Area area) {
      return show(Kind.LEAKAGE_AREA, area.area()) + " of opening at 4 Pa";
    }
    throw new IllegalArgumentException("leakage " + leakage);
  }

  private String unit(CoolingUnit unit) {
    if (unit.isEvaporative()) {
      return unit.pads().map(pads -> pads(unit, pads)).orElse("");
    }
    return "Unit ("
        + Words.of(unit.kind())
        + "): "
        + Shown.power(unit.capacity(), units)
        + (unit.isAdjusted() ? " (SACC)" : "")
        + " and "
        + Quantities.show(Kind.EFFICIENCY, unit.efficiency(), units)
        + " ("
        + Words.of(unit.label())
        + ") on the label"
        + (unit.isAdjusted() ? ", taken as a machine of " + PortableText.machine(unit, units) : "")
        + "; "
        + Shown.percent(unit.airflow().likely())
        + " of the air still passes the coil."
        + height()
        + fan(unit)
        + unit.winterHeat().map(heat -> " " + winter(unit, heat)).orElse("");
  }

  /** What thin air does, where it is thin. */
  private String height() {
    return day.pressure() > THIN_AIR
        ? ""
        : " So high up its fans move thinner air, which is counted; what the compressor gives is taken"
            + " as at sea level, which may be a few percent too much.";
  }

  private String fan(CoolingUnit unit) {
    OptionalDouble watts = unit.fanBetweenRuns(unit.capacity());
    return watts.isEmpty()
        ? ""
        : " Its fan ("
            + Quantities.show(Kind.POWER, watts.getAsDouble(), UnitSystem.SI)
            + ") runs on while the compressor rests and blows water off the coil back into the room:"
            + " how much is that of a usual coil, not of yours, so read the humidity as how bad it"
            + " can get.";
  }

  private String winter(CoolingUnit unit, PumpHeat heat) {
    return "In winter it heats: "
        + Shown.power(heat.capacity().orElse(unit.capacity()), units)
        + " at "
        + temperature(DuctlessHeatPump.RATED_OUTDOOR)
        + ", "
        + heat.hspf2()
            .map(told -> "HSPF2 of " + Quantities.show(Kind.EFFICIENCY, told, units))
            .orElse(Cooling.USUAL_COP + " W of heat for each watt there")
        + ", down to "
        + temperature(heat.lowestOutdoor())
        + "; beyond that a heater.";
  }

  private String pads(CoolingUnit unit, Pads pads) {
    return "Unit ("
        + Words.of(unit.kind())
        + "): "
        + Quantities.show(Kind.AIR_FLOW, unit.airflow().likely() * pads.airflow(), units)
        + " of outdoor air cooled "
        + Shown.percent(pads.effectiveness())
        + " of the way to its wet bulb, as much room air out by an open window, "
        + Quantities.show(Kind.POWER, pads.watts(), UnitSystem.SI)
        + " for blower and pump; leaks go on beside it. It stands where that would not cool.";
  }

  private String unknown(SpanPlace place) {
    String what = lower(place.label());
    if (place.kind() == Kind.COUNT) {
      return what + " – taken as leaky; between good and very leaky in the band.";
    }
    Kind kind = place.kind();
    Span span = place.span();
    return what
        + " – "
        + Quantities.show(kind, span.likely(), units)
        + " taken; "
        + Quantities.show(kind, place.lowIsKind() ? span.low() : span.high(), units)
        + " at best, "
        + Quantities.show(kind, place.lowIsKind() ? span.high() : span.low(), units)
        + " at worst.";
  }

  private String show(Kind kind, Span span) {
    return Quantities.show(kind, span.likely(), units);
  }

  private static String lower(String label) {
    return label.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + label.substring(1);
  }

  private String temperature(double celsius) {
    return Shown.temperature(celsius, units);
  }
}
