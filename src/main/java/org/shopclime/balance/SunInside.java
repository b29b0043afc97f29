package org.shopclime.balance;

import org.shopclime.sun.SunAngles;

/**
 * Where sun let in by the windows of a room ends. Arrays hold a part for each side of the shop,
 * numbered 2 x chain for the outer (left) end and 2 x chain + 1 for the inner end; what is missing
 * from 1 is lost outdoors again. They are not to be changed.
 */
interface SunInside {

  /**
   * Parts of the direct sun.
   *
   * @param window chain of the window it came through
   * @param sun where the sun stands
   */
  double[] direct(int window, SunAngles sun);

  /**
   * Parts of the scattered sun.
   *
   * @param window chain of the window it came through
   */
  double[] scattered(int window);

  /** As the owner of the room says. */
  static SunInside of(Skeleton skeleton, int room) {
    return switch (skeleton.rooms().get(room).sunInside()) {
      case PLAIN -> new PlainSunInside(skeleton.pieces(), room);
      case TRACED ->
          new TracedSunInside(
              new SunBounces(skeleton.pieces(), room), skeleton.rooms().get(room).floorArea());
      case SHARES -> new SharedSunInside(skeleton.pieces(), room);
    };
  }
}
