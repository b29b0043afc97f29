package org.shopclime.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shopclime.bill.MonthlyCost;
import org.shopclime.climate.Climates;
import org.shopclime.quantity.Units;
import org.shopclime.run.YearResult.Figure;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Drier;
import org.shopclime.shop.EfficiencyLabel;
import org.shopclime.shop.Electricity;
import org.shopclime.shop.Examples;
import org.shopclime.shop.HeatSource;
import org.shopclime.shop.Improvement;
import org.shopclime.shop.Prices;
import org.shopclime.shop.PumpHeat;
import org.shopclime.shop.PumpWinter;
import org.shopclime.shop.Room;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.UnitKind;
import org.shopclime.shop.Words;

/** The year in money: against the year's own kWh, and changes against years run on their own. */
class YearBillTest {

  private static Climates climates;
  private static YearAnswer plain;

  @BeforeAll
  static void load() {
    climates = Climates.load();
    plain = year(Examples.shop("insulated"));
  }

  private static YearAnswer year(Shop shop) {
    return new Yearly(shop, climates).ofDayTypes(List.of(), Progress.silent()).orElseThrow();
  }

  private static Shop priced(Shop shop, Map<String, Object> said) {
    return shop.withPrices(ShopParts.create(Prices.class, said));
  }

  private static List<Prices.ChangePrice> costs(Object... changesAndCosts) {
    List<Prices.ChangePrice> costs = new ArrayList<>();
    for (int i = 0; i < changesAndCosts.length; i += 2) {
      costs.add(
          new Prices.ChangePrice(
              (Improvement) changesAndCosts[i], ((Integer) changesAndCosts[i + 1])));
    }
    return costs;
  }

  @Test
  void withoutATypedPriceItIsTheNationsMean() {
    YearBill bill = plain.bill();
    assertThat(bill.prices().known().orElseThrow().area()).isEqualTo("US");
    double drawn = plain.described().kilowattHours(Figure.POWER, 0);
    double heat = plain.described().kilowattHours(Figure.HEATING, 0);
    assertThat(drawn).isGreaterThan(500);
    assertThat(bill.cost().cooling().total()).isCloseTo(0.1504 * drawn, offset(1e-6));
    assertThat(bill.cost().heating().total()).isCloseTo(0.1504 * heat, offset(1e-6));
    assertThat(bill.cost().electricity()).isCloseTo(drawn + heat, offset(1e-6));
    assertThat(bill.low()).isCloseTo(0.8 * bill.cost().total(), offset(1e-9));
    assertThat(bill.high()).isCloseTo(1.2 * bill.cost().total(), offset(1e-9));
    assertThat(bill.paybacks()).isEmpty();
    assertThat(bill.firstSteps()).isEmpty();
  }

  /** A unit on top of 900 kWh pays the dear tier of above 900 kWh alone. */
  @Test
  void tiersAreFilledByTheOtherUseFirst() {
    Electricity tiers =
        new Electricity.Tiers(
            List.of(
                new Electricity.Tier(
                    0.10, Optional.of(900.0), java.time.Month.JANUARY, java.time.Month.DECEMBER),
                new Electricity.Tier(
                    0.20, Optional.empty(), java.time.Month.JANUARY, java.time.Month.DECEMBER)));
    Shop shop = priced(plain.shop(), Map.of("electricity", tiers));
    PriceBook alone = PriceBook.of(shop, plain.home());
    assertThat(alone.cost(plain.described()).unitPrice().orElseThrow())
        .isCloseTo(0.10, offset(1e-9));
    Shop withHouse =
        priced(plain.shop(), Map.of("electricity", tiers, "otherUse", Optional.of(900.0)));
    YearCost dear = PriceBook.of(withHouse, plain.home()).cost(plain.described());
    assertThat(dear.unitPrice().orElseThrow()).isCloseTo(0.20, offset(1e-9));
  }

  /** 1 gal of propane holds 91,452 BTU, 26.80 kWh; 80 % of it are 21.44 kWh. */
  @Test
  void aFuelIsBoughtForTheHeat() {
    HeatSource propane = new HeatSource.Propane(2.5 / Units.CUBIC_METRES_PER_GALLON, 0.8);
    Shop shop = priced(plain.shop(), Map.of("heater", propane));
    YearCost cost = PriceBook.of(shop, plain.home()).cost(plain.described());
    double heat = plain.described().kilowattHours(Figure.HEATING, 0);
    assertThat(cost.fuel().orElseThrow()).isCloseTo(heat / 21.44, offset(0.001 * heat / 21.44));
    assertThat(cost.heating().total()).isCloseTo(2.5 * cost.fuel().orElseThrow(), offset(1e-9));
    assertThat(cost.electricity())
        .isCloseTo(plain.described().kilowattHours(Figure.POWER, 0), offset(1e-6));
  }

