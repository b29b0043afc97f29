package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.run.YearResult.Figure.AIR;
import static org.shopclime.run.YearResult.Figure.COOLING;
import static org.shopclime.run.YearResult.Figure.HEATING;
import static org.shopclime.run.YearResult.Figure.HUMIDITY_RATIO;
import static org.shopclime.run.YearResult.Figure.LATENT;
import static org.shopclime.run.YearResult.Figure.OPERATIVE;
import static org.shopclime.run.YearResult.Figure.POWER;

import java.time.DayOfWeek;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Examples;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Work;

/** A year of a shop: books that close, plants that keep their word, cases known by pencil. */
class YearRunTest {

  private static final double KELVIN_HELD = 0.02;

  private static YearWeather swinging;
  private static ShopYear ideal;
  private static ShopYear byUnit;
  private static ShopYear floating;
  private static YearResult held;

  @BeforeAll
  static void makeYears() {
    swinging = MadeYears.swinging();
    Shop shop = Examples.shop("insulated");
    ideal = ShopYear.of(with(shop, RoomCooling.IDEAL, RoomHeating.IDEAL), swinging);
    byUnit = ShopYear.of(with(shop, RoomCooling.UNIT, RoomHeating.IDEAL), swinging);
    floating = ShopYear.of(with(shop, RoomCooling.NONE, RoomHeating.NONE), swinging);
    held = YearRun.of(ideal, Optional.empty());
  }

  private static Shop with(Shop shop, RoomCooling cooling, RoomHeating heating) {
    return MadeYears.plants(shop, cooling, heating, "work");
  }

  /** Heat that the two changes of season may make or lose in a year, Wh. */
  static final double WATT_HOURS = 100;

  /** What comes in is what stays: first law, and the same for water. */
  @Test
  void booksClose() {
    closes(ideal, Optional.empty());
    closes(byUnit, Optional.of(MadeShops.window(MadeShops.btuh(8000))));
    closes(floating, Optional.empty());
  }

  private static void closes(ShopYear year, Optional<Cooling> unit) {
    DayLedger ledger = YearBooks.closed(year, new YearRun(year, unit)).ledger();
    assertThat(ledger.handedOver).as("the season turns").isCloseTo(0, within(WATT_HOURS * 3600));
    assertThat(ledger.sources).isPositive();
    assertThat(ledger.waterGiven).isPositive();
    assertThat(ledger.waterCoil > 0).isEqualTo(unit.isPresent());
  }

