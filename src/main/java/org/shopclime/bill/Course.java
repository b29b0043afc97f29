package org.shopclime.bill;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One of several ways to go: what it takes to buy, what it costs to run, how long it lasts.
 *
 * @param name what the owner calls it
 * @param purchases what is bought for it
 * @param yearlyCost $ a year at today's prices, 0 or more
 */
public record Course(String name, List<Purchase> purchases, double yearlyCost) {

  /** Copies the list; refuses a cost below 0. */
  public Course {
    purchases = List.copyOf(purchases);
    Amount.notNegative("yearly cost, $,", yearlyCost);
  }

  /**
   * Something that is bought, and bought again when it is worn out.
   *
   * @param price $, 0 or more
   * @param life years after which it is bought again, 1 and up
   */
  public record Purchase(double price, int life) {

    /** Refuses a price below 0 and a life of no year. */
    public Purchase {
      Amount.notNegative("price, $,", price);
      if (life < 1) {
        throw new IllegalArgumentException("life of " + life + " years is not 1 or more");
      }
    }
  }

  /**
   * What it costs to begin with.
   *
   * @return $
   */
  public double firstCost() {
    return purchases.stream().mapToDouble(Purchase::price).sum();
  }

  /**
   * What it has cost by the end of a year, all in money of today: bought, bought again each time it
   * is worn out and another year is to come, and run. Nothing is sold at the end.
   *
   * @param year 0 (just bought) to {@link Outlook#years}
   * @param outlook what is taken of prices to come
   * @return present worth, $
   */
  public double cumulative(int year, Outlook outlook) {
    double sum = bought(year, outlook);
    for (int passed = 1; passed <= year; passed++) {
      sum += outlook.worthOfYear(passed, yearlyCost);
    }
    return sum;
  }

  private double bought(int year, Outlook outlook) {
    double sum = firstCost();
    for (Purchase purchase : purchases) {
      for (int passed = purchase.life(); passed < year; passed += purchase.life()) {
        sum += outlook.worthOfPurchase(passed, purchase.price());
      }
    }
    return sum;
  }

  /**
   * What this may cost to run and still cost no more than another over all years looked at.
   *
   * @param other the way to hold it against
   * @param outlook what is taken of prices to come
   * @return $ a year at today's prices; below 0 where it loses even if it runs for nothing
   */
  public double breakEven(Course other, Outlook outlook) {
    return (other.presentCost(outlook) - bought(outlook.years(), outlook)) / outlook.worthOfAll(1);
  }

  /**
   * What it costs over all years looked at.
   *
   * @param outlook what is taken of prices to come
   * @return net present cost, $
   */
  public double presentCost(Outlook outlook) {
    return cumulative(outlook.years(), outlook);
  }

  /**
   * First year by whose end this has cost less than the other.
   *
   * @param other the way to hold it against
   * @param outlook what is taken of prices to come
   * @return 0 if it is cheaper to buy, 1 and up; nothing if it never is within the years looked at
   */
  public OptionalInt firstYearAhead(Course other, Outlook outlook) {
    for (int year = 0; year <= outlook.years(); year++) {
      if (cumulative(year, outlook) < other.cumulative(year, outlook)) {
        return OptionalInt.of(year);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * Simple payback: years of saving at today's prices that make up for a cost.
   *
   * @param cost $, 0 or more
   * @param yearlySaving $ a year
   * @return years; nothing where nothing is saved
   */
  public static OptionalDouble simplePayback(double cost, double yearlySaving) {
    Amount.notNegative("cost, $,", cost);
    return yearlySaving > 0 ? OptionalDouble.of(cost / yearlySaving) : OptionalDouble.empty();
  }
}
