package org.shopclime.unit;

/**
 * Published generic curves of a single-speed air-source heat pump that heats: capacity, and power
 * per capacity, as fractions of the rating at 70 °F indoors and 47 °F outdoors.
 *
 * <p>Source: NREL/TP-5500-56354 (2013), biquadratic in indoor and outdoor dry bulb, °F;
 * coefficients from memory, checked to give 1 within 0.007 at the rating point, and 0.63 of the
 * capacity at 0.74 of the efficiency at 17 °F. Steady running, without frost ({@link Defrost}). The
 * range held here, 55 to 80 °F indoors and -10 to 65 °F outdoors, is ours. Published figures are
 * for units with ducts; ductless ones made for the cold hold more of their capacity, and read
 * better than this.
 */
final class HeatingCurves {

  private static final Biquadratic CAPACITY =
      new Biquadratic(0.566333415, -0.000744164, -0.0000103, 0.009414634, 0.0000506, -0.00000675)
          .fromFahrenheit();
  private static final Biquadratic POWER_PER_CAPACITY =
      new Biquadratic(0.718398423, 0.003498178, 0.000142202, -0.005724331, 0.00014085, -0.000215321)
          .fromFahrenheit();
  private static final Range INDOOR = Range.ofFahrenheit(55, 80);
  private static final Range OUTDOOR = Range.ofFahrenheit(-10, 65);

  private HeatingCurves() {}

  /** Capacity as a fraction of that at 70 and 47 °F; edges held. */
  static double capacityRatio(double indoor, double outdoor) {
    return CAPACITY.at(INDOOR.nearest(indoor), OUTDOOR.nearest(outdoor));
  }

  /** Power per capacity as a fraction of that at 70 and 47 °F; edges held. */
  static double powerPerCapacityRatio(double indoor, double outdoor) {
    return POWER_PER_CAPACITY.at(INDOOR.nearest(indoor), OUTDOOR.nearest(outdoor));
  }

  /** The edges held, as bits of {@link Limit#bit}. */
  static int limitBits(double indoor, double outdoor) {
    return INDOOR.bits(indoor, Limit.ROOM_LOW, Limit.ROOM_HIGH)
        | OUTDOOR.bits(outdoor, Limit.OUTDOOR_LOW, Limit.OUTDOOR_HIGH);
  }
}
