package org.shopclime.balance;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** Means of the 24 hours of a day; hour 1 is the hour ending at 01:00, local standard time. */
public final class Profile {

  /** Hours in a day. */
  public static final int HOURS = 24;

  private final double[] values;

  private Profile(double[] values) {
    this.values = values;
  }

  /**
   * A profile from a rule.
   *
   * @param valueOfHour value of each hour ending 1 to 24
   * @return profile
   */
  public static Profile of(IntToDoubleFunction valueOfHour) {
    double[] values = new double[HOURS];
    for (int hour = 1; hour <= HOURS; hour++) {
      values[hour - 1] = valueOfHour.applyAsDouble(hour);
    }
    return new Profile(values);
  }

  /**
   * Value of an hour.
   *
   * @param hourEnding 1 to 24
   * @return value
   */
  public double at(int hourEnding) {
    return values[hourEnding - 1];
  }

  /**
   * The hour with the greatest value; the first of equals.
   *
   * @return hour ending 1 to 24
   */
  public int peakHour() {
    int best = 1;
    for (int hour = 2; hour <= HOURS; hour++) {
      if (at(hour) > at(best)) {
        best = hour;
      }
    }
    return best;
  }

  /**
   * Greatest value.
   *
   * @return value at {@link #peakHour()}
   */
  public double peak() {
    return at(peakHour());
  }

  /**
   * Mean over the day.
   *
   * @return mean
   */
  public double mean() {
    return Arrays.stream(values).sum() / HOURS;
  }

  /**
   * The values as a new array.
   *
   * @return 24 values, the first for the hour ending 1
   */
  public double[] toArray() {
    return values.clone();
  }

  /**
   * Hour by hour sum.
   *
   * @param other another profile
   * @return sum
   */
  public Profile plus(Profile other) {
    return of(hour -> at(hour) + other.at(hour));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Profile profile && Arrays.equals(values, profile.values);
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