  @Test
  void anIdealPlantHolds() {
    boolean cooled = false;
    boolean heated = false;
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      double cooling = held.at(COOLING, 0, hour);
      double heating = held.at(HEATING, 0, hour);
      if (ideal.plants().coolingOn(0, hour)) {
        double air = held.at(AIR, 0, hour);
        assertThat(air).as("hour %s", hour).isLessThan(ideal.plants().cooledTo(0) + KELVIN_HELD);
        assertThat(air).as("hour %s", hour).isGreaterThan(ideal.plants().heatedTo(0) - KELVIN_HELD);
        cooled |= cooling > 0;
        heated |= heating > 0;
      } else {
        assertThat(cooling + heating).as("hour %s", hour).isZero();
      }
      assertThat(Math.min(cooling, heating)).as("both at once, hour %s", hour).isZero();
      assertThat(held.at(HEATING, 1, hour) + held.at(COOLING, 1, hour)).as("attic").isZero();
    }
    assertThat(cooled && heated).isTrue();
    assertThat(held.kilowattHours(POWER, 0) + held.kilowattHours(LATENT, 0)).isZero();
  }

  /** A floating room has no plant whatever its fields say. */
  @Test
  void aFloatingRoomHasNoPlant() {
    Shop shop = Examples.shop("insulated");
    var attic =
        org.shopclime.shop.ShopParts.with(shop.rooms().get(1), "cooling", RoomCooling.IDEAL);
    Shop said =
        shop.withRooms(java.util.List.of(shop.rooms().get(0), (org.shopclime.shop.Room) attic));
    ShopYear year = ShopYear.of(said, swinging);
    assertThat(said.rooms().get(1).use()).isEqualTo(RoomUse.FLOATING);
    assertThat(
            year.plants().isCooledIdeally(1)
                || year.plants().isCooledByUnit(1)
                || year.plants().isHeated(1))
        .isFalse();
  }

  /** The plant hours of one week, by the calendar of 2025: 1 January is a Wednesday. */
  @Test
  void plantsFollowTheClockAndTheCalendar() {
    Shop shop = with(Examples.shop("insulated"), RoomCooling.IDEAL, RoomHeating.IDEAL);
    Work daylight =
        new Work(
            org.shopclime.shop.ScheduleText.read("Mon-Fri 8:00-12:00, 13:00-17:00").orElseThrow(),
            3600,
            Clock.DAYLIGHT,
            18.3);
    ShopYear year = ShopYear.of(shop.withWork(daylight), swinging);
    for (int of = 0; of < 24; of++) {
      assertThat(on(year, 0, of)).as("Wed 1 Jan %s", of).isEqualTo(of >= 8 && of < 17);
      assertThat(on(year, 2, of)).as("Fri 3 Jan %s", of).isEqualTo(of >= 8 && of < 17);
      assertThat(on(year, 3, of)).as("Sat 4 Jan %s", of).isFalse();
      assertThat(on(year, 4, of)).as("Sun 5 Jan %s", of).isFalse();
      // Daylight saving from Sunday 9 March (day 67 from 0) to Saturday 1 November (day 304).
      assertThat(on(year, 65, of)).as("Fri 7 Mar %s", of).isEqualTo(of >= 8 && of < 17);
      assertThat(on(year, 68, of)).as("Mon 10 Mar %s", of).isEqualTo(of >= 7 && of < 16);
      assertThat(on(year, 303, of)).as("Fri 31 Oct %s", of).isEqualTo(of >= 7 && of < 16);
      assertThat(on(year, 306, of)).as("Mon 3 Nov %s", of).isEqualTo(of >= 8 && of < 17);
    }
    assertThat(year.working(12)).as("nobody works in the break").isZero();
    assertThat(year.working(11)).isEqualTo(1);
    ShopYear saturday = ShopYear.of(shop.withWork(daylight), swinging, DayOfWeek.SATURDAY);
    assertThat(on(saturday, 0, 10)).isFalse();
    assertThat(on(saturday, 1, 10)).isFalse();
    assertThat(on(saturday, 2, 10)).isTrue();
  }

  private static boolean on(ShopYear year, int day, int of) {
    assertThat(year.plants().heatingOn(0, day * 24 + of))
        .isEqualTo(year.plants().coolingOn(0, day * 24 + of));
    return year.plants().coolingOn(0, day * 24 + of);
  }

  private static final String GAIN =
      ", \"setPoint\": \"25 °C\", \"heatedTo\": \"20 °C\", \"gains\": [{\"kind\": \"other\","
          + " \"name\": \"Lamp\", \"power\": \"300 W\", \"when\": \"always\"}]";

  /** 18 m² of wall of R 10, and 2,000 m³ of air 0.2 times an hour. */
  private static final Shop BOX = MadeShops.box("10", "2000 m3", "0.2 /h", GAIN);

  private static double byPencil(double outdoor, double inside, double dewPoint) {
    // Films: 0.044 outside (summer, published), within 0.12 (published, still air) and 0.4 (without
    // its radiant part) inside: 10.3 m2·K/W in all, to 1 % of a part that is a tenth of the whole.
    double walls = 18 / 10.3;
    double ratio = MoistAir.humidityRatioFromDewPoint(dewPoint, 100_000);
    double vapour = ratio / 0.621945 * 100_000 / (1 + ratio / 0.621945);
    double dry = (100_000 - vapour) / (287.042 * (outdoor + 273.15));
    double air = 2000 * 0.2 / 3600 * dry * (1006 + 1860 * ratio);
    return (walls + air) * (outdoor - inside) + 300;
  }

  /**
   * UA times difference and gains; damp overcast air, so that the sky is no colder than the air.
   */
  @Test
  void steadyCoolingIsKnownByPencil() {
    ShopYear year = box(RoomCooling.IDEAL, MadeYears.constant(35, 30));
    YearResult result = YearRun.of(year, Optional.empty());
    double expected = byPencil(35, 25, 30);
    for (int hour : new int[] {0, 4000, 8759}) {
      assertThat(result.at(COOLING, 0, hour)).isCloseTo(expected, withinPercentage(0.3));
      assertThat(result.at(AIR, 0, hour)).isCloseTo(25, within(1e-9));
    }
    assertThat(result.kilowattHours(COOLING, 0)).isCloseTo(expected * 8.76, withinPercentage(0.3));
    assertThat(result.kilowattHours(COOLING, 0, 2))
        .isCloseTo(expected * 28 * 24 / 1000, withinPercentage(0.3));
    assertThat(result.kilowattHours(HEATING, 0)).isZero();
    // Nothing dries the air under an ideal plant: it is as moist as it can be, or as outdoors.
    assertThat(result.at(HUMIDITY_RATIO, 0, 4000))
        .isCloseTo(
            Math.min(
                MoistAir.saturationHumidityRatio(25, 100_000),
                MoistAir.humidityRatioFromDewPoint(30, 100_000)),
            within(1e-9));
    assertThat(result.at(OPERATIVE, 0, 4000)).isBetween(25.0, 27.0);
  }

  @Test
  void steadyHeatingIsKnownByPencil() {
    ShopYear year = box(RoomCooling.IDEAL, MadeYears.constant(-10, -12));
    YearResult result = YearRun.of(year, Optional.empty());
    // The sky draws a few watts more from 18 m² of well insulated wall.
    assertThat(result.at(HEATING, 0, 4000))
        .isCloseTo(-byPencil(-10, 20, -12), withinPercentage(0.3));
    assertThat(result.at(AIR, 0, 4000)).isCloseTo(20, within(1e-9));
    assertThat(result.kilowattHours(COOLING, 0)).isZero();
  }

  private static ShopYear box(RoomCooling cooling, YearWeather weather) {
    return ShopYear.of(MadeYears.plants(BOX, cooling, RoomHeating.IDEAL, "always"), weather);
  }

  /**
   * Steady: the unit runs part of the time, by load over capacity, and loses what its starts cost.
   */
  @Test
  void energyIsLoadOverEfficiency() {
    ShopYear year = box(RoomCooling.UNIT, MadeYears.constant(35, 15));
    Cooling unit = MadeShops.window(MadeShops.btuh(12000));
    YearResult result = YearRun.of(year, Optional.of(unit));
    int hour = 5000;
    double load = result.at(COOLING, 0, hour);
    assertThat(load).isCloseTo(byPencil(35, 25, 15), withinPercentage(0.5));
    Able able =
        unit.at(
            35,
            year.outdoorHumidityRatio(hour),
            new AirState(25, result.at(HUMIDITY_RATIO, 0, hour), year.pressure()));
    double part = load / able.sensible();
    assertThat(part).isBetween(0.2, 0.9);
    assertThat(result.at(POWER, 0, hour))
        .isCloseTo(
            able.power() * FullYear.running(FullYear.cycling(year, 0, 0), part, able),
            withinPercentage(0.3));
    assertThat(result.at(LATENT, 0, hour)).isCloseTo(part * able.latent(), within(0.01));
    // A second unit in no room of these changes nothing.
    assertThat(YearRun.of(box(RoomCooling.NONE, swinging), Optional.of(unit)).mean(POWER, 0))
        .isZero();
  }

  /** A big unit is an ideal plant for sensible heat; a small one lets the room get warm. */
  @Test
  void aUnitHoldsIfItIsBigEnough() {
    YearResult big = YearRun.of(byUnit, Optional.of(MadeShops.window(MadeShops.btuh(36000))));
    assertThat(big.kilowattHours(COOLING, 0))
        .isCloseTo(held.kilowattHours(COOLING, 0), withinPercentage(1));
    assertThat(big.kilowattHours(HEATING, 0))
        .isCloseTo(held.kilowattHours(HEATING, 0), withinPercentage(1));
    YearResult small = YearRun.of(byUnit, Optional.of(MadeShops.window(MadeShops.btuh(5000))));
    double limit = byUnit.plants().cooledTo(0) + 0.5;
    assertThat(small.workHoursAbove(AIR, 0, limit)).isGreaterThan(50);
    assertThat(held.workHoursAbove(AIR, 0, limit)).isZero();
    assertThat(small.kilowattHours(COOLING, 0)).isLessThan(big.kilowattHours(COOLING, 0));
    YearResult none = YearRun.of(floating, Optional.empty());
    assertThat(none.workHoursAbove(AIR, 0, limit))
        .isGreaterThan(small.workHoursAbove(AIR, 0, limit));
    assertThat(none.kilowattHours(HEATING, 0) + none.kilowattHours(COOLING, 0)).isZero();
    for (int hour = 1; hour < YearWeather.HOURS; hour++) {
      if (big.at(COOLING, 0, hour) > 0 && big.at(COOLING, 0, hour - 1) > 0) {
        assertThat(big.at(AIR, 0, hour)).isGreaterThan(byUnit.plants().cooledTo(0) - 0.05);
      }
    }
  }

  @Test
  void theSameYearIsTheSameYear() {
    YearResult again = YearRun.of(ideal, Optional.empty());
    for (YearResult.Figure figure : YearResult.Figure.values()) {
      for (int hour = 0; hour < YearWeather.HOURS; hour++) {
        assertThat(again.at(figure, 0, hour)).isEqualTo(held.at(figure, 0, hour));
      }
    }
  }

  @Test
  void moreDaysBeforeChangeLittle() {
    YearResult longer = new YearRun(ideal, Optional.empty(), 120).run();
    for (YearResult.Figure figure : new YearResult.Figure[] {HEATING, COOLING}) {
      double sum = held.kilowattHours(figure, 0);
      assertThat(longer.kilowattHours(figure, 0)).isCloseTo(sum, withinPercentage(0.1));
    }
    assertThat(longer.mean(AIR, 1)).isCloseTo(held.mean(AIR, 1), within(0.001));
  }

  /** Sums, peaks and counts of the result, one against another. */
  @Test
  void theResultAddsUp() {
    double months = 0;
    for (int month = 1; month <= 12; month++) {
      months += held.kilowattHours(COOLING, 0, month);
    }
    assertThat(months).isCloseTo(held.kilowattHours(COOLING, 0), within(1e-6));
    int peak = held.peakHour(AIR, 1);
    int least = held.leastHour(AIR, 1);
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      assertThat(held.at(AIR, 1, hour)).isBetween(held.at(AIR, 1, least), held.at(AIR, 1, peak));
    }
    assertThat(held.hoursAbove(AIR, 1, held.at(AIR, 1, peak))).isZero();
    assertThat(held.hoursAbove(AIR, 1, held.at(AIR, 1, least) - 1)).isEqualTo(8760);
    assertThat(held.mean(AIR, 1)).isBetween(held.at(AIR, 1, least), held.at(AIR, 1, peak));
    assertThat(held.year()).isSameAs(ideal);
  }
}
