package org.shopclime.unit;

import java.util.Set;

/**
 * What a unit running flat out does to the air it draws in.
 *
 * <p>Convention of the split: total = m (h in - h leaving); latent = m (W in - W leaving) times the
 * enthalpy of vapour at the entering dry bulb; sensible = m cp (t in - t leaving), cp being that of
 * the leaving humidity ratio. With ASHRAE's enthalpy of moist air the two add up exactly. The heat
 * the condensate carries away (below 1 % of total) is inside the total.
 *
 * @param total total capacity, W, above 0
 * @param sensible sensible capacity, W, 0 to total
 * @param latent latent capacity, W, 0 to total
 * @param power electric power drawn, W
 * @param leavingDryBulb dry bulb of the air blown out, °C
 * @param leavingHumidityRatio humidity ratio of the air blown out, kg/kg of dry air
 * @param apparatusDewPoint temperature of the mean coil face, °C; of a dry coil above the dew point
 *     of the air
 * @param bypassFactor part of the air that passes the coil untouched, 0 to 1
 * @param airMassFlow dry air through the coil, kg/s
 * @param condensate water taken out of the air, kg/s, 0 or more
 * @param dry whether the coil stays dry, so that all is sensible
 * @param limits what was asked beyond the tested range of the curves; empty inside it
 */
public record Delivered(
    double total,
    double sensible,
    double latent,
    double power,
    double leavingDryBulb,
    double leavingHumidityRatio,
    double apparatusDewPoint,
    double bypassFactor,
    double airMassFlow,
    double condensate,
    boolean dry,
    Set<Limit> limits) {

  /** Copies the limits. */
  public Delivered {
    limits = Limit.frozen(limits);
  }

  /**
   * Sensible part of the total.
   *
   * @return 0 to 1
   */
  public double sensibleHeatRatio() {
    return sensible / total;
  }
}
