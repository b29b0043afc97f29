package org.shopclime.report;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.shopclime.bill.Course;
import org.shopclime.bill.KnownPrice;
import org.shopclime.bill.LabelYear;
import org.shopclime.bill.MonthlyCost;
import org.shopclime.bill.Outlook;
import org.shopclime.bill.Rate;
import org.shopclime.plan.FirstSteps;
import org.shopclime.plan.Payback;
import org.shopclime.plan.PriceBook;
import org.shopclime.plan.PumpSaving;
import org.shopclime.plan.ToBuy;
import org.shopclime.plan.YearAnswer;
import org.shopclime.plan.YearBill;
import org.shopclime.plan.YearCost;
import org.shopclime.run.Cooling;
import org.shopclime.run.PumpYear;
import org.shopclime.shop.EfficiencyLabel;

/** A year's money in words and rows. */
final class BillText {

  private static final double CENTS = 100;
  private static final double SMALL = 10;
  private static final double LONG = 100;
  private static final double NOTHING = 0.5;

  private final YearAnswer answer;
  private final YearBill bill;
  private final YearCost cost;
  private final PriceBook prices;

  BillText(YearAnswer answer) {
    this.answer = answer;
    bill = answer.bill();
    cost = bill.cost();
    prices = bill.prices();
  }

  /** Dollars, to the cent where they are few: "$158", "$4.20". */
  static String dollars(double amount) {
    double cents = Math.rint(CENTS * amount) / CENTS + 0.0;
    return (cents < 0 ? "−$" : "$")
        + (Math.abs(cents) < SMALL && cents != Math.rint(cents)
            ? String.format(Locale.ROOT, "%.2f", Math.abs(cents))
            : Shown.grouped(Math.round(Math.abs(cents))));
  }

  /** What somebody typed, to the cent: "$14.50", "$350". */
  private static String typed(double amount) {
    return amount == Math.rint(amount)
        ? dollars(amount)
        : "$" + String.format(Locale.ROOT, "%,.2f", amount);
  }

  /** A price, $/kWh, as "15.04 cents". */
  private static String cents(double price) {
    String text = String.format(Locale.ROOT, "%.2f", CENTS * price);
    return text.replaceAll("\\.?0+$", "") + " cents";
  }

  private boolean draws() {
    return cost.unit().total() >= NOTHING;
  }

  private boolean pumps() {
    return cost.pump().total() >= NOTHING;
  }

  private boolean dries() {
    return cost.drier().total() >= NOTHING;
  }

  private boolean heats() {
    return cost.heat().total() >= NOTHING;
  }

  /** What the year costs, in one sentence; empty where nothing cools or heats. */
  String sentence() {
    List<String> parts = new ArrayList<>();
    if (draws()) {
      parts.add(
          dollars(cost.cooling().total()) + " a year for the unit" + (pumps() ? " to cool" : ""));
    }
    if (pumps()) {
      parts.add(dollars(cost.pumping().total()) + " for it to heat");
    }
    if (heats()) {
      parts.add(
          dollars(cost.heater().total())
              + (pumps() ? " for " + heater() + " beside it" : " for heating by " + heater()));
    }
    if (dries()) {
      parts.add(
          dollars(cost.drying().total())
              + (parts.isEmpty() ? " a year" : "")
              + " for the dehumidifier");
    }
    return parts.isEmpty() ? "" : " That is about " + Shown.row(parts) + ".";
  }

  private String heater() {
    return prices.fuel().map(fuel -> fuel.name()).orElse("plain electric heaters");
  }

  /** Where the prices come from, what they make of the year, and how sure that is. */
  List<String> facts() {
    List<String> facts = new ArrayList<>();
    if (!draws() && !heats() && !pumps() && !dries()) {
      return facts;
    }
    facts.add(price() + charge());
    facts.add(months());
    label().ifPresent(facts::add);
    bill.toBuy().ifPresent(bought -> facts.add(toBuy(bought)));
    bill.pumpSaving().ifPresent(saving -> facts.add(saving(saving)));
    return facts;
  }

