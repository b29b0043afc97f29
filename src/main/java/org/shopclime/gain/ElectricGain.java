package org.shopclime.gain;

/**
 * Heat given off by anything electric that does its work in the room: hand tools, welders,
 * chargers, computers, fans.
 *
 * <p>Source: energy balance: all of the electric power becomes heat. Radiant share 0.30: common
 * practice for mixed equipment.
 *
 * <p>Limits: heat that leaves on a finished part, in exhaust air or into a battery is not taken
 * off; reckon it out of the power first.
 */
public final class ElectricGain {

  /** Radiant part of the heat of mixed equipment, 0 to 1. */
  public static final double RADIANT_SHARE = 0.30;

  private ElectricGain() {}

  /**
   * A tool in the room.
   *
   * @param watts mean electric power, W, 0 to 1e9
   * @return its heat
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static HeatGain toolInRoom(double watts) {
    return HeatGain.dry(watts, RADIANT_SHARE);
  }
}
