package org.shopclime.shop;

/** Shelter of the building from wind, ASHRAE Fundamentals shelter classes 1 to 5. */
public enum Shelter {
  /** Class 1: no obstructions. */
  OPEN(1),
  /** Class 2: an isolated rural house. */
  FEW(2),
  /** Class 3: buildings across the street. */
  SOME(3),
  /** Class 4: urban lots, obstructions within one building height. */
  TYPICAL(4),
  /** Class 5: hemmed in on all sides. */
  HEMMED_IN(5);

  private final int shelterClass;

  Shelter(int shelterClass) {
    this.shelterClass = shelterClass;
  }

  /**
   * Class in the published table.
   *
   * @return 1 to 5
   */
  public int shelterClass() {
    return shelterClass;
  }
}
