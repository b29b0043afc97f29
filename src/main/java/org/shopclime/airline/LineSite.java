package org.shopclime.airline;

/** Where a part of the line is, which is where its heat goes. */
public enum LineSite {
  /** Where the compressor stands. */
  PLACE,
  /** The room where the work is done. */
  ROOM,
  /** The coldest stretch of the line: before the cold air of a unit, on a cool wall. */
  COLDEST
}
