package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * Buildings to start from; usual ones of the trade (common practice), each saying what it takes.
 */
public final class ShellPresets {

  private static final double PITCH = 4.0 / 12;
  private static final String SLAB = "The floor is a 4 in slab on the ground without insulation.";
  private static final String ATTIC =
      "Above the ceiling lies an attic vented with 1 ft² for each 300 ft² of its floor, under a"
          + " gable roof of 4 in 12 with dark shingles, the ridge running from front to back.";
  private static final String STUDS =
      "The walls are 2x4 studs at 16 in with hardboard siding over OSB, of a medium colour.";

  private ShellPresets() {}

  /**
   * All presets.
   *
   * @return in the order shown
   */
  public static List<ShellPreset> all() {
    return List.of(
        new ShellPreset(
            "Attached two-car garage, bare attic, steel door",
            List.of(
                STUDS,
                "They are lined with 1/2 in gypsum board, with nothing between the studs.",
                "The ceiling is bare 1/2 in gypsum board under 2x6 joists.",
                ATTIC,
                "The back wall stands against the house, and no heat passes it.",
                SLAB,
                "One 16 x 7 ft steel door with worn seals in the front, no foam in it.",
                "How leaky it is nobody knows."),
            size(22, 22, 9),
            ShellPresets::attached),
        new ShellPreset(
            "Detached stud shop, R-13 walls, bare ceiling",
            List.of(
                STUDS,
                "They hold R-13 batts behind 1/2 in gypsum board; how well they fit nobody knows.",
                "The ceiling is bare 1/2 in gypsum board under 2x6 joists.",
                ATTIC,
                SLAB,
                "One 9 x 7 ft steel door with worn seals in the front, an insulated entry door and"
                    + " two 3 x 3 ft windows of one clear pane in the sides.",
                "How leaky it is nobody knows."),
            size(24, 24, 9),
            size -> detached(size, 13, 0, 0)),
        new ShellPreset(
            "Detached stud shop, R-13 walls, R-38 ceiling",
            List.of(
                STUDS,
                "They hold R-13 batts behind 1/2 in gypsum board; how well they fit nobody knows.",
                "The ceiling is 1/2 in gypsum board with R-19 between 2x6 joists and R-19 across.",
                ATTIC,
                SLAB,
                "One 9 x 7 ft steel door with worn seals in the front, an insulated entry door and"
                    + " two 3 x 3 ft windows of one clear pane in the sides.",
                "How leaky it is nobody knows."),
            size(24, 24, 9),
            size -> detached(size, 13, 19, 19)),
        new ShellPreset(
            "Post-frame metal shop with foil bubble wrap",
            List.of(
                "Walls and roof are sheet steel over foil bubble wrap; posts and purlins are not"
                    + " counted.",
                "The foil is dull with dust: it gives off 10 % of the heat a black face would.",
                "The room is open to a gable roof of 4 in 12 of a medium colour.",
                SLAB,
                "One 10 x 8 ft steel door with worn seals in the front, an insulated entry door.",
                "It is leaky: gaps are felt on a windy day."),
            size(30, 24, 10),
            ShellPresets::postFrame),
        new ShellPreset(
            "Shed",
            List.of(
                "The walls are 2x4 studs at 24 in with 1/2 in plywood outside and nothing inside.",
                "The room is open to a gable roof of 4 in 12: 2x4 rafters, OSB, dark shingles.",
                "The floor is 3/4 in plywood on joists, with outdoor air below.",
                "One pair of plywood doors, 5 x 6 1/2 ft, in the front; daylight shows around them.",
                "One 2 x 2 ft window of one clear pane.",
                "It is very leaky."),
            size(16, 12, 7),
            ShellPresets::shed));
  }

  /**
   * A preset by name.
   *
   * @param name name as in {@link ShellPreset#name}
   * @return the preset, or nothing
   */
  public static Optional<ShellPreset> find(String name) {
    return all().stream().filter(preset -> preset.name().equals(name)).findFirst();
  }

  private static List<Room> attached(ShellSize size) {
    return new BoxShell(
            size,
            PITCH,
            studs(0, List.of(layer("gypsum board", 0.5))),
            Optional.of(ceiling(0, 0)),
            shingles(Member.TWO_BY_FOUR),
            slab(size.width() + 2 * size.length()),
            Span.known(0.9),
            0.9,
            unknown(),
            bigDoor(fitting("16 ft", size), 7),
            Optional.empty(),
            List.of(),
            true)
        .rooms();
  }

  private static List<Room> detached(ShellSize size, double wall, double between, double across) {
    return new BoxShell(
            size,
            PITCH,
            studs(wall, List.of(layer("gypsum board", 0.5))),
            Optional.of(ceiling(between, across)),
            shingles(Member.TWO_BY_FOUR),
            slab(2 * (size.width() + size.length())),
            Span.known(0.9),
            0.9,
            unknown(),
            bigDoor(fitting("9 ft", size), 7),
            Optional.of(entry()),
            List.of(window(3), window(3)),
            false)
        .rooms();
  }

