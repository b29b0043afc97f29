package org.shopclime.climate;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** Twelve values, January to December. Unchangeable. */
public final class Months {
  /** Months in a year. */
  public static final int COUNT = 12;

  private final double[] values;

  private Months(double[] values) {
    this.values = values;
  }

  /**
   * A year from its values.
   *
   * @param values 12 finite values, January first; copied
   * @return the year
   * @throws IllegalArgumentException if there are not 12 or one is not finite
   */
  public static Months of(double... values) {
    if (values.length != COUNT) {
      throw new IllegalArgumentException("a year has 12 months, not " + values.length);
    }
    for (double value : values) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("a month's value must be finite, not " + value);
      }
    }
    return new Months(values.clone());
  }

  /**
   * A year from a function of the month.
   *
   * @param valueOfMonth gives the value of a month, 1 to 12
   * @return the year
   * @throws IllegalArgumentException if a value is not finite
   */
  public static Months from(IntToDoubleFunction valueOfMonth) {
    double[] values = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      values[i] = valueOfMonth.applyAsDouble(i + 1);
    }
    return of(values);
  }

  /**
   * The value of one month.
   *
   * @param month 1 to 12
   * @return its value
   * @throws IllegalArgumentException if the month is outside 1 to 12
   */
  public double at(int month) {
    return values[Guard.within("month", month, 1, COUNT) - 1];
  }

  /**
   * Mean of the twelve, each month counting alike.
   *
   * @return arithmetic mean
   */
  public double mean() {
    return Arrays.stream(values).sum() / COUNT;
  }

  /**
   * Lowest value.
   *
   * @return the least of the twelve
   */
  public double min() {
    return Arrays.stream(values).min().orElseThrow();
  }

  /**
   * Highest value.
   *
   * @return the greatest of the twelve
   */
  public double max() {
    return Arrays.stream(values).max().orElseThrow();
  }

  /**
   * The month of the highest value, the first one where several are equal.
   *
   * @return month, 1 to 12
   */
  public int argMax() {
    int best = 0;
    for (int i = 1; i < COUNT; i++) {
      if (values[i] > values[best]) {
        best = i;
      }
    }
    return best + 1;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Months year && Arrays.equals(values, year.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return Arrays.toString(values);
  }
}
