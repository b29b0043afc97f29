package org.shopclime.run;

/**
 * How a unit that is on or off holds its room: it starts half the band above the set point and
 * stops half the band below it, runs no less than so long, and looks at the air once a minute.
 *
 * <p>The band is moved slowly until the mean air is the set point, as an electronic thermostat does
 * and an owner with the dial; else starts that give little in their first minutes would leave the
 * mean above it.
 *
 * @param band difference between the air at which it starts and at which it stops, K, above 0
 * @param leastRun shortest run, s, 0 or more
 */
public record Thermostat(double band, double leastRun) {

  /** Time between two looks at the air, s. */
  static final double LOOK = 60;

  /**
   * A band of 2 °F, and three minutes at least of running, so that the pressures of the compressor
   * settle and its oil comes back. Common practice.
   */
  public static final Thermostat USUAL = new Thermostat(2 / 1.8, 180);

  /** Checks the ranges. */
  public Thermostat {
    if (!(band > 0 && leastRun >= 0) || Double.isInfinite(band + leastRun)) {
      throw new IllegalArgumentException(
          "band " + band + " K, least run " + leastRun + " s; takes above 0, and 0 or more");
    }
  }
}
