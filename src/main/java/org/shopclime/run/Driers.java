package org.shopclime.run;

import java.util.Optional;
import java.util.function.IntFunction;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DrierPlate;
import org.shopclime.unit.Dehumidifier;
import org.shopclime.unit.RoomEffect;

/**
 * The dehumidifiers of a shop in a step. Each takes out what brings the air of its room to the
 * humidity it is set to by the end of the step, or all it can in the air the step begins with; its
 * heat goes into that room.
 */
final class Driers {

  private final Dehumidifier[] machines;
  private final double[] humidity;
  private final double[] heat;
  private final double[] water;
  private final double[] power;
  private final boolean any;

  Driers(int rooms, IntFunction<Optional<DrierPlate>> ofRoom) {
    machines = new Dehumidifier[rooms];
    humidity = new double[rooms];
    heat = new double[rooms];
    water = new double[rooms];
    power = new double[rooms];
    boolean found = false;
    for (int room = 0; room < rooms; room++) {
      Optional<DrierPlate> plate = ofRoom.apply(room);
      if (plate.isPresent()) {
        machines[room] =
            Dehumidifier.ofLabel(plate.get().litresPerDay(), plate.get().litresPerKilowattHour());
        humidity[room] = plate.get().humidity();
        found = true;
      }
    }
    any = found;
  }

  /** Number of rooms. */
  int rooms() {
    return machines.length;
  }

  /** Whether there is one. */
  boolean any() {
    return any;
  }

  /** Whether one stands in a room. */
  boolean in(int room) {
    return machines[room] != null;
  }

  /**
   * Finds what the machine of a room does in a step.
   *
   * @param room index of a room with one
   * @param celsius air of the room, °C
   * @param moisture water at the start of the step
   * @param around what else acts on it
   * @param coil water that a unit takes out meanwhile, kg/s
   */
  void find(int room, double celsius, Moisture moisture, Moisture.Around around, double coil) {
    double saturated = MoistAir.saturationHumidityRatio(celsius, around.pressure());
    double wished =
        MoistAir.humidityRatioFromRelativeHumidity(celsius, humidity[room], around.pressure());
    heat[room] = 0;
    water[room] = 0;
    power[room] = 0;
    double free = moisture.look(room, around, saturated, coil).air();
    if (free <= wished) {
      return;
    }
    double now = Math.max(wished, Math.min(saturated, moisture.humidityRatio(room)));
    AirState air = new AirState(celsius, now, around.pressure());
    double most = -machines[room].at(air, air, 1).water();
    double dry = moisture.look(room, around, saturated, coil + most).air();
    double demand = dry >= wished || dry >= free ? 1 : (free - wished) / (free - dry);
    RoomEffect effect = machines[room].at(air, air, Math.min(1, demand));
    heat[room] = effect.sensible();
    water[room] = -effect.water();
    power[room] = effect.power();
  }

  /** Sensible heat given to a room, W. */
  double heat(int room) {
    return heat[room];
  }

  /** Water taken out of a room, kg/s. */
  double water(int room) {
    return water[room];
  }

  /** Power drawn in a room, W. */
  double power(int room) {
    return power[room];
  }
}
