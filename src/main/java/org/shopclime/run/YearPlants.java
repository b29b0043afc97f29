package org.shopclime.run;

import java.util.Arrays;
import org.shopclime.balance.PlantHours;
import org.shopclime.balance.ShopYear;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * What the plants of all rooms do in a step of a year: a room that has come to its set point is
 * held at it, one on its way is brought there by constant heat or all that its plant has.
 */
final class YearPlants {

  /** How near to its set point a room counts as being there, K. */
  private static final double THERE = 1e-6;

  private static final int MOST_ROUNDS = 12;

  /** Heat a plant may be asked for against its sense within a long step, W. */
  private static final double TRIFLE = 1;

  private final PlantHours hours;
  private final ModeMarch march;
  private final Drivers drivers;
  private final YearUnit unit;
  private final int rooms;

  /** Whether air passes between rooms, so that the plant of one may let another's stop or start. */
  private final boolean sharesAir;

  /** Heat of gains in the air of each room in this hour, dehumidifiers counted, W. */
  private final double[] base;

  /** Heat of plants that bring a room to its set point, W. */
  private final double[] constant;

  /** Where plants are switched on, what they hold in this step, °C; else infinite. */
  private final double[] heatedTo;

  private final double[] cooledTo;

  /** What held each room last: 1 heating, -1 cooling, 0 nothing. */
  private final int[] heldBy;

  /** Whether plants that start or stop within the step are taken as doing so all through it. */
  private boolean fine;

  YearPlants(ShopYear year, ModeMarch march, Drivers drivers, YearUnit unit, boolean sharesAir) {
    hours = year.plants();
    this.march = march;
    this.drivers = drivers;
    this.unit = unit;
    this.sharesAir = sharesAir;
    rooms = year.rooms();
    base = new double[rooms];
    constant = new double[rooms];
    heatedTo = new double[rooms];
    cooledTo = new double[rooms];
    heldBy = new int[rooms];
  }

  /**
   * Begins a step.
   *
   * @param hour its hour
   * @param end where in the hour it ends, above 0 to 1
   * @param isFine whether plants that start or stop within it are taken as doing so all through it
   */
  void begin(int hour, double end, boolean isFine) {
    fine = isFine;
    for (int room = 0; room < rooms; room++) {
      setPoints(room, hour, end);
    }
  }

  private void setPoints(int room, int hour, double end) {
    boolean cools =
        (room == unit.room() || hours.isCooledIdeally(room)) && hours.coolingOn(room, hour);
    boolean heats = hours.isHeated(room) && hours.heatingOn(room, hour);
    heatedTo[room] = heats ? hours.heatedTo(room, hour, end) : Double.NEGATIVE_INFINITY;
    cooledTo[room] = cools ? hours.cooledTo(room, hour) : Double.POSITIVE_INFINITY;
  }

  /** Air of a room in an hour, °C, which but for its plants would be as told. */
  double within(int room, int hour, double celsius) {
    setPoints(room, hour, 1);
    return Math.max(heatedTo[room], Math.min(cooledTo[room], celsius));
  }

  /** Whether the set point of a heated room rises within an hour. */
  boolean rises(int hour) {
    for (int room = 0; room < rooms; room++) {
      if (hours.isHeated(room)
          && hours.heatingOn(room, hour)
          && hours.heatedTo(room, hour, 1) != hours.heatedTo(room, hour, 1e-6)) {
        return true;
      }
    }
    return false;
  }

  /** Gains give so much to the air of a room, W. */
  void gain(int room, double watts) {
    base[room] = watts;
  }

  /** Switches all of them off. */
  void release() {
    unit.release();
    for (int room = 0; room < rooms; room++) {
      drivers.release(room);
      drivers.airSource(room, base[room]);
      constant[room] = 0;
    }
  }

  /** What is held at its set point most often goes on being held. */
  void holdAsBefore() {
    for (int room = 0; room < rooms; room++) {
      if (heldBy[room] != 0) {
        double setPoint = setPoint(room, heldBy[room]);
        if (Math.abs(march.air(room) - setPoint) <= THERE) {
          drivers.hold(room, setPoint);
        } else {
          heldBy[room] = 0;
        }
      }
    }
  }

  /**
   * Controls until the unit sees the humidity that it leads to.
   *
   * @return false if a plant starts or stops in a long step
   */
  boolean controlInThisHumidity() {
    boolean goes = control();
    for (int round = 1; goes; round++) {
      if (!unit.isAsked() || round == MOST_ROUNDS || unit.isStill(plant(unit.room()))) {
        return true;
      }
      unit.askAgain();
      if (heldBy[unit.room()] == 0) {
        letGo();
      } else {
        letGoBrought();
      }
      goes = control();
    }
    return false;
  }

  private void letGo() {
    release();
    Arrays.fill(heldBy, 0);
    march.lookAgain(drivers);
  }

  /** Rooms that were brought to their set points are brought there anew. */
  private void letGoBrought() {
    boolean any = false;
    for (int room = 0; room < rooms; room++) {
      if (constant[room] != 0) {
        constant[room] = 0;
        drivers.airSource(room, base[room]);
        any = true;
      }
    }
    if (any) {
      march.lookAgain(drivers);
    }
  }

  /** Heat put into the air of a room in the step looked at, W, below 0 for cooling. */
  double plant(int room) {
    return constant[room] + march.plantAhead(drivers, room);
  }

  /** The same in the step that was made. */
  double made(int room) {
    return constant[room] + march.plant(room);
  }

  /** The part of it that brings a room to its set point, W. */
  double constant(int room) {
    return constant[room];
  }

