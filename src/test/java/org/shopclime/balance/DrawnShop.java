package org.shopclime.balance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Level;
import org.shopclime.climate.StationClimate;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.shop.Board;
import org.shopclime.shop.Build;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Contents;
import org.shopclime.shop.Door;
import org.shopclime.shop.DoorType;
import org.shopclime.shop.Face;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Glass;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Member;
import org.shopclime.shop.OvenBatches;
import org.shopclime.shop.Overhang;
import org.shopclime.shop.Part;
import org.shopclime.shop.Passage;
import org.shopclime.shop.PassageKind;
import org.shopclime.shop.Place;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Seal;
import org.shopclime.shop.Shelter;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Span;
import org.shopclime.shop.Window;
import org.shopclime.shop.Work;

/**
 * Whole shops drawn by lot, such as an owner might write: a work room of any proportions turned any
 * way, under a roof or an attic, beside it at times an office that is cooled too, a loft and a
 * closet that are not; with doors, glass, eaves, fans, work and machines. All of them pass the
 * checks of a shop file.
 *
 * <p>Records are made by the names of their components, so that a component added to them is as if
 * absent here.
 */
public final class DrawnShop {

  private static final Climates CLIMATES = Climates.load();

  private static final List<String> PLACES =
      List.of("722230", "722780", "722430", "724940", "726580", "723860");

  private static final List<String> WHEN =
      List.of("work", "always", "never", "daily 7:30-9:10", "Mon-Fri 0:00-2:15, 9:00-10:30 40 %");

  private final Random random;

  /**
   * A lot.
   *
   * @param lot which one
   */
  public DrawnShop(long lot) {
    random = new Random(lot);
  }

  /** A shop of one to five rooms. */
  public Shop shop() {
    double turn = random.nextInt(3) == 0 ? 0 : between(0, 360);
    double width = between(3, 12);
    double depth = between(3, 15);
    double height = between(2.2, 4.5);
    boolean office = random.nextInt(3) == 0;
    boolean attic = random.nextBoolean();
    boolean loft = random.nextInt(3) == 0;
    boolean closet = random.nextInt(3) == 0;
    List<Room> rooms = new ArrayList<>();
    List<Face> faces = new ArrayList<>();
    faces.add(front(turn, width, height));
    faces.add(glazed("Right", turn + 90, depth, height));
    faces.add(wall("Back", back(), turn + 180, width, height));
    faces.add(
        office
            ? wall("To office", "Office", turn + 270, depth, height)
            : glazed("Left", turn + 270, depth, height));
    faces.addAll(top(attic, turn, width, depth));
    faces.add(floor("Floor", width, depth));
    double area = width * depth;
    rooms.add(
        with(
            room("Shop", RoomUse.COOLED, area, height, faces),
            "leakage",
            leakage(),
            "fans",
            fans(),
            "gains",
            gains(),
            "contents",
            contents()));
    if (office) {
      rooms.add(office(turn, depth, height, attic));
    }
    if (attic) {
      rooms.add(attic(turn, width, depth));
    }
    if (loft) {
      rooms.add(loft(turn, Math.min(width, 3), Math.min(depth, 4)));
    }
    if (closet) {
      rooms.add(closet(turn));
    }
    return make(
        Shop.class,
        "name",
        "Drawn",
        "units",
        UnitSystem.SI,
        "place",
        make(
            Place.class,
            "station",
            any(PLACES),
            "groundReflectance",
            between(0.1, 0.4),
            "shelter",
            any(List.of(Shelter.values()))),
        "work",
        make(
            Work.class,
            "hours",
            when(any(List.of("Mon-Fri 8:00-17:00", "Mon-Sat 6:30-11:00, 12:10-20:00 70 %"))),
            "clock",
            any(List.of(Clock.values()))),
        "rooms",
        rooms);
  }

  /**
   * The same shop with doorways, stairs and hatches that stand open between its rooms: one in each
   * face between two of them, now and then none.
   *
   * @param shop a shop that was drawn
   */
  public Shop opened(Shop shop) {
    List<String> names = shop.rooms().stream().map(Room::name).toList();
    return eachFace(
        shop,
        face ->
            names.contains(face.behind()) && random.nextInt(5) > 0
                ? with(face, "passage", Optional.of(passage(face)))
                : face);
  }

