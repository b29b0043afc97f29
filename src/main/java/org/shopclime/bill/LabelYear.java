package org.shopclime.bill;

/**
 * The year of a room unit's energy label, to hold a reckoned year against: a use by convention, not
 * anybody's.
 *
 * <p>Source: 10 CFR 430 subpart B appendix F, combined energy efficiency ratio: 750 hours of
 * cooling at the rating.
 */
public final class LabelYear {

  private static final double HOURS = 750;
  private static final double WATTS_PER_KILOWATT = 1000;

  private LabelYear() {}

  /**
   * Electricity of the label's year.
   *
   * @param capacity rated cooling, W, above 0
   * @param ceer combined energy efficiency ratio, W/W, above 0
   * @return kWh
   * @throws IllegalArgumentException if one is not above 0
   */
  public static double kilowattHours(double capacity, double ceer) {
    return HOURS
        * Amount.positive("capacity, W,", capacity)
        / Amount.positive("CEER, W/W,", ceer)
        / WATTS_PER_KILOWATT;
  }
}
