package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.run.YearResult.Figure.AIR;
import static org.shopclime.run.YearResult.Figure.HUMIDITY_RATIO;
import static org.shopclime.run.YearResult.Figure.OPERATIVE;
import static org.shopclime.run.YearResult.Figure.POWER;

import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.CoolingHabit;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.balance.YearWeeks;
import org.shopclime.climate.MadeYear;
import org.shopclime.shop.Examples;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;

/** Habits of running a unit, and water on iron, in years that are known by pencil. */
class HabitYearTest {

  private static final CoolingHabit BACK = new CoolingHabit(MadeShops.celsius(85), 2);

  private static YearWeather swinging;
  private static ShopYear plain;
  private static YearResult held;

  @BeforeAll
  static void run() {
    swinging = MadeYears.swinging();
    Shop shop =
        MadeYears.plants(
            MadeShops.hours(Examples.shop("insulated"), "Mon-Fri 8:00-12:00, 13:00-17:00", 3600),
            RoomCooling.UNIT,
            RoomHeating.NONE,
            "work");
    plain = ShopYear.of(shop, swinging);
    held = run(plain.cooledBy(CoolingHabit.alwaysOn()));
  }

  private static YearResult run(ShopYear year) {
    return YearRun.of(year, Optional.of(MadeShops.window(MadeShops.btuh(24000))));
  }

  /** Wed 16 July is day 196 from 0; work from 7 to 16 standard time; two hours before: 5. */
  @Test
  void theWishedTemperatureIsAskedForFromSomeTimeBeforeWork() {
    ShopYear back = plain.cooledBy(BACK);
    ShopYear demand = plain.cooledBy(CoolingHabit.onDemand(2));
    ShopYear always = plain.cooledBy(CoolingHabit.alwaysOn());
    for (int of = 0; of < 24; of++) {
      int wednesday = 196 * 24 + of;
      int sunday = 200 * 24 + of;
      boolean wished = of >= 5 && of < 16;
      assertThat(back.plants().cooledTo(0, wednesday))
          .as("%s", of)
          .isEqualTo(wished ? back.plants().cooledTo(0) : MadeShops.celsius(85));
      assertThat(back.plants().coolingOn(0, wednesday)).isTrue();
      assertThat(demand.plants().coolingOn(0, wednesday)).as("%s", of).isEqualTo(wished);
      assertThat(demand.plants().coolingOn(0, sunday)).isFalse();
      assertThat(always.plants().cooledTo(0, sunday)).isEqualTo(always.plants().cooledTo(0));
      assertThat(always.plants().coolingOn(0, sunday)).isTrue();
    }
    assertThat(plain.plants().coolingOn(0, 196 * 24 + 6))
        .as("the owner's own hours stay")
        .isFalse();
  }

  /** The unit is big: it holds what each habit asks for. */
  @Test
  void eachHabitHoldsWhatItAsksFor() {
    ShopYear year = plain.cooledBy(BACK);
    YearResult back = run(year);
    double highest = 0;
    for (int hour = 1; hour < YearWeather.HOURS; hour++) {
      assertThat(held.at(AIR, 0, hour)).isLessThan(plain.plants().cooledTo(0) + 0.05);
      double limit = Math.max(year.plants().cooledTo(0, hour - 1), year.plants().cooledTo(0, hour));
      assertThat(back.at(AIR, 0, hour)).as("hour %s", hour).isLessThan(limit + 0.05);
      highest = Math.max(highest, back.at(AIR, 0, hour));
    }
    assertThat(highest).isCloseTo(MadeShops.celsius(85), within(0.05));
    YearResult demand = run(plain.cooledBy(CoolingHabit.onDemand(2)));
    assertThat(demand.mean(AIR, 0)).isGreaterThan(back.mean(AIR, 0));
    assertThat(held.kilowattHours(POWER, 0)).isGreaterThan(back.kilowattHours(POWER, 0));
    assertThat(back.kilowattHours(POWER, 0)).isGreaterThan(demand.kilowattHours(POWER, 0));
  }

  /** With the hours told as the habit has them, the plain year is the same year. */
  @Test
  void onDemandIsThePlainYearOfTheseHours() {
    YearResult plainly = run(plain);
    YearResult demand = run(plain.cooledBy(CoolingHabit.onDemand(0)));
    for (int hour = 0; hour < YearWeather.HOURS; hour++) {
      assertThat(demand.at(AIR, 0, hour)).isEqualTo(plainly.at(AIR, 0, hour));
      assertThat(demand.at(POWER, 0, hour)).isEqualTo(plainly.at(POWER, 0, hour));
    }
  }

  private static final String LATENT =
      ", \"gains\": [{\"kind\": \"other\", \"name\": \"Pot\", \"power\": \"0 W\", \"moisture\":"
          + " \"250 W\", \"when\": \"always\"}]";

  private static YearResult damp(String gains, double celsius, double dewPoint) {
    Shop box = MadeShops.box("10", "2000 m3", "0.2 /h", gains);
    return new YearRun(
            ShopYear.of(
                MadeYears.plants(box, RoomCooling.NONE, RoomHeating.NONE, "always"),
                MadeYears.constant(celsius, dewPoint)),
            Optional.empty())
        .run();
  }

