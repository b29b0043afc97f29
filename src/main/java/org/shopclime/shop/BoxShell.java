package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * A rectangular building under a gable roof whose ridge runs from front to back.
 *
 * @param size size and position
 * @param pitch rise of the roof for each unit of run
 * @param wall build of the outdoor walls
 * @param ceiling flat ceiling with a vented attic above; nothing: open to the roof
 * @param roof build of the roof
 * @param floor build of the floor
 * @param roofSun part of the sun the roof takes in
 * @param emittanceInside infrared emittance of walls and roof inside
 * @param leakage how leaky the work room is
 * @param bigDoor door in the front
 * @param entry door in the wall to the left of the front, seen from outside
 * @param windows the first stands beside the entry door, the second across
 * @param attached true if a house stands behind the back wall
 */
record BoxShell(
    ShellSize size,
    double pitch,
    Build wall,
    Optional<Build> ceiling,
    Build roof,
    Build floor,
    Span roofSun,
    double emittanceInside,
    Leakage leakage,
    Door bigDoor,
    Optional<Door> entry,
    List<Window> windows,
    boolean attached) {

  /** Name of the work room. */
  static final String SHOP = "Shop";

  /** Name of the room above a ceiling. */
  static final String ATTIC = "Attic";

  private static final List<String> POINTS =
      List.of("North", "Northeast", "East", "Southeast", "South", "Southwest", "West", "Northwest");

  /** Height of the attic at the eaves, 4 in. */
  private static final double HEEL = Typed.length("4 in");

  /**
   * Effective leakage area of an attic's vents for each area of its floor: net free area of 1/300
   * (model residential code), of which a vent lets through 0.6 (discharge coefficient of a sharp
   * opening; an effective leakage area is reckoned with 1).
   */
  private static final double VENT = 0.6 / 300;

  private static final Span MEDIUM = Span.known(0.6);

  /** Copies the list. */
  BoxShell {
    windows = List.copyOf(windows);
  }

  /** The rooms; the first is the work room. */
  List<Room> rooms() {
    List<Face> faces = new ArrayList<>();
    double open = ceiling.isPresent() ? 0 : rise();
    faces.add(wall(0, size.width(), open, List.of(), List.of(bigDoor)));
    faces.add(side(270, 0, entry.map(List::of).orElse(List.of())));
    faces.add(wall(180, size.width(), open, List.of(), List.of()));
    faces.add(side(90, 1, List.of()));
    if (ceiling.isPresent()) {
      faces.add(level("Ceiling", Part.CEILING, ATTIC, 0, ceiling.get()));
    } else {
      faces.addAll(roofs());
    }
    String below = floor instanceof Build.Slab ? "ground" : "outdoors";
    faces.add(level("Floor", Part.FLOOR, below, 180, floor));
    double height = Typed.tidy(Kind.LENGTH, size.height() + open / 2);
    Room shop = room(SHOP, RoomUse.COOLED, height, faces, leakage, 500, 300);
    return ceiling.isPresent() ? List.of(shop, attic()) : List.of(shop);
  }

  private Room attic() {
    List<Face> faces = new ArrayList<>(roofs());
    faces.add(gable(0));
    faces.add(gable(180));
    Leakage vents = new Leakage.Area(Span.known(Typed.tidy(Kind.LEAKAGE_AREA, area() * VENT)));
    return room(
        ATTIC, RoomUse.FLOATING, Typed.tidy(Kind.LENGTH, HEEL + rise() / 2), faces, vents, 0, 0);
  }

  private Room room(
      String name, RoomUse use, double height, List<Face> faces, Leakage leak, int iron, int wood) {
    Contents contents =
        new Contents(
            Span.known(Typed.si(Kind.MASS, iron + " lb")),
            Span.known(Typed.si(Kind.MASS, wood + " lb")),
            0);
    double setPoint = Typed.si(Kind.TEMPERATURE, "78 °F");
    Optional<Double> none = Optional.empty();
    return new Room(
        name, use, area(), height, none, setPoint, 0.5, faces, leak, List.of(), List.of(),
        contents);
  }

  private Face side(double turn, int window, List<Door> doors) {
    List<Window> own = new ArrayList<>();
    if (window < windows.size()) {
      Window plain = windows.get(window);
      own.add(plain.withName(point(turn) + " " + plain.name()));
    }
    return wall(turn, size.length(), 0, own, doors);
  }

  private Face wall(
      double turn, double width, double gableRise, List<Window> own, List<Door> doors) {
    boolean house = attached && turn == 180;
    boolean eave = width == size.length() && turn % 180 != 0;
    Overhang one = new Overhang(Typed.length("1 ft"), 0);
    return new Face(
        house ? "House wall" : point(turn) + " wall",
        Part.WALL,
        house ? "nothing" : "outdoors",
        azimuth(turn),
        90,
        width,
        size.height(),
        gableRise,
        wall,
        MEDIUM,
        0.9,
        emittanceInside,
        own,
        doors,
        eave ? Optional.of(one) : Optional.empty(),
        1);
  }

  private Face gable(double turn) {
    Build bare = wall;
    if (wall instanceof Build.Framed framed) {
      bare =
          new Build.Framed(
              framed.member(), framed.spacing(), framed.cladding(), 0, Span.known(0), 0, List.of());
    }
    return new Face(
        point(turn) + " gable",
        Part.WALL,
        attached && turn == 180 ? "nothing" : "outdoors",
        azimuth(turn),
        90,
        size.width(),
        HEEL,
        rise(),
        bare,
        MEDIUM,
        0.9,
        0.9,
        List.of(),
        List.of(),
        Optional.empty(),
        1);
  }

  private List<Face> roofs() {
    double slope = Typed.tidy(Kind.LENGTH, Math.hypot(size.width() / 2, rise()));
    List<Face> faces = new ArrayList<>();
    for (double turn : new double[] {270, 90}) {
      faces.add(
          new Face(
              point(turn) + " roof",
              Part.ROOF,
              "outdoors",
              azimuth(turn),
              Typed.tidy(Kind.ANGLE, Math.toDegrees(Math.atan(pitch))),
              size.length(),
              slope,
              0,
              roof,
              roofSun,
              0.9,
              emittanceInside,
              List.of(),
              List.of(),
              Optional.empty(),
              1));
    }
    return faces;
  }

  private Face level(String name, Part part, String behind, double tilt, Build build) {
    return new Face(
        name,
        part,
        behind,
        0,
        tilt,
        size.width(),
        size.length(),
        0,
        build,
        MEDIUM,
        0.9,
        0.9,
        List.of(),
        List.of(),
        Optional.empty(),
        1);
  }

  private double area() {
    return Typed.tidy(Kind.AREA, size.length() * size.width());
  }

  private double rise() {
    return Typed.tidy(Kind.LENGTH, size.width() / 2 * pitch);
  }

  private double azimuth(double turn) {
    return (size.facing() + turn) % 360;
  }

  private String point(double turn) {
    return POINTS.get((int) Math.round(azimuth(turn) / 45) % 8);
  }
}
