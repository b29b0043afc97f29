package org.shopclime.run;

import org.shopclime.air.MoistAir;
import org.shopclime.heat.Drivers;

/**
 * Outdoor air that flows into the rooms in a step, and beside it what a cooler with wet pads blows
 * into its own.
 */
final class StepInflow {

  private final Drivers drivers;

  /** Room into which a cooler blows; -1 for none. */
  private final int blownRoom;

  private final double[] inflow;
  private double dryBulb;
  private double humidityRatio;
  private double humidHeat;

  /** What the cooler blows, running all the time. */
  private Blown supply = Blown.NOTHING;

  /** Part of the step that it does so. */
  private double blowing;

  StepInflow(Drivers drivers, int rooms, int blownRoom) {
    this.drivers = drivers;
    this.blownRoom = blownRoom;
    inflow = new double[rooms];
  }

  /** Outdoors is so from now on, °C and kg/kg; the cooler rests. */
  void begin(double celsius, double water) {
    blowing = 0;
    dryBulb = celsius;
    humidityRatio = water;
    humidHeat = MoistAir.humidHeat(water);
  }

  /** The cooler blows so from now on. */
  void supply(Blown blown) {
    supply = blown;
  }

  Blown supply() {
    return supply;
  }

  /** Lets outdoor air flow into a room, kg of dry air a second. */
  void flow(int room, double dryAir) {
    inflow[room] = dryAir;
    drive(room);
  }

  /** Lets the cooler blow for a part of the step. */
  void blow(double share) {
    blowing = share;
    drive(blownRoom);
  }

  /** Part of the step that the cooler blows. */
  double blowing() {
    return blowing;
  }

  private void drive(int room) {
    double share = room == blownRoom ? blowing : 0;
    double flow = inflow[room] * humidHeat;
    drivers.inflow(room, flow + supply.conductance(share), supply.mixed(share, flow, dryBulb));
  }

  /** Outdoor air into a room, the cooler's not counted, kg of dry air a second. */
  double inflow(int room) {
    return inflow[room];
  }

  double dryBulb() {
    return dryBulb;
  }

  double humidityRatio() {
    return humidityRatio;
  }

  /** Its heat, J/K for each kg of dry air. */
  double humidHeat() {
    return humidHeat;
  }

  /** Air into a room while the cooler blows for a part of the step, kg of dry air a second. */
  double inflow(int room, double share) {
    return inflow[room] + share * supply.dryAir();
  }

  /** Humidity ratio of that air, kg/kg. */
  double humidityRatio(int room, double share) {
    return supply.mixedHumidity(share, inflow[room], humidityRatio);
  }
}
