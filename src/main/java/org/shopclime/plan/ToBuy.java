package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.bill.Course;
import org.shopclime.bill.Use;
import org.shopclime.shop.Prices;
import org.shopclime.shop.Shop;

/**
 * What a window unit with a heater costs over the years, and what a heat pump may cost to run
 * before it loses against them.
 *
 * @param window the window unit and the heater it needs beside it
 * @param breakEven what a heat pump at its price may cost to run, $ a year at today's prices; below
 *     0 where it loses even if it runs for nothing; nothing where it has no price
 */
public record ToBuy(Course window, OptionalDouble breakEven) {

  /**
   * What is known of a shop.
   *
   * @param shop the shop
   * @param prices its prices
   * @param cost what its year costs
   * @return nothing where the shop has no unit that runs, or a window unit has no price
   */
  static Optional<ToBuy> of(Shop shop, PriceBook prices, YearCost cost) {
    Prices.FirstCosts costs = shop.prices().firstCosts();
    if (costs.windowUnit().isEmpty() || !(cost.unit().total() > 0)) {
      return Optional.empty();
    }
    boolean burns = prices.fuel().isPresent();
    PlantChoice window =
        new PlantChoice(
            "a window unit with its heater",
            List.of(
                new Course.Purchase(costs.windowUnit().get(), (int) costs.windowUnitYears()),
                new Course.Purchase(costs.heater().orElse(0.0), (int) costs.heaterYears())),
            cost.unit(),
            burns ? Use.none() : cost.heat(),
            burns ? cost.heat().total() : 0);
    Course course = PlantComparison.course(prices, window);
    OptionalDouble breakEven =
        costs.heatPump().isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                pump(costs.heatPump().get(), (int) costs.heatPumpYears())
                    .breakEven(course, prices.outlook()));
    return Optional.of(new ToBuy(course, breakEven));
  }

  private static Course pump(double price, int life) {
    return new Course("a heat pump", List.of(new Course.Purchase(price, life)), 0);
  }
}
