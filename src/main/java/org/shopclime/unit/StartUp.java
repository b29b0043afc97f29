package org.shopclime.unit;

/**
 * What a compressor that has just started does not yet give: its capacity comes as 1 - exp(-t /
 * {@code seconds}), while it draws its full power at once.
 *
 * <p>Source: the cyclic test of AHRI Standard 210/240 and 10 CFR 430 subpart B appendix M, 6
 * minutes on and 24 off, in which a degradation coefficient C_D is measured; a first-order rise as
 * in H. I. Henderson and K. Rengarajan, ASHRAE Transactions 102(1), 1996. From memory.
 *
 * @param seconds time constant, s, above 0
 */
public record StartUp(double seconds) {

  private static final double TEST_RUN = 360;
  private static final double TEST_CYCLE = 1800;

  /** Shortest and longest time constant searched, s. */
  private static final double SHORTEST = 1e-3;

  private static final double LONGEST = 3600;

  private static final int HALVINGS = 60;

  /** Checks the range. */
  public StartUp {
    if (!(seconds > 0 && seconds < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("time constant " + seconds + " s is not above 0");
    }
  }

  /**
   * The one that loses in the cyclic test what a degradation coefficient says.
   *
   * @param degradation C_D, above 0, below 0.9
   * @return time constant; 75 s for the default of 0.25
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static StartUp ofDegradation(double degradation) {
    if (!(degradation > 0 && degradation < 0.9)) {
      throw new IllegalArgumentException(
          "degradation coefficient " + degradation + " is not above 0, below 0.9");
    }
    double low = SHORTEST;
    double high = LONGEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (new StartUp(middle).degradation() < degradation) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new StartUp(0.5 * (low + high));
  }

  /**
   * The degradation coefficient it shows in the cyclic test: (1 - efficiency cycling over
   * efficiency steady) / (1 - load factor).
   *
   * @return C_D, 0 to 1
   */
  public double degradation() {
    double given = share(0, TEST_RUN);
    return (1 - given) / (1 - given * TEST_RUN / TEST_CYCLE);
  }

  /**
   * Mean capacity of a while as a part of the steady one.
   *
   * @param from seconds since the start at which it begins, 0 or more
   * @param to seconds since the start at which it ends, above {@code from}; infinite is fine
   * @return 0 to 1
   */
  public double share(double from, double to) {
    if (to == Double.POSITIVE_INFINITY) {
      return 1;
    }
    double missing = Math.exp(-from / seconds) - Math.exp(-to / seconds);
    return 1 - seconds * missing / (to - from);
  }
}
