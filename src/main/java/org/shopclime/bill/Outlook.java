package org.shopclime.bill;

/**
 * What is taken of the years to come.
 *
 * <p>Source: NIST Handbook 135, Life-Cycle Costing Manual (1995): amounts of a year fall at its
 * end; a price of today rises by its rate in each year, the first included; the present worth of a
 * rising yearly amount is its modified uniform present value.
 *
 * @param years how many are looked at, 1 to 100
 * @param rise rise of energy prices a year, -0.5 to 0.5
 * @param discount rate at which later money counts less, 0 to 0.5
 */
public record Outlook(int years, double rise, double discount) {

  /** Refuses years and rates that make no sense. */
  public Outlook {
    if (years < 1 || years > 100) {
      throw new IllegalArgumentException("years " + years + " is not in 1 to 100");
    }
    if (!(rise >= -0.5 && rise <= 0.5)) {
      throw new IllegalArgumentException("rise " + rise + " is not in -0.5 to 0.5");
    }
    if (!(discount >= 0 && discount <= 0.5)) {
      throw new IllegalArgumentException("discount " + discount + " is not in 0 to 0.5");
    }
  }

  /**
   * Today's prices for ever, later money as good as money now.
   *
   * @param years how many are looked at, 1 to 100
   * @return the outlook
   */
  public static Outlook plain(int years) {
    return new Outlook(years, 0, 0);
  }

  /**
   * Present worth of a year's energy.
   *
   * @param year 1 (the first) and up
   * @param today what a year costs at today's prices, $
   * @return $ of today
   */
  public double worthOfYear(int year, double today) {
    return today * Math.pow((1 + rise) / (1 + discount), year);
  }

  /**
   * Present worth of something bought later at today's price, not raised.
   *
   * @param years years from now, 0 and up
   * @param price $
   * @return $ of today
   */
  public double worthOfPurchase(int years, double price) {
    return price / Math.pow(1 + discount, years);
  }

  /**
   * Present worth of every year's energy.
   *
   * @param today what a year costs at today's prices, $
   * @return $ of today
   */
  public double worthOfAll(double today) {
    double sum = 0;
    for (int year = 1; year <= years; year++) {
      sum += worthOfYear(year, today);
    }
    return sum;
  }
}
