package org.shopclime.airline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.shopclime.shop.Build;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.CompressedAir;
import org.shopclime.shop.Contents;
import org.shopclime.shop.Face;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Member;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;
import org.shopclime.shop.Window;

/**
 * The owner's shop with its compressor in another place: a closet as a room of its own, of
 * partitions and of what the shop has at that corner, which is taken off the shop.
 *
 * <p>Source: partitions of drywall on both sides of 2x4 studs, empty or with R-13; a lean-to of
 * 7/16 in board, in white paint; 50 lb of iron for each horsepower of pump and tank: common
 * practice.
 *
 * <p>Limits: radiation in a closet is linear about a mildly warm day, so a very hot one is told a
 * little too hot. A closet has no leaks of its own but its vents; a stair has no floor here and a
 * lean-to none either, which is on the safe side.
 *
 * @param shop the shop with its place
 * @param place index of the room where the compressor stands
 */
record PlacedShop(Shop shop, int place) {

  private static final double R13 = 13 * 0.3048 * 0.3048 * 1.8 / (1055.05585262 / 3600);
  private static final double STUD_SPACING = 16 * Trade.INCH;
  private static final double DRYWALL = 0.5 * Trade.INCH;
  private static final double KG_PER_WATT = 50 * 0.45359237 / Trade.HORSEPOWER;
  private static final double STAIR_AREA = 121 * Trade.FOOT * Trade.FOOT;
  private static final double STAIR_HEIGHT = 5 * Trade.FOOT;
  private static final double STAIR_FLOOR = 21 * Trade.FOOT * Trade.FOOT;
  private static final double LEAN_TO_SIDE = 4 * Trade.FOOT;
  private static final double LEAN_TO_HEIGHT = 6 * Trade.FOOT;
  private static final double WHITE = 0.3;
  private static final double LEAST_WIDTH = 0.3;

  /** Walls that a place has; places with the same walls differ in their vents alone. */
  enum Walls {
    /** Those of the work room. */
    ROOM,
    /** Bare partitions at a corner. */
    CORNER,
    /** Insulated partitions at a corner. */
    INSULATED_CORNER,
    /** The underside of a stair. */
    STAIR,
    /** Board outside. */
    LEAN_TO,
    /** The room above. */
    LOFT
  }

  /** Walls of a kind of place. */
  static Walls walls(Placement.Kind kind) {
    return switch (kind) {
      // Under an open roof there is no place to make: the machine leaves the shop alone.
      case IN_ROOM, OPEN_ROOF -> Walls.ROOM;
      case LOFT -> Walls.LOFT;
      case LEAN_TO -> Walls.LEAN_TO;
      case UNDER_STAIR -> Walls.STAIR;
      case CLOSED_INSULATED_CLOSET, OUTDOOR_LOOP, OUTDOOR_LOOP_FAN -> Walls.INSULATED_CORNER;
      case CLOSED_CLOSET, GRILLES_TO_ROOM, FAN_TO_ROOM, STACK_OUTDOORS, FAN_OUTDOORS ->
          Walls.CORNER;
    };
  }

  /**
   * Puts a compressor in its place.
   *
   * @param shop the owner's shop
   * @param owned its compressor
   * @param room index of the work room
   * @param walls walls of the place
   * @return the shop; none where it has no such place, as a shop without a loft
   */
  static Optional<PlacedShop> of(Shop shop, OwnedLine owned, int room, Walls walls) {
    // What air the machine draws and its tools let out is counted where it is run.
    CompressedAir air = shop.air().withIntake(CompressedAir.AirIntake.ROOM);
    return placed(shop.withAir(air), owned, room, walls);
  }

  private static Optional<PlacedShop> placed(Shop shop, OwnedLine owned, int room, Walls walls) {
    return switch (walls) {
      case ROOM -> Optional.of(moved(shop, owned, room));
      case LOFT -> loft(shop, room).map(loft -> moved(shop, owned, loft));
      case LEAN_TO -> Optional.of(leanTo(shop, owned, room));
      case STAIR -> Optional.of(stair(shop, owned, room));
      case INSULATED_CORNER -> Optional.of(corner(shop, owned, room, R13));
      case CORNER -> Optional.of(corner(shop, owned, room, 0));
    };
  }