  @Test
  void aChangeSavesWhatAYearRunWithItSaves() {
    Shop shop =
        priced(
            Examples.shop("bare-studs"),
            Map.of(
                "electricity",
                new Electricity.Flat(0.2),
                "changes",
                costs(Improvement.WALLS_FILLED, 350, Improvement.LEAKS_HALVED, 120)));
    YearAnswer answer = year(shop);
    assertThat(answer.bill().paybacks()).hasSize(2);
    for (Payback payback : answer.bill().paybacks()) {
      Shop after = Changes.of(shop).get(payback.name());
      YearAnswer alone =
          year(
              after.withPrices(
                  ShopParts.create(
                      Prices.class, Map.of("electricity", new Electricity.Flat(0.2)))));
      double saved = answer.bill().cost().total() - alone.bill().cost().total();
      assertThat(payback.saved()).as(payback.name()).isCloseTo(saved, offset(1e-9));
      assertThat(payback.saved()).isPositive();
      assertThat(payback.savedKwh()).isCloseTo(saved / 0.2, offset(1e-7));
      assertThat(payback.years().orElseThrow()).isCloseTo(payback.cost() / saved, offset(1e-9));
      assertThat(payback.gain(answer.bill().prices().outlook()))
          .isCloseTo(15 * saved - payback.cost(), offset(1e-7));
      assertThat(payback.hotWorkHours())
          .isEqualTo(alone.described().workHoursAbove(Figure.AIR, 0, Units.celsius(85)));
    }
  }

  /** Of eight sets of three changes the one that gains most, found by running all of them. */
  @Test
  void theBudgetBuysTheBestSet() {
    List<Prices.ChangePrice> costs =
        costs(
            Improvement.WALLS_FILLED, 350,
            Improvement.LEAKS_HALVED, 120,
            Improvement.HALF_INCH_IN_DOORS, 40);
    Shop bare = Examples.shop("bare-studs");
    for (double budget : new double[] {130, 400}) {
      YearBill bill =
          year(priced(bare, Map.of("changes", costs, "budget", Optional.of(budget)))).bill();
      FirstSteps first = bill.firstSteps().orElseThrow();
      assertThat(first.cost()).isLessThanOrEqualTo(budget);
      double best = 0;
      for (int set = 1; set < 8; set++) {
        Shop after = bare;
        double price = 0;
        for (int i = 0; i < 3; i++) {
          if ((set >> i & 1) == 1) {
            after = Changes.of(after).get(Words.of(costs.get(i).change()));
            price += costs.get(i).cost();
          }
        }
        if (price <= budget) {
          double saved = bill.cost().total() - year(after).bill().cost().total();
          best = Math.max(best, 15 * saved - price);
        }
      }
      assertThat(15 * first.saved() - first.cost()).as("$%s", budget).isCloseTo(best, offset(1e-6));
    }
  }

  @Test
  void oneFoamTakesThePlaceOfAnother() {
    YearAnswer answer =
        year(
            priced(
                Examples.shop("bare-studs"),
                Map.of(
                    "changes",
                    costs(
                        Improvement.HALF_INCH_IN_DOORS, 20,
                        Improvement.INCH_IN_DOORS, 30,
                        Improvement.INCH_AND_HALF_IN_DOORS, 40),
                    "budget",
                    Optional.of(500.0))));
    assertThat(answer.bill().paybacks()).hasSize(3);
    assertThat(answer.bill().firstSteps().orElseThrow().steps()).hasSize(1);
  }

  @Test
  void whatNeverPaysIsNotTaken() {
    YearAnswer answer =
        year(
            priced(
                Examples.shop("bare-studs"),
                Map.of(
                    "changes",
                    costs(Improvement.DOOR_SEALS_TIGHT, 5000, Improvement.CEILING_FILLED, 9000),
                    "budget",
                    Optional.of(20_000.0))));
    assertThat(answer.bill().firstSteps().orElseThrow().steps()).isEmpty();
  }

  @Test
  void aChangeThatLeavesTheShopAsItIsIsTold() {
    Shop shop =
        priced(
            Examples.shop("insulated"),
            Map.of("changes", costs(Improvement.WALLS_FILLED, 350, Improvement.LEAKS_HALVED, 100)));
    YearAnswer answer = year(shop);
    assertThat(answer.bill().paybacks()).extracting(Payback::name).containsExactly("leaks halved");
    assertThat(answer.warnings())
        .anySatisfy(
            warning -> {
              assertThat(warning.path()).isEqualTo("prices.changes[0]");
              assertThat(warning.text()).contains("like that already");
            });
  }

