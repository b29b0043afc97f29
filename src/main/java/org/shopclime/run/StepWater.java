package org.shopclime.run;

import java.util.Optional;
import org.shopclime.air.MoistAir;
import org.shopclime.heat.ModeMarch;

/**
 * Water in the air of the rooms in one step: what comes in with outdoor air, what a cooler blows,
 * past the place of a machine and through open ways, and where all that leads.
 */
final class StepWater {

  private final Moisture moisture;
  private final ModeMarch march;
  private final StepInflow outdoors;
  private final Driers driers;

  /** Room of the unit; -1 for none. */
  private final int unitRoom;

  private final double pressure;
  private final Optional<PlaceAir> place;
  private final Optional<OpenWays> ways;

  /** Water of gains in the air of each room, kg/s. */
  private final double[] vapour;

  /** Mean water in the air of each room in the step, where rooms share air, kg/kg. */
  private final double[] means;

  private double seconds;

  /** Part of the step that a cooler blows. */
  private double blown;

  StepWater(
      Moisture moisture,
      ModeMarch march,
      StepInflow outdoors,
      Driers driers,
      int unitRoom,
      double pressure,
      Optional<PlaceAir> place,
      Optional<OpenWays> ways) {
    this.moisture = moisture;
    this.march = march;
    this.outdoors = outdoors;
    this.driers = driers;
    this.unitRoom = unitRoom;
    this.pressure = pressure;
    this.place = place;
    this.ways = ways;
    vapour = new double[driers.rooms()];
    means = new double[driers.rooms()];
  }

  /** Steps last so long from now on, s. */
  void lasts(double step) {
    seconds = step;
  }

  /** Gains give off so much in a room from now on, kg/s. */
  void gain(int room, double water) {
    vapour[room] = water;
  }

  /** A cooler blows for this part of the step, as far as its water goes. */
  void blown(double share) {
    blown = share;
  }

  /** Whether air passes between rooms through what stands open. */
  boolean passes() {
    return ways.isPresent();
  }

  /** Humidity ratio of a room as it stands, kg/kg. */
  double humidityRatio(int room) {
    return moisture.humidityRatio(room);
  }

  /** Rooms that share air are taken to be as moist as they stand. */
  void startMeans() {
    for (int room = 0; room < means.length; room++) {
      means[room] = moisture.humidityRatio(room);
    }
  }

  /** What acts on the water of a room. */
  private Moisture.Around around(int room) {
    double share = room == unitRoom ? blown : 0;
    double all = outdoors.inflow(room, share);
    double comes = outdoors.humidityRatio(room, share);
    double shared = place.isPresent() ? place.get().exchange(room) : 0;
    if (shared != 0) {
      comes = (all * comes + shared * means[place.get().other(room)]) / (all + shared);
      all += shared;
    }
    double passing = ways.isPresent() ? ways.get().into(room) : 0;
    if (passing > 0) {
      comes = (all * comes + ways.get().water(room, means)) / (all + passing);
      all += passing;
    }
    return new Moisture.Around(comes, all, vapour[room], pressure, seconds);
  }

  /**
   * Where the water of a room leads in the step looked at.
   *
   * @param room index of the room
   * @param coil water that the unit takes out of its room, kg/s
   */
  Moisture.Step look(int room, double coil) {
    return moisture.look(room, around(room), saturated(march.meanAir(room)), out(room, coil));
  }

  /**
   * Looks where the water of a room leads and makes that step.
   *
   * @param room index of the room
   * @param coil water that the unit takes out of its room, kg/s
   * @param ledger account of the water, if one is kept
   * @return the step
   */
  Moisture.Step make(int room, double coil, Optional<DayLedger> ledger) {
    Moisture.Around around = around(room);
    double out = out(room, coil);
    Moisture.Step step = moisture.look(room, around, saturated(march.meanAir(room)), out);
    moisture.go(room, step, around, out, ledger);
    return step;
  }

  /**
   * Makes a step of one room that was looked at.
   *
   * @param room index of the room
   * @param step where its water leads
   * @param coil water that the unit takes out of its room, kg/s
   * @param ledger account of the water, if one is kept
   */
  void make(int room, Moisture.Step step, double coil, Optional<DayLedger> ledger) {
    moisture.go(room, step, around(room), out(room, coil), ledger);
  }

  /** Water taken out of a room where the unit takes so much out of its own, kg/s. */
  double out(int room, double coil) {
    return (room == unitRoom ? coil : 0) + driers.water(room);
  }

  /** Air of a place hotter than any room holds more than it ever gets. */
  double saturated(double celsius) {
    return MoistAir.saturationHumidityRatio(Math.min(celsius, DayRunner.HOTTEST), pressure);
  }

  /** Most water that a coil can take out of what the air of a room holds, kg/s. */
  double mostOfHeld(int room) {
    return moisture.coilLimit(room, seconds) - driers.water(room);
  }

  /** The same where what comes in is counted too: no air gets drier than dry. */
  double most(int room) {
    return moisture.coilLimit(room, seconds)
        + outdoors.inflow(room) * outdoors.humidityRatio()
        + (ways.isPresent() ? ways.get().water(room, means) : 0)
        + vapour[room]
        - driers.water(room);
  }

  /**
   * Lets the dehumidifier of a room run as its air, °C, needs it while a coil takes out so much.
   */
  void dry(int room, double celsius, double coil) {
    driers.find(room, celsius, moisture, around(room), room == unitRoom ? coil : 0);
  }

  /** Looks at the water of all rooms in turn, once round. */
  void lookAtRooms(double coil) {
    for (int room = 0; room < means.length; room++) {
      means[room] = look(room, coil).mean();
    }
  }

  /**
   * Mean water of the unit's room in the step looked at, after a look at the rooms that it shares
   * air with.
   */
  double lookAtUnitRoom(double coil) {
    if (ways.isPresent()) {
      for (int room = 0; room < means.length; room++) {
        if (room != unitRoom) {
          means[room] = look(room, coil).mean();
        }
      }
    } else if (place.isPresent()) {
      int room = place.get().place();
      means[room] = look(room, coil).mean();
    }
    means[unitRoom] = look(unitRoom, coil).mean();
    return means[unitRoom];
  }

  /** Finds the water of rooms that share air: each takes in the mean of the others'. */
  void share(double coil) {
    if (ways.isPresent()) {
      SharedWater.find(means, room -> look(room, coil).mean());
    } else if (place.isPresent()) {
      shareWithPlace(coil);
    }
  }

  private void shareWithPlace(double coil) {
    int[] both = {place.get().place(), place.get().other(place.get().place())};
    double[] most = new double[means.length];
    for (int room : both) {
      most[room] = saturated(march.meanAir(room));
    }
    SharedWater.settle(
        both, means, room -> moisture.look(room, around(room), most[room], out(room, coil)).mean());
  }
}
