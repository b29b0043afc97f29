package org.shopclime.shop;

/** What a face is, which decides its films. */
public enum Part {
  /** Upright or nearly so. */
  WALL,
  /** Sloped or flat, with outdoors above. */
  ROOF,
  /** Level, with another room above. */
  CEILING,
  /** Level, below the room. */
  FLOOR
}
