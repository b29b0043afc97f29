package org.shopclime.run;

import org.shopclime.unit.WetCoil;

/** What decides how much of its capacity a unit gives in a step. */
interface Control {

  /** Decides nothing, as the unit is switched off by hand. */
  void off();

  /**
   * A step begins.
   *
   * @param over how far the air lies above the set point, K
   */
  void begin(double over);

  /**
   * Part of the sensible capacity given over the step.
   *
   * @param able what the unit can do
   * @param needed the part that brings the room to its set point by the end of it, up to 1
   * @return up to 1; below 0 where its fan alone warms the room
   */
  double share(Able able, double needed);

  /**
   * Water taken out of the air.
   *
   * @param able what the unit can do
   * @param share part of its sensible capacity that is given
   * @return kg/s; below 0 where the room gets moister
   */
  double water(Able able, double share);

  /**
   * All that is told of it.
   *
   * @param able what the unit can do
   * @param share part of its sensible capacity that is given
   * @return means over the step
   */
  Given given(Able able, double share);

  /**
   * The step was made.
   *
   * @param able what the unit could do
   */
  void end(Able able);

  /**
   * What a unit gave over a step.
   *
   * @param latent latent heat taken out, W
   * @param running part of the step in which it ran
   * @param power W
   * @param starts in an hour like it; 0 where they are of no interest
   */
  record Given(double latent, double running, double power, double starts) {}

  /** Gives what is needed; water, power and starts are those of its average cycle. */
  final class Average implements Control {

    private final CyclingTable cycling;

    /** What was last asked of a unit whose fan runs on, and the answer. */
    private double asked = Double.NaN;

    private RoomCycling.Machine machine;
    private RoomCycling.Cycle cycle;

    Average(CyclingTable cycling) {
      this.cycling = cycling;
    }

    @Override
    public void off() {
      // It keeps nothing from step to step.
    }

    @Override
    public void begin(double over) {
      // As there.
    }

    @Override
    public double share(Able able, double needed) {
      return Math.max(able.idle(), needed);
    }

    @Override
    public double water(Able able, double share) {
      return able.coil().isEmpty()
          ? able.condensate(share)
          : of(able.coil().get(), able, share, able.condensate(1), 1);
    }

    /** The same of an amount that is taken out flat out, and its unit for a kilogram. */
    private double of(WetCoil coil, Able able, double share, double flatOut, double perKilogram) {
      RoomCycling.Cycle found = cycle(coil, able, share);
      if (found.endless()) {
        return flatOut;
      }
      if (found.run() == 0) {
        return 0;
      }
      double all = found.run() + found.rest();
      double given = found.run() * cycling.of().start().share(0, found.run());
      return (given * flatOut - found.evaporated() * perKilogram) / all;
    }

    @Override
    public Given given(Able able, double share) {
      if (able.coil().isPresent()) {
        WetCoil coil = able.coil().get();
        RoomCycling.Cycle found = cycle(coil, able, share);
        double fan = able.sensible() > 0 ? coil.fanPower() : 0;
        return new Given(
            of(coil, able, share, able.latent(), coil.enthalpy()),
            found.running(),
            found.running() * (able.power() - fan) + fan,
            found.starts());
      }
      double running = cycling.running(share, able.sensible());
      return new Given(
          able.latent(share),
          able.running(share, running),
          able.power(share, running),
          able.startsFreely() ? 0 : cycling.starts(share, able.sensible()));
    }

    /** The cycle in which what is given and the heat of the fan are taken out. */
    private RoomCycling.Cycle cycle(WetCoil coil, Able able, double share) {
      if (able.sensible() <= 0) {
        // it cannot cool this room, and is taken to stand
        return NOTHING;
      }
      double sensible = able.sensible() + coil.fanPower();
      RoomCycling.Machine of = new RoomCycling.Machine(sensible, able.condensed(), coil);
      double load = (share * able.sensible() + coil.fanPower()) / sensible;
      if (load != asked || !of.equals(machine)) {
        asked = load;
        machine = of;
        cycle = load <= LEAST ? NOTHING : cycling.of().cycle(load, of);
      }
      return cycle;
    }

    /** A unit that stands. */
    private static final RoomCycling.Cycle NOTHING =
        new RoomCycling.Cycle(0, Double.POSITIVE_INFINITY, 0);

    /** Less than this is nothing; the unit is not started for it. */
    private static final double LEAST = 1e-9;

    @Override
    public void end(Able able) {
      // As at the beginning.
    }
  }
}
