package org.shopclime.balance;

import java.util.List;
import java.util.Optional;

/**
 * How far a room lies below outdoors in pressure at the moment of the working day when its fans
 * draw hardest, each at its whole flow.
 *
 * @param pascals suction, Pa; 0 where fans do not draw; NaN where leaks are told by air changes,
 *     from which no pressure follows, or there are none
 * @param hour hour ending 1 to 24 in which that is
 * @param fans names of the fans that draw then, the strongest first
 * @param place of the strongest in the shop file; empty if none draws
 * @param door the entry door that is hardest to open then, if there is one
 * @param flueLimit suction that the shop's flue stands, Pa; infinite without a flue
 */
public record AirSuction(
    double pascals,
    int hour,
    List<String> fans,
    String place,
    Optional<HardDoor> door,
    double flueLimit) {

  /** Copies the list. */
  public AirSuction {
    fans = List.copyOf(fans);
  }

  /**
   * A door against the suction.
   *
   * @param name its name
   * @param newtons force at the handle, without friction or a closer, N
   * @param limit most force that a door on a way out may take, N
   */
  public record HardDoor(String name, double newtons, double limit) {

    /**
     * Whether it is too hard.
     *
     * @return true above the limit
     */
    public boolean isTooHard() {
      return newtons > limit;
    }
  }

  /**
   * Whether the flue may no longer draw.
   *
   * @return true if the suction is above what it stands
   */
  public boolean endangersFlue() {
    return pascals > flueLimit;
  }
}
