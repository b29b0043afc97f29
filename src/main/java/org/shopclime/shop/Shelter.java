package org.shopclime.shop;

/** Shelter of the building from wind, ASHRAE Fundamentals shelter classes 1 to 5. */
public enum Shelter {
  /** Class 1: no obstructions. */
  OPEN,
  /** Class 2: an isolated rural house. */
  FEW,
  /** Class 3: buildings across the street. */
  SOME,
  /** Class 4: urban lots, obstructions within one building height. */
  TYPICAL,
  /** Class 5: hemmed in on all sides. */
  HEMMED_IN
}
