package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.shopclime.bill.Course;
import org.shopclime.bill.Use;
import org.shopclime.run.Cooling;
import org.shopclime.run.PumpYear;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.run.YearRun;
import org.shopclime.shop.CoolingUnit;
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
 * @param pump the shop's own heat pump, or beside a window unit a usual one of the same size;
 *     nothing where it has no price
 */
public record ToBuy(Course window, OptionalDouble breakEven, Optional<Pump> pump) {

  private static final double WATTS_PER_KILOWATT = 1000;

  /**
   * A heat pump in place of a window unit and its heater: a usual one of variable speed, or the
   * shop's own.
   *
   * @param course what it costs
   * @param cooling electricity for cooling, kWh a year
   * @param heating electricity for heating, kWh a year
   * @param heat heat it is asked for, kWh a year
   * @param resistance the part of that heat which heaters give, kWh a year
   * @param ahead first year by whose end the dearer to buy has cost less, at today's prices, and
   *     with energy as cheap and as dear as the band has it; nothing if never
   * @param gain what the heat pump gains over the years against the unit, $ of today; below 0 where
   *     it loses
   * @param owned whether it is the shop's own, with the heater beside it
   */
  public record Pump(
      Course course,
      double cooling,
      double heating,
      double heat,
      double resistance,
      Ahead ahead,
      double gain,
      boolean owned) {}

  /**
   * First year by whose end the dearer one to buy has cost less.
   *
   * @param today at today's prices; nothing if never in the years looked at
   * @param cheap with energy as cheap as the band has it
   * @param dear with energy as dear
   */
  public record Ahead(OptionalInt today, OptionalInt cheap, OptionalInt dear) {}

  /**
   * What is known of a shop. Of one that has a heat pump, the window unit is a usual one of the
   * same size, run through the same year.
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
    CoolingUnit unit = shop.unit().orElseThrow();
    Course window =
        window(prices, costs, unit.isHeatPump() ? inPlaceOfPump(shop, prices, year) : cost);
    OptionalDouble breakEven =
        costs.heatPump().isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                new Course("a heat pump", bought(costs), 0).breakEven(window, prices.outlook()));
    boolean compares = unit.kind() == UnitKind.WINDOW || unit.winterHeat().isPresent();
    return Optional.of(
        new ToBuy(
            window,
            breakEven,
            compares && costs.heatPump().isPresent()
                ? Optional.of(
                    unit.isHeatPump()
                        ? own(shop, prices, cost, year, window)
                        : usual(shop, prices, year, window))
                : Optional.empty()));
  }

  /** The year with a usual window unit of the same size. */
  private static YearCost inPlaceOfPump(Shop shop, PriceBook prices, YearResult year) {
    Cooling window =
        Cooling.window(
            Sizing.room(shop),
            shop.unit().orElseThrow().capacity(),
            Sizing.USUAL_CEER,
            Cooling.Label.CEER,
            1);
    return prices.cost(YearRun.of(year.year(), Optional.of(window)));
  }

  private static Course window(PriceBook prices, Prices.FirstCosts costs, YearCost cost) {
    return windowCourse(
        prices,
        List.of(
            new Course.Purchase(costs.windowUnit().orElseThrow(), (int) costs.windowUnitYears()),
            new Course.Purchase(costs.heater().orElse(0.0), (int) costs.heaterYears())),
        cost);
  }

  /** A window unit with its heater and what is bought for them. */
  static Course windowCourse(PriceBook prices, List<Course.Purchase> bought, YearCost cost) {
    boolean burns = prices.fuel().isPresent();
    return PlantComparison.course(
        prices,
        new PlantChoice(
            "a window unit with its heater",
            bought,
            cost.unit(),
            burns ? Use.none() : cost.heat(),
            burns ? cost.heat().total() : 0));
  }

  private static List<Course.Purchase> bought(Prices.FirstCosts costs) {
    return List.of(
        new Course.Purchase(costs.heatPump().orElseThrow(), (int) costs.heatPumpYears()));
  }

  /** A usual pump in a year: what it costs, the heat asked for, and that of resistance. */
  record Usual(PlantChoice choice, double heat, double resistance) {}

  /** A usual pump of the size of the shop's unit in the shop's year. */
  static Usual usualPump(
      Shop shop, PriceBook prices, YearResult year, List<Course.Purchase> bought) {
    int room = Sizing.room(shop);
    PumpYear run = PumpYear.of(year.year(), room, shop.unit().orElseThrow().capacity());
    Use others = othersHeat(year, room);
    boolean burns = prices.fuel().isPresent();
    PlantChoice pump =
        new PlantChoice(
            "a heat pump",
            bought,
            Use.hourly(run::cooling),
            burns ? Use.hourly(run::heating) : Use.hourly(run::heating).plus(others),
            burns ? others.total() : 0);
    double rest = others.total();
    return new Usual(pump, run.heat() + rest, run.resistance() + rest);
  }

  private static Pump usual(Shop shop, PriceBook prices, YearResult year, Course window) {
    Usual usual = usualPump(shop, prices, year, bought(shop.prices().firstCosts()));
    return pump(prices, usual.choice(), window, usual.heat(), usual.resistance(), false);
  }

  /** Heat of the rooms that the pump does not heat; their heaters stay. */
  private static Use othersHeat(YearResult year, int room) {
    return Use.hourly(
        hour -> {
          double watts = 0;
          for (int other = 0; other < year.year().rooms(); other++) {
            watts += other == room ? 0 : year.at(Figure.HEATING, other, hour);
          }
          return watts / WATTS_PER_KILOWATT;
        });
  }

  /** The shop's own, with the heater it has beside it. */
  private static Pump own(
      Shop shop, PriceBook prices, YearCost cost, YearResult year, Course window) {
    boolean burns = prices.fuel().isPresent();
    PlantChoice pump =
        new PlantChoice(
            "a heat pump",
            bought(shop.prices().firstCosts()),
            cost.unit(),
            burns ? cost.pump() : cost.pump().plus(cost.heat()),
            burns ? cost.heat().total() : 0);
    double heat = 0;
    for (int room = 0; room < year.year().rooms(); room++) {
      heat += year.kilowattHours(Figure.HEATING, room);
    }
    return pump(prices, pump, window, heat, cost.heat().total(), true);
  }

  private static Pump pump(
      PriceBook prices,
      PlantChoice pump,
      Course window,
      double heat,
      double resistance,
      boolean owned) {
    Course course = PlantComparison.course(prices, pump);
    PlantComparison compared = PlantComparison.of(prices, window, course);
    return new Pump(
        course,
        pump.cooling().total(),
        pump.heating().total(),
        heat,
        resistance,
        new Ahead(
            compared.firstYearAhead(1),
            compared.firstYearAheadLow(),
            compared.firstYearAheadHigh()),
        window.presentCost(prices.outlook()) - course.presentCost(prices.outlook()),
        owned);
  }
}
