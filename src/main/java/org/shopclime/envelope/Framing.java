package org.shopclime.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Wood framing: studs, joists or rafters with the space between them open or filled.
 *
 * <p>Source: ASHRAE 90.1-2007, A2.4, A3.4 (walls at 16 in: 75 % space, 21 % studs and plates, 4 %
 * headers; at 24 in: 78, 18, 4); California Joint Appendix 4 (ceilings and floors 10 % at 16 in, 7
 * % at 24 in, 4 % at 48 in; from memory). Wood resists an inch.
 */
public final class Framing {

  /** Share of a wall that is header. */
  private static final double HEADERS = 0.04;

  /** Depth of wood in a header, m: two boards of 1 1/2 in and a 1/2 in filler. */
  private static final double HEADER_DEPTH = 3.5 * InchPound.INCH;

  /** Conductivity of framing lumber, W/(m·K): an inch. */
  private static final double WOOD_CONDUCTIVITY = InchPound.INCH / (1.25 * InchPound.R);

  /** Density of framing lumber, kg/m³ (softwood; from memory of the ASHRAE material table). */
  private static final double WOOD_DENSITY = 500;

  /** Specific heat of framing lumber, J/(kg·K), same source. */
  private static final double WOOD_SPECIFIC_HEAT = 1630;

  /**
   * Closed empty space, m²·K/W: of ASHRAE 90.1 for walls. Level spaces are given the same:
   * ISO 6946 has 0.16 for heat going up and 0.21 going down, so it is on the safe side in summer.
   */
  private static final double AIR_SPACE = 0.91 * InchPound.R;

  /** Density of fibre fill, kg/m³, and its specific heat, J/(kg·K). */
  private static final double FILL_DENSITY = 12;

  private static final double FILL_SPECIFIC_HEAT = 840;

  /**
   * What unbroken insulation is made of is not told: foam board of the kind that stands outside of
   * framing, W/(m·K) and times the vapour resistance of still air (XPS; from memory).
   */
  private static final double BOARD_CONDUCTIVITY = 0.0288;

  private static final double BOARD_VAPOUR = 115;

  /** Loose fibre, W/(m·K); an inch. */
  private static final double LOOSE_CONDUCTIVITY = 0.045;

  /** Times the vapour resistance of still air: softwood, dry (ISO 10456; from memory). */
  private static final double WOOD_VAPOUR = 50;

  /** Still air that resists vapour as much as an air space, m (ISO 13788). */
  private static final double AIR_SPACE_VAPOUR = 0.01;

  private Framing() {}

  /**
   * Share of the area that is wood.
   *
   * <p>Rule: 0.96 × width / spacing, plus 0.16 for the plates, corners and headers of walls or 0.01
   * for the blocking of ceilings and floors. It meets every figure named at the class exactly;
   * other spacings follow it.
   *
   * @param part what is framed
   * @param memberWidth width of a member across the face, m, 0.01 to 0.5
   * @param spacing centre to centre, m, at least 2.5 widths, up to 5
   * @return share, 0 to 1, headers included
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double framingFraction(FramedPart part, double memberWidth, double spacing) {
    Range.require("width of a member, m,", memberWidth, 0.01, 0.5);
    Range.require("spacing of the members, m,", spacing, 2.5 * memberWidth, 5);
    double beside = part == FramedPart.WALL ? 0.16 : 0.01;
    return beside + 0.96 * memberWidth / spacing;
  }

  /**
   * A framed wall, ceiling, roof or floor as parallel paths: space filled, space void, members, and
   * in walls headers.
   *
   * <ul>
   *   <li>A batt too thick for its space is squeezed ({@link Batt#installedResistance}). In a
   *       ceiling with nothing on top it is not: it stands above the joists and, as in 90.1 A2.4,
   *       that part covers them too.
   *   <li>A void or empty space closed on both sides is an air space of. Open on one side
   *       (bare studs, bare joists) it resists nothing: that path is the cladding or lining alone.
   *   <li>Where the space is empty and open, air washes three sides of the members. They then act
   *       as fins, and stand in the path with the small resistance that a fin of that width and
   *       depth leaves (about, not ), but with their whole mass.
   *   <li>A header holds 3 1/2 in of wood at most; the rest of its depth is not counted.
   * </ul>
   *
   * @param part what is framed
   * @param memberWidth width of a member across the face, m, 0.01 to 0.5
   * @param memberDepth depth of a member through the face, m, 0.02 to 1
   * @param spacing centre to centre, m, at least 2.5 widths, up to 5
   * @param outsideOfFraming layers outside the members, outside first; empty: open to the outside
   * @param cavityResistance label of the fill between the members, m²·K/W, 0 (empty) to 20
   * @param gapsFraction share of the filled area that is void, 0 to 0.95
   * @param continuousResistance unbroken insulation across the members on their outside (ceilings:
   *     above the joists), m²·K/W, 0 to 30
   * @param insideOfFraming layers inside the members, outside first; empty: bare members
   * @return the assembly, without films
   * @throws IllegalArgumentException if a figure is outside its range, or there is nothing on
   *     either side of the members
   */
  public static Assembly framed(
      FramedPart part,
      double memberWidth,
      double memberDepth,
      double spacing,
      List<Layer> outsideOfFraming,
      double cavityResistance,
      double gapsFraction,
      double continuousResistance,
      List<Layer> insideOfFraming) {
    Range.require("depth of a member, m,", memberDepth, 0.02, 1);
    Range.require("fill between the members, m²·K/W,", cavityResistance, 0, 20);
    Range.require("void share of the fill", gapsFraction, 0, 0.95);
    Range.require("unbroken insulation, m²·K/W,", continuousResistance, 0, 30);
    boolean isLoose = part == FramedPart.CEILING_OR_ROOF && outsideOfFraming.isEmpty();
    List<Layer> outside = new ArrayList<>(outsideOfFraming);
    if (continuousResistance > 0) {
      outside.add(unbroken(continuousResistance, isLoose));
    }
    if (outside.isEmpty() && insideOfFraming.isEmpty()) {
      throw new IllegalArgumentException(
          "framing has neither cladding nor lining; takes a layer on at least one side");
    }
    boolean closed = !outside.isEmpty() && !insideOfFraming.isEmpty();
    boolean empty = cavityResistance == 0;

    double wood = framingFraction(part, memberWidth, spacing);
    double headers = part == FramedPart.WALL ? HEADERS : 0;
    double space = 1 - wood;
    double gaps = empty ? space : space * gapsFraction;

    List<Layer> fill =
        isLoose
            ? looseFill(cavityResistance, memberDepth)
            : closedFill(cavityResistance, memberDepth);
    List<Layer> gap = closed ? List.of(airSpace(memberDepth)) : List.of();
    List<Layer> member = new ArrayList<>();
    if (fill.size() > 1) {
      member.add(fill.get(0));
    }
    member.add(empty && !closed ? fin(memberWidth, memberDepth) : wood("framing", memberDepth));

    List<Path> paths = new ArrayList<>();
    add(paths, space - gaps, outside, fill, insideOfFraming);
    add(paths, gaps, outside, gap, insideOfFraming);
    add(paths, wood - headers, outside, member, insideOfFraming);
    Layer header = wood("header", Math.min(memberDepth, HEADER_DEPTH));
    add(paths, headers, outside, List.of(header), insideOfFraming);
    return new Assembly(paths);
  }

