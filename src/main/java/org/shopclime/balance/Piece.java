package org.shopclime.balance;

import java.util.Optional;
import org.shopclime.envelope.Nodes;

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
 */
record Piece(
    Component component,
    int room,
    Nodes nodes,
    double area,
    RoomSide inside,
    OuterSide outside,
    Optional<Pane> pane) {

  /** Part of the sun falling on an inner face that opaque faces take in, the rest is scattered. */
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
   */
  record RoomSide(double emittance, double convective, String plane, boolean isFloor) {}

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
   */
  record Ground(double conductance, double depth, double soilConductivity, double edgeLoss)
      implements OuterSide {}

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
   * @param depth depth of an overhang, m; 0: none
   * @param gap height of its underside above the top of what is shaded, m
   * @param width width of what is shaded, m
   * @param height its height, m
   */
  record Shade(double letThrough, double depth, double gap, double width, double height) {}

  /**
   * Glass.
   *
   * @param optics transmittance and absorptance by angle
   * @param letThrough part of the sun that curtains and screens let through
   * @param absorbedInside part of the sun absorbed in the glass that is put on its inner face
   */
  record Pane(org.shopclime.sun.GlassOptics optics, double letThrough, double absorbedInside) {}
}
