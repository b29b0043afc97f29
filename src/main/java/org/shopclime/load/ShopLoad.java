package org.shopclime.load;

import java.util.List;
import org.shopclime.balance.Profile;

/**
 * Loads of all cooled rooms on one day.
 *
 * @param rooms loads, in the order of the rooms
 * @param airTemperature air temperature of every room, °C, by room index; cooled rooms at their set
 *     points
 */
public record ShopLoad(List<RoomLoad> rooms, List<Profile> airTemperature) {

  /** Copies the lists. */
  public ShopLoad {
    rooms = List.copyOf(rooms);
    airTemperature = List.copyOf(airTemperature);
  }

  /**
   * Sensible and latent load of all cooled rooms.
   *
   * @return W, by the hour
   */
  public Profile total() {
    Profile total = Profile.of(hour -> 0);
    for (RoomLoad room : rooms) {
      total = total.plus(room.sensible()).plus(room.latent());
    }
    return total;
  }

  /**
   * Hour in which the total is greatest.
   *
   * @return hour ending 1 to 24
   */
  public int peakHour() {
    return total().peakHour();
  }
}
