package org.shopclime.air;

/**
 * Heat that a kilogram of water takes up on its way into saturated air, J/kg, straight in the
 * temperature of that air.
 *
 * @param atZero at 0 °C, J/kg
 * @param fall how much it falls with the temperature, J/(kg K)
 * @param share enthalpy of vapour over this heat at 0 °C, 1
 * @param shareRise how that rises with the temperature, 1/K
 * @param shareBend how that rises with the square of the temperature, 1/K²
 */
record HeatOfWater(double atZero, double fall, double share, double shareRise, double shareBend) {

  /** Water of a given heat. */
  static HeatOfWater of(double atZero, double fall) {
    double share = MoistAir.LATENT_HEAT / atZero;
    double relativeFall = fall / atZero;
    double rise = MoistAir.SPECIFIC_HEAT_VAPOUR / atZero + share * relativeFall;
    return new HeatOfWater(atZero, fall, share, rise, rise * relativeFall);
  }

  /** Enthalpy of vapour over this heat, 1; to 1e-4 within 50 K of 0 °C. */
  double shareAt(double celsius) {
    return share + celsius * (shareRise + celsius * shareBend);
  }
}
