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
import org.shopclime.shop.Drier;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;

/** A room with a dehumidifier. */
@AddLifecycleHook(MoreTries.class)
class DriedRoomTest {

  private static final double PINT = 231 * 0.0254 * 0.0254 * 0.0254 * 1000 / 8;

  private static Drier drier(double pints, double humidity) {
    return new Drier(pints * PINT / 86_400, 1.57, humidity);
  }

  private static Shop dried(Shop shop, Drier drier) {
    return shop.withRooms(
        shop.rooms().stream()
            .map(room -> room.name().equals(shop.rooms().get(0).name()) ? dried(room, drier) : room)
            .toList());
  }

  private static Room dried(Room room, Drier drier) {
    return room.withDehumidifier(Optional.of(drier));
  }

  private static Shop example() {
    return MadeShops.example("insulated-foam-door", MadeShops.MOBILE);
  }

  /**
   * By pencil, at rest: a 35-pint machine (16.6 L a day, 1.57 L/kWh) running without pause at its
   * rating, 65 °F and 60 %, takes out 16.56 kg / 86,400 s = 0.192 g/s and draws 16.56 / 1.57 / 24 h
   * = 440 W; the water gives back 0.192 g/s x 2,460 J/g = 470 W more, 910 W in all.
   */
  @Test
  void itsHeatIsItsPowerAndThatOfTheWater() {
    Driers driers =
        new Driers(
            1, room -> Optional.of(new org.shopclime.balance.DrierPlate(35 * PINT, 1.57, 0.3)));
    double celsius = MadeShops.celsius(65);
    double water = MoistAir.humidityRatioFromRelativeHumidity(celsius, 0.6, 101325);
    Shop box = MadeShops.box("2000 m3", "1 /h", "");
    Moisture moisture = Moisture.of(MadeShops.steady(box, celsius, water));
    driers.find(0, celsius, moisture, new Moisture.Around(water, 0.6, 0, 101325, 300), 0);
    assertThat(driers.water(0) * 86_400).isCloseTo(16.56, within(0.02));
    assertThat(driers.power(0)).isCloseTo(440, within(1.0));
    assertThat(driers.heat(0)).isCloseTo(910, within(8.0));
  }

  /** A machine that is enough holds what it is set to; one that is not leaves more. */
  @Test
  void itHoldsItsHumidity() {
    ShopModel plain = MadeShops.model(example());
    LivedDay without = LivedDay.of(plain, Optional.empty(), 0);
    LivedDay with =
        LivedDay.of(MadeShops.model(dried(example(), drier(150, 0.45))), Optional.empty(), 0);
    LivedDay small =
        LivedDay.of(MadeShops.model(dried(example(), drier(10, 0.45))), Optional.empty(), 0);
    assertThat(with.trace().relativeHumidity().peak()).isCloseTo(0.45, within(0.03));
    assertThat(without.trace().relativeHumidity().peak()).isGreaterThan(0.6);
    assertThat(small.trace().relativeHumidity().mean())
        .isBetween(
            with.trace().relativeHumidity().mean(), without.trace().relativeHumidity().mean());
    assertThat(with.peakTemperature()).isGreaterThan(without.peakTemperature() + 0.5);
    assertThat(with.trace().drierWater().mean()).isPositive();
    assertThat(without.trace().drierPower().mean()).isZero();
  }

  /** Beside a unit and alone, a working day and an idle one close their books. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 5000, 18000})
  void heatAndWaterOfADayAddUp(double btuh) {
    ShopDays days = new ShopDays(MadeShops.model(dried(example(), drier(50, 0.45))));
    Optional<Cooling> cooling =
        btuh == 0 ? Optional.empty() : Optional.of(MadeShops.window(MadeShops.btuh(btuh)));
    DayRunner runner = new DayRunner(days, cooling, 0);
    runner.restore(LivedDay.idle(days, 0));
    for (DayKind kind : DayKind.values()) {
      DayBooks.closed(runner, kind, days.model().rooms());
    }
  }

  /** A year closes its books; the machine draws its litres by its energy factor. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void theYearCloses(boolean withUnit) {
    ShopYear year =
        ShopYear.of(
            dried(
                MadeYears.plants(
                    example(),
                    withUnit ? RoomCooling.UNIT : RoomCooling.NONE,
                    RoomHeating.IDEAL,
                    "work"),
                drier(35, 0.5)),
            MadeYears.swinging());
    Optional<Cooling> unit =
        withUnit ? Optional.of(MadeShops.window(MadeShops.btuh(12000))) : Optional.empty();
    YearBooks books = YearBooks.closed(year, new YearRun(year, unit, 20));
    YearResult result = books.result();
    double litres = 3.6e6 * result.kilowattHours(YearResult.Figure.DRIER_WATER, 0);
    double drawn = result.kilowattHours(YearResult.Figure.DRIER_POWER, 0);
    assertThat(drawn).isPositive();
    assertThat(litres / drawn).isBetween(0.6, 2.6);
    if (!withUnit) {
      assertThat(books.ledger().waterCoil).isCloseTo(litres, within(1e-6 * litres));
    }
  }

  /** Any shop with any machine closes its books. */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void theFirstDaysOfAnyShopAddUp(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop = dried(drawn.shop(), drier(drawn.between(5, 150), drawn.between(0.2, 0.9)));
    ShopDays days = new ShopDays(ShopModel.cooling(shop, drawn.day(shop), ShopModel.Holding.HELD));
    Optional<Cooling> cooling =
        drawn.between(0, 1) < 0.4
            ? Optional.empty()
            : Optional.of(MadeShops.window(drawn.between(1500, 12_000)));
    DayRunner runner = new DayRunner(days, cooling, 0);
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