  private static PlacedShop moved(Shop shop, OwnedLine owned, int to) {
    if (to == owned.room()) {
      return new PlacedShop(shop, to);
    }
    List<Room> rooms = without(shop, owned);
    Room target = rooms.get(to);
    List<Gain> gains = new ArrayList<>(target.gains());
    gains.add(owned.gain());
    rooms.set(to, target.withGains(gains));
    return new PlacedShop(shop.withRooms(rooms), to);
  }

  /** The rooms without the compressor. */
  private static List<Room> without(Shop shop, OwnedLine owned) {
    List<Room> rooms = new ArrayList<>(shop.rooms());
    Room from = rooms.get(owned.room());
    List<Gain> left = new ArrayList<>(from.gains());
    left.remove(owned.gain());
    rooms.set(owned.room(), from.withGains(left));
    return rooms;
  }

  /** A floating room above the work room. */
  private static Optional<Integer> loft(Shop shop, int room) {
    Room work = shop.rooms().get(room);
    for (int i = 0; i < shop.rooms().size(); i++) {
      Room each = shop.rooms().get(i);
      boolean above =
          work.faces().stream()
                  .anyMatch(f -> f.part() == Part.CEILING && f.behind().equals(each.name()))
              || each.faces().stream()
                  .anyMatch(f -> f.part() == Part.FLOOR && f.behind().equals(work.name()));
      if (i != room && above && each.use() == RoomUse.FLOATING) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static PlacedShop stair(Shop shop, OwnedLine owned, int room) {
    List<Room> rooms = without(shop, owned);
    Room work = rooms.get(room);
    Face around =
        face(
            "Stair partition",
            Part.WALL,
            work.name(),
            STAIR_AREA / STAIR_HEIGHT,
            STAIR_HEIGHT,
            partition(0));
    return with(shop, rooms, room, owned, List.of(around), STAIR_FLOOR, STAIR_HEIGHT);
  }

  private static PlacedShop leanTo(Shop shop, OwnedLine owned, int room) {
    List<Room> rooms = without(shop, owned);
    Room work = rooms.get(room);
    List<Face> left = new ArrayList<>(work.faces());
    List<Face> own = new ArrayList<>();
    // On the shady side.
    Optional<Face> wall =
        walls(work).stream()
            .filter(each -> isFree(each, LEAN_TO_SIDE * LEAN_TO_HEIGHT / each.height()))
            .max(Comparator.comparingDouble(each -> Math.cos(Math.toRadians(each.azimuth()))));
    double azimuth = wall.map(Face::azimuth).orElse(0.0);
    Build back = wall.map(Face::build).orElse(partition(R13));
    own.add(face("Lean-to back", Part.WALL, work.name(), LEAN_TO_SIDE, LEAN_TO_HEIGHT, back));
    wall.ifPresent(
        each -> left.set(left.indexOf(each), narrowed(each, LEAN_TO_SIDE * LEAN_TO_HEIGHT)));
    for (double turn : new double[] {-90, 0, 90}) {
      own.add(
          outer(
              "Lean-to side " + own.size(),
              Part.WALL,
              (azimuth + turn + 360) % 360,
              90,
              LEAN_TO_HEIGHT));
    }
    own.add(outer("Lean-to roof", Part.ROOF, azimuth, 10, LEAN_TO_SIDE));
    rooms.set(room, work.withFaces(left));
    return with(shop, rooms, room, owned, own, LEAN_TO_SIDE * LEAN_TO_SIDE, LEAN_TO_HEIGHT);
  }

  private static PlacedShop corner(Shop shop, OwnedLine owned, int room, double insulation) {
    CompressedAir air = shop.air();
    double width = air.closetWidth();
    double depth = air.closetDepth();
    List<Room> rooms = without(shop, owned);
    Room work = rooms.get(room);
    double height = Math.min(air.closetHeight(), work.height());
    List<Face> left = new ArrayList<>(work.faces());
    List<Face> own = new ArrayList<>();
    List<Face> outside = cornerWalls(work, width, depth, height);
    double[] sides = {width, depth};
    for (int i = 0; i < 2; i++) {
      own.add(
          face(
              "Partition " + (i + 1),
              Part.WALL,
              work.name(),
              sides[i],
              height,
              partition(insulation)));
      if (i < outside.size()) {
        Face wall = outside.get(i);
        own.add(piece(wall, "Closet " + wall.name() + " " + (i + 1), sides[i], height));
        left.set(left.indexOf(wall), narrowed(wall, sides[i] * height));
      } else {
        own.add(
            face(
                "Partition " + (i + 3),
                Part.WALL,
                work.name(),
                sides[i],
                height,
                partition(insulation)));
      }
    }
    for (Part part : List.of(Part.FLOOR, Part.CEILING, Part.ROOF)) {
      largest(left, part, work, width * depth)
          .ifPresent(
              level -> {
                own.add(piece(level, "Closet " + level.name(), width, depth));
                left.set(left.indexOf(level), narrowed(level, width * depth));
              });
      if (part == Part.CEILING && own.stream().anyMatch(each -> each.part() == Part.CEILING)) {
        break;
      }
    }
    Room smaller = work.withFaces(left);
    double floor = Math.max(work.floorArea() / 2, work.floorArea() - width * depth);
    smaller = (Room) ShopParts.with(smaller, "floorArea", floor);
    if (work.volume().isPresent()) {
      double volume = work.volume().get();
      double less = Math.max(volume / 2, volume - width * depth * height);
      smaller = (Room) ShopParts.with(smaller, "volume", Optional.of(less));
    }
    rooms.set(room, smaller);
    return with(shop, rooms, room, owned, own, width * depth, height);
  }

  /** Two outside walls that meet, or as many as have room for the closet. */
  private static List<Face> cornerWalls(Room work, double width, double depth, double height) {
    List<Face> first =
        walls(work).stream()
            .filter(wall -> isFree(wall, Math.max(width, depth) * height / wall.height()))
            .sorted(Comparator.comparingDouble(PlacedShop::freeWidth).reversed())
            .toList();
    if (first.isEmpty()) {
      return List.of();
    }
    Face one = first.get(0);
    return first.stream()
        .filter(other -> meet(one, other))
        .findFirst()
        .map(other -> List.of(one, other))
        .orElse(List.of(one));
  }

  private static boolean meet(Face one, Face other) {
    double turn = Math.abs(one.azimuth() - other.azimuth()) % 360;
    double between = Math.min(turn, 360 - turn);
    return between > 45 && between < 135;
  }

  private static List<Face> walls(Room room) {
    return room.faces().stream()
        .filter(face -> face.part() == Part.WALL && isOutdoors(face) && face.gableRise() == 0)
        .toList();
  }

  private static boolean isOutdoors(Face face) {
    return face.behind().toLowerCase(Locale.ROOT).equals("outdoors");
  }

  /** Width of a wall beside all of its openings. */
  private static double freeWidth(Face wall) {
    double taken = 0;
    for (Window window : wall.windows()) {
      taken = Math.max(taken, window.offset() + window.width());
    }
    return wall.width() - taken - wall.doors().stream().mapToDouble(each -> each.width()).sum();
  }

  private static boolean isFree(Face wall, double width) {
    return freeWidth(wall) >= width && wall.width() - width >= LEAST_WIDTH;
  }

  private static Optional<Face> largest(List<Face> faces, Part part, Room room, double area) {
    return faces.stream()
        .filter(face -> face.part() == part && face.windows().isEmpty() && face.doors().isEmpty())
        .filter(face -> !face.behind().equals(room.name()) && face.grossArea() > 2 * area)
        .max(Comparator.comparingDouble(Face::grossArea));
  }

  /** A face less an area, at its own height. */
  private static Face narrowed(Face face, double area) {
    Face less = (Face) ShopParts.with(face, "width", face.width() - area / face.height());
    return less.withBuild(edge(face.build(), -Math.sqrt(area)));
  }

  /** A part of a face, without its openings. */
  private static Face piece(Face of, String name, double width, double height) {
    Face part = of.withWindows(List.of()).withDoors(List.of());
    part = (Face) ShopParts.with(part, "name", name);
    part = (Face) ShopParts.with(part, "width", width);
    part = (Face) ShopParts.with(part, "height", height);
    part = (Face) ShopParts.with(part, "gableRise", 0.0);
    part = (Face) ShopParts.with(part, "sunShare", 0.0);
    if (of.build() instanceof Build.Slab slab) {
      return part.withBuild(edged(slab, Math.min(slab.exposedPerimeter(), width + height)));
    }
    return part;
  }

  /** The edge of a slab after a corner was taken off. */
  private static Build edge(Build build, double more) {
    return build instanceof Build.Slab slab
        ? edged(slab, Math.max(0, slab.exposedPerimeter() + 2 * more))
        : build;
  }

  private static Build edged(Build.Slab slab, double edge) {
    return new Build.Slab(
        slab.layers(), edge, slab.edgeInsulation(), slab.edgeDepth(), slab.soilConductivity());
  }

  static Build partition(double insulation) {
    BuildLayer drywall = layer("gypsum board", DRYWALL);
    return new Build.Framed(
        Member.TWO_BY_FOUR,
        STUD_SPACING,
        List.of(drywall),
        insulation,
        Span.known(0),
        0,
        List.of(drywall));
  }

  private static BuildLayer layer(String material, double thickness) {
    return new BuildLayer(
        material,
        Optional.of(thickness),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Face face(
      String name, Part part, String behind, double width, double height, Build build) {
    return face(name, part, behind, 0, 90, width, height, build);
  }

  private static Face outer(String name, Part part, double azimuth, double tilt, double height) {
    Build board = new Build.Layers(List.of(layer("OSB", 7.0 / 16 * Trade.INCH)));
    return face(name, part, "outdoors", azimuth, tilt, LEAN_TO_SIDE, height, board);
  }

  private static Face face(
      String name,
      Part part,
      String behind,
      double azimuth,
      double tilt,
      double width,
      double height,
      Build build) {
    return new Face(
        name,
        part,
        behind,
        azimuth,
        tilt,
        width,
        height,
        0,
        build,
        Span.known(WHITE),
        0.9,
        0.9,
        List.of(),
        List.of(),
        Optional.empty(),
        1);
  }

  /**
   * The machine as the network's radiation is made linear with it: nine tenths of its heat are
   * taken to go with the air. Its true heat is told hour by hour by {@link PlaceRun}.
   */
  private static Gain mild(Gain.Compressor gain) {
    return new Gain.Compressor(gain.name(), gain.power() / 10, gain.duty(), gain.when());
  }

  private static PlacedShop with(
      Shop shop,
      List<Room> rooms,
      int room,
      OwnedLine owned,
      List<Face> faces,
      double floor,
      double height) {
    Set<String> taken = new HashSet<>();
    rooms.forEach(each -> taken.add(each.name()));
    String name = "Compressor's place";
    for (int i = 2; taken.contains(name); i++) {
      name = "Compressor's place " + i;
    }
    double iron = owned.gain().power() * KG_PER_WATT;
    Room work = rooms.get(room);
    rooms.add(
        new Room(
            name,
            RoomUse.FLOATING,
            floor,
            height,
            Optional.empty(),
            work.setPoint(),
            work.wishedHumidity(),
            faces,
            new Leakage.AirChanges(Span.known(0)),
            List.of(),
            List.of(mild(owned.gain())),
            new Contents(Span.known(iron), Span.known(0), 0)));
    // Tools would make so small a machine run all the time.
    Shop placed = shop.withRooms(rooms).withAir(shop.air().withoutTools());
    return new PlacedShop(placed, rooms.size() - 1);
  }
}