  private Passage passage(Face face) {
    boolean level = face.tilt() < 45 || face.tilt() > 135;
    boolean flat = level && random.nextInt(4) > 0;
    return make(
        Passage.class,
        "name",
        face.name() + " way",
        "kind",
        flat ? PassageKind.FLOOR_OPENING : PassageKind.DOORWAY,
        "width",
        between(0.1, 0.9) * face.width(),
        "length",
        between(0.1, 0.9) * face.height(),
        "depth",
        random.nextInt(4) == 0 ? 0.0 : between(0.1, 3),
        "openWhen",
        when(any(WHEN)));
  }

  /**
   * A hot or humid day at the place of a shop, at times moved up or down.
   *
   * @param shop a shop that was drawn
   */
  public HotDay day(Shop shop) {
    StationClimate climate = climate(shop);
    HotDay day =
        random.nextInt(4) == 0
            ? DesignDays.humidDay(climate)
            : DesignDays.hotDay(climate, any(List.of(Level.P0_4, Level.P1, Level.P2)));
    return random.nextBoolean() ? day : DesignDays.shifted(day, between(-4, 6));
  }

  /** Climate of a shop that was drawn. */
  public static StationClimate climate(Shop shop) {
    return CLIMATES.find(shop.place().station()).orElseThrow();
  }

  /** All stations. */
  public static Climates climates() {
    return CLIMATES;
  }

  /** A number between two others. */
  public double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** One of several. */
  public <T> T any(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  /** A record made from some of its components, the others as if absent. */
  public static <R extends Record> R make(Class<R> type, Object... namesAndValues) {
    Map<String, Object> said = new HashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      said.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return ShopParts.create(type, said);
  }

  /** The same record with some components changed. */
  public static <R extends Record> R with(R record, Object... namesAndValues) {
    Record changed = record;
    for (int i = 0; i < namesAndValues.length; i += 2) {
      changed = ShopParts.with(changed, (String) namesAndValues[i], namesAndValues[i + 1]);
    }
    @SuppressWarnings("unchecked") // with() returns a record of the class it was given
    R same = (R) changed;
    return same;
  }

  /** The shop with each of its rooms changed. */
  public static Shop eachRoom(Shop shop, UnaryOperator<Room> change) {
    return shop.withRooms(shop.rooms().stream().map(change).toList());
  }

  /** The shop with each of its faces changed. */
  public static Shop eachFace(Shop shop, UnaryOperator<Face> change) {
    return eachRoom(shop, room -> with(room, "faces", room.faces().stream().map(change).toList()));
  }

  /** The shop with nothing in it that gives off heat. */
  public static Shop withoutGains(Shop shop) {
    return eachRoom(shop, room -> room.withGains(List.of()));
  }

  /** A face with a resistance more behind its lining or before its cladding, m²·K/W. */
  public static Face insulated(Face face, double resistance, boolean inside) {
    BuildLayer more =
        make(BuildLayer.class, "material", "more", "resistance", Optional.of(resistance));
    Build build = face.build();
    if (build instanceof Build.Framed framed) {
      return face.withBuild(
          inside
              ? with(framed, "lining", added(framed.lining(), more, true))
              : with(framed, "cladding", added(framed.cladding(), more, false)));
    }
    List<BuildLayer> layers =
        build instanceof Build.Slab slab ? slab.layers() : ((Build.Layers) build).layers();
    return face.withBuild((Build) with((Record) build, "layers", added(layers, more, inside)));
  }

  private static List<BuildLayer> added(List<BuildLayer> layers, BuildLayer more, boolean last) {
    List<BuildLayer> added = new ArrayList<>(layers);
    added.add(last ? added.size() : 0, more);
    return added;
  }

  private List<Face> top(boolean attic, double turn, double width, double depth) {
    if (attic) {
      return List.of(level("Ceiling", Part.CEILING, "Attic", 0, width, depth));
    }
    if (random.nextBoolean()) {
      return List.of(level("Flat roof", Part.ROOF, "outdoors", between(0, 4), width, depth));
    }
    return slopes("", turn, width, depth);
  }

  /** Two slopes whose ridge runs from front to back. */
  private List<Face> slopes(String of, double turn, double width, double depth) {
    double tilt = between(10, 45);
    double slope = width / 2 / Math.cos(Math.toRadians(tilt));
    List<Face> faces = new ArrayList<>();
    for (double side : new double[] {90, 270}) {
      String name = of + (side == 90 ? "Right roof" : "Left roof");
      faces.add(
          with(
              wall(name, "outdoors", turn + side, depth, slope),
              "part",
              Part.ROOF,
              "tilt",
              tilt,
              "absorptance",
              Span.known(between(0.25, 0.9)),
              "emittanceInside",
              random.nextInt(4) == 0 ? 0.05 : 0.9));
    }
    return faces;
  }

  private Face front(double turn, double width, double height) {
    Face face =
        with(
            wall("Front", "outdoors", turn, width, height),
            "gableRise",
            random.nextBoolean() ? 0.0 : between(0.2, 2));
    return face.withDoors(
        List.of(door("Big door", Math.min(width - 0.1, between(2, 4)), between(1.9, 2.1))));
  }

  private Face glazed(String name, double azimuth, double width, double height) {
    Face face = wall(name, "outdoors", azimuth, width, height);
    List<Window> windows = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      windows.add(window(name + " window " + i, (i - 1) * width / 2, width / 2));
    }
    return with(
        face,
        "windows",
        windows,
        "overhang",
        random.nextBoolean()
            ? Optional.empty()
            : Optional.of(make(Overhang.class, "depth", between(0.2, 1), "gap", 0.1)));
  }