  private String price() {
    String typed = prices.source().isBlank() ? "as typed" : Shown.line(prices.source());
    if (prices.known().isPresent()) {
      return known(prices.known().get());
    }
    Rate rate = prices.tariff().rate();
    if (rate instanceof Rate.Flat flat) {
      return "Price of electricity: " + cents(flat.price()) + " a kWh (" + typed + ").";
    }
    String way = rate instanceof Rate.Tiered ? "by the month's use" : "by the hour";
    String mean =
        cost.unitPrice().isPresent()
            ? " A kWh of the unit costs "
                + cents(cost.unitPrice().getAsDouble())
                + " in the mean, on top of "
                + Shown.grouped(Math.round(prices.otherUse()))
                + " kWh a month of other use."
            : "";
    return "Price of electricity: " + way + " (" + typed + ")." + mean;
  }

  private String known(KnownPrice price) {
    String whose =
        price.isOfState()
            ? "what homes in " + price.area() + " paid in the mean of " + price.year()
            : "what homes in the whole country paid in the mean of "
                + price.year()
                + ", since this version has no figure of "
                + answer.home().state();
    return "Price of electricity: "
        + cents(price.price())
        + " a kWh, "
        + whose
        + "; "
        + price.source()
        + ". Yours stands on your power bill: type it under prices.";
  }

  private String charge() {
    double charge = prices.tariff().monthlyCharge();
    return charge > 0
        ? " The monthly charge of " + typed(charge) + " is paid anyway and left out."
        : "";
  }

  private String months() {
    StringBuilder text = new StringBuilder("Cost: ");
    List<String> parts = new ArrayList<>();
    if (draws()) {
      parts.add("the unit " + (pumps() ? "to cool " : "") + worst(cost.cooling()));
    }
    if (pumps()) {
      parts.add("the unit to heat " + worst(cost.pumping()));
    }
    if (heats()) {
      String burnt =
          cost.fuel()
              .map(
                  amount ->
                      String.format(
                          Locale.ROOT, ", %.1f %s", amount, prices.fuel().orElseThrow().unit()))
              .orElse("");
      parts.add("heating by " + heater() + " " + worst(cost.heater()) + burnt);
    }
    if (dries()) {
      parts.add("the dehumidifier " + worst(cost.drying()));
    }
    text.append(String.join("; ", parts));
    text.append(". With prices ")
        .append(Shown.percent(prices.band()))
        .append(" lower or higher it is ")
        .append(dollars(bill.low()))
        .append(" to ")
        .append(dollars(bill.high()))
        .append(parts.size() > 1 ? " a year together." : " a year.");
    return text.toString();
  }

