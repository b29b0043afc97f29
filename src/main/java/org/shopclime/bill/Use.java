package org.shopclime.bill;

import java.time.Month;
import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.function.IntToDoubleFunction;

/** Electricity used in each hour of a year, kWh. */
public final class Use {

  private final double[] hours;

  private Use(double[] hours) {
    this.hours = hours;
  }

  /**
   * A use told hour by hour.
   *
   * @param ofHour kWh of each hour from 0 to 8,759, local standard time; 0 or more
   * @return the use
   * @throws IllegalArgumentException if an hour is below 0 or NaN
   */
  public static Use hourly(IntToDoubleFunction ofHour) {
    double[] hours = new double[YearClock.HOURS];
    for (int hour = 0; hour < hours.length; hour++) {
      hours[hour] =
          Amount.notNegative("use of hour " + hour + ", kWh,", ofHour.applyAsDouble(hour));
    }
    return new Use(hours);
  }

  /**
   * A use known only by months, as bills tell it, spread evenly over the hours of each.
   *
   * @param ofMonth kWh of each month; 0 or more
   * @return the use
   * @throws IllegalArgumentException if a month is below 0 or NaN
   */
  public static Use monthly(java.util.function.ToDoubleFunction<Month> ofMonth) {
    return hourly(
        hour -> {
          Month month = YearClock.month(hour);
          return ofMonth.applyAsDouble(month) / (month.minLength() * 24.0);
        });
  }

  /**
   * Nothing at all.
   *
   * @return 0 kWh in every hour
   */
  public static Use none() {
    return new Use(new double[YearClock.HOURS]);
  }

  /**
   * Both together.
   *
   * @param other another use
   * @return sum hour by hour
   */
  public Use plus(Use other) {
    return merged(other, Double::sum);
  }

  private Use merged(Use other, DoubleBinaryOperator both) {
    double[] sum = new double[hours.length];
    Arrays.setAll(sum, hour -> both.applyAsDouble(hours[hour], other.hours[hour]));
    return new Use(sum);
  }

  /**
   * Use of an hour.
   *
   * @param hour 0 to 8,759
   * @return kWh, also the mean power in kW
   */
  public double at(int hour) {
    return hours[hour];
  }

  /**
   * Use of a month.
   *
   * @param month the month
   * @return kWh
   */
  public double of(Month month) {
    double sum = 0;
    for (int hour = firstHour(month); hour < endHour(month); hour++) {
      sum += hours[hour];
    }
    return sum;
  }

  /**
   * Use of the year.
   *
   * @return kWh
   */
  public double total() {
    double sum = 0;
    for (Month month : Month.values()) {
      sum += of(month);
    }
    return sum;
  }

  /**
   * The greatest hour of a month.
   *
   * @param month the month
   * @return mean power of that hour, kW
   */
  double peak(Month month) {
    double most = 0;
    for (int hour = firstHour(month); hour < endHour(month); hour++) {
      most = Math.max(most, hours[hour]);
    }
    return most;
  }

  static int firstHour(Month month) {
    return (month.firstDayOfYear(false) - 1) * 24;
  }

  static int endHour(Month month) {
    return firstHour(month) + month.minLength() * 24;
  }
}
