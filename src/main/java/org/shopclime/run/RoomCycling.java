package org.shopclime.run;

import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;
import org.shopclime.unit.StartUp;
import org.shopclime.unit.WetCoil;

/**
 * The average of a unit that goes on and off in its room: how long its runs are, and what its
 * starts cost.
 *
 * <p>Between two starts the air is taken to follow one exponential, fitted to the network's own
 * answer after 5 and 15 minutes; what lies deeper in the walls stays as it is meanwhile. Off, the
 * air climbs through the band toward where the load would bring it; then the unit runs until it has
 * given what the load asked since the last start, its first minutes giving less ({@link StartUp}).
 * Where the fan runs on, the wet coil cools meanwhile, taken as its mean over the rest. {@code
 * RoomCyclingTest} holds it against control by the minute.
 *
 * @param kelvinPerWatt how far the air goes for each watt, if that is left on, K/W, above 0
 * @param seconds time constant of that, s, above 0
 * @param thermostat how the unit is switched
 * @param start how its capacity comes
 */
record RoomCycling(double kelvinPerWatt, double seconds, Thermostat thermostat, StartUp start) {

  /** Steps between which the exponential is fitted, s; the longer is three of the shorter. */
  static final double SHORT = 300;

  static final double LONG = 900;

  /** Air that hardly comes to rest is taken to keep this part of its way after the shorter. */
  private static final double MOST_KEPT = 0.999;

  private static final double LEAST_KEPT = 1e-6;

  /** Rest after which a thermostat is taken to have started at the latest, s. */
  private static final double LONGEST_REST = 3600;

  private static final int ROUNDS = 30;

  /** How near a run is found, s. */
  private static final double CLOSE = 1e-6;

  /** Asked for more than this part of its capacity a unit does not stop. */
  private static final double NEVER_STOPS = 0.9999;

  /** How near a rest is searched, s. */
  private static final double FINE = 1;

  /**
   * The cycling of a room.
   *
   * @param march march of its network
   * @param still drivers without air flows and holds
   * @param room index of the room
   * @param shorter number of the step of {@link #SHORT}
   * @param longer number of the step of {@link #LONG}
   */
  static RoomCycling of(
      ModeMarch march,
      Drivers still,
      int room,
      int shorter,
      int longer,
      Thermostat thermostat,
      StartUp start) {
    march.choose(longer);
    double afterLong = march.response(still, room);
    march.choose(shorter);
    double afterShort = march.response(still, room);
    // Of three equal steps each goes q times as far as the one before.
    double more = Math.max(0, afterLong / afterShort - 1);
    double kept = Math.max(LEAST_KEPT, Math.min(MOST_KEPT, (Math.sqrt(1 + 4 * more) - 1) / 2));
    return new RoomCycling(afterShort / (1 - kept), -SHORT / Math.log(kept), thermostat, start);
  }

  /**
   * One run and one rest.
   *
   * @param run s; without end where the unit does not stop
   * @param rest s
   * @param evaporated water that goes back into the air in the rest, kg
   */
  record Cycle(double run, double rest, double evaporated) {

    /** Starts in an hour. */
    double starts() {
      return endless() ? 0 : 3600 / (run + rest);
    }

    /** Part of the time it runs. */
    double running() {
      return endless() ? 1 : run / (run + rest);
    }

    /** Whether it does not stop. */
    boolean endless() {
      return run == Double.POSITIVE_INFINITY;
    }
  }

  /**
   * A unit in its room.
   *
   * @param sensible steady sensible capacity, W, above 0
   * @param condensate water it takes out meanwhile, kg/s, 0 or more
   * @param coil what hangs on its coil where its fan runs on
   */
  record Machine(double sensible, double condensate, WetCoil coil) {

    /** Heat that water takes as it evaporates, in seconds of the sensible capacity. */
    double cools(double water) {
      return water * coil.enthalpy() / sensible;
    }

    /** Most that can be asked of it where all that condenses evaporates again. */
    double withAllLatent() {
      return 1 + cools(condensate);
    }
  }

  /**
   * One cycle of a unit whose fan stops with it.
   *
   * @param load what is asked as a part of the steady sensible capacity, above 0
   * @param sensible that capacity, W, above 0
   */
  Cycle cycle(double load, double sensible) {
    return cycle(load, new Machine(sensible, 0, WetCoil.NONE));
  }

