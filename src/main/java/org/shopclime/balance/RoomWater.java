package org.shopclime.balance;

import org.shopclime.air.MoistAir;
import org.shopclime.shop.Room;

/**
 * What holds water in a room, its air at the set point and the wished humidity.
 *
 * @param dryAir dry air in it, kg
 * @param store water that its walls and wood take up for each kg/kg by which its air grows moister,
 *     kg
 * @param exchange water that passes between air and store for each kg/kg of difference, kg/s
 */
public record RoomWater(double dryAir, double store, double exchange) {

  static RoomWater of(Skeleton skeleton, int index, double pressure) {
    Room room = skeleton.rooms().get(index);
    MoistureStore store = skeleton.stores().get(index);
    return new RoomWater(
        room.airVolume()
            * MoistAir.dryAirDensity(
                room.setPoint(), wishedHumidityRatio(room, pressure), pressure),
        store.perRelativeHumidity() / MoistAir.saturationHumidityRatio(room.setPoint(), pressure),
        store.exchange());
  }

  /** Humidity ratio of a room at its set point and wished humidity, kg/kg. */
  static double wishedHumidityRatio(Room room, double pressure) {
    return MoistAir.humidityRatioFromRelativeHumidity(
        room.setPoint(), room.wishedHumidity(), pressure);
  }
}
