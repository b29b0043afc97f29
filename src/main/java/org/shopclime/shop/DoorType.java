package org.shopclime.shop;

/** How a door opens. */
public enum DoorType {
  /** A person's door. */
  ENTRY,
  /** Rolls or folds up overhead. */
  ROLL_UP,
  /** One or two big leaves on side hinges. */
  SIDE_HINGED
}