  private static void add(
      List<Path> paths, double share, List<Layer> outside, List<Layer> middle, List<Layer> inside) {
    if (share > 0) {
      List<Layer> layers = new ArrayList<>(outside);
      layers.addAll(middle);
      layers.addAll(inside);
      paths.add(new Path(share, layers));
    }
  }

  private static List<Layer> closedFill(double label, double depth) {
    return label == 0 ? List.of() : List.of(fill(depth, Batt.installedResistance(label, depth)));
  }

  /** The part above the joists, if any, then the part between them. */
  private static List<Layer> looseFill(double label, double depth) {
    if (label == 0) {
      return List.of();
    }
    double thickness = Batt.usualThickness(label);
    if (thickness <= depth) {
      return List.of(fill(thickness, label));
    }
    double between = label * depth / thickness;
    return List.of(fill(thickness - depth, label - between), fill(depth, between));
  }

  /** Foam board; above the joists of a ceiling with nothing on top, loose fibre. */
  private static Layer unbroken(double resistance, boolean isLoose) {
    double conductivity = isLoose ? LOOSE_CONDUCTIVITY : BOARD_CONDUCTIVITY;
    double thickness = resistance * conductivity;
    double vapour = thickness * (isLoose ? 1 : BOARD_VAPOUR);
    return new Layer(
        "unbroken insulation", thickness, conductivity, 0, 0, OptionalDouble.of(vapour));
  }

  private static Layer airSpace(double depth) {
    return new Layer(
        "air space", depth, depth / AIR_SPACE, 0, 0, OptionalDouble.of(AIR_SPACE_VAPOUR));
  }

  private static Layer fill(double thickness, double resistance) {
    return new Layer(
        "cavity insulation",
        thickness,
        thickness / resistance,
        FILL_DENSITY,
        FILL_SPECIFIC_HEAT,
        OptionalDouble.of(thickness));
  }

  private static Layer wood(String name, double depth) {
    return new Layer(
        name,
        depth,
        WOOD_CONDUCTIVITY,
        WOOD_DENSITY,
        WOOD_SPECIFIC_HEAT,
        OptionalDouble.of(WOOD_VAPOUR * depth));
  }

  /**
   * A member washed by air on three sides: a straight fin of half its width added to its length for
   * the tip, seen as the resistance that must be added to the plain film to carry the same heat;
   * never less than R-0.01 (narrow members carry more than the plain face, which is left out).
   */
  private static Layer fin(double width, double depth) {
    double film = 1 / Films.interiorResistance(HeatFlow.HORIZONTAL);
    double m = Math.sqrt(2 * film / (WOOD_CONDUCTIVITY * width));
    double carried = WOOD_CONDUCTIVITY * m * Math.tanh(m * (depth + width / 2));
    double resistance = Math.max(0.01 * InchPound.R, 1 / carried - 1 / film);
    return new Layer(
        "open framing",
        depth,
        depth / resistance,
        WOOD_DENSITY,
        WOOD_SPECIFIC_HEAT,
        OptionalDouble.of(WOOD_VAPOUR * depth));
  }
}