  private Face wall(String name, String behind, double azimuth, double width, double height) {
    return make(
        Face.class,
        "name",
        name,
        "part",
        Part.WALL,
        "behind",
        behind,
        "azimuth",
        azimuth % 360,
        "width",
        width,
        "height",
        height,
        "build",
        build(),
        "absorptance",
        Span.known(between(0.2, 0.9)),
        "emittanceOutside",
        between(0.7, 0.95),
        "treeShade",
        random.nextInt(4) == 0 ? 0.3 : 1.0);
  }

  private Face level(
      String name, Part part, String behind, double tilt, double width, double depth) {
    return with(wall(name, behind, 0, width, depth), "part", part, "tilt", tilt);
  }

  private Face floor(String name, double width, double depth) {
    String behind = any(List.of("ground", "ground", "outdoors", "nothing"));
    Face face = level(name, Part.FLOOR, behind, 180, width, depth);
    if (!behind.equals("ground")) {
      return face;
    }
    return face.withBuild(
        make(
            Build.Slab.class,
            "layers",
            List.of(concrete()),
            "exposedPerimeter",
            random.nextInt(4) == 0 ? 0.0 : between(1, 2 * (width + depth)),
            "edgeInsulation",
            random.nextBoolean() ? 0.0 : 1.5,
            "edgeDepth",
            0.6));
  }

  private String back() {
    return any(List.of("outdoors", "outdoors", "outdoors", "nothing", "ground"));
  }

  private Room office(double turn, double depth, double height, boolean attic) {
    double width = between(2, 4);
    List<Face> faces = new ArrayList<>();
    faces.add(glazed("Office left", turn + 270, depth, height));
    faces.add(wall("Office front", "outdoors", turn, width, height));
    faces.add(
        attic && random.nextBoolean()
            ? level("Office ceiling", Part.CEILING, "Attic", 0, width, depth)
            : level("Office roof", Part.ROOF, "outdoors", 2, width, depth));
    faces.add(floor("Office floor", width, depth));
    return with(
        room("Office", RoomUse.COOLED, width * depth, height, faces),
        "setPoint",
        between(22, 27),
        "leakage",
        leakage(),
        "gains",
        List.of(other("Screen")));
  }