  private static List<Room> postFrame(ShellSize size) {
    Build skin = new Build.Layers(List.of(usual("sheet steel"), usual("foil bubble wrap")));
    return new BoxShell(
            size,
            PITCH,
            skin,
            Optional.empty(),
            skin,
            slab(2 * (size.width() + size.length())),
            Span.known(0.6),
            0.1,
            new Leakage.Tightness(Leakage.Grade.LEAKY),
            bigDoor(fitting("10 ft", size), 8),
            Optional.of(entry()),
            List.of(),
            false)
        .rooms();
  }

  private static List<Room> shed(ShellSize size) {
    Build walls =
        new Build.Framed(
            Member.TWO_BY_FOUR,
            Typed.length("24 in"),
            List.of(layer("plywood", 0.5)),
            0,
            Span.known(0),
            0,
            List.of());
    Door doors =
        door(
            "Doors",
            DoorType.SIDE_HINGED,
            fitting("5 ft", size),
            6.5,
            "framed plywood",
            Seal.DAYLIGHT);
    return new BoxShell(
            size,
            PITCH,
            walls,
            Optional.empty(),
            shingles(Member.TWO_BY_FOUR),
            new Build.Layers(List.of(layer("plywood", 0.75))),
            Span.known(0.9),
            0.9,
            new Leakage.Tightness(Leakage.Grade.VERY_LEAKY),
            doors,
            Optional.empty(),
            List.of(window(2)),
            false)
        .rooms();
  }

  private static ShellSize size(double length, double width, double height) {
    double west = 270;
    return new ShellSize(
        Typed.length(length + " ft"),
        Typed.length(width + " ft"),
        Typed.length(height + " ft"),
        west);
  }

  private static Build studs(double batt, List<BuildLayer> lining) {
    Span gaps = batt == 0 ? Span.known(0) : new Span(0, 0.03, 0.08);
    return new Build.Framed(
        Member.TWO_BY_FOUR,
        Typed.length("16 in"),
        List.of(usual("hardboard siding"), usual("OSB")),
        Typed.rValue("R-" + batt),
        gaps,
        0,
        lining);
  }

  private static Build ceiling(double between, double across) {
    return new Build.Framed(
        Member.TWO_BY_SIX,
        Typed.length("24 in"),
        List.of(),
        Typed.rValue("R-" + between),
        Span.known(0),
        Typed.rValue("R-" + across),
        List.of(layer("gypsum board", 0.5)));
  }

  private static Build shingles(Member rafter) {
    return new Build.Framed(
        rafter,
        Typed.length("24 in"),
        List.of(usual("asphalt shingles"), usual("OSB")),
        0,
        Span.known(0),
        0,
        List.of());
  }

  private static Build slab(double edge) {
    double tidy = Typed.tidy(Kind.LENGTH, edge);
    return new Build.Slab(List.of(layer("concrete", 4)), tidy, 0, 0, Span.known(2));
  }

  /** A usual width, or nine tenths of a narrow front. */
  private static double fitting(String width, ShellSize size) {
    return Math.min(Typed.length(width), Typed.tidy(Kind.LENGTH, 0.9 * size.width()));
  }

  private static Leakage unknown() {
    return new Leakage.Tightness(Leakage.Grade.UNKNOWN);
  }

  private static Door bigDoor(double width, double feetHigh) {
    return door("Big door", DoorType.ROLL_UP, width, feetHigh, "sheet steel", Seal.WORN);
  }

  private static Door entry() {
    String leaf = "insulated steel entry";
    return door("Entry door", DoorType.ENTRY, Typed.length("3 ft"), 6.75, leaf, Seal.WORN);
  }

  private static Door door(
      String name, DoorType type, double width, double feetHigh, String leaf, Seal seal) {
    return new Door(
        name,
        type,
        width,
        Typed.length(feetHigh + " ft"),
        leaf,
        new ArrayList<>(),
        Span.known(0.9),
        seal,
        0,
        ScheduleText.work(),
        DoorScreen.NOTHING,
        Span.known(0.6));
  }

  private static Window window(double feet) {
    Glass glass = Tables.glass("single clear, aluminium").orElseThrow();
    double side = Typed.length(feet + " ft");
    double three = Typed.length("3 ft");
    return new Window("window", side, side, three, three, glass, 1, 1, Optional.empty());
  }

  private static BuildLayer layer(String material, double inches) {
    Optional<Double> none = Optional.empty();
    Optional<Double> thickness = Optional.of(Typed.length(inches + " in"));
    return new BuildLayer(material, thickness, none, none, none, none);
  }

  private static BuildLayer usual(String material) {
    Optional<Double> none = Optional.empty();
    return new BuildLayer(material, none, none, none, none, none);
  }
}
