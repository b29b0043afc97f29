package org.shopclime.airline;

/**
 * Heat of a hot pump that has stopped: a part of its electric input that comes after the work.
 *
 * <p>It is not on top of the input: over a day all input is given off once. It tells how long a
 * closet stays warm, and what a fan must go on carrying off.
 *
 * <p>Source: one lumped mass, given off as e^(-t/τ). Usual pump: 8 kg of iron for each horsepower,
 * 100 K above its place after a long run, τ half an hour: common practice. Cast iron 500 J/(kg·K)
 * (handbooks: 460 to 540), from memory.
 *
 * @param heatCapacity of pump and head, J/K, 0 to 1e7
 * @param excess how much hotter than its place when it stops, K, 0 to 300
 * @param timeConstant τ, s, 1 to 1e5
 */
public record StandingHeat(double heatCapacity, double excess, double timeConstant) {

  private static final double KG_PER_SHAFT_WATT = 8 / Trade.HORSEPOWER;
  private static final double CAST_IRON = 500;
  private static final double USUAL_EXCESS = 100;
  private static final double USUAL_TIME = 1800;

  /** Refuses what is outside the ranges above. */
  public StandingHeat {
    Check.within("heat capacity of the pump, J/K,", heatCapacity, 0, 1e7);
    Check.within("excess of the pump, K,", excess, 0, 300);
    Check.within("time constant of the pump, s,", timeConstant, 1, 1e5);
  }

  /**
   * The usual pump of a machine.
   *
   * @param machine the compressor
   * @return its standing heat after a long run
   */
  public static StandingHeat of(AirCompressor machine) {
    return new StandingHeat(
        machine.shaftWatts() * KG_PER_SHAFT_WATT * CAST_IRON, USUAL_EXCESS, USUAL_TIME);
  }

  /**
   * Heat in it when it stops.
   *
   * @return J above its place
   */
  public double stored() {
    return heatCapacity * excess;
  }

  /**
   * Heat it gives off at a moment.
   *
   * @param seconds since it stopped, 0 to 1e7
   * @return W
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double watts(double seconds) {
    return stored() / timeConstant * left(seconds);
  }

  /**
   * Heat given off since it stopped.
   *
   * @param seconds since it stopped, 0 to 1e7
   * @return J
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double given(double seconds) {
    return stored() * (1 - left(seconds));
  }

  private double left(double seconds) {
    return Math.exp(-Check.within("time since it stopped, s,", seconds, 0, 1e7) / timeConstant);
  }
}
