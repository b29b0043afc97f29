package org.shopclime.run;

import java.util.Optional;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ShopYear;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * Air that flows into the rooms and between them in the steps of a year: guessed for the air they
 * are likely to have, and found anew for that which the guess leads to.
 */
final class YearAir {

  /** How far off the air may be for which flows were found, K. */
  static final double CLOSE = 0.01;

  /** How many times more it counts what air between rooms is off by. */
  private static final double WAYS_SLOWER = 3;

  private final ShopYear year;
  private final ModeMarch march;
  private final Drivers drivers;
  private final StepInflow outdoors;
  private final int rooms;
  private final double[] roomConductance;
  private final double[] foundFlow;

  /** Temperatures of the air for which the flows were found, °C. */
  private final double[] flowAt;

  /** Mean air of the rooms in the hours before, and what it is likely to be, °C. */
  private final LikeYesterday airs;

  private final double[] likely;

  /** Air between rooms, where something stands open between them. */
  private final Optional<OpenWays> ways;

  private int hour;

  YearAir(ShopYear year, ModeMarch march, Drivers drivers, StepInflow outdoors) {
    this.year = year;
    this.march = march;
    this.drivers = drivers;
    this.outdoors = outdoors;
    rooms = year.rooms();
    ways = OpenWays.of(year.passages(), rooms);
    roomConductance = march.roomConductances();
    foundFlow = new double[rooms];
    flowAt = new double[rooms];
    airs = new LikeYesterday(rooms);
    likely = new double[rooms];
  }

  Optional<OpenWays> ways() {
    return ways;
  }

  /** The steady state, with the air that passes between rooms on that day. */
  void startSteady(int until) {
    march.startSteady(drivers);
    if (ways.isPresent()) {
      OpenWays open = ways.get();
      open.begin(
          (way, one, other) -> year.passingThatDay(way, one, other, until),
          MoistAir.humidHeat(year.outdoorHumidityRatio(until)),
          year.plants()::cooledTo);
      open.startSteady(march, drivers);
    }
  }

  /** Nothing is known of the hours before. */
  void forget() {
    airs.forget();
  }

  /** An hour begins. */
  void nextHour(int of) {
    hour = of;
    airs.nextHour();
    outdoors.begin(year.weather().dryBulb(of), year.outdoorHumidityRatio(of));
  }

  /**
   * Begins a step with a guess of its mean air: in a whole hour it is like that of the day before.
   */
  void begin(boolean whole) {
    for (int room = 0; room < rooms; room++) {
      likely[room] = march.air(room);
    }
    if (whole) {
      airs.guess(likely);
    }
    for (int room = 0; room < rooms; room++) {
      flow(room, year.inflow(room, likely[room], hour), likely[room]);
    }
  }

  /** Lets air pass between rooms as the guess has it. */
  void beginWays() {
    int of = hour;
    OpenWays open = ways.get();
    open.begin(
        (way, one, other) -> year.passing(way, one, other, of),
        outdoors.humidHeat(),
        room -> likely[room]);
    open.flow(drivers, Optional.empty());
  }

  private void flow(int room, double dryAir, double celsius) {
    flowAt[room] = celsius;
    outdoors.flow(room, dryAir);
  }

  /** Finds the air flows of the air found; tells how far off they were, in units of what may be. */
  double off() {
    double most = 0;
    for (int room = 0; room < rooms; room++) {
      double mean = march.meanAir(room);
      double allowed = CLOSE * roomConductance[room];
      double inflow = outdoors.inflow(room);
      foundFlow[room] = inflow;
      // Flows grow with the root of the difference at most.
      if (inflow * outdoors.humidHeat() * Math.abs(mean - flowAt[room]) > allowed) {
        foundFlow[room] = year.inflow(room, mean, hour);
        double moved =
            (foundFlow[room] - inflow) * outdoors.humidHeat() * (outdoors.dryBulb() - mean);
        most = Math.max(most, Math.abs(moved) / allowed);
      }
    }
    // A round leaves a third of what they are off by, not the tenth that is counted on.
    return ways.isEmpty()
        ? most
        : Math.max(
            most,
            WAYS_SLOWER * ways.get().off(march::meanAir, room -> CLOSE * roomConductance[room]));
  }

  /** Takes the flows that were found. */
  void takeFound() {
    for (int room = 0; room < rooms; room++) {
      if (foundFlow[room] != outdoors.inflow(room)) {
        flow(room, foundFlow[room], march.meanAir(room));
      }
    }
    if (ways.isPresent()) {
      ways.get().move(march::meanAir);
      ways.get().flow(drivers, Optional.empty());
    }
  }

  /** A step was made; its air tells what that of tomorrow may be. */
  void made(int room) {
    airs.ofThisHour()[room] = march.meanAir(room);
  }
}
