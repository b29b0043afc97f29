package org.shopclime.unit;

import org.shopclime.quantity.Units;

/**
 * From one figure on a label to another. Ratios in BTU/Wh are as printed; a COP is W/W.
 *
 * <p>{@link Ceer} turns EER and CEER of room units into each other, by capacity and standby.
 */
public final class SeasonalRating {

  private static final Range SINGLE_SPEED_SEER = new Range(5, 20);
  private static final Range SINGLE_SPEED_EER = new Range(5, 14.5);
  private static final Range SINGLE_SPEED_HSPF = new Range(4, 12);

  private SeasonalRating() {}

  /**
   * How a unit is built, which decides what the test of 2023 took off its figures: it lets ducted
   * fans work against more pressure.
   *
   * <p>Source: 10 CFR 430 subpart B appendix M1 against appendix M; factors by common practice,
   * from memory: SEER2 and EER2 0.95 of SEER and EER with ducts, unmoved without; HSPF2 0.85 of
   * HSPF for split, 0.84 for packaged, 0.90 for ductless units.
   */
  public enum Build {
    /** Indoor and outdoor part, with ducts. */
    DUCTED_SPLIT(0.95, 0.85),
    /** All in one case, with ducts. */
    PACKAGED(0.95, 0.84),
    /** Indoor head on the wall, no ducts. */
    DUCTLESS(1.00, 0.90);

    private final double cooling;
    private final double heating;

    Build(double cooling, double heating) {
      this.cooling = cooling;
      this.heating = heating;
    }

    /**
     * SEER2 from SEER, or EER2 from EER.
     *
     * @param figure BTU/Wh, above 0
     * @return BTU/Wh
     * @throws IllegalArgumentException if not above 0, infinite or NaN
     */
    public double cooling2(double figure) {
      Figures.requirePositive("cooling figure", figure, "BTU/Wh");
      return figure * cooling;
    }

    /**
     * SEER from SEER2, or EER from EER2.
     *
     * @param figure BTU/Wh, above 0
     * @return BTU/Wh
     * @throws IllegalArgumentException if not above 0, infinite or NaN
     */
    public double coolingFrom2(double figure) {
      Figures.requirePositive("cooling figure", figure, "BTU/Wh");
      return figure / cooling;
    }

    /**
     * HSPF2 from HSPF.
     *
     * @param hspf BTU/Wh, above 0
     * @return BTU/Wh
     * @throws IllegalArgumentException if not above 0, infinite or NaN
     */
    public double hspf2(double hspf) {
      Figures.requirePositive("HSPF", hspf, "BTU/Wh");
      return hspf * heating;
    }

    /**
     * HSPF from HSPF2.
     *
     * @param hspf2 BTU/Wh, above 0
     * @return BTU/Wh
     * @throws IllegalArgumentException if not above 0, infinite or NaN
     */
    public double hspfFrom2(double hspf2) {
      Figures.requirePositive("HSPF2", hspf2, "BTU/Wh");
      return hspf2 / heating;
    }
  }

  /**
   * COP from an EER.
   *
   * @param eer BTU/Wh, above 0
   * @return W/W
   * @throws IllegalArgumentException if not above 0, infinite or NaN
   */
  public static double cop(double eer) {
    Figures.requirePositive("EER", eer, "BTU/Wh");
    return Units.wattsPerWattFromEer(eer);
  }

  /**
   * EER at 95 °F of a single-speed unit from its SEER.
   *
   * <p>Source: T. Wassmer, master's thesis, University of Colorado (2003): EER = -0.02 SEER² + 1.12
   * SEER, as in the simulation protocols of the U.S. national laboratories; from memory. A variable
   * speed has no such bond: its label must say both.
   *
   * @param seer BTU/Wh, 5 to 20
   * @return BTU/Wh
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double singleSpeedEer(double seer) {
    SINGLE_SPEED_SEER.require("SEER of a single-speed unit", seer, "BTU/Wh");
    return (1.12 - 0.02 * seer) * seer;
  }

  /**
   * SEER of a single-speed unit from its EER at 95 °F: {@link #singleSpeedEer} solved for it.
   *
   * @param eer BTU/Wh, 5 to 14.5
   * @return BTU/Wh
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double singleSpeedSeer(double eer) {
    SINGLE_SPEED_EER.require("EER of a single-speed unit", eer, "BTU/Wh");
    return (1.12 - Math.sqrt(1.12 * 1.12 - 4 * 0.02 * eer)) / (2 * 0.02);
  }

  /**
   * COP at 47 °F of a single-speed heat pump from its HSPF.
   *
   * <p>Source: T. Wassmer, master's thesis, University of Colorado (2003): COP = -0.0255 HSPF² +
   * 0.6239 HSPF, as in the simulation protocols of the U.S. national laboratories; from memory.
   *
   * @param hspf BTU/Wh (not HSPF2), 4 to 12
   * @return W/W
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static double singleSpeedCopAt47(double hspf) {
    SINGLE_SPEED_HSPF.require("HSPF of a single-speed heat pump", hspf, "BTU/Wh");
    return (0.6239 - 0.0255 * hspf) * hspf;
  }
}
