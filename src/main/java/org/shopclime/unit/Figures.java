package org.shopclime.unit;

import org.shopclime.air.AirState;

/** What every plant refuses, in one voice. */
final class Figures {

  private static final Range DEMAND = new Range(0, 1);

  /** Difference of two pressures that passes as rounding, Pa. */
  private static final double SAME_PRESSURE = 0.01;

  private Figures() {}

  /** Refuses what is not above 0, infinite or NaN. */
  static void requirePositive(String what, double value, String unit) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " " + value + " " + unit + " is not above 0");
    }
  }

  /** Refuses what is negative, infinite or NaN. */
  static void requireNotNegative(String what, double value, String unit) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " " + value + " " + unit + " is not 0 or more");
    }
  }

  /** Refuses a demand outside 0 to 1, and two airs that cannot stand beside each other. */
  static void requireQuestion(AirState room, AirState outdoor, double demand) {
    DEMAND.require("demand", demand, "");
    if (!(Math.abs(room.pressure() - outdoor.pressure()) <= SAME_PRESSURE)) {
      throw new IllegalArgumentException(
          "room and outdoors differ in pressure: " + room + ", " + outdoor);
    }
  }
}
