package org.shopclime.run;

import org.shopclime.unit.StartUp;

/** A thermostat at work, in steps of {@link Thermostat#LOOK}. */
final class OnOff implements Control {

  /**
   * Time in which the band moves by as much as the mean is off, s. A unit that has run or rested so
   * long is not to be helped by it.
   */
  private static final double CORRECTION = 900;

  /** How far it may be moved, in bands. */
  private static final double MOST_BANDS = 1;

  private final Thermostat thermostat;
  private final StartUp start;
  private boolean on;
  private boolean started;

  /** Whether it has stopped since it was switched on by hand. */
  private boolean cycles;

  /** How far the band has been moved, K. */
  private double moved;

  /** Since it was last switched on or off; infinite at first, s. */
  private double since = Double.POSITIVE_INFINITY;

  OnOff(Thermostat thermostat, StartUp start) {
    this.thermostat = thermostat;
    this.start = start;
  }

  @Override
  public void off() {
    on = false;
    started = false;
    moved = 0;
    cycles = false;
    since = Double.POSITIVE_INFINITY;
  }

  @Override
  public void begin(double over) {
    since += Thermostat.LOOK;
    double half = thermostat.band() / 2;
    boolean was = on;
    double seen = over - moved;
    if (on) {
      on = seen > -half || since < thermostat.leastRun();
    } else {
      on = seen > half;
    }
    if (cycles && since < CORRECTION) {
      double most = MOST_BANDS * thermostat.band();
      moved = Math.max(-most, Math.min(most, moved - over * Thermostat.LOOK / CORRECTION));
    }
    cycles |= was && !on;
    started = on && !was;
    if (on != was) {
      since = 0;
    }
  }

  @Override
  public double share(double needed) {
    return on ? start.share(since, since + Thermostat.LOOK) : 0;
  }

  @Override
  public double running(double share, double sensible) {
    return on ? 1 : 0;
  }

  @Override
  public double starts(double share, double sensible) {
    return started ? 3600 / Thermostat.LOOK : 0;
  }
}