  /** Whether the unit holds its room at the set point. */
  boolean unitHolds() {
    return heldBy[unit.room()] < 0;
  }

  private double setPoint(int room, int way) {
    return way > 0 ? heatedTo[room] : cooledTo[room];
  }

  /** Decides what the plants of all rooms do; false if one starts or stops in a long step. */
  private boolean control() {
    for (int room = 0; room < rooms; room++) {
      if (heldBy[room] != 0 && !goesOnHolding(room)) {
        letGo();
      }
    }
    for (int room = 0; room < rooms; room++) {
      if (heldBy[room] != 0) {
        if (!fine && switches(room, heldBy[room])) {
          return false;
        }
      } else if (!control(room)) {
        return false;
      }
    }
    return !sharesAir || agree();
  }

  /** Where air passes between rooms, the plant of one may let another's stop or start. */
  private boolean agree() {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      boolean changed = false;
      for (int room = 0; room < rooms; room++) {
        boolean wrong = heldBy[room] != 0 && !goesOnHolding(room);
        boolean left = heldBy[room] == 0 && constant[room] == 0;
        boolean beyond = left && !(room == unit.room() && unit.isBlowing()) && isBeyond(room);
        if ((wrong || beyond) && !fine) {
          return false;
        }
        if (wrong) {
          heldBy[room] = 0;
          drivers.release(room);
          march.lookAgain(drivers);
        }
        if ((wrong || beyond) && !control(room)) {
          return false;
        }
        changed |= wrong || beyond;
      }
      if (!changed) {
        return true;
      }
    }
    releaseWrong();
    return true;
  }

  private boolean isBeyond(int room) {
    return march.ahead(room) > cooledTo[room] + THERE || march.ahead(room) < heatedTo[room] - THERE;
  }

  /** What cannot be agreed on is left to itself for a step: no plant works against its sense. */
  private void releaseWrong() {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int room = 0; room < rooms; room++) {
        if (heldBy[room] != 0 && !goesOnHolding(room)) {
          heldBy[room] = 0;
          drivers.release(room);
          march.lookAgain(drivers);
          changed = true;
        }
      }
    }
  }

  /** Whether a room that is held is rightly held: the network is linear, and its plant tells. */
  private boolean goesOnHolding(int room) {
    double plant = heldBy[room] * march.plantAhead(drivers, room);
    return plant > 0 && plant <= most(room, heldBy[room], setPoint(room, heldBy[room]));
  }

  /** Whether the plant of a room that is held starts, stops or reaches its most in the step. */
  private boolean switches(int room, int way) {
    double plant = way * march.plantAhead(drivers, room);
    double tilt = Math.abs(march.plantTilt(drivers, room));
    return (plant < tilt && plant + tilt > TRIFLE)
        || straddles(plant, tilt, most(room, way, setPoint(room, way)));
  }

  private static boolean straddles(double plant, double tilt, double most) {
    return plant - tilt < most && plant + tilt > most;
  }

  private boolean control(int room) {
    double air = march.air(room);
    double free = march.ahead(room);
    if (free > cooledTo[room]) {
      return bring(room, free, -1);
    }
    if (free < heatedTo[room]) {
      return bring(room, free, 1);
    }
    // Left to itself it ends where it may be; but on the way there a plant may have been at work.
    if (!fine && (air > cooledTo[room] + THERE || air < heatedTo[room] - THERE)) {
      return false;
    }
    boolean mayCool = Math.abs(air - cooledTo[room]) <= THERE;
    if (!fine && (mayCool || Math.abs(air - heatedTo[room]) <= THERE)) {
      int way = mayCool ? -1 : 1;
      drivers.hold(room, setPoint(room, way));
      march.lookAgain(drivers);
      boolean asked =
          way * march.plantAhead(drivers, room) + Math.abs(march.plantTilt(drivers, room)) > TRIFLE;
      drivers.release(room);
      march.lookAgain(drivers);
      return !asked;
    }
    return true;
  }

  /** Most heat a plant can move, W. */
  private double most(int room, int way, double setPoint) {
    return way > 0 || room != unit.room() ? Double.POSITIVE_INFINITY : unit.most(setPoint);
  }

  /**
   * Holds a room that is at its set point or beyond it, or brings it there.
   *
   * @param way 1 for heating, -1 for cooling
   */
  private boolean bring(int room, double free, int way) {
    double setPoint = setPoint(room, way);
    double most = most(room, way, setPoint);
    double missing = way * (setPoint - march.air(room));
    if (missing >= -THERE) {
      drivers.hold(room, setPoint);
      march.lookAgain(drivers);
      double plant = way * march.plantAhead(drivers, room);
      boolean there = missing <= THERE;
      if (!fine && (there ? switches(room, way) : plant <= most)) {
        return false;
      }
      if (plant >= 0 && plant <= most) {
        heldBy[room] = way;
        return true;
      }
      drivers.release(room);
      march.lookAgain(drivers);
      if (plant < 0) {
        return true;
      }
    } else if (!fine) {
      return false;
    }
    boolean byUnit = way < 0 && room == unit.room();
    if (byUnit && unit.blows()) {
      // all through a long step, or in a short one as long as it takes
      double share = unit.blowTo(setPoint);
      return fine || share == 0 || share == 1;
    }
    double need = way * (setPoint - free) / march.response(drivers, room);
    if (!fine && need < most) {
      return false;
    }
    constant[room] = way * Math.min(most, need);
    drivers.airSource(room, base[room] + constant[room]);
    march.lookAgain(drivers);
    if (byUnit) {
      unit.entersMeanAir();
    }
    return true;
  }
}
