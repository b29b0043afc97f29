package org.shopclime.balance;

/**
 * A day of batches in an oven.
 *
 * @param batches done in the day
 * @param heatUp how long the first takes to come up to its cure, s
 * @param longest longest time one is in the oven, s
 * @param heater electricity, J a day
 * @param room heat that box and parts give to the room, J a day, before a hood takes its part
 * @param vented heat that the oven's own fan carries outdoors, J a day
 * @param carried heat that parts carry out of the room, J a day
 */
public record OvenBook(
    int batches,
    double heatUp,
    double longest,
    double heater,
    double room,
    double vented,
    double carried) {

  /**
   * Electricity less what left: nothing but rounding.
   *
   * @return J
   */
  public double missing() {
    return heater - room - vented - carried;
  }
}
