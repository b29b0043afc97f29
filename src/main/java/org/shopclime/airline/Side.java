package org.shopclime.airline;

/** The two sides of a place: the work room and outdoors. */
public enum Side {
  /** The work room. */
  ROOM,
  /** Outdoors. */
  OUTDOORS
}
