package org.shopclime.airline;

import org.shopclime.air.AirState;

/** Where a compressor draws its air. */
public enum Intake {
  /** From the place it stands in. */
  PLACE,
  /** By a pipe from the work room: dry where that is cooled. */
  ROOM,
  /** By a pipe from outdoors. */
  OUTDOORS;

  /**
   * Air drawn in.
   *
   * @param place air where the compressor stands
   * @param around air on both sides of that place
   * @return its air
   */
  public AirState of(AirState place, PlaceAround around) {
    return switch (this) {
      case PLACE -> place;
      case ROOM -> around.room();
      case OUTDOORS -> around.outdoors();
    };
  }
}
