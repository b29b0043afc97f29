package org.shopclime.heat;

/**
 * A day that repeats, given by the means of its {@value #STEPS} half hours, as the waves it is made
 * of: complex shares X_k of exp(2 π i k s / 48), k = 0 to 24, of half hour s. Those beyond are
 * their mirror, as the means are real.
 */
public final class Waves {

  /** Half hours of a day. */
  public static final int STEPS = 48;

  /** Waves that are told, the mean counted. */
  static final int COUNT = STEPS / 2 + 1;

  /** Length of a half hour, s. */
  static final double SECONDS = 86_400.0 / STEPS;

  private static final int HOURS = 24;
  private static final double[] COSINE = new double[STEPS];
  private static final double[] SINE = new double[STEPS];
  private static final double[] VERSINE = new double[STEPS];

  /** Of each half hour, by wave. */
  private static final double[][] COSINES = new double[STEPS][COUNT];

  private static final double[][] SINES = new double[STEPS][COUNT];

  /** Of each wave, by half hour. */
  private static final double[][] COSINE_WAVE = new double[COUNT][STEPS];

  private static final double[][] SINE_WAVE = new double[COUNT][STEPS];

  /** Of each wave, by hour. */
  private static final double[][] COSINE_WAVE_OF_HOURS = new double[COUNT][HOURS];

  private static final double[][] SINE_WAVE_OF_HOURS = new double[COUNT][HOURS];

  static {
    for (int i = 0; i < STEPS; i++) {
      COSINE[i] = Math.cos(2 * Math.PI * i / STEPS);
      SINE[i] = Math.sin(2 * Math.PI * i / STEPS);
      VERSINE[i] = 2 * Math.pow(Math.sin(Math.PI * i / STEPS), 2);
    }
    for (int i = 0; i < STEPS; i++) {
      for (int k = 0; k < COUNT; k++) {
        COSINES[i][k] = COSINE[i * k % STEPS];
        SINES[i][k] = SINE[i * k % STEPS];
        COSINE_WAVE[k][i] = COSINES[i][k];
        SINE_WAVE[k][i] = SINES[i][k];
        COSINE_WAVE_OF_HOURS[k][i / 2] = COSINE[2 * (i / 2) * k % STEPS];
        SINE_WAVE_OF_HOURS[k][i / 2] = SINE[2 * (i / 2) * k % STEPS];
      }
    }
  }

  final double[] re = new double[COUNT];
  final double[] im = new double[COUNT];

  /** Nothing at any time. */
  public Waves() {}

  /**
   * Waves of the half hours of a day.
   *
   * @param steps 48 means, the first for the half hour after midnight
   * @return their waves
   */
  public static Waves of(double[] steps) {
    Waves waves = new Waves();
    transform(steps, 1, waves.re, waves.im);
    return waves;
  }

  /**
   * Waves of a day that stands still through each hour.
   *
   * @param hours 24 values, the first for the hour ending 1
   * @return their waves
   */
  public static Waves ofHours(double[] hours) {
    Waves waves = new Waves();
    transform(hours, 2, waves.re, waves.im);
    // Waves of the hours; those of the half hours are these, turned by a quarter of an hour.
    for (int k = COUNT - 1; k >= 0; k--) {
      int from = k <= HOURS / 2 ? k : HOURS - k;
      double real = waves.re[from];
      double imaginary = k <= HOURS / 2 ? waves.im[from] : -waves.im[from];
      double cosine = (1 + COSINE[k]) / 2;
      double sine = -SINE[k] / 2;
      waves.re[k] = cosine * real - sine * imaginary;
      waves.im[k] = cosine * imaginary + sine * real;
    }
    return waves;
  }

  /** The first waves of values, each of which stands for so many half hours. */
  private static void transform(double[] values, int each, double[] re, double[] im) {
    int count = values.length / 2 + 1;
    for (int i = 0; i < values.length; i++) {
      double value = values[i] / values.length;
      double[] cosine = COSINES[i * each];
      double[] sine = SINES[i * each];
      for (int k = 0; k < count; k++) {
        re[k] += value * cosine[k];
        im[k] -= value * sine[k];
      }
    }
  }

  static double sine(int turn) {
    return SINE[turn];
  }

  /** 1 - cosine. */
  static double versine(int turn) {
    return VERSINE[turn];
  }

  /**
   * Adds a value to all of the day.
   *
   * @param value what to add
   */
  public void add(double value) {
    re[0] += value;
  }

  /**
   * Adds another day.
   *
   * @param factor what it is multiplied by
   * @param other the other day
   */
  public void add(double factor, Waves other) {
    for (int k = 0; k < COUNT; k++) {
      re[k] += factor * other.re[k];
      im[k] += factor * other.im[k];
    }
  }

  /** Adds the answer of something to a drive: wave by wave their product. */
  void addProduct(double factor, Waves answer, Waves drive) {
    for (int k = 0; k < COUNT; k++) {
      re[k] += factor * (answer.re[k] * drive.re[k] - answer.im[k] * drive.im[k]);
      im[k] += factor * (answer.re[k] * drive.im[k] + answer.im[k] * drive.re[k]);
    }
  }

  /**
   * Means of the half hours.
   *
   * @return 48 values, the first for the half hour after midnight
   */
  public double[] steps() {
    return values(re, im, STEPS);
  }

  /**
   * Means of the hours.
   *
   * @return 24 values, the first for the hour ending 1
   */
  public double[] hours() {
    int count = HOURS / 2 + 1;
    double[] real = new double[count];
    double[] imaginary = new double[count];
    for (int k = 0; k < count; k++) {
      // In the hours the wave 24 - k looks like the mirror of wave k.
      int other = HOURS - k;
      double cosine = (1 + COSINE[k]) / 2;
      double sine = SINE[k] / 2;
      double otherCosine = (1 - COSINE[k]) / 2;
      real[k] = cosine * re[k] - sine * im[k] + otherCosine * re[other] - sine * im[other];
      imaginary[k] = cosine * im[k] + sine * re[k] - otherCosine * im[other] - sine * re[other];
    }
    return values(real, imaginary, HOURS);
  }

  private static double[] values(double[] re, double[] im, int count) {
    double[] values = new double[count];
    int half = count / 2;
    int each = STEPS / count;
    for (int i = 0; i < count; i++) {
      values[i] = re[0] + (i % 2 == 0 ? re[half] : -re[half]);
    }
    for (int k = 1; k < half; k++) {
      double twice = 2 * re[k];
      double across = 2 * im[k];
      double[] cosine = each == 1 ? COSINE_WAVE[k] : COSINE_WAVE_OF_HOURS[k];
      double[] sine = each == 1 ? SINE_WAVE[k] : SINE_WAVE_OF_HOURS[k];
      for (int i = 0; i < count; i++) {
        values[i] += twice * cosine[i] - across * sine[i];
      }
    }
    return values;
  }

  /**
   * Mean of the day.
   *
   * @return mean of the half hours
   */
  public double mean() {
    return re[0];
  }
}
