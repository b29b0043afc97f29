package org.shopclime.shop;

import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * A wall, roof, ceiling or floor of the room it is listed in; a partition is listed once, in either
 * room. Seen from that room: "outside" is what lies behind it.
 *
 * @param name what the owner calls it
 * @param part wall, roof, ceiling or floor
 * @param behind {@code "outdoors"}, {@code "ground"}, {@code "nothing"} (no heat passes) or the
 *     name of another room
 * @param azimuth compass direction the outside looks to, degrees from north, clockwise; of no
 *     meaning for level faces
 * @param tilt slope, degrees: 0 looks up, 90 upright, 180 looks down
 * @param width width, m
 * @param height height (or length along the slope), m
 * @param gableRise height of the triangle on top, m; 0: none
 * @param build what it is built of
 * @param absorptance part of the sun the outside takes in, 0 to 1
 * @param emittanceOutside infrared emittance of the outside, 0 to 1
 * @param emittanceInside infrared emittance of the inside, 0 to 1
 * @param windows windows in it
 * @param doors doors in it
 * @param overhang eave or awning along its whole top
 * @param treeShade part of the direct sun that trees or neighbours let through, 0 to 1
 * @param fins boards or walls that stand out at its left and right edge
 * @param absorptanceInside part of the sun falling on the inside that it takes in, 0 to 1
 * @param filmOutside convective film on its outside (behind a partition: on the far side), without
 *     radiation, W/(m²·K); absent: the published one of the season
 * @param filmInside the same on its inside
 * @param groundTemperature temperature of the ground it touches, °C, all year; absent: by depth and
 *     day
 * @param sunShare part of all sun let into the room that ends on it, 0 to 1, where the room's sun
 *     is told by shares
 * @param passage a doorway, stair or hatch that stands open to the room behind it; the face counts
 *     as if it were whole
 */
