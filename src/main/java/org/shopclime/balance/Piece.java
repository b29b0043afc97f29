package org.shopclime.balance;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.envelope.GlassGap;
import org.shopclime.envelope.Nodes;
import org.shopclime.envelope.Path;
import org.shopclime.sun.GlassOptics;
import org.shopclime.sun.OverhangShade;
import org.shopclime.sun.Shading;

/**
 * One path of heat through a face, door or window, or one kind of contents: a chain of the network
 * before its end films are known.
 *
 * @param component line it belongs to
 * @param room index of the room on its inside
 * @param nodes capacities and conductances of one square metre, outside to inside
 * @param area area of this path, m²
 * @param inside its side towards {@code room}
 * @param outside what lies on its other side
 * @param pane glass, for windows
 * @param gaps gaps of air whose conductance follows temperature, for windows and panels of panes
 * @param path the layers it stands for and its share of the face, for faces and doors
 */
record Piece(
    Component component,
    int room,
    Nodes nodes,
    double area,
    RoomSide inside,
    OuterSide outside,
    Optional<Pane> pane,
    Optional<Gaps> gaps,
    Optional<Path> path) {

  /** A path whose layers are not told. */
  Piece(
      Component component,
      int room,
      Nodes nodes,
      double area,
      RoomSide inside,
      OuterSide outside,
      Optional<Pane> pane,
      Optional<Gaps> gaps) {
    this(component, room, nodes, area, inside, outside, pane, gaps, Optional.empty());
  }

  /** A path without such gaps. */
  Piece(
      Component component,
      int room,
      Nodes nodes,
      double area,
      RoomSide inside,
      OuterSide outside,
      Optional<Pane> pane) {
    this(component, room, nodes, area, inside, outside, pane, Optional.empty());
  }

  /** Part of the sun inside that contents and doors take in, the rest is scattered. */
  static final double INNER_ABSORPTANCE = 0.6;

  /** Conductance that stands for direct contact, W/(m²·K): it costs 0.01 K at 100 W/m². */
  static final double DIRECT_CONTACT = 1e4;

  /**
   * A side towards a room.
   *
   * @param emittance infrared emittance, 0 to 1
   * @param convective film coefficient to the air without radiation, W/(m²·K)
   * @param plane the plane it lies in; pieces of one plane do not see each other
   * @param isFloor true where sun through windows falls first
   * @param absorptance part of the sun falling on it that it takes in, if it is opaque
   * @param sunShare part of all sun let into the room that ends on a square metre of it, where that
   *     is told by shares, 1/m²
   */
  record RoomSide(
      double emittance,
      double convective,
      String plane,
      boolean isFloor,
      double absorptance,
      double sunShare) {

    /** Whether its back is upright and looks to a compass direction within 45 degrees. */
    boolean looksTo(double azimuth) {
      int slash = plane.indexOf('/');
      if (slash < 0) {
        return false;
      }
      double tilt = Double.parseDouble(plane.substring(0, slash));
      double off = Double.parseDouble(plane.substring(slash + 1)) - azimuth;
      return tilt > 60 && tilt < 120 && Math.cos(Math.toRadians(off)) > Math.sqrt(0.5);
    }
  }

  /** What lies on the outer side. */
  sealed interface OuterSide {}

  /**
   * Outdoors.
   *
   * @param tilt slope of the outer face, degrees
   * @param azimuth its direction, degrees from north
   * @param absorptance part of the sun taken in
   * @param emittance infrared emittance
   * @param convective film coefficient without radiation, W/(m²·K)
   * @param shade what stands before it
   */
  record Outdoors(
      double tilt,
      double azimuth,
      double absorptance,
      double emittance,
      double convective,
      Shade shade)
      implements OuterSide {}

  /**
   * Ground.
   *
   * @param conductance from the outermost node to the ground temperature, W/(m²·K)
   * @param depth depth at which that temperature is taken, m
   * @param soilConductivity conductivity of the soil, W/(m·K)
   * @param edgeLoss winter loss of a slab at its edge, W/K; 0 where it has none
   * @param held temperature at which the owner says it stays, °C; empty: by depth and day
   */
  record Ground(
      double conductance,
      double depth,
      double soilConductivity,
      double edgeLoss,
      OptionalDouble held)
      implements OuterSide {

    /** Ground of the place and season. */
    Ground(double conductance, double depth, double soilConductivity, double edgeLoss) {
      this(conductance, depth, soilConductivity, edgeLoss, OptionalDouble.empty());
    }
  }

  /**
   * Another room.
   *
   * @param room its index
   * @param side the side towards it
   */
  record OtherRoom(int room, RoomSide side) implements OuterSide {}

  /** No heat passes. */
  record Nothing() implements OuterSide {}

  /**
   * What stands before an outer face.
   *
   * @param letThrough part of the direct sun that trees let through
   * @param boards overhang and fins; empty: none, or the face is far from upright
   * @param sky part of an even sky's light that they leave
   * @param ground part of the light of even ground that they leave
   */
  record Shade(double letThrough, Optional<Shading> boards, double sky, double ground) {

    /** Trees alone. */
    static Shade trees(double letThrough) {
      return new Shade(letThrough, Optional.empty(), 1, 1);
    }

    /** Trees and boards. */
    static Shade of(double letThrough, Shading boards) {
      return new Shade(
          letThrough,
          Optional.of(boards),
          OverhangShade.skyFraction(boards),
          OverhangShade.groundFraction(boards));
    }
  }

  /**
   * Glass.
   *
   * @param optics transmittance and absorptance by angle
   * @param letThrough part of the sun that curtains and screens let through
   * @param place where it is in an upright wall; empty elsewhere
   */
  record Pane(GlassOptics optics, double letThrough, Optional<Place> place) {}

  /**
   * Equal gaps of air between panes.
   *
   * @param gap one of them
   * @param count how many
   * @param panes resistance of all panes, m²·K/W
   */
  record Gaps(GlassGap gap, int count, double panes) {

    /** Conductance from face to face, W/(m²·K), the gaps sharing the difference. */
    double conductance(double left, double right, double pressure) {
      double one = gap.conductance((left + right) / 2, (left - right) / count, pressure);
      return 1 / (panes + count / one);
    }
  }

  /**
   * A rectangle in an upright wall.
   *
   * @param azimuth direction the wall looks to, degrees from north
   * @param wallWidth width of the wall, m
   * @param wallHeight its height, m
   * @param offset from its left edge seen from outdoors, m
   * @param sill height above its bottom, m
   * @param width width, m
   * @param height height, m
   */
  record Place(
      double azimuth,
      double wallWidth,
      double wallHeight,
      double offset,
      double sill,
      double width,
      double height) {}
}