  private static String worst(MonthlyCost cost) {
    Month most = Stream.of(Month.values()).max(Comparator.comparingDouble(cost::of)).orElseThrow();
    return dollars(cost.total())
        + " a year, "
        + dollars(cost.of(most))
        + " of it in "
        + most.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** The year of the energy label beside the year of the shop. */
  private Optional<String> label() {
    return answer
        .shop()
        .unit()
        .filter(unit -> draws() && unit.label() == EfficiencyLabel.CEER)
        .filter(unit -> unit.capacity() > 0)
        .map(unit -> LabelYear.kilowattHours(unit.capacity(), unit.efficiency()))
        .map(
            used ->
                "The energy label's year is one of 750 hours by convention: "
                    + Shown.grouped(Math.round(used))
                    + " kWh, "
                    + dollars(used * cost.unitPrice().orElse(0))
                    + " at the same price. It knows nothing of this shop.");
  }

  /** How dear a heat pump may be, where nobody said what things cost to buy. */
  private String saving(PumpSaving saving) {
    String draws =
        "A usual heat pump of the same size ("
            + Math.round(PumpYear.EER)
            + " BTU/Wh, "
            + Cooling.USUAL_COP
            + " times its power as heat in mild cold) would draw "
            + Shown.grouped(Math.round(saving.cooling()))
            + " kWh to cool and "
            + Shown.grouped(Math.round(saving.heating()))
            + " kWh to heat, "
            + dollars(saving.pump())
            + " a year in place of "
            + dollars(saving.window())
            + ". ";
    return draws
        + (saving.worth() > 0
            ? "Over "
                + prices.outlook().years()
                + " years that is worth "
                + dollars(saving.worth())
                + " ("
                + dollars(saving.worthLow())
                + " to "
                + dollars(saving.worthHigh())
                + " with energy "
                + Shown.percent(prices.band())
                + " cheaper or dearer): so much more than window units and heaters bought in that"
                + " time it may cost with its putting in, and not more. "
            : "It never makes up for a higher price. ")
        + "Type both prices under prices, first costs, to be told the year. "
        + outlook();
  }

  /** The unit and its heater over the years, and what a heat pump would have to beat. */
  private String toBuy(ToBuy bought) {
    Outlook outlook = prices.outlook();
    Course window = bought.window();
    String text =
        "Over "
            + outlook.years()
            + " years "
            + window.name()
            + " costs "
            + dollars(window.presentCost(outlook))
            + ": "
            + dollars(window.firstCost())
            + " to buy, again when worn out, and "
            + dollars(window.yearlyCost())
            + " a year to run. ";
    if (bought.breakEven().isPresent()) {
      double even = bought.breakEven().getAsDouble();
      String pump = "A heat pump at " + typed(pumpPrice());
      text +=
          even > 0
              ? pump
                  + " costs less over these years if cooling and heating with it take less than "
                  + dollars(even)
                  + " a year. "
              : pump + " costs more over these years even if it ran for nothing. ";
    }
    return text + bought.pump().map(this::pump).orElse("") + outlook();
  }

  private String pump(ToBuy.Pump pump) {
    Outlook outlook = prices.outlook();
    String years = outlook.years() + " years";
    String which =
        pump.owned()
            ? "Yours draws about "
            : "A usual one of the same size ("
                + Math.round(PumpYear.EER)
                + " BTU/Wh, "
                + Cooling.USUAL_COP
                + " times its power as heat at 47 °F) would draw about ";
    return which
        + Shown.grouped(Math.round(pump.cooling()))
        + " kWh for cooling and "
        + Shown.grouped(Math.round(pump.heating()))
        + " kWh for "
        + Shown.grouped(Math.round(pump.heat()))
        + " kWh of heat"
        + (pump.resistance() >= 1
            ? ", "
                + Shown.grouped(Math.round(pump.resistance()))
                + " kWh of it by "
                + (pump.owned() ? heater() : "resistance")
            : "")
        + ": "
        + dollars(pump.course().yearlyCost())
        + " a year, "
        + dollars(pump.course().presentCost(outlook))
        + " over "
        + years
        + ". "
        + ahead(pump, years);
  }

  /** From when on the dearer one to buy has cost less. */
  private String ahead(ToBuy.Pump pump, String years) {
    String dearer =
        pump.course().firstCost() >= bill.toBuy().orElseThrow().window().firstCost()
            ? "The heat pump"
            : "The window unit";
    if (pump.ahead().today().isEmpty()) {
      return dearer
          + " does not make up for its price within "
          + years
          + (pump.ahead().dear().isPresent() ? " unless energy gets dearer. " : ". ");
    }
    return dearer
        + " has cost less from year "
        + pump.ahead().today().getAsInt()
        + " on ("
        + year(pump.ahead().dear())
        + " with energy "
        + Shown.percent(prices.band())
        + " dearer, "
        + year(pump.ahead().cheap())
        + " with it cheaper). ";
  }

  private static String year(OptionalInt year) {
    return year.isPresent() ? "year " + year.getAsInt() : "never";
  }

  private double pumpPrice() {
    return answer.shop().prices().firstCosts().heatPump().orElseThrow();
  }

  /** Whether changes have prices. */
  boolean hasPaybacks() {
    return !bill.paybacks().isEmpty();
  }

  static List<String> paybackHead() {
    return List.of("", "costs", "saves kWh", "saves a year", "pays back in", "hot work");
  }

  List<List<String>> paybackRows() {
    return bill.paybacks().stream().map(this::row).toList();
  }

  private List<String> row(Payback change) {
    return List.of(
        Shown.line(change.name()),
        typed(change.cost()),
        Shown.grouped(Math.round(change.savedKwh())),
        dollars(change.saved()),
        years(change),
        Shown.grouped(Math.round(change.hotWorkHours())));
  }

  /** Years of simple payback over the band of prices, as "4.1–6.2 years". */
  private String years(Payback change) {
    if (change.years().isEmpty()) {
      return "never";
    }
    String soon = years(change.years(1 + prices.band()));
    String late = years(change.years(1 - prices.band()));
    return (soon.equals(late) ? soon : soon + "–" + late) + " years";
  }

  private static String years(OptionalDouble years) {
    double figure = years.orElseThrow();
    return figure > LONG
        ? "over 100"
        : String.format(Locale.ROOT, figure < SMALL ? "%.1f" : "%.0f", figure);
  }

  /** What the columns mean. */
  String paybackNote() {
    return "Each line is the year run whole with that one change. Saves kWh: electricity a year, below"
        + " 0 where more is drawn"
        + prices
            .fuel()
            .map(fuel -> "; what is saved of " + fuel.name() + " is in the money")
            .orElse("")
        + ". Pays back in: cost over yearly saving at today's prices, "
        + Shown.percent(prices.band())
        + " higher to lower. Hot work: working hours above 85 °F after it; now "
        + Shown.grouped(Math.round(YearFigures.hotWorkHours(answer.described(), answer.room())))
        + ". A small saving may still be worth its comfort: size tells what each does on the hot day.";
  }

  /** What to do first with the budget. */
  Optional<String> firstSteps() {
    return bill.firstSteps().map(this::told);
  }

  private String told(FirstSteps first) {
    String with = "With " + typed(first.budget()) + ": ";
    if (first.steps().isEmpty()) {
      return with
          + "none of the priced changes that it buys pays for itself within "
          + prices.outlook().years()
          + " years by energy alone. "
          + outlook();
    }
    List<String> steps = new ArrayList<>();
    for (Payback step : first.steps()) {
      steps.add(
          Shown.line(step.name())
              + " ("
              + typed(step.cost())
              + ", saves "
              + dollars(step.saved())
              + " a year)");
    }
    double left = first.budget() - first.cost();
    return with
        + (steps.size() > 1 ? "first " : "")
        + String.join(", then ", steps)
        + ". "
        + (steps.size() > 1
            ? "Each saving is on top of those before it; together "
                + dollars(first.saved())
                + " a year. "
            : "")
        + (left >= 1 ? dollars(left) + " is left. " : "")
        + "No other choice within that money gains more over "
        + prices.outlook().years()
        + " years. "
        + outlook();
  }

  private String outlook() {
    Outlook outlook = prices.outlook();
    return outlook.rise() == 0 && outlook.discount() == 0
        ? "Prices are taken to stay as they are, and later money to count as much as money now."
        : "Energy prices are taken to rise by "
            + rate(outlook.rise())
            + " a year, and money a year later to count "
            + rate(outlook.discount())
            + " less.";
  }

  private static String rate(double fraction) {
    String text = String.format(Locale.ROOT, "%.1f", CENTS * fraction);
    return text.replaceAll("\\.0$", "").replace('-', '−') + " %";
  }
}
