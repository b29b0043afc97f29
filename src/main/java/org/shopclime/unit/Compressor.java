package org.shopclime.unit;

/**
 * How a compressor gives less than all: by turning slower, and by stopping in between.
 *
 * <p>Turning slower leaves the coils large for what passes through them: power per capacity falls
 * straight with speed, to 1 - saving at no speed. The usual saving of 0.45 makes a third of the
 * capacity some 1.4 times as efficient as all of it; common practice, within what laboratory tests
 * of two ductless units tell (NREL/TP-5500-52175, 2011, from memory).
 *
 * @param turnDown least capacity it can turn at, part of the full one, above 0, to 1; 1 for a
 *     single speed. Below, it runs on and off
 * @param saving part of the power per capacity saved at no speed, 0 to below 1; by straight line
 */
public record Compressor(double turnDown, double saving) {

  /**
   * Part of the indoor airflow left at no speed: the fan of a ductless unit follows; common
   * practice.
   */
  private static final double LEAST_AIR = 0.4;

  /** Checks the ranges. */
  public Compressor {
    if (!(turnDown > 0 && turnDown <= 1)) {
      throw new IllegalArgumentException("turn-down " + turnDown + " is not above 0, to 1");
    }
    if (!(saving >= 0 && saving < 1)) {
      throw new IllegalArgumentException("saving " + saving + " is not 0 to below 1");
    }
  }

  /**
   * One speed: on or off.
   *
   * @return the compressor
   */
  public static Compressor singleSpeed() {
    return new Compressor(1, 0);
  }

  /**
   * The usual variable speed: down to 0.3 of the full capacity, saving 0.45; common practice.
   *
   * @return the compressor
   */
  public static Compressor variableSpeed() {
    return new Compressor(0.3, 0.45);
  }

  /** Speed at this load, part of the full one, turn-down to 1. */
  double speed(double load) {
    return Math.max(turnDown, load);
  }

  /** Power per capacity at this speed, part of that at full speed. */
  double powerPerCapacity(double speed) {
    return 1 - saving * (1 - speed);
  }

  /** Indoor airflow at this speed, part of the full one. */
  double airflow(double speed) {
    return LEAST_AIR + (1 - LEAST_AIR) * speed;
  }
}
