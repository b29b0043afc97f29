package org.shopclime.run;

import org.shopclime.unit.StartUp;
import org.shopclime.unit.WetCoil;

/** A thermostat at work, in steps of {@link Thermostat#LOOK}. */
final class OnOff implements Control {

  /**
   * Time in which the band moves by as much as the mean is off, s. A unit that has run so long and
   * is not enough, or rested so long, moves it no further: it would have to come all the way back.
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

  /** Water on the coil where the fan runs on, kg. */
  private double water;

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
    boolean helps = since < CORRECTION || (on ? over < 0 : over > 0);
    if (cycles && helps) {
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
  public double share(Able able, double needed) {
    double share = capacity();
    if (able.coil().isEmpty()) {
      return share;
    }
    WetCoil coil = able.coil().get();
    double taken = share * (able.sensible() + coil.fanPower()) - coil.fanPower();
    return (taken + evaporated(coil) * coil.enthalpy()) / able.sensible();
  }

  private double capacity() {
    return on ? start.share(since, since + Thermostat.LOOK) : 0;
  }

  /** What evaporates off a coil that rests, kg/s. */
  private double evaporated(WetCoil coil) {
    return on ? 0 : (water - coil.left(water, Thermostat.LOOK)) / Thermostat.LOOK;
  }

  @Override
  public double water(Able able, double share) {
    return able.coil().isEmpty()
        ? able.condensate(share)
        : capacity() * able.condensate(1) - evaporated(able.coil().get());
  }

  @Override
  public Given given(Able able, double share) {
    double starts = started && !able.startsFreely() ? 3600 / Thermostat.LOOK : 0;
    if (able.coil().isEmpty()) {
      double running = on ? 1 : 0;
      return new Given(
          able.latent(share), able.running(share, running), able.power(share, running), starts);
    }
    WetCoil coil = able.coil().get();
    return new Given(
        capacity() * able.latent() - evaporated(coil) * coil.enthalpy(),
        on ? 1 : 0,
        on ? able.power() : coil.fanPower(),
        starts);
  }

  @Override
  public void end(Able able) {
    if (able.coil().isPresent()) {
      WetCoil coil = able.coil().get();
      water =
          on
              ? Math.min(coil.held(), water + capacity() * able.condensed() * Thermostat.LOOK)
              : coil.left(Math.min(water, coil.held()), Thermostat.LOOK);
    }
  }

  /** Water on the coil, kg. */
  double onCoil() {
    return water;
  }
}
