package org.shopclime.climate;

/**
 * Dust and haze above a station by month.
 *
 * @param depth broadband aerosol depth of each month, 1, 0 to 1
 * @param source how it was found
 */
public record Aerosol(Months depth, AerosolSource source) {
  /** Refuses figures outside the range named. */
  public Aerosol {
    Guard.within("aerosol depth", depth.min(), 0, 1);
    Guard.within("aerosol depth", depth.max(), 0, 1);
  }
}
