package org.shopclime.bill;

import java.time.Month;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/** Money month by month, $. */
public final class MonthlyCost {

  private final double[] months = new double[YearClock.MONTHS];

  private MonthlyCost(ToDoubleFunction<Month> ofMonth) {
    Arrays.setAll(months, index -> ofMonth.applyAsDouble(Month.of(index + 1)));
  }

  /**
   * Money told month by month.
   *
   * @param ofMonth $ of each month
   * @return the cost
   */
  public static MonthlyCost of(ToDoubleFunction<Month> ofMonth) {
    return new MonthlyCost(ofMonth);
  }

  /**
   * Money of a month.
   *
   * @param month the month
   * @return $
   */
  public double of(Month month) {
    return months[month.getValue() - 1];
  }

  /**
   * Money of the year.
   *
   * @return $
   */
  public double total() {
    double sum = 0;
    for (double month : months) {
      sum += month;
    }
    return sum;
  }

  /**
   * Both together.
   *
   * @param other other costs
   * @return sum month by month
   */
  public MonthlyCost plus(MonthlyCost other) {
    return new MonthlyCost(month -> of(month) + other.of(month));
  }

  /**
   * What is left without the other.
   *
   * @param other other costs
   * @return difference month by month
   */
  public MonthlyCost minus(MonthlyCost other) {
    return new MonthlyCost(month -> of(month) - other.of(month));
  }
}
