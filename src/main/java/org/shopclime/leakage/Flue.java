package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Appliances with a flame, by how much suction of the room their flue stands before its gases may
 * come back.
 *
 * <p>Source: limits of depressurisation of the combustion-appliance zone, Building Performance
 * Institute, technical standards for the building analyst (to 2014), after Canadian work; ASTM
 * E1998 tells the tests. From memory.
 *
 * <p>Limits: a screening, not a test: wind, cold chimneys and long ducts make it worse, and a
 * licensed person must test with all fans on.
 */
public enum Flue {
  /** No flame with a flue in the shop. */
  NONE(Double.POSITIVE_INFINITY),
  /** Water heater alone on a chimney, natural draft: 2 Pa. */
  WATER_HEATER_ALONE(2),
  /** Furnace and water heater on one chimney, natural draft: 3 Pa. */
  NATURAL_DRAFT_SHARED(3),
  /** Furnace or heater alone on a chimney, natural draft: 5 Pa. */
  NATURAL_DRAFT(5),
  /** Flue with a fan of its own at the appliance: 15 Pa. */
  FAN_ASSISTED(15),
  /** Sealed, with its own air from outdoors: 50 Pa. */
  SEALED(50);

  private final double limit;

  Flue(double limit) {
    this.limit = limit;
  }

  /**
   * Suction it stands.
   *
   * @return Pa below outdoors; infinite where there is none
   */
  public double limit() {
    return limit;
  }

  /**
   * Whether a suction is too much for it.
   *
   * @param suction of the room, Pa below outdoors, -1e5 to 1e5
   * @return true above its limit
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public boolean isEndangeredBy(double suction) {
    return Range.check("suction, Pa,", suction, -1e5, 1e5) > limit;
  }
}
