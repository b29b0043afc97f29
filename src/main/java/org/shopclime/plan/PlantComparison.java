package org.shopclime.plan;

import java.util.OptionalInt;
import org.shopclime.bill.Course;
import org.shopclime.bill.Fuel;
import org.shopclime.bill.MonthlyCost;

/**
 * Two ways to cool and heat a shop, in money over the years, such as a window unit with a heater
 * against a heat pump. Each is told at today's prices and at prices as low and as high as the band
 * has them.
 *
 * @param prices prices that were used
 * @param cheaper the one that costs less to buy
 * @param dearer the one that costs more to buy
 */
public record PlantComparison(PriceBook prices, Course cheaper, Course dearer) {

  /**
   * Compares two ways.
   *
   * @param prices prices
   * @param one a way
   * @param other another
   * @return both, the one that costs less to buy first; if they cost the same, the first named
   * @throws IllegalArgumentException if one burns a fuel that has no price
   */
  public static PlantComparison of(PriceBook prices, PlantChoice one, PlantChoice other) {
    return of(prices, course(prices, one), course(prices, other));
  }

  /** The same for ways whose yearly cost is known. */
  static PlantComparison of(PriceBook prices, Course one, Course other) {
    return one.firstCost() <= other.firstCost()
        ? new PlantComparison(prices, one, other)
        : new PlantComparison(prices, other, one);
  }

  /**
   * A way with its yearly cost at today's prices, on top of what goes through the meter anyway.
   *
   * @param prices prices
   * @param choice the way
   * @return what is bought and what a year costs
   * @throws IllegalArgumentException if it burns a fuel that has no price
   */
  public static Course course(PriceBook prices, PlantChoice choice) {
    MonthlyCost drawn =
        prices
            .tariff()
            .added(prices.base(), choice.cooling().plus(choice.heating()), prices.clock());
    double burnt =
        choice.fuelHeat() > 0
            ? choice.fuelHeat()
                * prices
                    .fuel()
                    .map(Fuel::usefulPrice)
                    .orElseThrow(
                        () ->
                            new IllegalArgumentException(choice.name() + ": no price of its fuel"))
            : 0;
    return new Course(choice.name(), choice.purchases(), drawn.total() + burnt);
  }

  private static Course at(Course course, double factor) {
    return new Course(course.name(), course.purchases(), factor * course.yearlyCost());
  }

  /**
   * First year by whose end the one that is dearer to buy has cost less.
   *
   * @param factor what all energy prices are multiplied by, such as 1 for today's
   * @return 1 and up; nothing if never within the years looked at
   */
  public OptionalInt firstYearAhead(double factor) {
    return at(dearer, factor).firstYearAhead(at(cheaper, factor), prices.outlook());
  }

  /**
   * The same with prices as low as the band has them, when a saving is worth least.
   *
   * @return 1 and up; nothing if never within the years looked at
   */
  public OptionalInt firstYearAheadLow() {
    return firstYearAhead(1 - prices.band());
  }

  /**
   * The same with prices as high as the band has them.
   *
   * @return 1 and up; nothing if never within the years looked at
   */
  public OptionalInt firstYearAheadHigh() {
    return firstYearAhead(1 + prices.band());
  }

  /**
   * What the dearer one gains over all years looked at.
   *
   * @param factor what all energy prices are multiplied by
   * @return $ of today; below 0 where it loses
   */
  public double gain(double factor) {
    return at(cheaper, factor).presentCost(prices.outlook())
        - at(dearer, factor).presentCost(prices.outlook());
  }
}
