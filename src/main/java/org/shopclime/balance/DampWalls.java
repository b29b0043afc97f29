package org.shopclime.balance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.shopclime.air.MoistAir;
import org.shopclime.climate.DayType;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Hours;
import org.shopclime.climate.Months;
import org.shopclime.climate.StationClimate;
import org.shopclime.climate.TypicalDays;
import org.shopclime.envelope.Diffusion;
import org.shopclime.envelope.Layer;
import org.shopclime.envelope.Season;
import org.shopclime.envelope.SlicedWall;
import org.shopclime.envelope.Vapour;
import org.shopclime.envelope.WallClimate;
import org.shopclime.envelope.WaterYear;
import org.shopclime.shop.Face;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/**
 * Vapour in the walls, roofs, ceilings, floors and doors between a held room and outdoors or a room
 * left to itself, on the hot and the humid day and in the means of twelve months.
 *
 * <p>Temperatures of the faces are the means that the shop's own network comes to: sun, sky and
 * cloud outside, gains inside, the attic above a ceiling with the air that passes it. Between the
 * faces temperature runs straight over the resistance, vapour by {@link Diffusion}. Held rooms have
 * the air of {@link DampRoom}; rooms left to themselves hold as much vapour as outdoors.
 *
 * <p>Source: ISO 13788:2012; monthly means of the typical year.
 *
 * <p>Limits: those of {@link Diffusion}; months as their means: a hot week in a mild month is not
 * seen, nor dew of single nights; the sun of a month is that of a clear 21st, beam and sky scaled
 * to the month's sum. Faces against ground, windows and faces between two held rooms are left out.
 */
public final class DampWalls {

  /** Mean of a month from which on the films of the cooling season stand, °C, as for the year. */
  private static final double WARM = 15;

  private final List<DampTime> times;
  private final List<List<DampRoom>> rooms;
  private final List<DampPath> paths;

  private DampWalls(List<DampTime> times, List<List<DampRoom>> rooms, List<DampPath> paths) {
    this.times = List.copyOf(times);
    this.rooms = List.copyOf(rooms);
    this.paths = List.copyOf(paths);
  }

  /**
   * Looks at a shop.
   *
   * @param shop a shop that passed its checks
   * @param hot its hot day
   * @param humid its humid day
   * @param climate climate of its station
   * @param year day types of the station; without it months are not looked at
   * @return its walls
   */
  public static DampWalls of(
      Shop shop, HotDay hot, HotDay humid, StationClimate climate, Optional<TypicalDays> year) {
    Paths known = new Paths(shop);
    List<At> all = new ArrayList<>();
    all.add(ofDay(known, hot, DampTime.Kind.HOT_DAY));
    all.add(ofDay(known, humid, DampTime.Kind.HUMID_DAY));
    year.ifPresent(
        types -> {
          for (int month = 1; month <= Months.COUNT; month++) {
            all.add(ofMonth(known, hot, climate, types, month));
          }
        });
    List<DampPath> paths = new ArrayList<>();
    List<Piece> pieces = all.get(0).model.skeleton().pieces();
    List<String> places = places(shop);
    Map<Component, Integer> seen = new HashMap<>();
    for (int chain = 0; chain < pieces.size(); chain++) {
      Piece piece = pieces.get(chain);
      if (piece.path().isPresent() && isLookedAt(shop, piece)) {
        int of = seen.merge(piece.component(), 1, Integer::sum);
        Optional<DampPath.Way> way = way(pieces, piece, of == 1);
        if (way.isPresent()) {
          String place = places.get(piece.component().index());
          paths.add(path(shop, all, chain, place, way.get()));
        }
      }
    }
    return new DampWalls(
        all.stream().map(at -> at.time).toList(),
        all.stream().map(at -> List.copyOf(at.rooms.values())).toList(),
        paths);
  }

  /**
   * The times looked at.
   *
   * @return hot day, humid day, then January to December if there are monthly means
   */
  public List<DampTime> times() {
    return times;
  }

  /**
   * Air of the held rooms.
   *
   * @param time index of the time
   * @return one for each held room, in their order
   */
  public List<DampRoom> rooms(int time) {
    return rooms.get(time);
  }

  /**
   * The paths looked at.
   *
   * @return face by face, the path between the framing before the one at it
   */
  public List<DampPath> paths() {
    return paths;
  }

