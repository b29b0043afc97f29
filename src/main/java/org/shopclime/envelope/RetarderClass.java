package org.shopclime.envelope;

/**
 * Classes in which model building codes sort layers that hold vapour back.
 *
 * <p>Source: IRC R702.7 and IBC: permeance by ASTM E96 method A (dry cup).
 */
public enum RetarderClass {
  /** Up to 0.1 perm: polyethylene, foil. */
  I,
  /** Above 0.1, up to 1 perm: kraft facing. */
  II,
  /** Above 1, up to 10 perms: latex paint on drywall. */
  III,
  /** Above 10 perms: holds little back. */
  OPEN;

  /** Digits to which a permeance is compared, so that 0.1 perm is 0.1 perm. */
  private static final double ROUNDING = 1 + 1e-9;

  /**
   * The class of a layer.
   *
   * @param permeance kg/(s·m²·Pa), 0 or more
   * @return class
   * @throws IllegalArgumentException if the permeance is negative or NaN
   */
  public static RetarderClass of(double permeance) {
    double perms = Range.require("permeance, kg/(s·m²·Pa),", permeance, 0, 1) / Vapour.PERM;
    if (perms <= 0.1 * ROUNDING) {
      return I;
    }
    if (perms <= 1 * ROUNDING) {
      return II;
    }
    return perms <= 10 * ROUNDING ? III : OPEN;
  }
}
