package org.shopclime.balance;

import java.util.Optional;
import org.shopclime.shop.Room;

/**
 * The label of a dehumidifier, and what it is set to.
 *
 * @param litresPerDay water taken out at 65 °F and 60 %, L/day
 * @param litresPerKilowattHour energy factor, L/kWh
 * @param humidity relative humidity it is set to, 0 to 1
 */
public record DrierPlate(double litresPerDay, double litresPerKilowattHour, double humidity) {

  private static final double SECONDS_PER_DAY = 86_400;

  static Optional<DrierPlate> of(Room room) {
    return room.dehumidifier()
        .map(
            drier ->
                new DrierPlate(
                    drier.capacity() * SECONDS_PER_DAY, drier.energyFactor(), drier.humidity()));
  }
}
