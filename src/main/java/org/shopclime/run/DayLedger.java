package org.shopclime.run;

import org.shopclime.balance.DaySlots;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;
import org.shopclime.heat.Network;

/** Heat and water of all rooms and walls together through one day, kept where somebody audits. */
final class DayLedger {

  /** Heat taken out by the unit, J. */
  double removed;

  /** Heat of gains and sun, and what true radiation differs from linear, J. */
  double sources;

  /** Heat brought by outdoor air, J. */
  double streams;

  /** Heat out of the boundaries: outdoor faces, ground, J. */
  double boundaries;

  /** Heat stored, J. */
  double stored;

  /** Heat made by handing over to the films of another season, J; what its modes cannot take. */
  double handedOver;

  /** Water brought by outdoor air, net, kg. */
  double waterIn;

  /** Water given off by people and work, kg. */
  double waterGiven;

  /** Water taken out by the coil, kg. */
  double waterCoil;

  /** Water that fell out of saturated air, kg. */
  double waterFallen;

  /** Outdoor air through each slot, kg of dry air a second, by room and slot. */
  final double[][] inflow;

  /** Air temperature, mean of each slot, °C, by room and slot. */
  final double[][] air;

  DayLedger(int rooms) {
    inflow = new double[rooms][DaySlots.COUNT];
    air = new double[rooms][DaySlots.COUNT];
  }

  /** Heat that plants which hold a room put into it, J; below 0 where they cool. */
  double plants;

  /** One step of the network. */
  void heat(
      Network network, ModeMarch march, Drivers drivers, double removedWatts, double seconds) {
    removed += removedWatts * seconds;
    sources += (drivers.sources() + removedWatts) * seconds;
    for (int room = 0; room < network.rooms(); room++) {
      streams += drivers.inflowHeat(room, march.meanAir(room)) * seconds;
      streams += drivers.exchangeHeat(room, march::meanAir) * seconds;
      plants += march.plant(room) * seconds;
    }
    for (int boundary = 0; boundary < network.boundaries(); boundary++) {
      boundaries += march.boundaryHeat(boundary) * seconds;
    }
    stored += march.storedHeatChange();
  }

  /**
   * Heat and water that a cooler takes out with the air it blows in, which stood among the streams.
   *
   * @param removedWatts sensible heat, W
   * @param water kg/s; below 0 where it makes the room moister
   * @param seconds length of the step, s
   */
  void blown(double removedWatts, double water, double seconds) {
    removed += removedWatts * seconds;
    streams += removedWatts * seconds;
    waterCoil += water * seconds;
    waterIn += water * seconds;
  }
}