  /** Words of prices and words of answers are the same. */
  @Test
  void everyPricedChangeIsOneThatIsTold() {
    Shop bare = Examples.shop("bare-studs");
    for (Improvement change : Improvement.values()) {
      assertThat(Changes.of(bare)).containsKey(Words.of(change));
    }
  }

  private static Shop withUnit(UnitKind kind, double efficiency, EfficiencyLabel label) {
    Prices.FirstCosts costs =
        ShopParts.create(
            Prices.FirstCosts.class,
            Map.of("windowUnit", Optional.of(400.0), "heatPump", Optional.of(1900.0)));
    CoolingUnit unit = plain.shop().unit().orElseThrow();
    Record changed = ShopParts.with(unit.withKind(kind), "efficiency", efficiency);
    changed = ShopParts.with(changed, "label", label);
    return priced(plain.shop(), Map.of("firstCosts", costs))
        .withUnit(Optional.of((CoolingUnit) changed));
  }

  /**
   * A usual heat pump as the shop's own costs what it costs where it is held against a window unit,
   * from either side.
   */
  @Test
  void anOwnHeatPumpHeatsAndAgreesWithTheComparison() {
    double eer = Units.wattsPerWattFromEer(12);
    YearAnswer window =
        year(withUnit(UnitKind.WINDOW, Units.wattsPerWattFromEer(10.9), EfficiencyLabel.CEER));
    YearAnswer pump = year(withUnit(UnitKind.VARIABLE_HEAT_PUMP, eer, EfficiencyLabel.EER));
    assertThat(window.heating(0)).isEqualTo(YearAnswer.Plant.IDEAL);
    assertThat(pump.heating(0)).isEqualTo(YearAnswer.Plant.UNIT);
    YearCost cost = pump.bill().cost();
    ToBuy.Pump usual = window.bill().toBuy().orElseThrow().pump().orElseThrow();
    ToBuy own = pump.bill().toBuy().orElseThrow();
    assertThat(usual.owned()).isFalse();
    assertThat(own.pump().orElseThrow().owned()).isTrue();
    assertThat(cost.total()).isCloseTo(usual.course().yearlyCost(), offset(1e-6));
    assertThat(own.pump().orElseThrow().course().yearlyCost())
        .isCloseTo(cost.total(), offset(1e-6));
    assertThat(own.pump().orElseThrow().ahead()).isEqualTo(usual.ahead());
    assertThat(own.window().yearlyCost()).isCloseTo(window.bill().cost().total(), offset(1e-6));
    double given = pump.described().kilowattHours(Figure.PUMP_HEAT, 0);
    double asked = pump.described().kilowattHours(Figure.HEATING, 0);
    assertThat(cost.heat().total()).isCloseTo(asked - given, offset(1e-9));
    assertThat(given / cost.pump().total()).isBetween(2.5, 6.0);
    assertThat(cost.electricity())
        .isCloseTo(cost.unit().total() + cost.pump().total() + cost.heat().total(), offset(1e-9));
    HeaterHelp help = HeaterHelp.of(pump.described(), 0);
    assertThat(help.heat()).isCloseTo(asked - given, offset(0.1)).isPositive();
    assertThat(help.rising()).isBetween(0.0, help.heat());
    assertThat(help.coldest()).isLessThanOrEqualTo(help.warmest());
    assertThat(HeaterHelp.of(window.described(), 0).heat()).isCloseTo(asked, offset(0.1));
  }

  /**
   * Without prices of purchase: the saving to run is that of the comparison with prices, and with
   * the price told as the dearest the two cost the same over the years. At a flat price over 15
   * plain years its worth is 15 times the yearly saving.
   */
  @Test
  void howDearAHeatPumpMayBeNeedsNoPriceOfPurchase() {
    PumpSaving saving = plain.bill().pumpSaving().orElseThrow();
    assertThat(plain.bill().toBuy()).isEmpty();
    assertThat(saving.window()).isCloseTo(plain.bill().cost().total(), offset(1e-6));
    assertThat(saving.worth()).isCloseTo(15 * (saving.window() - saving.pump()), offset(1e-6));
    assertThat(saving.worthLow()).isCloseTo(0.8 * saving.worth(), offset(1e-6));
    assertThat(saving.worth()).isPositive();
    Prices.FirstCosts even =
        ShopParts.create(
            Prices.FirstCosts.class,
            Map.of(
                "windowUnit",
                Optional.of(400.0),
                "windowUnitYears",
                15.0,
                "heatPump",
                Optional.of(400 + saving.worth())));
    YearAnswer priced = year(priced(plain.shop(), Map.of("firstCosts", even)));
    assertThat(priced.bill().pumpSaving()).isEmpty();
    ToBuy.Pump pump = priced.bill().toBuy().orElseThrow().pump().orElseThrow();
    assertThat(pump.course().yearlyCost()).isCloseTo(saving.pump(), offset(1e-6));
    assertThat(pump.gain()).isCloseTo(0, offset(0.01));
  }