  /**
   * One cycle.
   *
   * @param load what is asked as a part of the steady sensible capacity, above 0
   * @param of the unit
   */
  Cycle cycle(double load, Machine of) {
    if (load > NEVER_STOPS) {
      return new Cycle(Double.POSITIVE_INFINITY, 0, 0);
    }
    double low = Thermostat.LOOK;
    double high = LONGEST_REST;
    double rest = low;
    double fine = of.coil().held() > 0 ? CLOSE : FINE;
    if (isShort(rest, load, of)) {
      for (int i = 0; i < ROUNDS && high - low > fine; i++) {
        rest = (low + high) / 2;
        if (isShort(rest, load, of)) {
          low = rest;
        } else {
          high = rest;
        }
      }
    }
    double run = runAfter(rest, load, of);
    return run < thermostat.leastRun() ? least(load, of) : cycle(run, rest, of);
  }

  private Cycle cycle(double run, double rest, Machine of) {
    return new Cycle(run, rest, evaporated(run, rest, of));
  }

  /** What evaporates in the rest: no more than what condensed in the run. */
  private double evaporated(double run, double rest, Machine of) {
    return of.coil().held() > 0 ? Math.min(condensed(run, of), of.coil().evaporated(rest)) : 0;
  }

  private double condensed(double run, Machine of) {
    return of.condensate() * run * start.share(0, run);
  }

  /**
   * The cycle of the shortest run: the rest lasts until what it gave is used up. By Newton from
   * beyond, where what is left of it falls ever faster.
   */
  private Cycle least(double load, Machine of) {
    double run = thermostat.leastRun();
    double given = run * start.share(0, run);
    double all = given + of.cools(condensed(run, of));
    double rest = of.coil().held() > 0 ? all / load - run : run * (given / run / load - 1);
    if (of.coil().evaporated(rest) < condensed(run, of)) {
      for (int i = 0; i < ROUNDS; i++) {
        double over = load * (run + rest) - given - of.cools(of.coil().evaporated(rest));
        double rate = of.coil().rateAfter(rest, of.coil().evaporated(rest));
        double step = over / (load - of.cools(rate));
        rest -= step;
        if (Math.abs(step) < CLOSE) {
          break;
        }
      }
    }
    return cycle(run, rest, of);
  }

  /**
   * Whether after a rest so long the swing of the air is still less than the band and what it goes
   * beyond it until the next look, half an interval in the mean. The swing is the periodic answer
   * of the exponential to that rest and the run after it.
   */
  private boolean isShort(double rest, double load, Machine of) {
    double run = runAfter(rest, load, of);
    double evaporated = evaporated(run, rest, of);
    double all = kelvinPerWatt * of.sensible();
    double up = load * all;
    double upOff = up - of.cools(evaporated) / rest * all;
    double upLast = up - of.cools(of.coil().rateAfter(rest, evaporated)) * all;
    double keptOff = Math.exp(-rest / seconds);
    double keptOn = Math.exp(-run / seconds);
    double missing = Math.exp(-run / start.seconds());
    double late = all * start.seconds() / (start.seconds() - seconds);
    double climbed = upOff * (1 - keptOff);
    double bottom =
        ((all - late - up + climbed) * keptOn + up - all + late * missing) / (1 - keptOn * keptOff);
    double top = climbed + bottom * keptOff;
    double rising = (upLast - top) / seconds;
    double falling = (bottom - up + all * (1 - missing)) / seconds;
    return top - bottom < thermostat.band() + (rising + falling) * Thermostat.LOOK / 2;
  }

  /**
   * The run that gives what is asked since the last start; what evaporates in the rest helps.
   *
   * <p>Where more would evaporate than condenses, all that condenses does, and the unit is one of
   * so much more sensible capacity.
   */
  private double runAfter(double rest, double load, Machine of) {
    if (of.coil().held() > 0) {
      double less = load / of.withAllLatent();
      double run = runAfter(rest, less, 0);
      if (condensed(run, of) <= of.coil().evaporated(rest)) {
        return run;
      }
    }
    return runAfter(rest, load, of.cools(of.coil().evaporated(rest)));
  }

  /**
   * The run for which (1 - load) run = load rest + what the start costs - what is given in the
   * rest. By Newton from beyond, where the difference is convex.
   */
  private double runAfter(double rest, double load, double given) {
    double slow = start.seconds();
    double run = (load * rest + slow - given) / (1 - load);
    for (int i = 0; i < ROUNDS; i++) {
      double missing = Math.exp(-run / slow);
      double over = (1 - load) * run - load * rest + given - slow * (1 - missing);
      double step = over / (1 - load - missing);
      run -= step;
      if (Math.abs(step) < CLOSE) {
        return run;
      }
    }
    return run;
  }
}
