package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.ShopYear;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;

/** A room into which a cooler blows outdoor air through wet pads. */
@AddLifecycleHook(MoreTries.class)
class BlownRoomTest {

  private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;

  private static Cooling cooler(double cfm) {
    return Cooling.evaporative(0, cfm * CFM, 0.14 * cfm, 0.8);
  }

  /**
   * By pencil, at rest: outdoors 100 °F (37.8 °C) and 20 %, W 0.0082, wet bulb 20.6 °C; 80 % of the
   * way down is 24.0 °C, the blower's 140 W warm it by 0.3 K. 1,000 cfm are 0.472 m³/s of 1.12 kg
   * of dry air, at 1,031 J/kgK 545 W/K. The room gives 2,000 W; its two walls, 18 m² behind 1
   * m²·K/W and films, bring (37.8 - 28.5) x 18 / 1.2 = 140 W: it ends 2,140 / 545 = 3.9 K above the
   * supply. It is asked to be colder than that, so the cooler never stops.
   */
  @Test
  void aRoomAtRestIsAsFarAboveTheSupplyAsItsHeatIsOfTheFlow() {
    double outdoor = MadeShops.celsius(100);
    double water = MoistAir.humidityRatioFromRelativeHumidity(outdoor, 0.2, 101325);
    Shop box =
        MadeShops.box(
            "100 m3",
            "0.0001 /h",
            ", \"setPoint\": \"41 °F\", \"gains\": [{\"kind\": \"other\", \"name\": \"Heat\","
                + " \"power\": \"2000 W\", \"radiantFraction\": \"0 %\"}]");
    Shop always = MadeShops.hours(box, "Mon-Sun 0:00-24:00", 0);
    ShopModel model = MadeShops.steady(always, outdoor, water);
    Cooling cooler = cooler(1000);
    LivedDay day = LivedDay.of(model, Optional.of(cooler), 0);
    Blown supply = cooler.blown(outdoor, water, model.pressure());
    assertThat(supply.conductance(1)).isCloseTo(545, within(6.0));
    assertThat(supply.dryBulb()).isCloseTo(24.3, within(0.1));
    assertThat(day.trace().air().at(15) - supply.dryBulb()).isCloseTo(3.9, within(0.1));
    assertThat(day.trace().running().mean()).isCloseTo(1, within(1e-9));
    double dew = MoistAir.dewPoint(supply.humidityRatio(), model.pressure());
    assertThat(day.trace().dewPoint().at(15)).isCloseTo(dew, within(0.05));
    assertThat(day.trace().power().mean()).isCloseTo(140, within(1e-6));
  }

  /** Heat and water of a working day, cool enough to hold and not. */
  @ParameterizedTest
  @ValueSource(doubles = {300, 3000, 20000})
  void heatAndWaterOfADayAddUp(double cfm) {
    for (String station : new String[] {MadeShops.MOBILE, MadeShops.PHOENIX}) {
      ShopDays days =
          new ShopDays(MadeShops.model(MadeShops.example("insulated-foam-door", station)));
      DayRunner runner = new DayRunner(days, Optional.of(cooler(cfm)), 0);
      runner.restore(LivedDay.idle(days, 0));
      DayLedger ledger = DayBooks.closed(runner, DayKind.WORKING, days.model().rooms());
      assertThat(ledger.removed).isGreaterThan(1e6);
      assertThat(ledger.waterCoil).isNegative();
    }
  }

  /** Dry desert air is cooled more and left drier than the damp air of the coast. */
  @Test
  void itServesPhoenixAndMakesMobileDamp() {
    LivedDay phoenix = day(MadeShops.PHOENIX);
    LivedDay mobile = day(MadeShops.MOBILE);
    int hour = 16;
    double cooledThere = outdoor(MadeShops.PHOENIX, hour) - phoenix.trace().air().at(hour);
    double cooledHere = outdoor(MadeShops.MOBILE, hour) - mobile.trace().air().at(hour);
    assertThat(cooledThere).isGreaterThan(cooledHere + 5);
    assertThat(mobile.trace().relativeHumidity().at(hour)).isBetween(0.7, 0.95);
    assertThat(phoenix.trace().relativeHumidity().at(hour)).isBetween(0.4, 0.65);
  }

  private static double outdoor(String station, int hour) {
    return MadeShops.day(MadeShops.example("insulated-foam-door", station)).dryBulb().at(hour);
  }

  private static LivedDay day(String station) {
    return LivedDay.of(
        MadeShops.model(MadeShops.example("insulated-foam-door", station)),
        Optional.of(cooler(3000)),
        0);
  }

  /** Below freezing wet bulbs it stands. */
  @Test
  void wetPadsThatWouldFreezeBlowNothing() {
    assertThat(cooler(1000).blown(2, 0.001, 101325)).isEqualTo(Blown.NOTHING);
    assertThat(cooler(1000).supplyTemperature(2, 0.001, 101325)).isEqualTo(2);
  }

  /** The year closes its books, and the cooler draws as long as it blows. */
  @ParameterizedTest
  @ValueSource(doubles = {300, 3000})
  void theYearCloses(double cfm) {
    ShopYear year =
        ShopYear.of(
            MadeYears.plants(
                MadeShops.example("insulated-foam-door", MadeShops.MOBILE),
                RoomCooling.UNIT,
                RoomHeating.IDEAL,
                "work"),
            MadeYears.swinging());
    YearBooks books = YearBooks.closed(year, new YearRun(year, Optional.of(cooler(cfm)), 20));
    assertThat(books.ledger().waterCoil).isNegative();
    double hours = books.result().kilowattHours(YearResult.Figure.POWER, 0) / (0.14 * cfm / 1000);
    assertThat(hours).isBetween(100.0, 4000.0);
  }

  /** Any shop with any cooler closes its books. */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void theFirstDaysOfAnyShopAddUp(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = drawn.shop();
    ShopDays days = new ShopDays(ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD));
    Cooling cooler =
        Cooling.evaporative(
            0, drawn.between(0.02, 5), drawn.between(20, 2000), drawn.between(0.3, 1));
    DayRunner runner = new DayRunner(days, Optional.of(cooler), 0);
    runner.startSteady();
    try {
      for (DayKind kind : DayKind.values()) {
        DayBooks.closed(runner, kind, days.model().rooms());
      }
    } catch (RoomTooHot e) {
      Assume.that(false);
    }
  }
}
