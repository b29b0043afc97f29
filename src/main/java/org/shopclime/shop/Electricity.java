package org.shopclime.shop;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;

/** What a kWh costs. */
public sealed interface Electricity
    permits Electricity.StateAverage, Electricity.Flat, Electricity.Tiers, Electricity.TimeOfUse {

  /** Nobody says; what homes of the state, or of the nation, paid in the mean. */
  record StateAverage() implements Electricity {}

  /**
   * One price.
   *
   * @param price $/kWh
   */
  record Flat(
      @Say(label = "Price", kind = Kind.ENERGY_PRICE, max = 5, usualMin = 0.06, usualMax = 0.5)
          double price)
      implements Electricity {}

  /**
   * Prices that go by the month's use.
   *
   * @param tiers steps, the first kWh of a month first
   */
  record Tiers(
      @Say(label = "Tiers", help = "The first kWh of a month first; the last has no end.")
          List<Tier> tiers)
      implements Electricity {

    /** Copies the list. */
    public Tiers {
      tiers = List.copyOf(tiers);
    }
  }

  /**
   * A step of the price.
   *
   * @param price $/kWh
   * @param upTo use of a month up to which it goes, kWh, counted from 0; absent in the last
   * @param from first month in which it holds
   * @param to last month, itself included
   */
  record Tier(
      @Say(label = "Price", kind = Kind.ENERGY_PRICE, max = 5, usualMin = 0.03, usualMax = 0.8)
          double price,
      @Say(
              label = "Up to",
              help = "Of a month's use, counted from 0; none in the last tier.",
              kind = Kind.ENERGY,
              min = 1,
              max = 1e6,
              otherwise = "none")
          Optional<Double> upTo,
      @Say(label = "From", otherwise = "january") Month from,
      @Say(label = "Through", otherwise = "december") Month to) {}

  /**
   * Prices that go by the hour.
   *
   * @param otherwise $/kWh in all other hours
   * @param periods hours with a price of their own
   */
  record TimeOfUse(
      @Say(
              label = "Price in all other hours",
              kind = Kind.ENERGY_PRICE,
              max = 5,
              usualMin = 0.03,
              usualMax = 0.5)
          double otherwise,
      @Say(label = "Hours with a price of their own") List<PricedHours> periods)
      implements Electricity {

    /** Copies the list. */
    public TimeOfUse {
      periods = List.copyOf(periods);
    }
  }

  /**
   * Hours with a price of their own.
   *
   * @param price $/kWh
   * @param when days and hours, wall clock
   * @param from first month in which it holds
   * @param to last month, itself included; before {@code from}: of the next year
   */
  record PricedHours(
      @Say(label = "Price", kind = Kind.ENERGY_PRICE, max = 5, usualMin = 0.03, usualMax = 1)
          double price,
      @Say(label = "When") Schedule when,
      @Say(label = "From", otherwise = "january") Month from,
      @Say(label = "Through", otherwise = "december") Month to) {}
}
