package org.shopclime.bill;

import java.time.Month;

/**
 * A run of months, which may go past the end of the year.
 *
 * @param first first month
 * @param last last month, itself included; before {@code first}: of the next year
 */
public record Months(Month first, Month last) {

  /** The whole year. */
  public static final Months ALL = new Months(Month.JANUARY, Month.DECEMBER);

  /**
   * Whether a month is one of them.
   *
   * @param month the month
   * @return true from the first to the last
   */
  public boolean contains(Month month) {
    int number = month.getValue();
    boolean afterFirst = number >= first.getValue();
    boolean beforeLast = number <= last.getValue();
    return first.compareTo(last) <= 0 ? afterFirst && beforeLast : afterFirst || beforeLast;
  }
}