  /** Gas beside a heat pump burns only for what the pump cannot give. */
  @Test
  void aFuelHelpsAHeatPump() {
    HeatSource gas = new HeatSource.NaturalGas(0.04, 0.8);
    Shop shop = withUnit(UnitKind.HEAT_PUMP, Units.wattsPerWattFromEer(10.9), EfficiencyLabel.CEER);
    YearAnswer answer =
        year(shop.withPrices((Prices) ShopParts.with(shop.prices(), "heater", gas)));
    YearCost cost = answer.bill().cost();
    assertThat(cost.heater().total()).isCloseTo(0.05 * cost.heat().total(), offset(1e-9));
    assertThat(cost.electricity())
        .isCloseTo(cost.unit().total() + cost.pump().total(), offset(1e-9));
    assertThat(answer.bill().toBuy().orElseThrow().pump().orElseThrow().course().yearlyCost())
        .isCloseTo(cost.total(), offset(1e-6));
  }

  /** One made to cool only leaves the winter to the heater; a label beyond all units is said. */
  @Test
  void whatItsPapersSayOfWinterCounts() {
    Shop shop = withUnit(UnitKind.HEAT_PUMP, Units.wattsPerWattFromEer(10.9), EfficiencyLabel.CEER);
    CoolingUnit unit = shop.unit().orElseThrow();
    PumpHeat usual =
        new PumpHeat(PumpWinter.HEATS, Optional.empty(), Optional.of(2.2), Units.celsius(5));
    PumpHeat only =
        new PumpHeat(PumpWinter.COOLS_ONLY, Optional.empty(), Optional.empty(), Units.celsius(5));
    PumpHeat boast =
        new PumpHeat(PumpWinter.HEATS, Optional.empty(), Optional.of(4.9), Units.celsius(5));
    YearAnswer heats = year(shop.withUnit(Optional.of(unit.withHeating(Optional.of(usual)))));
    YearAnswer cools = year(shop.withUnit(Optional.of(unit.withHeating(Optional.of(only)))));
    YearAnswer odd = year(shop.withUnit(Optional.of(unit.withHeating(Optional.of(boast)))));
    assertThat(cools.heating(0)).isEqualTo(YearAnswer.Plant.IDEAL);
    assertThat(cools.bill().cost().pump().total()).isZero();
    assertThat(heats.bill().cost().pump().total()).isPositive();
    assertThat(odd.bill().cost().pump().total()).isLessThan(heats.bill().cost().pump().total());
    assertThat(odd.warnings()).anyMatch(told -> told.path().equals("unit.heating.hspf2"));
    assertThat(heats.warnings()).noneMatch(told -> told.path().equals("unit.heating.hspf2"));
  }

  /** Each kWh of a dehumidifier is paid, on top of all else; the rest of the bill is its own. */
  @Test
  void aDehumidifierIsPaidFor() {
    Drier drier = new Drier(16.56 / 86_400, 1.57, 0.5);
    Shop shop = priced(plain.shop(), Map.of("electricity", new Electricity.Flat(0.2)));
    Room dried = shop.rooms().get(0).withDehumidifier(Optional.of(drier));
    List<Room> rooms = new ArrayList<>(shop.rooms());
    rooms.set(0, dried);
    YearAnswer answer = year(shop.withRooms(rooms));
    YearCost cost = answer.bill().cost();
    double drawn = answer.described().kilowattHours(Figure.DRIER_POWER, 0);
    assertThat(drawn).isGreaterThan(50);
    assertThat(cost.drier().total()).isCloseTo(drawn, offset(1e-9));
    assertThat(cost.drying().total()).isCloseTo(0.2 * drawn, offset(1e-9));
    assertThat(cost.total())
        .isCloseTo(cost.cooling().total() + cost.heating().total() + 0.2 * drawn, offset(1e-9));
    assertThat(cost.electricity())
        .isCloseTo(cost.unit().total() + cost.heat().total() + drawn, offset(1e-9));
    assertThat(plain.bill().cost().drying().total()).isZero();
  }

  @Test
  void monthsAddUp() {
    MonthlyCost all = plain.bill().cost().all();
    double sum = 0;
    for (java.time.Month month : java.time.Month.values()) {
      sum += all.of(month);
    }
    assertThat(sum).isCloseTo(plain.bill().cost().total(), offset(1e-9));
  }
}
