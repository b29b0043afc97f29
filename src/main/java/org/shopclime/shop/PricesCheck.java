package org.shopclime.shop;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.shopclime.quantity.Problem;

/** What must fit together in a shop's prices, and what is said of them and comes to nothing. */
final class PricesCheck {

  private static final String RISING =
      "in every month steps of rising \"upTo\", the last of them without one";

  private final Prices prices;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Warning> warnings = new ArrayList<>();

  private PricesCheck(Prices prices) {
    this.prices = prices;
  }

  /**
   * Checks prices.
   *
   * @param prices the shop's
   * @return problems and warnings
   */
  static ShopCheck.Findings check(Prices prices) {
    PricesCheck check = new PricesCheck(prices);
    if (prices.electricity() instanceof Electricity.Tiers tiers) {
      check.tiers(tiers);
    }
    if (prices.electricity() instanceof Electricity.TimeOfUse hours) {
      check.hours(hours);
    }
    check.changes();
    check.whole("ahead.years", prices.ahead().years());
    check.whole("firstCosts.windowUnitYears", prices.firstCosts().windowUnitYears());
    check.whole("firstCosts.heatPumpYears", prices.firstCosts().heatPumpYears());
    check.whole("firstCosts.heaterYears", prices.firstCosts().heaterYears());
    return new ShopCheck.Findings(check.problems, check.warnings);
  }

  private void problem(String field, String found, String takes) {
    problems.add(new Problem("prices." + field, found, takes));
  }

  private void whole(String field, double years) {
    if (years != Math.rint(years) && !Double.isNaN(years)) {
      problem(field, Double.toString(years), "a whole number of years");
    }
  }

  private void tiers(Electricity.Tiers tariff) {
    String field = "electricity.tiers";
    if (tariff.tiers().isEmpty()) {
      problem(field, "none", "at least one tier");
      return;
    }
    for (Month month : Month.values()) {
      double reached = 0;
      for (Electricity.Tier tier : tariff.tiers()) {
        if (holds(tier.from(), tier.to(), month)) {
          double upTo = tier.upTo().orElse(Double.POSITIVE_INFINITY);
          if (upTo <= reached) {
            problem(field, "tiers that do not rise in " + name(month), RISING);
            return;
          }
          reached = upTo;
        }
      }
      if (reached < Double.POSITIVE_INFINITY) {
        String found =
            reached == 0 ? "no tier in " : "tiers that end at " + Math.round(reached) + " kWh in ";
        problem(field, found + name(month), RISING);
        return;
      }
    }
    if (prices.otherUse().isEmpty()) {
      warnings.add(
          new Warning(
              "prices.otherUse",
              "other use a month is not told: the unit is reckoned from the first tier on, though house and shop may"
                  + " have filled it already."));
    }
  }

  private void hours(Electricity.TimeOfUse tariff) {
    List<Electricity.PricedHours> all = tariff.periods();
    for (int i = 0; i < all.size(); i++) {
      Schedule when = all.get(i).when();
      String field = "electricity.periods[" + i + "]";
      String found = "\"" + ScheduleText.write(when) + "\"";
      boolean part = when.periods().stream().anyMatch(period -> period.fraction() != 1);
      if (when.asWork() || part) {
        problem(
            field + ".when",
            found,
            "days and whole periods such as \"Mon-Fri 14:00-20:00\", nothing in percent");
        return;
      }
      for (int j = 0; j < i; j++) {
        if (meet(all.get(i), all.get(j))) {
          problem(
              field + ".when", found + ", which meets periods[" + j + "]", "hours of their own");
          return;
        }
      }
    }
  }

  private static boolean meet(Electricity.PricedHours one, Electricity.PricedHours other) {
    boolean month = false;
    for (Month each : Month.values()) {
      month |= holds(one.from(), one.to(), each) && holds(other.from(), other.to(), each);
    }
    Set<DayOfWeek> days = EnumSet.allOf(DayOfWeek.class);
    days.retainAll(one.when().days());
    days.retainAll(other.when().days());
    return month
        && !days.isEmpty()
        && one.when().periods().stream()
            .anyMatch(
                period ->
                    other.when().periods().stream()
                        .anyMatch(
                            against ->
                                period.startMinute() < against.endMinute()
                                    && against.startMinute() < period.endMinute()));
  }

  private static boolean holds(Month from, Month to, Month month) {
    boolean after = month.compareTo(from) >= 0;
    boolean before = month.compareTo(to) <= 0;
    return from.compareTo(to) <= 0 ? after && before : after || before;
  }

  private void changes() {
    Set<Improvement> priced = EnumSet.noneOf(Improvement.class);
    for (int i = 0; i < prices.changes().size(); i++) {
      Improvement change = prices.changes().get(i).change();
      if (!priced.add(change)) {
        problem(
            "changes[" + i + "].change",
            "\"" + Words.of(change) + "\", which has a price already",
            "each change once");
      }
    }
    Prices.FirstCosts costs = prices.firstCosts();
    if (costs.windowUnit().isEmpty()
        && (costs.heatPump().isPresent() || costs.heater().isPresent())) {
      warnings.add(
          new Warning("prices.firstCosts", "has no effect without the price of a window unit"));
    }
    if (prices.budget().isPresent() && prices.changes().isEmpty()) {
      warnings.add(
          new Warning("prices.budget", "has no effect: no change of the shop has a price"));
    }
  }

  private static String name(Month month) {
    String name = month.name();
    return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
  }
}
