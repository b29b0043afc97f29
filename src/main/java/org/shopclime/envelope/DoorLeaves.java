package org.shopclime.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Bare doors by name, and doors with foam boards laid into them.
 *
 * <p>Source: ASHRAE 90.1-2007, A7; ASHRAE Fundamentals 1997, ch. 24, Table 6; IECC default table
 * for doors. A rated U-factor is turned into a resistance from face to face by taking off the films
 * so that it comes back with these films. A single skin of steel resists
 * nothing: with these films it makes 1.18 BTU/(h·ft²·°F), not the 1.45 (90.1) or 1.20 (IECC) that
 * the ratings give with fins, frame and films of their own. Mass by the usual weights of the trade,
 * from memory.
 */
public final class DoorLeaves {

  /** Films taken off a rated U-factor, R. */
  private static final double FILMS = 0.17 + 0.68;

  /** Steel skin of a door, 24 gauge. */
  private static final Layer SKIN =
      new Layer("steel skin", 0.0006, 45, 7830, 500, OptionalDouble.of(1500));

  private static final double WOOD_DENSITY = 550;
  private static final double WOOD_SPECIFIC_HEAT = 1630;

  /** Usual thickness of such a core, m; heat does not depend on it. */
  private static final double CORE = 0.038;

  /** Still air that resists vapour as much as a core of foam between skins, m; from memory. */
  private static final double CORE_VAPOUR = 2;

  /** Times the vapour resistance of still air: wood and plywood, dry (ISO 10456; from memory). */
  private static final double WOOD_VAPOUR = 50;

  private static final double PLYWOOD_VAPOUR = 200;

  private static final List<DoorLeaf> ALL =
      List.of(
          new DoorLeaf("sheet steel", List.of(SKIN), "skin without resistance of its own"),
          new DoorLeaf("roll-up steel", List.of(SKIN), "skin without resistance of its own"),
          new DoorLeaf(
              "insulated roll-up steel",
              List.of(SKIN, rated("core", 0.90), SKIN),
              "IECC default table: insulated metal, rolling"),
          new DoorLeaf(
              "insulated steel entry",
              List.of(SKIN, rated("core", 0.50), SKIN),
              "ASHRAE 90.1-2007, A7: insulated metal, swinging"),
          new DoorLeaf(
              "insulated fiberglass entry",
              List.of(rated("foam core with skins", 0.35).withVapour(50)),
              "IECC default table: insulated, non-metal edge"),
          new DoorLeaf(
              "hollow metal",
              List.of(SKIN, rated("core", 0.60), SKIN),
              "IECC default table: insulated metal, other than rolling"),
          new DoorLeaf(
              "wood 1 3/4 in",
              List.of(wood("wood", 1.75, 0.50)),
              "ASHRAE 90.1-2007, A7; IECC default table: wood"),
          new DoorLeaf(
              "solid-core wood 1 3/4 in",
              List.of(wood("wood", 1.75, 0.40)),
              "ASHRAE Fundamentals 1997, ch. 24, Table 6"),
          new DoorLeaf(
              "wood panel 1 3/8 in",
              List.of(wood("wood", 1.375, 0.57)),
              "ASHRAE Fundamentals 1997, ch. 24, Table 6"),
          new DoorLeaf(
              "framed plywood",
              List.of(plywood()),
              "1/2 in plywood on a wood frame, open inside; frame not counted"),
          new DoorLeaf(
              "framed plywood, both sides",
              List.of(
                  plywood(),
                  Layer.massless("air space", 0.91 * InchPound.R).withVapour(0.01),
                  plywood()),
              "1/2 in plywood on both sides of a wood frame; frame not counted"));

  private static final Map<String, DoorLeaf> BY_KEY =
      ALL.stream()
          .collect(Collectors.toUnmodifiableMap(leaf -> Names.key(leaf.name()), leaf -> leaf));

  private DoorLeaves() {}

  /**
   * Names of all bare doors.
   *
   * @return an unmodifiable list
   */
  public static List<String> names() {
    return ALL.stream().map(DoorLeaf::name).toList();
  }

  /**
   * A bare door by name; case and spaces do not matter.
   *
   * @param name its name
   * @return the door, or empty if there is none of that name
   */
  public static Optional<DoorLeaf> find(String name) {
    return Optional.ofNullable(BY_KEY.get(Names.key(name)));
  }

  /**
   * Names most like one that was not found.
   *
   * @param name what was typed
   * @return three names, most alike first
   */
  public static List<String> nearest(String name) {
    return Names.nearest(name, names());
  }

  /**
   * A door with boards between its leaf and the room. Where they reach, heat passes leaf and
   * boards; at joints and frame it passes the bare leaf.
   *
   * @param leaf name of the bare door
   * @param boards boards, outside to inside; empty: bare door
   * @param coverage share of the door's area that the boards cover, 0 to 1
   * @return the door, without films
   * @throws IllegalArgumentException if there is no such leaf (the message names the nearest) or
   *     the share is outside its range
   */
  public static Assembly door(String leaf, List<Layer> boards, double coverage) {
    Range.require("share covered by boards", coverage, 0, 1);
    DoorLeaf bare =
        find(leaf)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "no door called \""
                            + leaf
                            + "\"; near: "
                            + String.join("; ", nearest(leaf))));
    if (boards.isEmpty() || coverage == 0) {
      return Assembly.of(bare.layers());
    }
    List<Layer> covered = new ArrayList<>(bare.layers());
    covered.addAll(boards);
    if (coverage == 1) {
      return Assembly.of(covered);
    }
    return new Assembly(
        List.of(new Path(coverage, covered), new Path(1 - coverage, bare.layers())));
  }

  private static double ratedResistance(double uFactor) {
    return (1 / uFactor - FILMS) * InchPound.R;
  }

  private static Layer rated(String name, double uFactor) {
    double resistance = ratedResistance(uFactor);
    return new Layer(name, CORE, CORE / resistance, 0, 0, OptionalDouble.of(CORE_VAPOUR));
  }

  private static Layer wood(String name, double inches, double uFactor) {
    double thickness = inches * InchPound.INCH;
    return new Layer(
        name,
        thickness,
        thickness / ratedResistance(uFactor),
        WOOD_DENSITY,
        WOOD_SPECIFIC_HEAT,
        OptionalDouble.of(WOOD_VAPOUR * thickness));
  }

  private static Layer plywood() {
    double thickness = 0.5 * InchPound.INCH;
    return new Layer(
        "plywood", thickness, 0.1154, 540, 1210, OptionalDouble.of(PLYWOOD_VAPOUR * thickness));
  }
}
