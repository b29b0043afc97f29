package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.run.YearResult.Figure.COOLING;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.TestShops;
import org.shopclime.balance.YearWeather;
import org.shopclime.climate.GroundTemperature;
import org.shopclime.climate.HotDay;
import org.shopclime.climate.Hours;
import org.shopclime.climate.MadeYear;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.March;
import org.shopclime.shop.Examples;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;

/** A year of one hot day over and over, without sun, asks what that day asks of itself. */
class YearAgainstDayTest {

  private static final double DEW_POINT = 20;

  @Test
  void aYearOfOneDayIsThatDay() {
    IntToDoubleFunction ends = hour -> 32 - 6 * Math.cos(2 * Math.PI * (hour - 3) / 24.0);
    Shop shop =
        MadeShops.hours(
            MadeYears.plants(
                Examples.shop("insulated-foam-door"),
                RoomCooling.IDEAL,
                RoomHeating.NONE,
                "always"),
            "Mon-Sun 8:00-17:00",
            3600);
    Shop standard =
        shop.withWork(
            new org.shopclime.shop.Work(
                shop.work().hours(), 3600, org.shopclime.shop.Clock.STANDARD, 18));
    YearWeather weather =
        YearWeather.of(
            new MadeYear()
                .at(TestShops.PLACE)
                .pressure(TestShops.PRESSURE)
                .dryBulb(ends)
                .dewPoint(hour -> DEW_POINT)
                .wind(hour -> 3)
                .year());
    ShopYear year = ShopYear.of(standard, weather);
    YearResult result = YearRun.of(year, Optional.empty());
    double ofYear = 0;
    for (int hour = 200 * 24; hour < 201 * 24; hour++) {
      ofYear += result.at(COOLING, 0, hour) / 1000;
    }
    double ofDay = heldDay(TestShops.dark(standard, day(ends)));
    assertThat(ofDay).isGreaterThan(10);
    // Both are linear about the same means, told from another run; steps are 15 and 5 minutes.
    assertThat(ofYear).isCloseTo(ofDay, withinPercentage(0.05));
  }

  private static HotDay day(IntToDoubleFunction ends) {
    Hours dryBulb =
        Hours.from(hour -> (ends.applyAsDouble(hour - 1) + ends.applyAsDouble(hour)) / 2);
    double ratio = MoistAir.humidityRatioFromDewPoint(DEW_POINT, TestShops.PRESSURE);
    return new HotDay(
        TestShops.PLACE,
        LocalDate.of(2025, 7, 21),
        dryBulb,
        Hours.constant(ratio),
        dryBulb,
        Hours.constant(3),
        TestShops.PRESSURE,
        ratio,
        0.1,
        4,
        new GroundTemperature(32, 0, 20));
  }

  /** Sensible heat that holds the first room through a day that has come to repeat, kWh. */
  private static double heldDay(ShopModel model) {
    ShopDays days = new ShopDays(model);
    March march = new March(model.network(), DaySlots.SECONDS);
    march.start(28);
    Drivers drivers = new Drivers(model.network());
    double sum = 0;
    for (int day = 0; day < 60; day++) {
      sum = 0;
      for (int slot = 0; slot < DaySlots.COUNT; slot++) {
        int hour = slot / 12 + 1;
        days.drivers(DayKind.WORKING).fill(drivers, slot, 1);
        for (int room = 0; room < model.rooms(); room++) {
          drivers.inflow(
              room,
              model.streams().total(room, march.air(room), DayKind.WORKING, slot, 1)
                  * MoistAir.humidHeat(model.outdoorHumidityRatio(hour)),
              model.outdoor(hour));
        }
        drivers.release(0);
        drivers.hold(0, model.setPoint(0));
        march.step(drivers);
        sum -= march.plant(0) * DaySlots.SECONDS / 3.6e6;
      }
    }
    return sum;
  }
}
