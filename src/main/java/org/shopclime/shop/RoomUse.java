package org.shopclime.shop;

/** Whether a room is held at its set point. */
public enum RoomUse {
  /** Held at its set point. */
  COOLED,
  /** Left to itself: attic, loft, closet. */
  FLOATING
}
