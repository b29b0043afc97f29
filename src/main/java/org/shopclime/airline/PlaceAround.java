package org.shopclime.airline;

import org.shopclime.air.AirState;

/**
 * Air on both sides of a place in one hour.
 *
 * @param room air of the work room, -50 to 80 °C
 * @param outdoors air outdoors, -50 to 80 °C
 */
public record PlaceAround(AirState room, AirState outdoors) {

  /** Refuses what is outside the ranges above. */
  public PlaceAround {
    Check.within("temperature of the room, °C,", room.dryBulb(), -50, 80);
    Check.within("temperature outdoors, °C,", outdoors.dryBulb(), -50, 80);
  }

  /**
   * Air on a side.
   *
   * @param side which
   * @return its air
   */
  public AirState at(Side side) {
    return side == Side.ROOM ? room : outdoors;
  }
}
