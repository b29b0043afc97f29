package org.shopclime.shop;

/** What hangs or blows in a doorway while its door is open. */
public enum DoorScreen {
  /** Nothing. */
  NOTHING,
  /** Plastic strips that overlap. */
  STRIPS,
  /** A fan that blows down across it. */
  AIR_DOOR
}
