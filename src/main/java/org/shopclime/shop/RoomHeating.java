package org.shopclime.shop;

/** What heats a room through the year. */
public enum RoomHeating {
  /** A plant that always holds the winter temperature, whatever that takes. */
  IDEAL,
  /** Nothing. */
  NONE
}
