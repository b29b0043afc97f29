package org.shopclime.plan;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shopclime.balance.YearWeather;
import org.shopclime.bill.Fuel;
import org.shopclime.bill.KnownPrice;
import org.shopclime.bill.Months;
import org.shopclime.bill.Outlook;
import org.shopclime.bill.Rate;
import org.shopclime.bill.Tariff;
import org.shopclime.bill.Use;
import org.shopclime.bill.YearClock;
import org.shopclime.climate.Station;
import org.shopclime.run.YearResult;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Electricity;
import org.shopclime.shop.HeatSource;
import org.shopclime.shop.Prices;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Shop;

/**
 * What energy costs a shop: prices its owner typed, or the mean of the state or nation.
 *
 * @param tariff price of electricity
 * @param known where it comes from, if nobody typed it
 * @param source what the owner says of where the prices come from; may be empty
 * @param otherUse what else goes through the meter in a month, kWh; 0 where nobody said
 * @param fuel what heats; empty: a plain electric heater
 * @param clock what the clock on the wall shows through the year
 * @param outlook what is taken of the years to come
 * @param band by how much prices may be off either way, 0 to 1
 */
public record PriceBook(
    Tariff tariff,
    Optional<KnownPrice> known,
    String source,
    double otherUse,
    Optional<Fuel> fuel,
    YearClock clock,
    Outlook outlook,
    double band) {

  private static final double WATTS_PER_KILOWATT = 1000;

  /**
   * The prices of a shop.
   *
   * @param shop a shop that passed its checks
   * @param home its station, whose state decides where nothing was typed
   * @return prices
   */
  public static PriceBook of(Shop shop, Station home) {
    Prices prices = shop.prices();
    Optional<KnownPrice> known =
        prices.electricity() instanceof Electricity.StateAverage
            ? Optional.of(KnownPrice.of(home.state()))
            : Optional.empty();
    Rate rate =
        known
            .map(KnownPrice::price)
            .<Rate>map(Rate.Flat::new)
            .orElseGet(() -> rate(prices.electricity()));
    return new PriceBook(
        new Tariff(rate, prices.monthlyCharge(), prices.demandCharge()),
        known,
        prices.source(),
        prices.otherUse().orElse(0.0),
        fuel(prices.heater()),
        // the year of YearWeather begins on a Wednesday
        new YearClock(DayOfWeek.WEDNESDAY, shop.work().clock() == Clock.DAYLIGHT),
        new Outlook((int) prices.ahead().years(), prices.ahead().rise(), prices.ahead().discount()),
        prices.ahead().band());
  }

  private static Rate rate(Electricity electricity) {
    if (electricity instanceof Electricity.Flat flat) {
      return new Rate.Flat(flat.price());
    }
    if (electricity instanceof Electricity.Tiers tiers) {
      return new Rate.Tiered(
          tiers.tiers().stream()
              .map(
                  tier ->
                      new Rate.Tier(
                          tier.upTo().orElse(Double.POSITIVE_INFINITY),
                          tier.price(),
                          new Months(tier.from(), tier.to())))
              .toList());
    }
    if (electricity instanceof Electricity.TimeOfUse hours) {
      List<Rate.Period> periods = new ArrayList<>();
      for (Electricity.PricedHours priced : hours.periods()) {
        for (Schedule.Period period : priced.when().periods()) {
          periods.add(
              new Rate.Period(
                  priced.price(),
                  new Months(priced.from(), priced.to()),
                  priced.when().days(),
                  period.startMinute(),
                  period.endMinute()));
        }
      }
      return new Rate.TimeOfUse(hours.otherwise(), periods);
    }
    throw new IllegalArgumentException("no price in " + electricity);
  }

  private static Optional<Fuel> fuel(HeatSource heater) {
    if (heater instanceof HeatSource.Propane propane) {
      return Optional.of(Fuel.propane(propane.price(), propane.efficiency()));
    }
    if (heater instanceof HeatSource.NaturalGas gas) {
      return Optional.of(Fuel.naturalGas(gas.price(), gas.efficiency()));
    }
    if (heater instanceof HeatSource.HeatingOil oil) {
      return Optional.of(Fuel.heatingOil(oil.price(), oil.efficiency()));
    }
    return Optional.empty();
  }

  /**
   * What goes through the meter besides.
   *
   * @return the same in every month
   */
  public Use base() {
    return Use.monthly(month -> otherUse);
  }

  /**
   * What cooling, heating and drying of a year cost, on top of what goes through the meter anyway:
   * the unit first, what it draws to heat on top of it, an electric heater on top of both, and
   * dehumidifiers on top of all.
   *
   * @param year a year's run; its heating is the heat put in
   * @return cost
   */
  public YearCost cost(YearResult year) {
    Use unit = hours(year, (room, hour) -> year.at(Figure.POWER, room, hour));
    Use pump = hours(year, (room, hour) -> year.at(Figure.PUMP_POWER, room, hour));
    Use heat = hours(year, year::missing);
    Use drier = hours(year, (room, hour) -> year.at(Figure.DRIER_POWER, room, hour));
    Use both = base().plus(unit);
    Use before = both.plus(pump).plus(fuel.isPresent() ? Use.none() : heat);
    return new YearCost(
        unit,
        pump,
        heat,
        drier,
        tariff.added(base(), unit, clock),
        tariff.added(both, pump, clock),
        fuel.map(burnt -> burnt.cost(heat))
            .orElseGet(() -> tariff.added(both.plus(pump), heat, clock)),
        tariff.added(before, drier, clock),
        fuel.map(burnt -> burnt.amount(heat.total())));
  }

  /** Tells the mean of a room's hour, W. */
  private interface RoomHour {
    double watts(int room, int hour);
  }

  private static Use hours(YearResult year, RoomHour told) {
    double[] hours = new double[YearWeather.HOURS];
    for (int room = 0; room < year.year().rooms(); room++) {
      for (int hour = 0; hour < hours.length; hour++) {
        hours[hour] += told.watts(room, hour) / WATTS_PER_KILOWATT;
      }
    }
    return Use.hourly(hour -> hours[hour]);
  }
}
