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
            help = "White 0.25, light 0.4, medium 0.6, dark 0.85, black or old steel 0.9.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "60 %",
            unknown = {"30 %", "60 %", "90 %"})
        Span absorptance,
    @Say(label = "Emittance outside", kind = Kind.FRACTION, max = 1, otherwise = "0.9")
        double emittanceOutside,
    @Say(
            label = "Emittance inside",
            help = "0.9 for most; 0.05 for clean foil facing an air space.",
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
        double treeShade) {

  /** Copies the lists. */
  public Face {
    windows = List.copyOf(windows);
    doors = List.copyOf(doors);
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
    return new Face(
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
        treeShade);
  }

  /**
   * The same with another list of windows.
   *
   * @param windows windows in it
   * @return the changed record
   */
  public Face withWindows(List<Window> windows) {
    return new Face(
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
        treeShade);
  }

  /**
   * The same with another list of doors.
   *
   * @param doors doors in it
   * @return the changed record
   */
  public Face withDoors(List<Door> doors) {
    return new Face(
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
        treeShade);
  }
}
