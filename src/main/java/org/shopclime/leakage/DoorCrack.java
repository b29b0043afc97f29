package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Leakage area of the gap around a closed door.
 *
 * <p>Source: tight: ASHRAE Handbook - Fundamentals, infiltration chapter, effective leakage areas,
 * single door weatherstripped 12 cm² (4 to 27), on its 5.9 m of perimeter, from memory; the same
 * door without strips, 21 cm² (12 to 53), is 3.6 cm²/m (2 to 9). Worn and daylight: an open gap of
 * 1 mm and of 3 mm in the mean of the perimeter, times the discharge coefficient 0.6 of a
 * sharp-edged slot, common practice.
 *
 * <p>Error: a factor of two either way; measure the gap where it matters.
 *
 * <p>Limits: leakage area of a grade of {@link Tightness} holds usual doors already; a big door is
 * its own leak, so leave its area out of the faces graded.
 */
public final class DoorCrack {

  private static final double SLOT_DISCHARGE = 0.6;
  private static final double M2_PER_CM2 = 1e-4;

  private DoorCrack() {}

  /** State of a door's seals. */
  public enum Seal {
    /** Weatherstrip all round, threshold tight. */
    TIGHT(2),
    /** Old or partial strips. */
    WORN(6),
    /** Daylight shows around the edge. */
    DAYLIGHT(18);

    private final double areaPerMetre;

    Seal(double areaPerMetre) {
      this.areaPerMetre = areaPerMetre;
    }

    /**
     * Effective leakage area at 4 Pa for each metre of perimeter.
     *
     * @return cm²/m
     */
    public double areaPerMetre() {
      return areaPerMetre;
    }
  }

  /**
   * Leakage area by the state of the seals.
   *
   * @param seal state of the seals
   * @param perimeter length of the gap, m, 0 to 200
   * @return effective leakage area at 4 Pa, m²
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double leakageArea(Seal seal, double perimeter) {
    return seal.areaPerMetre * M2_PER_CM2 * Range.check("perimeter, m,", perimeter, 0, 200);
  }

  /**
   * Leakage area of a gap that was measured.
   *
   * @param length of the gap, m, 0 to 200
   * @param width mean width of the gap, m, 0 to 0.3
   * @return effective leakage area, m²: 0.6 of the open area
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double leakageAreaOfGap(double length, double width) {
    return SLOT_DISCHARGE
        * Range.check("gap length, m,", length, 0, 200)
        * Range.check("gap width, m,", width, 0, 0.3);
  }
}
