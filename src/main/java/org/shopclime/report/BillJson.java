package org.shopclime.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Month;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.shopclime.bill.MonthlyCost;
import org.shopclime.bill.Outlook;
import org.shopclime.bill.Rate;
import org.shopclime.plan.FirstSteps;
import org.shopclime.plan.Payback;
import org.shopclime.plan.PriceBook;
import org.shopclime.plan.ToBuy;
import org.shopclime.plan.YearBill;
import org.shopclime.plan.YearCost;

/**
 * A year's money for machines: dollars (Usd), years, prices in $/kWh (UsdPerKwh), parts of 1
 * (Fraction).
 */
final class BillJson {

  private static final int DECIMALS = 4;

  private BillJson() {}

  static void put(ObjectNode root, YearBill bill) {
    YearCost cost = bill.cost();
    PriceBook prices = bill.prices();
    ObjectNode json = root.putObject("bill");
    put(json, "costUsd", "monthlyCostUsd", cost.all());
    put(json, "unitCostUsd", "monthlyUnitCostUsd", cost.cooling());
    put(json, "heatingCostUsd", "monthlyHeatingCostUsd", cost.heating());
    put(json, "dehumidifierCostUsd", "monthlyDehumidifierCostUsd", cost.drying());
    json.put("costLowUsd", rounded(bill.low()));
    json.put("costHighUsd", rounded(bill.high()));
    json.put("unitPriceUsdPerKwh", rounded(cost.unitPrice()));
    json.put("heating", prices.fuel().map(fuel -> fuel.name()).orElse("electric"));
    prices
        .fuel()
        .ifPresent(
            fuel ->
                json.put(
                    fuel.unit().equals("gal") ? "fuelGal" : "fuelTherm",
                    rounded(cost.fuel().orElseThrow())));
    price(json.putObject("price"), prices);
    Outlook outlook = prices.outlook();
    json.putObject("ahead")
        .put("lookedAtYears", outlook.years())
        .put("riseFraction", rounded(outlook.rise()))
        .put("discountFraction", rounded(outlook.discount()))
        .put("bandFraction", rounded(prices.band()));
    ArrayNode changes = json.putArray("changes");
    bill.paybacks().forEach(each -> change(changes.addObject(), each, prices));
    bill.toBuy().ifPresent(bought -> toBuy(json.putObject("toBuy"), bought, outlook));
    bill.pumpSaving()
        .ifPresent(
            saving ->
                json.putObject("heatPumpSaving")
                    .put("yearlyCostUsd", rounded(saving.pump()))
                    .put("windowUnitYearlyCostUsd", rounded(saving.window()))
                    .put("coolingKwh", rounded(saving.cooling()))
                    .put("heatingKwh", rounded(saving.heating()))
                    .put("mayCostMoreUsd", rounded(saving.worth()))
                    .put("mayCostMoreWithCheapEnergyUsd", rounded(saving.worthLow()))
                    .put("mayCostMoreWithDearEnergyUsd", rounded(saving.worthHigh())));
    bill.firstSteps().ifPresent(first -> firstSteps(json.putObject("firstSteps"), first, prices));
  }

  private static void toBuy(ObjectNode json, ToBuy bought, Outlook outlook) {
    json.put("name", bought.window().name())
        .put("priceUsd", rounded(bought.window().firstCost()))
        .put("yearlyCostUsd", rounded(bought.window().yearlyCost()))
        .put("presentCostUsd", rounded(bought.window().presentCost(outlook)))
        .put("heatPumpBreakEvenYearlyUsd", rounded(bought.breakEven()));
    bought.pump().ifPresent(pump -> pump(json.putObject("heatPump"), pump, outlook));
  }

  private static void pump(ObjectNode json, ToBuy.Pump pump, Outlook outlook) {
    json.put("owned", pump.owned())
        .put("priceUsd", rounded(pump.course().firstCost()))
        .put("coolingKwh", rounded(pump.cooling()))
        .put("heatingKwh", rounded(pump.heating()))
        .put("heatKwh", rounded(pump.heat()))
        .put("resistanceKwh", rounded(pump.resistance()))
        .put("yearlyCostUsd", rounded(pump.course().yearlyCost()))
        .put("presentCostUsd", rounded(pump.course().presentCost(outlook)))
        .put("gainUsd", rounded(pump.gain()));
    year(json, "aheadInYear", pump.ahead().today());
    year(json, "aheadInYearWithCheapEnergy", pump.ahead().cheap());
    year(json, "aheadInYearWithDearEnergy", pump.ahead().dear());
  }

  private static void year(ObjectNode json, String key, OptionalInt year) {
    if (year.isPresent()) {
      json.put(key, year.getAsInt());
    } else {
      json.putNull(key);
    }
  }

  private static void price(ObjectNode json, PriceBook prices) {
    Rate rate = prices.tariff().rate();
    json.put(
        "kind",
        rate instanceof Rate.Flat ? "flat" : rate instanceof Rate.Tiered ? "tiers" : "time of use");
    if (rate instanceof Rate.Flat flat) {
      json.put("electricityUsdPerKwh", rounded(flat.price()));
    }
    json.put("typed", prices.known().isEmpty());
    json.put("source", prices.known().map(known -> known.source()).orElse(prices.source()));
    prices.known().ifPresent(known -> json.put("area", known.area()).put("year", known.year()));
    json.put("otherUseKwhPerMonth", rounded(prices.otherUse()));
    json.put("monthlyChargeUsd", rounded(prices.tariff().monthlyCharge()));
  }

  private static void change(ObjectNode json, Payback change, PriceBook prices) {
    json.put("name", change.name())
        .put("priceUsd", rounded(change.cost()))
        .put("savedKwh", rounded(change.savedKwh()))
        .put("savedUsd", rounded(change.saved()))
        .put("paybackYears", rounded(change.years()))
        .put("paybackLowYears", rounded(change.years(1 + prices.band())))
        .put("paybackHighYears", rounded(change.years(1 - prices.band())))
        .put("gainUsd", rounded(change.gain(prices.outlook())))
        .put("workHoursAbove85FH", rounded(change.hotWorkHours()));
  }

  private static void firstSteps(ObjectNode json, FirstSteps first, PriceBook prices) {
    json.put("budgetUsd", rounded(first.budget()))
        .put("priceUsd", rounded(first.cost()))
        .put("savedUsd", rounded(first.saved()));
    ArrayNode steps = json.putArray("steps");
    first.steps().forEach(step -> change(steps.addObject(), step, prices));
  }

  static void put(ObjectNode json, String yearly, String monthly, MonthlyCost cost) {
    json.put(yearly, rounded(cost.total()));
    ArrayNode months = json.putArray(monthly);
    for (Month month : Month.values()) {
      months.add(rounded(cost.of(month)));
    }
  }

  private static BigDecimal rounded(OptionalDouble value) {
    return value.isPresent() ? rounded(value.getAsDouble()) : null;
  }

  private static BigDecimal rounded(double value) {
    return SizeJson.rounded(value, DECIMALS);
  }
}
