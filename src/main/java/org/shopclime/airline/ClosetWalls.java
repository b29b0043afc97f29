package org.shopclime.airline;

/**
 * A closet vented in one way, in a corner with bare partitions, there with insulated ones, and
 * under a stair: the same vents, the same machine.
 *
 * @param kind how it is vented: the kind of place, whose own walls are one of the three
 * @param bare in a corner, drywall on both sides of empty studs
 * @param insulated in a corner, R-13 between the studs
 * @param stair under a stair, within the room on all sides, bare
 */
public record ClosetWalls(Placement.Kind kind, Case bare, Case insulated, Case stair) {

  /**
   * What came of it on the hot day.
   *
   * @param placePeak hottest hour of the closet in which the machine is in use, °C
   * @param roomLoad most heat that the room gets by it, against the shop without a compressor, W
   * @param indoorPeak hottest working hour of the room, °C
   */
  public record Case(double placePeak, double roomLoad, double indoorPeak) {}

  /**
   * Heat that insulation keeps out of the room.
   *
   * @return W, either sign: a hotter closet loses more by what it shares with outdoors
   */
  public double keptOut() {
    return bare.roomLoad() - insulated.roomLoad();
  }

  /**
   * How much hotter insulation makes the closet.
   *
   * @return K, either sign
   */
  public double hotter() {
    return insulated.placePeak() - bare.placePeak();
  }
}
