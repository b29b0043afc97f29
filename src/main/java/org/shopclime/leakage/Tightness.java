package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * How tight a building is by looking at it.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2005 to 2017), residential load chapter, table "Unit
 * leakage areas" (0.01, 0.02, 0.04, 0.08, 0.15 in² for each ft²), from memory. The faces counted
 * are outside walls and ceilings or roofs, with their doors and windows; floors on the ground are
 * not.
 *
 * <p>Error: neighbouring grades differ by a factor of two, and that is how well anyone can tell.
 */
public enum Tightness {
  /** Sealed with care: membrane, taped sheathing, gaskets. */
  TIGHT(0.7),
  /** Built with attention to caulking and weatherstrip. */
  GOOD(1.4),
  /** Usual building. */
  AVERAGE(2.8),
  /** Gaps felt on a windy day. */
  LEAKY(5.6),
  /** Daylight shows through. */
  VERY_LEAKY(10.4);

  private static final double M2_PER_CM2 = 1e-4;

  private final double unitArea;

  Tightness(double unitArea) {
    this.unitArea = unitArea;
  }

  /**
   * Effective leakage area at 4 Pa for each square metre of exposed face.
   *
   * @return cm²/m²
   */
  public double unitLeakageArea() {
    return unitArea;
  }

  /**
   * Effective leakage area of a building at 4 Pa.
   *
   * @param exposedArea area of its outside walls and ceilings or roofs, m², 0 to 1e6
   * @return m²
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double leakageArea(double exposedArea) {
    return unitArea * M2_PER_CM2 * Range.check("exposed area, m²,", exposedArea, 0, 1e6);
  }
}
