package org.shopclime.bill;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What the energy of a month costs: at one price, by how much is used, or by when. */
public sealed interface Rate permits Rate.Flat, Rate.Tiered, Rate.TimeOfUse {

  /**
   * Cost of a month's energy.
   *
   * @param use what is used
   * @param month which month
   * @param clock what the clock on the wall shows
   * @return $, charges that do not go by the kWh left out
   */
  double energy(Use use, Month month, YearClock clock);

  /**
   * The same with all its prices multiplied.
   *
   * @param factor 0 or more
   * @return the rate
   */
  Rate times(double factor);

  /**
   * One price for every kWh.
   *
   * @param price $/kWh, 0 or more
   */
  record Flat(double price) implements Rate {

    /** Refuses a price below 0. */
    public Flat {
      Amount.notNegative("price, $/kWh,", price);
    }

    @Override
    public double energy(Use use, Month month, YearClock clock) {
      return price * use.of(month);
    }

    @Override
    public Flat times(double factor) {
      return new Flat(factor * price);
    }
  }

  /**
   * One step of a price that goes by the month's use.
   *
   * @param upTo kWh a month up to which it goes, counted from 0; infinite in the last
   * @param price $/kWh of what lies in it, 0 or more
   * @param months months in which it holds
   */
  record Tier(double upTo, double price, Months months) {

    /** Refuses a step that ends at nothing and a price below 0. */
    public Tier {
      if (!(upTo > 0)) {
        throw new IllegalArgumentException("tier up to " + upTo + " kWh is not above 0");
      }
      Amount.notNegative("price, $/kWh,", price);
    }
  }

  /**
   * Prices that go by the month's use: each holds for the part of it between the step before and
   * its own end.
   *
   * @param tiers steps in rising order, of all months; in each month the last has no end
   */
  record Tiered(List<Tier> tiers) implements Rate {

    /** Copies the list; refuses months without steps, in wrong order, or with an end. */
    public Tiered {
      tiers = List.copyOf(tiers);
      for (Month month : Month.values()) {
        double last = 0;
        for (Tier tier : of(tiers, month)) {
          if (!(tier.upTo() > last)) {
            throw new IllegalArgumentException("tiers of " + month + " do not rise");
          }
          last = tier.upTo();
        }
        if (last != Double.POSITIVE_INFINITY) {
          throw new IllegalArgumentException("the tiers of " + month + " end at " + last + " kWh");
        }
      }
    }

    private static List<Tier> of(List<Tier> tiers, Month month) {
      return tiers.stream().filter(tier -> tier.months().contains(month)).toList();
    }

    @Override
    public double energy(Use use, Month month, YearClock clock) {
      double used = use.of(month);
      double below = 0;
      double cost = 0;
      for (Tier tier : of(tiers, month)) {
        cost += tier.price() * Math.max(0, Math.min(used, tier.upTo()) - below);
        below = tier.upTo();
      }
      return cost;
    }

    @Override
    public Tiered times(double factor) {
      return new Tiered(
          tiers.stream()
              .map(tier -> new Tier(tier.upTo(), factor * tier.price(), tier.months()))
              .toList());
    }
  }

  /**
   * Hours with a price of their own.
   *
   * @param price $/kWh, 0 or more
   * @param months months in which it holds
   * @param days days of the week on which it holds
   * @param startMinute minute of the day at which it begins by the clock on the wall, 0 to 1439
   * @param endMinute minute at which it ends, above {@code startMinute}, at most 1440
   */
  record Period(double price, Months months, Set<DayOfWeek> days, int startMinute, int endMinute) {

    /** Copies the days; refuses a price below 0 and minutes outside a day. */
    public Period {
      days = Set.copyOf(days);
      Amount.notNegative("price, $/kWh,", price);
      if (startMinute < 0 || endMinute <= startMinute || endMinute > 1440) {
        throw new IllegalArgumentException(
            "period " + startMinute + " to " + endMinute + " minutes; takes 0 to 1440, rising");
      }
    }

    /**
     * Whether two periods have a minute of a year in common.
     *
     * @param other another period
     * @return true if they meet
     */
    public boolean meets(Period other) {
      boolean month = false;
      for (Month each : Month.values()) {
        month |= months.contains(each) && other.months.contains(each);
      }
      return month
          && days.stream().anyMatch(other.days::contains)
          && startMinute < other.endMinute
          && other.startMinute < endMinute;
    }

    /** Part of the hour that begins at a minute of the week, 0 to 1. */
    private double share(int minuteOfWeek) {
      if (!days.contains(DayOfWeek.of(minuteOfWeek / 1440 + 1))) {
        return 0;
      }
      int start = minuteOfWeek % 1440;
      return Math.max(0, Math.min(endMinute, start + 60) - Math.max(startMinute, start)) / 60.0;
    }
  }

  /**
   * Prices that go by the hour.
   *
   * @param otherwise $/kWh in all other hours, 0 or more
   * @param periods hours with a price of their own; no two meet
   */
  record TimeOfUse(double otherwise, List<Period> periods) implements Rate {

    /** Copies the list; refuses a price below 0 and periods that meet. */
    public TimeOfUse {
      periods = List.copyOf(periods);
      Amount.notNegative("price, $/kWh,", otherwise);
      for (int i = 0; i < periods.size(); i++) {
        for (int j = 0; j < i; j++) {
          if (periods.get(i).meets(periods.get(j))) {
            throw new IllegalArgumentException("periods " + j + " and " + i + " meet");
          }
        }
      }
    }

    @Override
    public double energy(Use use, Month month, YearClock clock) {
      List<Period> then =
          periods.stream().filter(period -> period.months().contains(month)).toList();
      double cost = 0;
      for (int hour = Use.firstHour(month); hour < Use.endHour(month); hour++) {
        if (use.at(hour) > 0) {
          cost += use.at(hour) * price(then, clock.minuteOfWeek(hour));
        }
      }
      return cost;
    }

    private double price(List<Period> then, int minuteOfWeek) {
      double price = otherwise;
      for (Period period : then) {
        price += (period.price() - otherwise) * period.share(minuteOfWeek);
      }
      return price;
    }

    @Override
    public TimeOfUse times(double factor) {
      List<Period> dearer = new ArrayList<>();
      for (Period period : periods) {
        dearer.add(
            new Period(
                factor * period.price(),
                period.months(),
                period.days(),
                period.startMinute(),
                period.endMinute()));
      }
      return new TimeOfUse(factor * otherwise, dearer);
    }
  }
}
