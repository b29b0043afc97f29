package org.shopclime.shop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Problem;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;

/** What must fit together in a shop, and what is unusual in it. */
public final class ShopCheck {

  /** What a face may have behind it besides another room. */
  static final List<String> OUTSIDES = List.of("outdoors", "ground", "nothing");

  /** A floor may be measured inside or outside its walls. */
  private static final double FLOOR_SLACK = 0.2;

  private static final double SHARES_SLACK = 1e-9;

  /** Capacity below which no unit is sold, W. */
  /** Greatest usual SEER2, W/W (about 33 BTU/Wh), and greatest usual EER of a heat pump. */
  private static final double MOST_SEASON = 9.7;

  private static final double MOST_IN_THE_HEAT = 4.7;

  /** Least and greatest usual CEER of portable units, W/W (about 4 and 9 BTU/Wh). */
  private static final double LEAST_PORTABLE = 1.17;

  private static final double MOST_PORTABLE = 2.64;

  private static final double LEAST_CAPACITY = 300;

  private static final double HOUR = 3600;

  private final Shop shop;
  private final UnitSystem units;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Warning> warnings = new ArrayList<>();

  private ShopCheck(Shop shop) {
    this.shop = shop;
    this.units = shop.units();
  }

  /**
   * What a check found.
   *
   * @param problems what must be mended before anything can be reckoned
   * @param warnings what is unusual or asks for caution
   */
  public record Findings(List<Problem> problems, List<Warning> warnings) {

