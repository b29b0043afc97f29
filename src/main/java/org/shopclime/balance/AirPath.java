package org.shopclime.balance;

import org.shopclime.shop.FanUse;
import org.shopclime.shop.FanWay;

/**
 * One way by which air moves in or out of a room, in the mean of an hour.
 *
 * @param kind what it is
 * @param name its name
 * @param place where it stands in the shop file; empty for leaks
 * @param use what a fan is for; {@link FanUse#OTHER} for leaks and doors
 * @param way where it blows; {@link FanWay#BALANCED} for leaks and doors
 * @param moved all the air it moves, m³/s
 * @param in air from outdoors into the room, m³/s
 * @param out air from the room to outdoors, m³/s
 * @param led air from outdoors to its hood and out again, that does not mix with the room, m³/s
 * @param returned air from the room through a filter and back, m³/s
 * @param sensible sensible heat it is charged with, W, either sign: leaks with what would enter
 *     with fans off, fans with what they add
 * @param latent latent heat, W, either sign
 * @param water water brought in, kg/s, either sign
 */
public record AirPath(
    Kind kind,
    String name,
    String place,
    FanUse use,
    FanWay way,
    double moved,
    double in,
    double out,
    double led,
    double returned,
    double sensible,
    double latent,
    double water) {

  /** What air moves through. */
  public enum Kind {
    /** Cracks and gaps. */
    LEAKS,
    /** A fan. */
    FAN,
    /** A door that is opened. */
    DOOR
  }

  /**
   * Heat and moisture together.
   *
   * @return W
   */
  public double total() {
    return sensible + latent;
  }
}
