package org.shopclime.run;

import org.shopclime.unit.Heater;

/** Electric heaters as they are sold. */
public final class HeaterSize {

  private HeaterSize() {}

  /**
   * Smallest usual electric heater that covers a loss.
   *
   * @param lossWatts loss, W
   * @return W
   */
  public static double covering(double lossWatts) {
    return Heater.heaterWattsCovering(Math.max(0, lossWatts));
  }
}
