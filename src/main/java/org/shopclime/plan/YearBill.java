package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import org.shopclime.climate.Station;
import org.shopclime.run.YearResult;
import org.shopclime.shop.Shop;

/**
 * The year in money.
 *
 * @param prices prices that were used
 * @param cost what cooling and heating cost
 * @param paybacks changes the owner has a price for, those that gain most first
 * @param firstSteps what to do first with the budget, if there is one
 * @param toBuy what the plants cost over the years, where their prices are known
 * @param pumpSaving what a heat pump would save to run, where they are not
 */
public record YearBill(
    PriceBook prices,
    YearCost cost,
    List<Payback> paybacks,
    Optional<FirstSteps> firstSteps,
    Optional<ToBuy> toBuy,
    Optional<PumpSaving> pumpSaving) {

  /** Copies the list. */
  public YearBill {
    paybacks = List.copyOf(paybacks);
  }

  /**
   * The money of a year alone, changes left out.
   *
   * @param shop the shop
   * @param home its station
   * @param year the year as it was run
   * @return bill
   */
  public static YearBill of(Shop shop, Station home, YearResult year) {
    PriceBook prices = PriceBook.of(shop, home);
    YearCost cost = prices.cost(year);
    return new YearBill(
        prices,
        cost,
        List.of(),
        Optional.empty(),
        ToBuy.of(shop, prices, cost, year),
        PumpSaving.of(shop, prices, cost, year));
  }

  /**
   * The cost where every price is as low as the band has it.
   *
   * @return $ a year
   */
  public double low() {
    return (1 - prices.band()) * cost.total();
  }

  /**
   * The cost where every price is as high as the band has it.
   *
   * @return $ a year
   */
  public double high() {
    return (1 + prices.band()) * cost.total();
  }
}
