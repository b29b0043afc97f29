package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import org.shopclime.run.YearResult;
import org.shopclime.shop.Prices;
import org.shopclime.shop.Shop;
import org.shopclime.shop.UnitKind;

/**
 * What a usual heat pump would save to run in place of a window unit and its heater, where nobody
 * said what they cost to buy: energy has a price, so the dearest it may be is known.
 *
 * @param window what unit and heater cost to run, $ a year
 * @param pump what the heat pump would cost to run, $ a year
 * @param cooling its electricity for cooling, kWh a year
 * @param heating its electricity for heating, kWh a year
 * @param worth what the saving is worth over the years looked at, $ of today; below 0 where it
 *     costs more to run. So much more than the window units and heaters of those years it may cost
 * @param worthLow the same with energy as cheap as the band has it
 * @param worthHigh the same with energy as dear
 */
public record PumpSaving(
    double window,
    double pump,
    double cooling,
    double heating,
    double worth,
    double worthLow,
    double worthHigh) {

  /**
   * What is saved in the shop's year.
   *
   * @param shop the shop
   * @param prices its prices
   * @param cost what its year costs
   * @param year that year
   * @return nothing where the unit is none for a window, does not run, or what is bought has prices
   */
  static Optional<PumpSaving> of(Shop shop, PriceBook prices, YearCost cost, YearResult year) {
    Prices.FirstCosts costs = shop.prices().firstCosts();
    boolean known = costs.windowUnit().isPresent() && costs.heatPump().isPresent();
    boolean window = shop.unit().map(unit -> unit.kind() == UnitKind.WINDOW).orElse(false);
    if (known || !window || !(cost.unit().total() > 0)) {
      return Optional.empty();
    }
    double unit = ToBuy.windowCourse(prices, List.of(), cost).yearlyCost();
    PlantChoice choice = ToBuy.usualPump(shop, prices, year, List.of()).choice();
    double pump = PlantComparison.course(prices, choice).yearlyCost();
    double worth = (unit - pump) * prices.outlook().worthOfAll(1);
    return Optional.of(
        new PumpSaving(
            unit,
            pump,
            choice.cooling().total(),
            choice.heating().total(),
            worth,
            (1 - prices.band()) * worth,
            (1 + prices.band()) * worth));
  }
}
