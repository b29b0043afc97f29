package org.shopclime.gain;

import org.shopclime.quantity.Range;

/**
 * Heat and moisture given off to a room at one moment.
 *
 * @param convective sensible heat that goes straight into the air, W, 0 or more
 * @param radiant sensible heat that reaches the faces of the room first, W, 0 or more
 * @param latent water vapour given off, as the heat to evaporate it at 0 °C, W, 0 or more
 */
public record HeatGain(double convective, double radiant, double latent) {

  /** Nothing at all. */
  public static final HeatGain NONE = new HeatGain(0, 0, 0);

  /**
   * Heat of evaporation of water at 0 °C, J/kg.
   *
   * <p>Source: ASHRAE Handbook - Fundamentals (2017, SI), ch. 1, eq. 30: h = 1.006 t + W (2501 +
   * 1.86 t) kJ/kg.
   */
  public static final double EVAPORATION = 2501e3;

  private static final double MOST = 1e9;

  /** Refuses a part that is negative, above 1 GW or not a number. */
  public HeatGain {
    Range.check("convective heat, W,", convective, 0, MOST);
    Range.check("radiant heat, W,", radiant, 0, MOST);
    Range.check("latent heat, W,", latent, 0, MOST);
  }

  /**
   * Dry heat, split in its two ways.
   *
   * @param watts sensible heat, W, 0 to 1e9
   * @param radiantShare part of it that is radiant, 0 to 1
   * @return the gain, with no moisture
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static HeatGain dry(double watts, double radiantShare) {
    Range.check("sensible heat, W,", watts, 0, MOST);
    Range.check("radiant share", radiantShare, 0, 1);
    return new HeatGain(watts * (1 - radiantShare), watts * radiantShare, 0);
  }

  /**
   * Both together.
   *
   * @param other another gain
   * @return the sum, part by part
   */
  public HeatGain plus(HeatGain other) {
    return new HeatGain(
        convective + other.convective, radiant + other.radiant, latent + other.latent);
  }

  /**
   * A multiple of it, such as the part of the time it is on.
   *
   * @param factor 0 or more
   * @return the product, part by part
   * @throws IllegalArgumentException if the factor is negative or NaN, or a part passes 1e9 W
   */
  public HeatGain times(double factor) {
    Range.check("factor", factor, 0, MOST);
    return new HeatGain(convective * factor, radiant * factor, latent * factor);
  }

  /**
   * Sensible heat.
   *
   * @return convective and radiant, W
   */
  public double sensible() {
    return convective + radiant;
  }

  /**
   * All of it.
   *
   * @return sensible and latent, W
   */
  public double total() {
    return sensible() + latent;
  }

  /**
   * Water vapour given off.
   *
   * @return latent heat over {@link #EVAPORATION}, kg/s
   */
  public double moisture() {
    return latent / EVAPORATION;
  }
}
