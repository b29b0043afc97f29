package org.shopclime.heat;

/**
 * What drives of the half hours of a day that repeats make of one mode z' = -rate z + w, wave by
 * wave.
 *
 * <p>Drive and mode are told in each half hour by their mean and by a tilt, the share of √3 P1,
 * which runs straight through it and has the mean 0 and the mean square 1: z_mean = P w_mean + N
 * w_tilt and z_tilt = -N w_mean + Q w_tilt. What a drive of such a form makes of the mode is exact
 * ({@link ModeStep}).
 */
final class ModeWave {

  /** Kinds of an answer: mean to mean, mean to tilt, tilt to tilt. */
  static final int P = 0;

  static final int N = 1;
  static final int Q = 2;
  static final int KINDS = 3;

  private static final int COUNT = Waves.COUNT;
  private static final double SECONDS = Waves.SECONDS;
  private static final double ROOT = Math.sqrt(3);

  /** By kind * 13 + wave, s. */
  final double[] re = new double[KINDS * COUNT];

  final double[] im = new double[KINDS * COUNT];

  /**
   * Sets the rate.
   *
   * @param rate 1/s, 0 or more; at 0 the mean of the day has no answer
   */
  void set(double rate) {
    double steps = rate * SECONDS;
    ModeStep step = ModeStep.of(steps);
    double tilt = ROOT * step.tilt();
    double mean = step.mean();
    double lost = steps * mean;
    double decay = step.decay();
    double meanNow = SECONDS * step.meanOfSteady();
    double acrossNow = SECONDS * ROOT * step.meanOfTilted();
    double tiltNow = SECONDS * 3 * step.tiltOfTilted();
    for (int k = 0; k < COUNT; k++) {
      // What stands at the start of a half hour for each unit added by its end: 1 / (ζ - decay).
      double below = lost * lost + 2 * decay * Waves.versine(k);
      double real = SECONDS * (lost - Waves.versine(k)) / below;
      double imaginary = -SECONDS * Waves.sine(k) / below;
      re[k] = meanNow + mean * mean * real;
      im[k] = mean * mean * imaginary;
      re[N * COUNT + k] = acrossNow - mean * tilt * real;
      im[N * COUNT + k] = -mean * tilt * imaginary;
      re[Q * COUNT + k] = tiltNow - tilt * tilt * real;
      im[Q * COUNT + k] = -tilt * tilt * imaginary;
    }
  }
}