  /** A time with the shop's temperatures and the air of its held rooms. */
  private record At(DampTime time, ShopModel model, Map<Integer, DampRoom> rooms) {}

  /** A shop and its heat paths, made once for each season. */
  private static final class Paths {

    private final Shop shop;
    private final Map<Season, Skeleton> made = new EnumMap<>(Season.class);

    Paths(Shop shop) {
      this.shop = shop;
    }

    Skeleton in(Season season) {
      return made.computeIfAbsent(season, each -> SkeletonMaker.of(shop, each));
    }
  }

  private static At ofDay(Paths known, HotDay day, DampTime.Kind kind) {
    Shop shop = known.shop;
    double pressure = 0;
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      pressure +=
          MoistAir.vapourPressure(day.humidityRatio().at(hour), day.pressure()) / Profile.HOURS;
    }
    DampTime time = new DampTime(kind, day.date().getMonthValue(), day.dryBulb().mean(), pressure);
    Map<Integer, DampRoom> rooms = rooms(shop, time);
    double reflectance = shop.place().groundReflectance();
    ShopOnDay parts =
        ShopOnDay.of(
            held(shop, rooms),
            day,
            DaySky.of(day),
            known.in(Season.COOLING),
            pieces -> SunOnShop.clear(pieces, day, reflectance));
    return new At(time, ModelMaker.of(parts, ShopModel.Holding.HELD), rooms);
  }

  private static At ofMonth(
      Paths known, HotDay hot, StationClimate climate, TypicalDays year, int month) {
    Shop shop = known.shop;
    double outdoor = year.mean(month, DayType::mean);
    double pressure = year.mean(month, type -> Vapour.saturation(type.dewPoint()));
    DampTime time = new DampTime(DampTime.Kind.MONTH, month, outdoor, pressure);
    double full = Vapour.saturation(outdoor);
    double ratio = MoistAir.humidityRatio(Math.min(pressure, full), climate.pressure());
    HotDay day =
        new HotDay(
            climate.station(),
            hot.date().withMonth(month),
            Hours.constant(outdoor),
            Hours.constant(ratio),
            Hours.constant(outdoor),
            Hours.constant(year.mean(month, DayType::wind)),
            climate.pressure(),
            ratio,
            climate.aerosol().depth().at(month),
            climate.waterCm().at(month),
            hot.ground());
    Map<Integer, DampRoom> rooms = rooms(shop, time);
    double reflectance = shop.place().groundReflectance();
    double clear = SunOnShop.clearGlobal(day, reflectance);
    double letThrough = clear > 0 ? Math.min(1, year.mean(month, DayType::global) / clear) : 0;
    ShopOnDay parts =
        ShopOnDay.of(
            held(shop, rooms),
            day,
            DaySky.of(day, year.mean(month, DayType::opaqueCloud)),
            known.in(outdoor >= WARM ? Season.COOLING : Season.HEATING),
            pieces -> SunOnShop.clouded(pieces, day, reflectance, letThrough));
    return new At(time, ModelMaker.of(parts, ShopModel.Holding.HELD), rooms);
  }

  private static Map<Integer, DampRoom> rooms(Shop shop, DampTime time) {
    Map<Integer, DampRoom> rooms = new TreeMap<>();
    for (int room = 0; room < shop.rooms().size(); room++) {
      if (isHeld(shop, room)) {
        rooms.put(
            room, DampRoom.of(room, shop.rooms().get(room), shop.work().winterTemperature(), time));
      }
    }
    return rooms;
  }

  /** The shop with its held rooms at the temperatures of a time. */
  private static Shop held(Shop shop, Map<Integer, DampRoom> rooms) {
    List<Room> all = new ArrayList<>(shop.rooms());
    rooms.forEach(
        (index, air) ->
            all.set(index, (Room) ShopParts.with(all.get(index), "setPoint", air.celsius())));
    return shop.withRooms(all);
  }

  private static boolean isHeld(Shop shop, int room) {
    return shop.rooms().get(room).use() == RoomUse.COOLED;
  }

  private static boolean isLookedAt(Shop shop, Piece piece) {
    if (piece.outside() instanceof Piece.OtherRoom other) {
      return isHeld(shop, piece.room()) != isHeld(shop, other.room());
    }
    return piece.outside() instanceof Piece.Outdoors && isHeld(shop, piece.room());
  }

  /** Which path this is; nothing where it is a header, a gap in the fill or an open member. */
  private static Optional<DampPath.Way> way(List<Piece> pieces, Piece piece, boolean first) {
    long paths =
        pieces.stream().filter(other -> other.component().equals(piece.component())).count();
    if (paths == 1) {
      return Optional.of(DampPath.Way.WHOLE);
    }
    if (piece.component().kind() == ComponentKind.DOOR) {
      return Optional.of(first ? DampPath.Way.BOARDS : DampPath.Way.LEAF);
    }
    if (first) {
      return Optional.of(DampPath.Way.SPACE);
    }
    return layers(piece).stream().anyMatch(layer -> layer.name().equals("framing"))
        ? Optional.of(DampPath.Way.MEMBER)
        : Optional.empty();
  }

  private static List<Layer> layers(Piece piece) {
    return piece.path().orElseThrow().layers();
  }

  private static DampPath path(Shop shop, List<At> all, int chain, String place, DampPath.Way way) {
    Piece piece = all.get(0).model.skeleton().pieces().get(chain);
    List<Layer> layers = layers(piece);
    Optional<Layer> unknown = layers.stream().filter(layer -> layer.vapour().isEmpty()).findFirst();
    List<DampSpell> spells = new ArrayList<>();
    Optional<WaterYear> water = Optional.empty();
    if (unknown.isEmpty()) {
      SlicedWall wall = SlicedWall.of(layers);
      List<WallClimate> months = new ArrayList<>();
      for (At at : all) {
        DampSpell spell = spell(at, chain, wall);
        spells.add(spell);
        if (at.time.isMonth()) {
          months.add(climate(at, chain, spell));
        }
      }
      water = months.isEmpty() ? Optional.empty() : Optional.of(WaterYear.of(wall, months));
    }
    return new DampPath(
        piece.component(),
        place,
        way,
        piece.area(),
        isHeld(shop, piece.room()),
        layers,
        unknown,
        spells,
        water);
  }

  private static DampSpell spell(At at, int chain, SlicedWall wall) {
    Piece piece = at.model.skeleton().pieces().get(chain);
    double outerAir = at.time.outdoor();
    double outerPressure = at.time.outdoorPressure();
    if (piece.outside() instanceof Piece.OtherRoom other) {
      outerAir = at.model.meanTemperature(other.room());
      outerPressure = pressure(at, other.room());
    }
    double innerAir = at.model.meanTemperature(piece.room());
    if (at.rooms.containsKey(piece.room())) {
      innerAir = at.rooms.get(piece.room()).celsius();
    }
    double innerPressure = pressure(at, piece.room());
    WallClimate climate =
        new WallClimate(
            at.model.means().left(chain),
            outerPressure,
            at.model.means().right(chain),
            innerPressure);
    return new DampSpell(
        at.time, outerAir, outerPressure, innerAir, innerPressure, Diffusion.of(wall, climate));
  }

  private static WallClimate climate(At at, int chain, DampSpell spell) {
    return new WallClimate(
        at.model.means().left(chain),
        spell.outerPressure(),
        at.model.means().right(chain),
        spell.innerPressure());
  }

  /** Vapour pressure in a room: as told of held ones, else that of outdoors. */
  private static double pressure(At at, int room) {
    return at.rooms.containsKey(room) ? at.rooms.get(room).pressure() : at.time.outdoorPressure();
  }

  /**
   * Places in the file of the lines of faces, windows and doors, as {@link SkeletonMaker} numbers
   * them.
   */
  private static List<String> places(Shop shop) {
    List<String> places = new ArrayList<>();
    for (int room = 0; room < shop.rooms().size(); room++) {
      List<Face> faces = shop.rooms().get(room).faces();
      for (int face = 0; face < faces.size(); face++) {
        String at = "rooms[" + room + "].faces[" + face + "]";
        places.add(at);
        for (int window = 0; window < faces.get(face).windows().size(); window++) {
          places.add(at + ".windows[" + window + "]");
        }
        for (int door = 0; door < faces.get(face).doors().size(); door++) {
          places.add(at + ".doors[" + door + "]");
        }
      }
      places.add("rooms[" + room + "].contents");
    }
    return places;
  }
}
