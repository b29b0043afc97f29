package org.shopclime.climate;

/** How rare a hot hour is, by the part of a typical year's 8,760 hours that are hotter. */
public enum Level {
  /** The hottest hour of the typical year. */
  HOTTEST(0),
  /** Passed in 0.4 % of hours, 35 a year. */
  P0_4(0.004),
  /** Passed in 1 % of hours, 88 a year. */
  P1(0.01),
  /** Passed in 2 % of hours, 175 a year. */
  P2(0.02);

  private final double fractionAbove;

  Level(double fractionAbove) {
    this.fractionAbove = fractionAbove;
  }

  /**
   * The part of the year's hours that are hotter.
   *
   * @return fraction of 8,760 hours, 0 to 0.02
   */
  public double fractionAbove() {
    return fractionAbove;
  }
}