public record Face(
    @Say(label = "Name") String name,
    @Say(label = "Part") Part part,
    @Say(
            label = "Behind it",
            help = "outdoors, ground, nothing, or the name of another room.",
            otherwise = "outdoors")
        String behind,
    @Say(
            label = "Faces",
            help = "Compass direction the outside looks to: N, SW, or degrees from north.",
            kind = Kind.ANGLE,
            max = 360,
            otherwise = "0 deg")
        double azimuth,
    @Say(
            label = "Slope",
            help = "0 looks up (flat roof), 90 is upright, 180 looks down.",
            kind = Kind.ANGLE,
            max = 180,
            otherwise = "90 deg")
        double tilt,
    @Say(label = "Width", kind = Kind.LENGTH, min = 0.05, max = 200, usualMax = 60) double width,
    @Say(label = "Height", kind = Kind.LENGTH, min = 0.05, max = 200, usualMax = 60) double height,
    @Say(
            label = "Gable rise",
            help = "Height of the triangle on top, if any.",
            kind = Kind.LENGTH,
            max = 30,
            otherwise = "0 ft")
        double gableRise,
    @Say(label = "Build") Build build,
    @Say(
            label = "Sun taken in",
            help = "White 25 %, light 40 %, medium 60 %, dark 85 %, black or old steel 90 %.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "60 %",
            unknown = {"30 %", "60 %", "90 %"})
        Span absorptance,
    @Say(
            label = "Emittance outside",
            help = "Of the infrared; 90 % for most.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "0.9")
        double emittanceOutside,
    @Say(
            label = "Emittance inside",
            help = "90 % for most; 5 % for clean foil facing an air space.",
            kind = Kind.FRACTION,
            min = 0.02,
            max = 1,
            otherwise = "0.9")
        double emittanceInside,
    @Say(label = "Windows", otherwise = "[]") List<Window> windows,
    @Say(label = "Doors", otherwise = "[]") List<Door> doors,
    @Say(label = "Eave", otherwise = "none") Optional<Overhang> overhang,
    @Say(
            label = "Sun let through by trees",
            help = "100 % in the open, 30 % behind a dense tree.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "100 %")
        double treeShade,
    @Say(label = "Fins", help = "Boards or walls at both side edges.", otherwise = "none")
        Optional<Fins> fins,
    @Say(
            label = "Sun taken in inside",
            help = "Part of the sun falling on the inside that it takes in.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "60 %")
        double absorptanceInside,
    @Say(
            label = "Film outside",
            help = "Convection only, without radiation; leave empty for the published one.",
            kind = Kind.U_FACTOR,
            min = 0.1,
            max = 200,
            otherwise = "none")
        Optional<Double> filmOutside,
    @Say(
            label = "Film inside",
            help = "Convection only, without radiation; leave empty for the published one.",
            kind = Kind.U_FACTOR,
            min = 0.1,
            max = 200,
            otherwise = "none")
        Optional<Double> filmInside,
    @Say(
            label = "Ground held at",
            help = "For a face on the ground; leave empty for that of the place and season.",
            kind = Kind.TEMPERATURE,
            min = -20,
            max = 50,
            usualMin = 0,
            usualMax = 35,
            otherwise = "none")
        Optional<Double> groundTemperature,
    @Say(
            label = "Share of the sun let in",
            help = "Only where the room's sun inside is told by shares.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "0 %")
        double sunShare,
    @Say(
            label = "Open way through",
            help =
                "A doorway without a shut door, or a stair or hatch in a floor, to the room behind it: air passes as temperatures make it.",
            otherwise = "none")
        Optional<Passage> passage) {

  /** Part of the sun inside that painted walls, wood and concrete take in (common practice). */
  private static final double USUAL_ABSORPTANCE_INSIDE = 0.6;

  /** Copies the lists. */
  public Face {
    windows = List.copyOf(windows);
    doors = List.copyOf(doors);
  }

  /**
   * A face without fins, with published films and usual insides.
   *
   * @param name what the owner calls it
   * @param part wall, roof, ceiling or floor
   * @param behind what lies behind it
   * @param azimuth compass direction the outside looks to, degrees
   * @param tilt slope, degrees
   * @param width width, m
   * @param height height, m
   * @param gableRise height of the triangle on top, m
   * @param build what it is built of
   * @param absorptance part of the sun the outside takes in, 0 to 1
   * @param emittanceOutside infrared emittance of the outside, 0 to 1
   * @param emittanceInside infrared emittance of the inside, 0 to 1
   * @param windows windows in it
   * @param doors doors in it
   * @param overhang eave or awning along its whole top
   * @param treeShade part of the direct sun that trees or neighbours let through, 0 to 1
   */
  public Face(
      String name,
      Part part,
      String behind,
      double azimuth,
      double tilt,
      double width,
      double height,
      double gableRise,
      Build build,
      Span absorptance,
      double emittanceOutside,
      double emittanceInside,
      List<Window> windows,
      List<Door> doors,
      Optional<Overhang> overhang,
      double treeShade) {
    this(
        name,
        part,
        behind,
        azimuth,
        tilt,
        width,
        height,
        gableRise,
        build,
        absorptance,
        emittanceOutside,
        emittanceInside,
        windows,
        doors,
        overhang,
        treeShade,
        Optional.empty(),
        USUAL_ABSORPTANCE_INSIDE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0,
        Optional.empty());
  }

  /**
   * Area with its openings.
   *
   * @return m²
   */
  public double grossArea() {
    return width * height + width * gableRise / 2;
  }

  /**
   * Area without its openings.
   *
   * @return m²
   */
  public double netArea() {
    double area = grossArea();
    for (Window window : windows) {
      area -= window.area();
    }
    for (Door door : doors) {
      area -= door.area();
    }
    return area;
  }

  /**
   * The same with another build.
   *
   * @param build what it is built of
   * @return the changed record
   */
  public Face withBuild(Build build) {
    return (Face) ShopParts.with(this, "build", build);
  }

  /**
   * The same with another list of windows.
   *
   * @param windows windows in it
   * @return the changed record
   */
  public Face withWindows(List<Window> windows) {
    return (Face) ShopParts.with(this, "windows", windows);
  }

  /**
   * The same with another list of doors.
   *
   * @param doors doors in it
   * @return the changed record
   */
  public Face withDoors(List<Door> doors) {
    return (Face) ShopParts.with(this, "doors", doors);
  }

  /**
   * The same with another way through.
   *
   * @param passage what stands open to the room behind it, if anything does
   * @return the changed record
   */
  public Face withPassage(Optional<Passage> passage) {
    return (Face) ShopParts.with(this, "passage", passage);
  }
}