  private Room attic(double turn, double width, double depth) {
    List<Face> faces = new ArrayList<>(slopes("Attic ", turn, width, depth));
    for (double side : new double[] {0, 180}) {
      faces.add(
          with(
              wall("Attic gable " + side, "outdoors", turn + side, width, 0.1),
              "gableRise",
              between(0.3, 2)));
    }
    return with(
        room("Attic", RoomUse.FLOATING, width * depth, between(0.4, 1.5), faces),
        "leakage",
        new Leakage.Area(Span.known(between(0.02, 0.3))),
        "fans",
        random.nextBoolean() ? List.of() : List.of(fan("Attic fan", FanWay.OUT)));
  }

  /** A loft on the work room; its floor is listed here. */
  private Room loft(double turn, double width, double depth) {
    List<Face> faces = new ArrayList<>(slopes("Loft ", turn, width, depth));
    faces.add(wall("Loft gable", "outdoors", turn + 180, width, between(0.5, 1.5)));
    faces.add(level("Loft floor", Part.FLOOR, "Shop", 180, width, depth));
    return with(
        room("Loft", RoomUse.FLOATING, width * depth, 1.2, faces),
        "leakage",
        new Leakage.AirChanges(Span.known(between(0.2, 4))),
        "contents",
        contents());
  }

  private Room closet(double turn) {
    List<Face> faces = new ArrayList<>();
    faces.add(wall("Closet wall", "Shop", turn + 180, 1.5, 2));
    Face outside = wall("Closet outside", "outdoors", turn, 1.5, 2.2);
    faces.add(outside.withDoors(List.of(door("Closet door", 0.8, 1.9))));
    faces.add(level("Closet floor", Part.FLOOR, "nothing", 180, 1.5, 2));
    return with(
        room("Closet", RoomUse.FLOATING, 3, 2.2, faces),
        "leakage",
        new Leakage.Tightness(Leakage.Grade.VERY_LEAKY),
        "fans",
        List.of(fan("Closet fan", any(List.of(FanWay.values())))),
        "gains",
        List.of(
            make(
                Gain.Compressor.class,
                "power",
                between(500, 1200),
                "duty",
                Span.known(0.3),
                "when",
                when(any(WHEN)))));
  }

  private Room room(String name, RoomUse use, double area, double height, List<Face> faces) {
    return make(
        Room.class,
        "name",
        name,
        "use",
        use,
        "floorArea",
        area,
        "height",
        height,
        "faces",
        faces,
        "leakage",
        new Leakage.Tightness(Leakage.Grade.AVERAGE),
        "contents",
        make(Contents.class, "iron", Span.known(0), "wood", Span.known(0)));
  }

  private Contents contents() {
    return make(
        Contents.class,
        "iron",
        Span.known(between(0, 800)),
        "wood",
        Span.known(between(0, 300)),
        "drywall",
        random.nextBoolean() ? 0.0 : between(1, 20));
  }

  private Leakage leakage() {
    return switch (random.nextInt(4)) {
      case 0 -> new Leakage.BlowerDoor(Span.known(between(2, 30)));
      case 1 -> new Leakage.AirChanges(Span.known(between(0, 3)));
      case 2 -> new Leakage.Area(Span.known(between(0, 0.2)));
      default -> new Leakage.Tightness(any(List.of(Leakage.Grade.values())));
    };
  }

  private List<Fan> fans() {
    List<Fan> fans = new ArrayList<>();
    for (FanWay way : FanWay.values()) {
      if (random.nextInt(3) == 0) {
        fans.add(fan("Fan " + way, way));
      }
    }
    return fans;
  }

  private Fan fan(String name, FanWay way) {
    return make(
        Fan.class,
        "name",
        name,
        "way",
        way,
        "flow",
        between(0, 0.2),
        "when",
        when(any(WHEN)),
        "minutes",
        random.nextBoolean() ? 3600.0 : between(0, 3600),
        "ledToHood",
        random.nextBoolean() ? 0.0 : between(0, 0.8));
  }

