package org.shopclime.run;

/** A room of the shop, left to itself, would get hotter than any figure here is meant for. */
public final class RoomTooHot extends IllegalArgumentException {

  private static final long serialVersionUID = 1;

  RoomTooHot(String room, double limit) {
    super(
        "room \""
            + room
            + "\" would get hotter than "
            + limit
            + " °C ("
            + Math.round(limit * 1.8 + 32)
            + " °F) when left to itself; less heat must be given off in it, or more air let"
            + " through");
  }
}
