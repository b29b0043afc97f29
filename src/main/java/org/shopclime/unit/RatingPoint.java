package org.shopclime.unit;

import org.shopclime.air.MoistAir;
import org.shopclime.quantity.Units;

/**
 * The state in which room air conditioners are rated, at sea level.
 *
 * <p>Source: 10 CFR 430 subpart B appendix F, with ASHRAE Standard 16: indoors 80 °F dry bulb and
 * 67 °F wet bulb, outdoors 95 °F and 75 °F. From memory.
 */
public final class RatingPoint {

  /** Dry bulb of the air entering the indoor coil, °C. */
  public static final double INDOOR_DRY_BULB = Units.celsius(80);

  /** Wet bulb of the air entering the indoor coil, °C. */
  public static final double INDOOR_WET_BULB = Units.celsius(67);

  /** Outdoor dry bulb, °C. */
  public static final double OUTDOOR_DRY_BULB = Units.celsius(95);

  /** Outdoor wet bulb, °C; units that throw condensate on the hot coil feel it. */
  public static final double OUTDOOR_WET_BULB = Units.celsius(75);

  /** Standard pressure at sea level, Pa. */
  public static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  private RatingPoint() {}
}
