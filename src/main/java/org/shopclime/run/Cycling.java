package org.shopclime.run;

import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;
import org.shopclime.unit.StartUp;

/**
 * The average of a unit that goes on and off in its room: how long its runs are, and what its
 * starts cost.
 *
 * <p>Between two starts the air is taken to follow one exponential, fitted to the network's own
 * answer after 5 and 15 minutes; what lies deeper in the walls stays as it is meanwhile. Off, the
 * air climbs through the band toward where the load would bring it; then the unit runs until it has
 * given what the load asked since the last start, its first minutes giving less ({@link StartUp}).
 * {@code CyclingTest} holds it against control by the minute.
 *
 * @param kelvinPerWatt how far the air goes for each watt, if that is left on, K/W, above 0
 * @param seconds time constant of that, s, above 0
 * @param thermostat how the unit is switched
 * @param start how its capacity comes
 */
record Cycling(double kelvinPerWatt, double seconds, Thermostat thermostat, StartUp start) {

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
  static Cycling of(
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
    return new Cycling(afterShort / (1 - kept), -SHORT / Math.log(kept), thermostat, start);
  }

  /**
   * One run and one rest.
   *
   * @param run s; without end where the unit does not stop
   * @param rest s
   */
  record Cycle(double run, double rest) {

    /** Starts in an hour. */
    double starts() {
      return run == Double.POSITIVE_INFINITY ? 0 : 3600 / (run + rest);
    }
  }

  /**
   * One cycle.
   *
   * @param load what is asked as a part of the steady sensible capacity, above 0
   * @param sensible that capacity, W, above 0
   */
  Cycle cycle(double load, double sensible) {
    if (load > NEVER_STOPS) {
      return new Cycle(Double.POSITIVE_INFINITY, 0);
    }
    double low = Thermostat.LOOK;
    double high = LONGEST_REST;
    double rest = low;
    if (isShort(rest, load, sensible)) {
      for (int i = 0; i < ROUNDS && high - low > FINE; i++) {
        rest = (low + high) / 2;
        if (isShort(rest, load, sensible)) {
          low = rest;
        } else {
          high = rest;
        }
      }
    }
    double run = runAfter(rest, load);
    return run < thermostat.leastRun()
        ? new Cycle(
            thermostat.leastRun(),
            thermostat.leastRun() * (start.share(0, thermostat.leastRun()) / load - 1))
        : new Cycle(run, rest);
  }

  /**
   * Whether after a rest so long the swing of the air is still less than the band and what it goes
   * beyond it until the next look, half an interval in the mean. The swing is the periodic answer
   * of the exponential to that rest and the run after it.
   */
  private boolean isShort(double rest, double load, double sensible) {
    double run = runAfter(rest, load);
    double all = kelvinPerWatt * sensible;
    double up = load * all;
    double keptOff = Math.exp(-rest / seconds);
    double keptOn = Math.exp(-run / seconds);
    double missing = Math.exp(-run / start.seconds());
    double late = all * start.seconds() / (start.seconds() - seconds);
    double bottom =
        ((all - late - up * keptOff) * keptOn + up - all + late * missing) / (1 - keptOn * keptOff);
    double top = up * (1 - keptOff) + bottom * keptOff;
    double rising = (up - top) / seconds;
    double falling = (bottom - up + all * (1 - missing)) / seconds;
    return top - bottom < thermostat.band() + (rising + falling) * Thermostat.LOOK / 2;
  }

  /**
   * The run that gives what is asked since the last start: (1 - load) run = load rest + what the
   * start costs. By Newton from beyond, where the difference is convex.
   */
  private double runAfter(double rest, double load) {
    double slow = start.seconds();
    double run = (load * rest + slow) / (1 - load);
    for (int i = 0; i < ROUNDS; i++) {
      double missing = Math.exp(-run / slow);
      double over = (1 - load) * run - load * rest - slow * (1 - missing);
      double step = over / (1 - load - missing);
      run -= step;
      if (Math.abs(step) < CLOSE) {
        return run;
      }
    }
    return run;
  }
}