  private List<Gain> gains() {
    List<Gain> all =
        List.of(
            make(
                Gain.People.class,
                "count",
                between(0.5, 3),
                "activity",
                any(List.of(Gain.Activity.values()))),
            make(Gain.Lights.class, "count", 6.0, "watts", between(10, 80)),
            make(Gain.Motor.class, "name", "Saw", "power", between(500, 4000)),
            make(
                Gain.Oven.class,
                "width",
                0.9,
                "depth",
                0.9,
                "height",
                1.2,
                "exhaust",
                between(0, 1),
                "when",
                when(any(WHEN)),
                "batches",
                batches()),
            other("Other"));
    return all.stream().filter(gain -> random.nextBoolean()).toList();
  }

  private Optional<OvenBatches> batches() {
    return random.nextBoolean()
        ? Optional.empty()
        : Optional.of(
            make(
                OvenBatches.class,
                "number",
                random.nextBoolean() ? Optional.empty() : Optional.of(between(1, 9)),
                "parts",
                between(0, 60),
                "vent",
                random.nextBoolean() ? 0.0 : between(0, 0.01),
                "partsInRoom",
                random.nextDouble()));
  }

  private Gain other(String name) {
    return make(
        Gain.Other.class,
        "name",
        name,
        "power",
        between(0, 600),
        "radiantFraction",
        random.nextDouble(),
        "moisture",
        between(0, 300),
        "when",
        when(any(WHEN)));
  }

  private Window window(String name, double offset, double most) {
    return make(
        Window.class,
        "name",
        name,
        "width",
        Math.min(most - 0.1, between(0.4, 2)),
        "height",
        between(0.4, 1.2),
        "offset",
        offset,
        "sill",
        0.9,
        "glass",
        make(Glass.class, "name", "glass", "uFactor", between(1.5, 5.5), "shgc", between(0.2, 0.8)),
        "innerShade",
        random.nextBoolean() ? 1.0 : 0.6,
        "outerShade",
        random.nextBoolean() ? 1.0 : 0.5,
        "overhang",
        random.nextInt(3) > 0
            ? Optional.empty()
            : Optional.of(make(Overhang.class, "depth", between(0.2, 0.8))));
  }

  private Door door(String name, double width, double height) {
    return make(
        Door.class,
        "name",
        name,
        "type",
        any(List.of(DoorType.values())),
        "width",
        width,
        "height",
        height,
        "leaf",
        any(List.of("sheet steel", "solid-core wood 1 3/4 in")),
        "boards",
        random.nextBoolean()
            ? List.of()
            : List.of(make(Board.class, "material", "XPS foam", "thickness", 0.0254)),
        "seal",
        any(List.of(Seal.values())),
        "openMinutes",
        random.nextBoolean() ? 0.0 : between(0, 1800));
  }

  private Build build() {
    return switch (random.nextInt(4)) {
      case 0 -> layers(resisting(between(0.05, 6)));
      case 1 -> layers(named("sheet steel"), resisting(between(0.1, 1)), named("plywood"));
      case 2 -> layers(resisting(between(0.01, 2)), concrete());
      default ->
          make(
              Build.Framed.class,
              "member",
              any(List.of(Member.values())),
              "spacing",
              between(0.3, 0.7),
              "cladding",
              List.of(named("OSB")),
              "cavity",
              random.nextBoolean() ? 0.0 : between(1, 3),
              "gaps",
              Span.known(between(0, 0.1)),
              "continuous",
              random.nextBoolean() ? 0.0 : between(0.1, 2),
              "lining",
              random.nextBoolean() ? List.of() : List.of(named("gypsum board")));
    };
  }

  private static Build layers(BuildLayer... layers) {
    return make(Build.Layers.class, "layers", List.of(layers));
  }

  private static BuildLayer named(String material) {
    return make(BuildLayer.class, "material", material);
  }

  private static BuildLayer resisting(double resistance) {
    return make(BuildLayer.class, "material", "insulation", "resistance", Optional.of(resistance));
  }

  private BuildLayer concrete() {
    return make(
        BuildLayer.class, "material", "concrete", "thickness", Optional.of(between(0.05, 0.3)));
  }

  private static Schedule when(String text) {
    return TestShops.when(text);
  }
}