  /**
   * W = Wo + g / m. Pencil: 250 W over 2.501 MJ/kg are 0.1 g/s; 2000 m3 x 0.2 /h of air of 1.16
   * kg/m3 are 129 g/s; so 0.1 / 129 = 0.00078 more than outdoors. The iron is as warm as the room
   * then.
   */
  @Test
  void steadyHumidityIsKnownByPencil() {
    YearResult result = damp(LATENT, 25, 15);
    double outdoor = MoistAir.humidityRatioFromDewPoint(15, 100_000);
    double inflow = result.year().inflow(0, 25, 4000);
    assertThat(inflow).isCloseTo(0.129, withinPercentage(2));
    double expected = outdoor + result.year().latentGain(0, 4000) / inflow;
    assertThat(expected - outdoor).isCloseTo(0.00078, withinPercentage(3));
    assertThat(result.at(HUMIDITY_RATIO, 0, 4000)).isCloseTo(expected, within(1e-9));
    RustWatch rust = RustWatch.of(result, 0);
    double air = result.at(AIR, 0, 4000);
    assertThat(rust.iron(4000)).isCloseTo(result.at(OPERATIVE, 0, 4000), within(1e-6));
    assertThat(rust.dewPoint(4000))
        .isCloseTo(MoistAir.dewPoint(expected, result.year().pressure()), within(1e-6));
    assertThat(rust.relativeHumidity(4000))
        .isCloseTo(
            MoistAir.relativeHumidity(air, expected, result.year().pressure()), within(1e-6));
    // About 58 % in 25 °C air: below what is damp, and no water.
    assertThat(rust.relativeHumidity(4000)).isCloseTo(0.58, within(0.02));
    assertThat(rust.count()).isEqualTo(new RustWatch.Count(0, 0, 0, 0, 0));
    assertThat(rust.slab(4000)).isInfinite();
  }

  /** Dew point 3 K below the air: 83 % at the iron, damp in every hour, wet in none. */
  @Test
  void dampAirIsDampInEveryHour() {
    RustWatch.Count count = RustWatch.of(damp("", 25, 22), 0).count();
    assertThat(count).isEqualTo(new RustWatch.Count(0, 0, 0, 8760, 8760));
  }

  @Test
  void aDryClimateKnowsNoRust() {
    YearWeather dry =
        YearWeather.of(
            new MadeYear()
                .dryBulb(hour -> 30 - 8 * Math.cos(2 * Math.PI * (hour - 3) / 24.0))
                .dewPoint(hour -> -5)
                .wind(hour -> 3)
                .year());
    Shop box =
        MadeYears.plants(
            MadeShops.box("2", "27 m3", "0.5 /h", ""), RoomCooling.UNIT, RoomHeating.NONE, "work");
    for (CoolingHabit habit :
        new CoolingHabit[] {CoolingHabit.alwaysOn(), BACK, CoolingHabit.onDemand(1)}) {
      YearResult year = run(ShopYear.of(box, dry).cooledBy(habit));
      assertThat(RustWatch.of(year, 0).count()).isEqualTo(new RustWatch.Count(0, 0, 0, 0, 0));
    }
  }

  /** The heavy casting against small steps of its own equation, and never warmer than the plate. */
  @Test
  void theCastingFollowsTheRoom() {
    RustWatch rust = RustWatch.of(held, 0);
    // 7800 x 490 x 0.05 / 16 = 11,944 s: 3.3 h.
    assertThat(RustWatch.CASTING_SECONDS).isCloseTo(11_944, within(1.0));
    int first = 4000;
    double casting = held.at(OPERATIVE, 0, first);
    int lower = 0;
    for (int hour = first; hour < first + 240; hour++) {
      double mean = 0;
      for (int second = 0; second < 3600; second++) {
        mean += casting / 3600;
        casting += (held.at(OPERATIVE, 0, hour) - casting) / RustWatch.CASTING_SECONDS;
      }
      double plate = held.iron(0, hour);
      if (hour > first + 48) {
        assertThat(rust.iron(hour)).isCloseTo(Math.min(mean, plate), within(1e-3));
      }
      lower += mean < plate ? 1 : 0;
    }
    assertThat(lower).as("each is the colder one at some time").isBetween(20, 220);
    assertThat(held.slab(0, 4000)).isBetween(10.0, 30.0);
  }

  /**
   * The year's warmest moment is hour 4,860; the Monday weeks beside it begin at 4,656 and 4,824.
   */
  @Test
  void theHottestWeekIsTheOneAroundTheCrest() {
    assertThat(YearWeeks.hottest(swinging)).isEqualTo(4824);
    assertThat(YearWeeks.date(4824)).hasToString("2025-07-21");
  }

  /** Moist warm air comes on Wednesday 16 April, day 105 from 0, after a cold spring. */
  @Test
  void theDampWeekIsTheOneInWhichMoistAirComes() {
    YearWeather turns =
        YearWeather.of(
            new MadeYear()
                .dryBulb(hour -> hour > 105 * 24 ? 24 : 5)
                .dewPoint(hour -> hour > 105 * 24 ? 20 : 2)
                .wind(hour -> 3)
                .year());
    assertThat(YearWeeks.dampSpring(turns)).hasValue(103 * 24);
    assertThat(YearWeeks.dampSpring(MadeYears.constant(20, 10))).isEmpty();
  }
}
