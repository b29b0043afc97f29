package org.shopclime.shop;

/** Changes of a shop that may have a price; each is called as it is told in answers. */
public enum Improvement {
  /** Half an inch of foam in the doors. */
  HALF_INCH_IN_DOORS,
  /** An inch of foam in the doors. */
  INCH_IN_DOORS,
  /** An inch and a half of foam in the doors. */
  INCH_AND_HALF_IN_DOORS,
  /** Door seals tight. */
  DOOR_SEALS_TIGHT,
  /** Plastic strips in the doorways of big doors that are opened. */
  STRIPS_IN_OPEN_DOOR,
  /** Walls filled. */
  WALLS_FILLED,
  /** Ceiling filled to R-30. */
  CEILING_FILLED,
  /** Windows shaded. */
  WINDOWS_SHADED,
  /** The compressor out of the room. */
  COMPRESSOR_OUT,
  /** Leaks halved. */
  LEAKS_HALVED
}
