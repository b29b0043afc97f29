package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Force that opens a hinged door against a difference of pressure.
 *
 * <p>Source: NFPA 92, F = F closer + W A ΔP / (2 (W - d)); limit 30 lbf to set a door in motion:
 * NFPA 101. From memory.
 *
 * <p>Limits: a door that opens against the pressure. Friction and swollen frames come on top.
 */
public final class DoorForce {

  /** Most force that sets a door on a way out in motion, N (30 lbf). */
  public static final double LIMIT = 30 * 0.45359237 * 9.80665;

  private DoorForce() {}

  /**
   * Force at the handle.
   *
   * @param pressure difference, either sign, Pa, -1e4 to 1e4
   * @param width of the leaf, m, 0.3 to 3
   * @param height of the leaf, m, 0.5 to 5
   * @param handle from the handle to the edge, m, 0 to 0.2
   * @param closer force of a door closer, N, 0 to 500
   * @return N
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double at(
      double pressure, double width, double height, double handle, double closer) {
    Range.check("pressure, Pa,", pressure, -1e4, 1e4);
    Range.check("door width, m,", width, 0.3, 3);
    Range.check("door height, m,", height, 0.5, 5);
    Range.check("handle from the edge, m,", handle, 0, 0.2);
    Range.check("door closer, N,", closer, 0, 500);
    return closer + width * width * height * Math.abs(pressure) / (2 * (width - handle));
  }
}
