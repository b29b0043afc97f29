package org.shopclime.bill;

import java.util.OptionalDouble;

/**
 * What electricity costs.
 *
 * @param rate cost of the energy
 * @param monthlyCharge charge of every month whatever is used, $, 0 or more
 * @param demandCharge charge for the greatest hour of each month, $/kW, 0 or more
 */
public record Tariff(Rate rate, double monthlyCharge, double demandCharge) {

  /** Refuses charges below 0. */
  public Tariff {
    Amount.notNegative("monthly charge, $,", monthlyCharge);
    Amount.notNegative("demand charge, $/kW,", demandCharge);
  }

  /**
   * One price and nothing else.
   *
   * @param price $/kWh, 0 or more
   * @return the tariff
   */
  public static Tariff flat(double price) {
    return new Tariff(new Rate.Flat(price), 0, 0);
  }

  /**
   * The same with all prices and charges multiplied.
   *
   * @param factor 0 or more
   * @return the tariff
   */
  public Tariff times(double factor) {
    return new Tariff(rate.times(factor), factor * monthlyCharge, factor * demandCharge);
  }

  /**
   * The bills of a year.
   *
   * @param use all that goes through the meter
   * @param clock what the clock on the wall shows
   * @return every month's bill, charges included
   */
  public MonthlyCost cost(Use use, YearClock clock) {
    return MonthlyCost.of(
        month -> rate.energy(use, month, clock) + monthlyCharge + demandCharge * use.peak(month));
  }

  /**
   * What a use adds to the bills of a meter through which something goes already: its first kWh
   * costs what the last kWh of the other cost. The monthly charge is paid anyway and adds nothing.
   *
   * @param base what goes through the meter anyway
   * @param added what comes on top of it
   * @param clock what the clock on the wall shows
   * @return bills with both less bills without the added one
   */
  public MonthlyCost added(Use base, Use added, YearClock clock) {
    return cost(base.plus(added), clock).minus(cost(base, clock));
  }

  /**
   * Mean price of all that goes through the meter, charges included.
   *
   * @param use all that goes through the meter
   * @param clock what the clock on the wall shows
   * @return $/kWh; nothing where nothing is used
   */
  public OptionalDouble averagePrice(Use use, YearClock clock) {
    return price(cost(use, clock), use);
  }

  /**
   * Mean price of what comes on top, which is what it saves to leave it.
   *
   * @param base what goes through the meter anyway
   * @param added what comes on top of it
   * @param clock what the clock on the wall shows
   * @return $/kWh; nothing where nothing is added
   */
  public OptionalDouble addedPrice(Use base, Use added, YearClock clock) {
    return price(added(base, added, clock), added);
  }

  private static OptionalDouble price(MonthlyCost cost, Use use) {
    double energy = use.total();
    return energy > 0 ? OptionalDouble.of(cost.total() / energy) : OptionalDouble.empty();
  }
}
