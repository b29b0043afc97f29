package org.shopclime.shop;

/** What cools a room through the year. */
public enum RoomCooling {
  /** The shop's cooling unit, in the room it stands in; no other. */
  UNIT,
  /** A plant that always holds the wished temperature, whatever that takes; the air stays moist. */
  IDEAL,
  /** Nothing. */
  NONE
}
