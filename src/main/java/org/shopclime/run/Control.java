package org.shopclime.run;

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
   * Part of the capacity given over the step.
   *
   * @param needed the part that brings the room to its set point by the end of it, 0 to 1
   * @return 0 to 1
   */
  double share(double needed);

  /**
   * Part of the step in which full power is drawn.
   *
   * @param share part of the capacity that is given
   * @param sensible capacity, W
   * @return 0 to 1
   */
  double running(double share, double sensible);

  /**
   * Starts in an hour like this step.
   *
   * @param share part of the capacity that is given
   * @param sensible capacity, W
   * @return 0 or more
   */
  double starts(double share, double sensible);

  /** Gives what is needed; power and starts are those of its average cycle. */
  record Average(CyclingTable cycling) implements Control {

    @Override
    public void off() {
      // It keeps nothing from step to step.
    }

    @Override
    public void begin(double over) {
      // As there.
    }

    @Override
    public double share(double needed) {
      return needed;
    }

    @Override
    public double running(double share, double sensible) {
      return cycling.running(share, sensible);
    }

    @Override
    public double starts(double share, double sensible) {
      return cycling.starts(share, sensible);
    }
  }
}
