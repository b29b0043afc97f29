package org.shopclime.run;

import org.shopclime.air.MoistAir;

/**
 * Humidity ratio that a unit is taken to see in a step, found so that the step leads to it: by the
 * secant of the last two tries, as what the coil takes out answers strongly to it.
 */
final class SeenHumidity {

  /** How near is near enough, kg/kg. */
  static final double CLOSE = 1e-5;

  /** How far a step leads from what was seen, for each kg/kg by which that is raised, at first. */
  private static final double USUAL_SLOPE = -2;

  /**
   * Where air answers more steeply, a first try that is near is made nearer still: what it misses
   * by would come back larger in the next step, and even what is lost to rounding would grow.
   */
  private static final double STEEP = -2.2;

  private static final double STEEPEST = -50;
  private static final double FLATTEST = -0.5;

  private double seen;

  /** What a next try would see. */
  private double next;

  private double before;
  private double missedBefore;
  private double slope = USUAL_SLOPE;

  /** Begins with what the air holds. */
  void startFrom(double humidityRatio) {
    next = humidityRatio;
    newStep();
  }

  /** Begins a step with a guess, and what was learnt of how the air answers. */
  void goOnFrom(double humidityRatio) {
    next = humidityRatio;
    newStep();
  }

  /** What a next try would see, kg/kg. */
  double next() {
    return next;
  }

  /** Begins a step with what the last one ended with. */
  void newStep() {
    seen = next;
    before = Double.NaN;
  }

  /** Goes on where another one stands. */
  void startFrom(SeenHumidity other) {
    next = other.next;
    slope = other.slope;
    newStep();
  }

  /** What is seen in air of this temperature, °C, which is never fog. */
  double seenAt(double dryBulb, double pressure) {
    return Math.min(seen, MoistAir.saturationHumidityRatio(dryBulb, pressure));
  }

  /**
   * Learns where a step leads; if that was not near enough, the next try is nearer.
   *
   * @param mean mean humidity ratio of the step, kg/kg
   * @return whether that was near enough
   */
  boolean isFound(double mean) {
    return isFound(mean, CLOSE);
  }

  /**
   * The same where less will do.
   *
   * @param mean mean humidity ratio of the step, kg/kg
   * @param near how near is near enough, kg/kg
   * @return whether that was near enough
   */
  boolean isFound(double mean, double near) {
    boolean isFirst = Double.isNaN(before);
    double missed = mean - seen;
    if (!Double.isNaN(before) && Math.abs(seen - before) > CLOSE) {
      double turned = (missed - missedBefore) / (seen - before);
      slope = Math.max(STEEPEST, Math.min(FLATTEST, turned));
    }
    before = seen;
    missedBefore = missed;
    next = Math.max(0, seen - missed / slope);
    if (Math.abs(missed) < near && !(isFirst && slope < STEEP)) {
      return true;
    }
    seen = next;
    return false;
  }
}
