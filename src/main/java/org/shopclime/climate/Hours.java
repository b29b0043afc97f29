package org.shopclime.climate;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/** Twenty-four values, one for each hour ending 1 to 24, local standard time. Unchangeable. */
public final class Hours {
  /** Hours in a day. */
  public static final int COUNT = 24;

  private final double[] values;

  private Hours(double[] values) {
    this.values = values;
  }

  /**
   * A day from its values.
   *
   * @param values 24 finite values, the first for the hour ending 1; copied
   * @return the day
   * @throws IllegalArgumentException if there are not 24 or one is not finite
   */
  public static Hours of(double... values) {
    if (values.length != COUNT) {
      throw new IllegalArgumentException("a day has 24 hours, not " + values.length);
    }
    for (double value : values) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("an hour's value must be finite, not " + value);
      }
    }
    return new Hours(values.clone());
  }

  /**
   * A day from a function of the hour.
   *
   * @param valueOfHourEnding gives the value of an hour, for hours ending 1 to 24
   * @return the day
   * @throws IllegalArgumentException if a value is not finite
   */
  public static Hours from(IntToDoubleFunction valueOfHourEnding) {
    double[] values = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      values[i] = valueOfHourEnding.applyAsDouble(i + 1);
    }
    return of(values);
  }

  /**
   * The same value in all hours.
   *
   * @param value any finite value
   * @return the day
   * @throws IllegalArgumentException if the value is not finite
   */
  public static Hours constant(double value) {
    return from(hour -> value);
  }

  /**
   * The value of one hour.
   *
   * @param hourEnding 1 to 24
   * @return its value
   * @throws IllegalArgumentException if the hour is outside 1 to 24
   */
  public double at(int hourEnding) {
    return values[Guard.within("hour ending", hourEnding, 1, COUNT) - 1];
  }

  /**
   * Mean of the day.
   *
   * @return arithmetic mean of the 24 values
   */
  public double mean() {
    return Arrays.stream(values).sum() / COUNT;
  }

  /**
   * Highest value.
   *
   * @return the greatest of the 24 values
   */
  public double max() {
    return at(argMax());
  }

  /**
   * Lowest value.
   *
   * @return the least of the 24 values
   */
  public double min() {
    return -map(value -> -value).max();
  }

  /**
   * The hour of the highest value, the first one where several are equal.
   *
   * @return hour ending, 1 to 24
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

  /**
   * The day with each value changed by a function.
   *
   * @param change applied to each value
   * @return a new day
   * @throws IllegalArgumentException if a result is not finite
   */
  public Hours map(DoubleUnaryOperator change) {
    return from(hour -> change.applyAsDouble(at(hour)));
  }

  /**
   * The values as a new array.
   *
   * @return 24 values, the first for the hour ending 1
   */
  public double[] toArray() {
    return values.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Hours day && Arrays.equals(values, day.values);
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
