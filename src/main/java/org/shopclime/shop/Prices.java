package org.shopclime.shop;

import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * What energy and things cost, as far as the owner says so.
 *
 * @param electricity price of a kWh
 * @param source where the prices come from and when, as the owner has it
 * @param monthlyCharge charge of every month whatever is used, $
 * @param demandCharge charge for the greatest hour of a month, $/kW
 * @param otherUse what else goes through the meter in a usual month, kWh
 * @param heater what heats, and what its fuel costs
 * @param firstCosts what cooling and heating cost to buy
 * @param changes what changes of the shop cost
 * @param budget what there is to spend on changes, $
 * @param ahead what is taken of the years to come
 */
public record Prices(
    @Say(
            label = "Electricity",
            help = "The price on your power bill; a state's mean is used until you say one.",
            otherwise = "state average")
        Electricity electricity,
    @Say(label = "Source and date", help = "Such as the bill of June 2026.", otherwise = "-")
        String source,
    @Say(
            label = "Monthly charge",
            help = "Paid whatever is used; no saving touches it.",
            kind = Kind.MONEY,
            max = 10000,
            usualMax = 100,
            otherwise = "0 dollars")
        double monthlyCharge,
    @Say(
            label = "Demand charge",
            help = "For the greatest hour of a month; homes rarely pay one.",
            kind = Kind.DEMAND_PRICE,
            max = 200,
            usualMax = 30,
            otherwise = "0 dollars/kW")
        double demandCharge,
    @Say(
            label = "Other use a month",
            help = "What house and shop use besides; with tiers it decides what a kWh more costs.",
            kind = Kind.ENERGY,
            max = 1e6,
            usualMax = 5000,
            otherwise = "none")
        Optional<Double> otherUse,
    @Say(
            label = "Heater",
            help = "Beside a heat pump: gives what that cannot.",
            otherwise = "electric")
        HeatSource heater,
    @Say(label = "To buy", otherwise = "{}") FirstCosts firstCosts,
    @Say(label = "Changes", help = "What each would cost.", otherwise = "[]")
        List<ChangePrice> changes,
    @Say(
            label = "Budget for changes",
            kind = Kind.MONEY,
            max = 1e6,
            usualMax = 20000,
            otherwise = "none")
        Optional<Double> budget,
    @Say(label = "Years ahead", otherwise = "{}") YearsAhead ahead) {

  /** Copies the list. */
  public Prices {
    changes = List.copyOf(changes);
  }

  /**
   * Prices of which nothing is said.
   *
   * @return the same as an absent field
   */
  static Prices unsaid() {
    return new Prices(
        new Electricity.StateAverage(),
        "",
        0,
        0,
        Optional.empty(),
        new HeatSource.Electric(),
        new FirstCosts(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            FirstCosts.UNIT_YEARS,
            FirstCosts.LONG_YEARS,
            FirstCosts.LONG_YEARS),
        List.of(),
        Optional.empty(),
        new YearsAhead(YearsAhead.USUAL, 0, 0, YearsAhead.USUAL_BAND));
  }

  /**
   * What cooling and heating cost to buy, put in included.
   *
   * @param windowUnit a window unit, $
   * @param heatPump a heat pump that cools and heats, $
   * @param heater the heater a window unit needs beside it, $
   * @param windowUnitYears years a window unit lasts, a whole number
   * @param heatPumpYears years a heat pump lasts, a whole number
   * @param heaterYears years a heater lasts, a whole number
   */
  public record FirstCosts(
      @Say(
              label = "Window unit",
              kind = Kind.MONEY,
              max = 1e5,
              usualMin = 100,
              usualMax = 1500,
              otherwise = "none")
          Optional<Double> windowUnit,
      @Say(
              label = "Heat pump",
              help = "With what it costs to put it in.",
              kind = Kind.MONEY,
              max = 1e5,
              usualMin = 500,
              usualMax = 10000,
              otherwise = "none")
          Optional<Double> heatPump,
      @Say(
              label = "Heater",
              help = "The one a window unit needs beside it.",
              kind = Kind.MONEY,
              max = 1e5,
              usualMax = 3000,
              otherwise = "none")
          Optional<Double> heater,
      @Say(label = "Window unit lasts, years", min = 1, max = 50, otherwise = "10")
          double windowUnitYears,
      @Say(label = "Heat pump lasts, years", min = 1, max = 50, otherwise = "15")
          double heatPumpYears,
      @Say(label = "Heater lasts, years", min = 1, max = 50, otherwise = "15") double heaterYears) {

    /** Usual lives, common practice. */
    private static final double UNIT_YEARS = 10;

    private static final double LONG_YEARS = 15;
  }

  /**
   * What a change of the shop costs.
   *
   * @param change which
   * @param cost $, with everything that belongs to it
   */
  public record ChangePrice(
      @Say(label = "Change") Improvement change,
      @Say(
              label = "Cost",
              help = "Material, and work if somebody is paid for it.",
              kind = Kind.MONEY,
              max = 1e6,
              usualMax = 20000)
          double cost) {}

  /**
   * What is taken of the years to come.
   *
   * @param years how many are looked at, a whole number
   * @param rise rise of energy prices a year
   * @param discount by how much a year later makes money count less
   * @param band by how much prices may be off either way
   */
  public record YearsAhead(
      @Say(label = "Years", min = 1, max = 50, usualMin = 5, usualMax = 30, otherwise = "15")
          double years,
      @Say(
              label = "Energy prices rise",
              help = "A year.",
              kind = Kind.FRACTION,
              min = -0.2,
              max = 0.3,
              usualMin = -0.02,
              usualMax = 0.08,
              otherwise = "0 %")
          double rise,
      @Say(
              label = "Discount rate",
              help = "What money earns elsewhere, a year.",
              kind = Kind.FRACTION,
              max = 0.3,
              usualMax = 0.12,
              otherwise = "0 %")
          double discount,
      @Say(
              label = "Prices may be off by",
              help = "Either way; makes the band of costs.",
              kind = Kind.FRACTION,
              max = 0.9,
              usualMax = 0.5,
              otherwise = "20 %")
          double band) {

    private static final double USUAL = 15;
    private static final double USUAL_BAND = 0.2;
  }
}
