package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.shopclime.bill.Course;
import org.shopclime.bill.Use;
import org.shopclime.run.PumpYear;
import org.shopclime.run.YearResult;
import org.shopclime.shop.Prices;
import org.shopclime.shop.Shop;
import org.shopclime.shop.UnitKind;

/**
 * What a window unit with a heater costs over the years, what a heat pump costs in its place, and
 * what that may cost to run before it loses.
 *
 * @param window the unit and the heater it needs beside it
 * @param breakEven what a heat pump at its price may cost to run, $ a year at today's prices; below
 *     0 where it loses even if it runs for nothing; nothing where it has no price
 * @param pump a usual heat pump of the same size; nothing where it has no price, or the unit is one
 */
public record ToBuy(Course window, OptionalDouble breakEven, Optional<Pump> pump) {

  /**
   * A usual heat pump of variable speed in place of the unit and its heater.
   *
   * @param course what it costs
   * @param cooling electricity for cooling, kWh a year
   * @param heating electricity for heating, kWh a year
   * @param heat heat it is asked for, kWh a year
   * @param resistance the part of that heat which electric resistance gives, kWh a year
   * @param ahead first year by whose end the dearer to buy has cost less, at today's prices, and
   *     with energy as cheap and as dear as the band has it; nothing if never
   * @param gain what the heat pump gains over the years against the unit, $ of today; below 0 where
   *     it loses
   */
  public record Pump(
      Course course,
      double cooling,
      double heating,
      double heat,
      double resistance,
      Ahead ahead,
      double gain) {}

  /**
   * First year by whose end the dearer one to buy has cost less.
   *
   * @param today at today's prices; nothing if never in the years looked at
   * @param cheap with energy as cheap as the band has it
   * @param dear with energy as dear
   */
  public record Ahead(OptionalInt today, OptionalInt cheap, OptionalInt dear) {}

  /**
   * What is known of a shop.
   *
   * @param shop the shop
   * @param prices its prices
   * @param cost what its year costs
   * @param year that year
   * @return nothing where the shop has no unit that runs, or a window unit has no price
   */
  static Optional<ToBuy> of(Shop shop, PriceBook prices, YearCost cost, YearResult year) {
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
                new Course("a heat pump", bought(costs), 0).breakEven(course, prices.outlook()));
    boolean isWindow = shop.unit().map(unit -> unit.kind() == UnitKind.WINDOW).orElse(false);
    return Optional.of(
        new ToBuy(
            course,
            breakEven,
            isWindow && costs.heatPump().isPresent()
                ? Optional.of(pump(shop, prices, year, course))
                : Optional.empty()));
  }

  private static List<Course.Purchase> bought(Prices.FirstCosts costs) {
    return List.of(
        new Course.Purchase(costs.heatPump().orElseThrow(), (int) costs.heatPumpYears()));
  }

  private static Pump pump(Shop shop, PriceBook prices, YearResult year, Course window) {
    PumpYear run =
        PumpYear.of(year.year(), Sizing.room(shop), shop.unit().orElseThrow().capacity());
    PlantChoice pump =
        new PlantChoice(
            "a heat pump",
            bought(shop.prices().firstCosts()),
            Use.hourly(run::cooling),
            Use.hourly(run::heating),
            0);
    Course course = PlantComparison.course(prices, pump);
    PlantComparison compared = PlantComparison.of(prices, window, course);
    return new Pump(
        course,
        pump.cooling().total(),
        pump.heating().total(),
        run.heat(),
        run.resistance(),
        new Ahead(
            compared.firstYearAhead(1),
            compared.firstYearAheadLow(),
            compared.firstYearAheadHigh()),
        window.presentCost(prices.outlook()) - course.presentCost(prices.outlook()));
  }
}