    /** Copies the lists. */
    public Findings {
      problems = List.copyOf(problems);
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * Checks a shop.
   *
   * @param shop shop
   * @param stations look-up of weather stations
   * @return every problem and warning
   */
  public static Findings check(Shop shop, Stations stations) {
    ShopCheck check = new ShopCheck(shop);
    check.values();
    check.place(stations);
    check.rooms();
    check.unit();
    check.air();
    Findings prices = PricesCheck.check(shop.prices());
    check.problems.addAll(prices.problems());
    check.warnings.addAll(prices.warnings());
    check.warnings.addAll(Cautions.of(shop));
    check.warnings.addAll(SupplyCheck.of(shop).map(SupplyCheck::warnings).orElse(List.of()));
    return new Findings(check.problems, check.warnings);
  }

  private void values() {
    Walk.through(
        shop,
        (path, value, say) -> {
          if (value instanceof Double number) {
            number(path, number, number, say);
          } else if (value instanceof Span span) {
            number(path, span.low(), span.high(), say);
          } else if (value instanceof Schedule schedule) {
            schedule(path, schedule);
          } else if (value instanceof String name && path.endsWith("name") && name.isBlank()) {
            problems.add(new Problem(path, "an empty name", "a name, such as \"West wall\""));
          }
          return value;
        });
  }

  private void number(String path, double low, double high, Say say) {
    for (double end : low == high ? new double[] {low} : new double[] {low, high}) {
      // NaN stands where a file could not be read, which has been said already
      if (!Bounds.holds(say, end) && !Double.isNaN(end)) {
        String found = Quantities.show(say.kind(), end, units);
        problems.add(new Problem(path, found, Bounds.takes(say, units)));
        return;
      }
    }
    double end = low < say.usualMin() ? low : high;
    if (Bounds.unusual(say, end)) {
      String shown = Quantities.show(say.kind(), end, units);
      String usual = Bounds.usual(say, units);
      warnings.add(new Warning(path, shown + " is unusual; usual is " + usual));
    }
  }

  private void schedule(String path, Schedule schedule) {
    int end = 0;
    for (Schedule.Period period : schedule.periods()) {
      if (period.startMinute() < end) {
        String found = "\"" + ScheduleText.write(schedule) + "\"";
        problems.add(new Problem(path, found, "periods in order that do not overlap"));
        return;
      }
      end = period.endMinute();
    }
  }

  private void place(Stations stations) {
    String station = shop.place().station();
    if (!stations.known().test(station)) {
      List<String> alike = stations.nearest().apply(station);
      String nearest =
          alike.isEmpty()
              ? ", such as \"722230\" or \"Mobile\"; the verb places finds them by town or point"
              : "; nearest: " + BriefText.quoted(alike);
      String takes = "a station of the climate tables by number or name" + nearest;
      problems.add(new Problem("place.station", "\"" + station + "\"", takes));
    }
    Schedule hours = shop.work().hours();
    if (hours.asWork()) {
      String takes = "days and periods such as \"Mon-Fri 8:00-17:00\"";
      problems.add(new Problem("work.hours", "\"work\"", takes));
    } else if (hours.periods().isEmpty() || hours.days().isEmpty()) {
      warnings.add(new Warning("work.hours", "no working hours: nothing is asked of the unit"));
    }
  }

  private void rooms() {
    List<Room> rooms = shop.rooms();
    if (rooms.isEmpty()) {
      problems.add(new Problem("rooms", "no room", "at least one room"));
    }
    Set<String> names = new HashSet<>(OUTSIDES);
    for (int i = 0; i < rooms.size(); i++) {
      String path = "rooms[" + i + "]";
      Room room = rooms.get(i);
      name(path, room.name(), names);
      boolean bounded =
          !room.faces().isEmpty()
              || rooms.stream()
                  .flatMap(other -> other.faces().stream())
                  .anyMatch(face -> face.behind().equals(room.name()));
      if (!bounded) {
        String takes = "at least one wall, roof, ceiling or floor of its own or of another room";
        problems.add(new Problem(path + ".faces", "none", takes));
      }
      room(path, room);
    }
  }

  private void floorArea(String path, Room room) {
    double floors = 0;
    for (Face face : room.faces()) {
      floors += face.part() == Part.FLOOR ? face.grossArea() : 0;
    }
    if (floors > 0 && Math.abs(floors - room.floorArea()) > FLOOR_SLACK * room.floorArea()) {
      String found = Quantities.show(Kind.AREA, room.floorArea(), units);
      String sum = Quantities.show(Kind.AREA, floors, units);
      String text = " does not go with its floors, " + sum + " together";
      warnings.add(new Warning(path + ".floorArea", found + text));
    }
  }

  /** What is said of plants and does not come true. */
  private void plants(String path, Room room) {
    if (room.setBack().isPresent()
        && (room.use() == RoomUse.FLOATING || room.heating() == RoomHeating.NONE)) {
      warnings.add(new Warning(path + ".setBack", "has no effect: nothing heats this room"));
    }
    if (room.winterAir().humidity().isPresent()
        && (room.use() == RoomUse.FLOATING || room.heating() == RoomHeating.NONE)) {
      warnings.add(
          new Warning(path + ".winterAir.humidity", "has no effect: nothing heats this room"));
    }
    if (room.use() == RoomUse.FLOATING) {
      String text = "has no effect: a floating room is neither cooled nor heated";
      if (room.cooling() == RoomCooling.IDEAL) {
        warnings.add(new Warning(path + ".cooling", text));
      }
      if (room.heatedTo().isPresent()) {
        warnings.add(new Warning(path + ".heatedTo", text));
      }
    } else if (room.cooling() != RoomCooling.NONE
        && room.heating() != RoomHeating.NONE
        && room.heatedTo().orElse(shop.work().winterTemperature()) > room.setPoint()) {
      String cooled = Quantities.show(Kind.TEMPERATURE, room.setPoint(), units);
      String text = "above the wished temperature: in the year's run it is heated to " + cooled;
      warnings.add(new Warning(path + ".heatedTo", text));
    }
  }

  /** Shares of the sun inside. */
  private void sunInside(String path, Room room) {
    double sum = 0;
    for (int i = 0; i < room.faces().size(); i++) {
      sum += room.faces().get(i).sunShare();
      if (room.faces().get(i).sunShare() > 0 && room.sunInside() != SunInsideWay.SHARES) {
        String text = "has no effect: the sun inside of this room is not told by shares";
        warnings.add(new Warning(path + ".faces[" + i + "].sunShare", text));
      }
    }
    if (room.sunInside() == SunInsideWay.SHARES && !(sum > 0 && sum <= 1 + SHARES_SLACK)) {
      String found = "faces whose \"sunShare\" makes " + sum + " together";
      problems.add(new Problem(path + ".sunInside", found, "more than 0 and at most 1"));
    }
  }

  private void room(String path, Room room) {
    floorArea(path, room);
    plants(path, room);
    sunInside(path, room);
    Set<String> faces = new HashSet<>();
    Set<String> openings = new HashSet<>();
    for (int i = 0; i < room.faces().size(); i++) {
      Face face = room.faces().get(i);
      String at = path + ".faces[" + i + "]";
      name(at, face.name(), faces);
      behind(at, room, face);
      for (int j = 0; j < face.windows().size(); j++) {
        name(at + ".windows[" + j + "]", face.windows().get(j).name(), openings);
      }
      for (int j = 0; j < face.doors().size(); j++) {
        name(at + ".doors[" + j + "]", face.doors().get(j).name(), openings);
      }
      if (face.passage().isPresent()) {
        name(at + ".passage", face.passage().get().name(), openings);
      }
      FaceCheck check = new FaceCheck(at, face, units);
      problems.addAll(check.problems());
      warnings.addAll(check.warnings());
    }
    Set<String> gains = new HashSet<>();
    for (int i = 0; i < room.gains().size(); i++) {
      name(path + ".gains[" + i + "]", room.gains().get(i).name(), gains);
    }
    Set<String> fans = new HashSet<>();
    for (int i = 0; i < room.fans().size(); i++) {
      name(path + ".fans[" + i + "]", room.fans().get(i).name(), fans);
      fan(path + ".fans[" + i + "]", room.fans().get(i));
    }
  }

  private void fan(String path, Fan fan) {
    if (fan.way() == FanWay.FILTERED_RETURN && fan.use().hasFumes()) {
      String takes = "\"out\": fumes and vapor are not returned to a room";
      problems.add(new Problem(path + ".way", "\"filtered return\" of fumes", takes));
    }
    if (fan.duct().isPresent() && fan.flow() > 0) {
      String found =
          "a duct beside an air flow of " + Quantities.show(Kind.AIR_FLOW, fan.flow(), units);
      problems.add(new Problem(path + ".duct", found, "one of the two: the flow, or its duct"));
    } else if (fan.duct().isEmpty() && fan.flow() == 0) {
      String takes = "an air flow such as \"600 cfm\", or {\"diameter\": \"6 in\"} as its duct";
      problems.add(new Problem(path + ".flow", "nothing", takes));
    }
    if (fan.way() != FanWay.OUT && fan.ledToHood() > 0) {
      String text = "has no effect: only a fan that blows out has make-up air led to its hood";
      warnings.add(new Warning(path + ".ledToHood", text));
    }
  }

  private void name(String path, String name, Set<String> taken) {
    if (!taken.add(name) && !name.isBlank()) {
      String found = "\"" + name + "\", which is taken";
      problems.add(new Problem(path + ".name", found, "a name of its own"));
    }
  }

  private void behind(String path, Room room, Face face) {
    List<String> known = new ArrayList<>(OUTSIDES);
    shop.rooms().stream().map(Room::name).filter(n -> !n.equals(room.name())).forEach(known::add);
    if (face.behind().equals(room.name())) {
      String takes = "what lies on the other side; another room, outdoors, ground or nothing";
      problems.add(new Problem(path + ".behind", "the face's own room", takes));
    } else if (!known.contains(face.behind())) {
      String takes = "one of " + BriefText.quoted(Nearest.to(face.behind(), known, known.size()));
      problems.add(new Problem(path + ".behind", "\"" + face.behind() + "\"", takes));
    }
  }

  private void air() {
    double together = shop.air().tools().together();
    if (together > HOUR) {
      String found = Quantities.show(Kind.DURATION, together, units) + " together";
      problems.add(
          new Problem("air.tools", found, "at most 60 min: tools are used one after the other"));
    }
  }

  private void unit() {
    if (shop.unit().isEmpty()) {
      return;
    }
    String name = shop.unit().get().room();
    List<String> cooled =
        shop.rooms().stream().filter(r -> r.use() == RoomUse.COOLED).map(Room::name).toList();
    if (shop.rooms().isEmpty()) {
      return; // which is said of the rooms
    }
    if (cooled.isEmpty()) {
      problems.add(new Problem("unit", "a unit but no cooled room", "a room with use \"cooled\""));
    } else if (!name.isEmpty() && !cooled.contains(name)) {
      String takes = "a cooled room: " + BriefText.quoted(cooled);
      problems.add(new Problem("unit.room", "\"" + name + "\"", takes));
    }
    figures(shop.unit().get());
  }

  private void fan(CoolingUnit unit) {
    if (unit.fan().isPresent() && unit.isEvaporative()) {
      String text = "has no effect: an evaporative cooler has no coil for a fan to dry";
      warnings.add(new Warning("unit.fan", text));
    }
    double most = unit.ratedPower() / 2;
    double watts = unit.fanBetweenRuns(unit.capacity()).orElse(0);
    if (watts > most && most > 0) {
      problems.add(
          new Problem(
              "unit.fan.power",
              Quantities.show(Kind.POWER, watts, UnitSystem.SI),
              "no more than half of what the unit draws, "
                  + Quantities.show(Kind.POWER, most, UnitSystem.SI)));
    }
  }

  /** Each kind of unit has its own figure: capacity, or what it blows. */
  private void figures(CoolingUnit unit) {
    if (unit.heating().isPresent() && !unit.isHeatPump()) {
      String text = "has no effect: only a heat pump heats";
      warnings.add(new Warning("unit.heating", text));
    }
    fan(unit);
    adjusted(unit);
    if (unit.isEvaporative()) {
      if (unit.pads().isEmpty()) {
        String takes = "what the cooler blows, such as {\"airflow\": \"3000 cfm\"}";
        problems.add(new Problem("unit.pads", "nothing", takes));
      }
      warnings.removeIf(warning -> warning.path().equals("unit.capacity"));
      if (unit.capacity() > 0) {
        String text = "has no effect: an evaporative cooler is reckoned by its airflow";
        warnings.add(new Warning("unit.capacity", text));
      }
      return;
    }
    if (unit.pads().isPresent()) {
      String text = "has no effect: only an evaporative cooler has pads";
      warnings.add(new Warning("unit.pads", text));
    }
    if (unit.capacity() < LEAST_CAPACITY) {
      warnings.removeIf(warning -> warning.path().equals("unit.capacity"));
      String found =
          unit.capacity() == 0 ? "nothing" : Quantities.show(Kind.POWER, unit.capacity(), units);
      String takes =
          Quantities.show(Kind.POWER, LEAST_CAPACITY, units) + " or more: the figure on the label";
      problems.add(new Problem("unit.capacity", found, takes));
    }
    label(unit);
  }

  /** A SACC is of portable units, and their CEER goes by it and is low. */
  private void adjusted(CoolingUnit unit) {
    if (unit.capacityLabel() == CapacityLabel.SACC && !unit.isPortable()) {
      String takes = "\"rated\", or a portable unit";
      problems.add(new Problem("unit.capacityLabel", "\"SACC\"", takes));
    }
    if (!unit.isPortable() || unit.label() != EfficiencyLabel.CEER) {
      return;
    }
    if (unit.isAdjusted()) {
      if (unit.efficiency() >= LEAST_PORTABLE) {
        warnings.removeIf(warning -> warning.path().equals("unit.efficiency"));
      }
      if (unit.efficiency() > MOST_PORTABLE) {
        String text =
            "more than portable units reach with their hose; an EER goes with the rated capacity:"
                + " then the figure is \"EER\"";
        warnings.add(new Warning("unit.efficiency", text));
      }
    } else if (unit.efficiency() < MOST_PORTABLE) {
      warnings.removeIf(warning -> warning.path().equals("unit.efficiency"));
      String text =
          "a portable unit's CEER goes by its SACC: type both from the label, or an EER with the"
              + " rated capacity; so it draws too much here";
      warnings.add(new Warning("unit.efficiency", text));
    }
  }

  /** A season's figure is of heat pumps, and as an efficiency at 95 °F it would be too good. */
  private void label(CoolingUnit unit) {
    if (unit.label() == EfficiencyLabel.SEER2) {
      if (!unit.isHeatPump()) {
        String takes = "\"EER\" or \"CEER\", or a unit that is a heat pump";
        problems.add(new Problem("unit.label", "\"SEER2\"", takes));
      }
      if (unit.efficiency() <= MOST_SEASON) {
        warnings.removeIf(warning -> warning.path().equals("unit.efficiency"));
      }
    } else if (unit.isHeatPump() && unit.efficiency() > MOST_IN_THE_HEAT) {
      warnings.removeIf(warning -> warning.path().equals("unit.efficiency"));
      String text =
          "more than heat pumps reach at 95 °F; a SEER or SEER2 on the label is a mean of the"
              + " season: then the figure is \"SEER2\"";
      warnings.add(new Warning("unit.efficiency", text));
    }
  }

  /**
   * A length for a person.
   *
   * @param metres length, m
   * @param units system of units
   * @return such as "8 ft"
   */
  static String length(double metres, UnitSystem units) {
    return Quantities.show(Kind.LENGTH, metres, units);
  }
}
