package org.shopclime.envelope;

/** What is framed, which decides how much of its area is wood. */
public enum FramedPart {
  /** Stud wall, with plates and headers. */
  WALL,
  /** Ceiling joists or rafters. */
  CEILING_OR_ROOF,
  /** Floor joists. */
  FLOOR
}
