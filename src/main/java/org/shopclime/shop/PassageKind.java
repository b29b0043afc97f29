package org.shopclime.shop;

/** How an open way between two rooms lies. */
public enum PassageKind {
  /** Upright: a doorway, also the one at the head or foot of a closed-in stair. */
  DOORWAY,
  /** Flat: the hole of an open stair, or a hatch, in the floor between two rooms. */
  FLOOR_OPENING
}
