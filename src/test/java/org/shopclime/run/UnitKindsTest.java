package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;

/** Units of every kind in a room. */
class UnitKindsTest {

  private static final double PRESSURE = 101325;

  private static List<Arguments> units() {
    double capacity = MadeShops.btuh(18000);
    return Stream.of(Cooling.Kind.values())
        .flatMap(
            kind ->
                Stream.of(
                    arguments(kind.name(), MadeShops.unit(kind, capacity)),
                    arguments(
                        kind + ", its fan running on", MadeShops.unitWithFan(kind, capacity, 105))))
        .toList();
  }

  private static LivedDay day(Cooling.Kind kind, double btuh) {
    return LivedDay.of(
        MadeShops.model(MadeShops.example("insulated-foam-door", MadeShops.MOBILE)),
        Optional.of(MadeShops.unit(kind, MadeShops.btuh(btuh))),
        0);
  }

  /** Heat and water of a working day, from the sums of every five minutes. */
  @ParameterizedTest
  @MethodSource("units")
  void heatAndWaterOfADayAddUp(String name, Cooling unit) {
    ShopDays days =
        new ShopDays(MadeShops.model(MadeShops.example("insulated-foam-door", MadeShops.MOBILE)));
    DayRunner runner = new DayRunner(days, Optional.of(unit), 0);
    runner.restore(LivedDay.idle(days, 0));
    DayLedger ledger = DayBooks.closed(runner, DayKind.WORKING, days.model().rooms());
    assertThat(ledger.removed).isGreaterThan(1e6);
  }

  /**
   * One hose by pencil, room at 80 °F and 50 % (W 0.0110), outdoors 95 °F and W 0.0165: 300 cfm for
   * 12,000 BTU/h, some 21 lb a minute of dry air drawn in, bring 0.244 x 15 x 1,290 = 4,700 BTU/h
   * of heat and 0.0055 x 1,290 = 7.1 lb/h of water, more than the coil takes out.
   */
  @Test
  void whatOneHoseDrawsInIsChargedToIt() {
    AirState room =
        new AirState(
            MadeShops.celsius(80),
            MoistAir.humidityRatioFromRelativeHumidity(MadeShops.celsius(80), 0.5, PRESSURE),
            PRESSURE);
    double outdoor = MadeShops.celsius(95);
    Able one = able(Cooling.Kind.PORTABLE_ONE_HOSE, outdoor, room);
    Able two = able(Cooling.Kind.PORTABLE_TWO_HOSES, outdoor, room);
    assertThat(two.sensible() - one.sensible())
        .isCloseTo(MadeShops.btuh(4700), withinPercentage(8));
    double pounds = (two.condensate(1) - one.condensate(1)) * 3600 / 0.45359237;
    assertThat(pounds).isCloseTo(7.1, within(0.8));
  }

  private static Able able(Cooling.Kind kind, double outdoor, AirState room) {
    return MadeShops.unit(kind, MadeShops.btuh(12000)).at(outdoor, 0.0165, room);
  }

  /** On a hot day one hose is the worst; beside a window unit two hoses lose little. */
  @Test
  void oneHoseIsTheWorst() {
    double window = day(Cooling.Kind.WINDOW, 12000).peakTemperature();
    double two = day(Cooling.Kind.PORTABLE_TWO_HOSES, 12000).peakTemperature();
    double one = day(Cooling.Kind.PORTABLE_ONE_HOSE, 12000).peakTemperature();
    assertThat(two).isBetween(window, window + 2);
    assertThat(one).isGreaterThan(two + 2);
  }

  /** Too big a unit that can run slower does so: less power, no starts. */
  @Test
  void variableSpeedSavesWhereLittleIsAsked() {
    LivedDay single = day(Cooling.Kind.HEAT_PUMP, 24000);
    LivedDay variable = day(Cooling.Kind.VARIABLE_HEAT_PUMP, 24000);
    assertThat(single.holds() && variable.holds()).isTrue();
    assertThat(variable.trace().power().mean())
        .isBetween(0.4 * single.trace().power().mean(), 0.85 * single.trace().power().mean());
    assertThat(single.mostStarts().orElseThrow().tooMany()).isTrue();
    assertThat(variable.mostStarts()).isEmpty();
    assertThat(variable.trace().sensible().mean())
        .isCloseTo(single.trace().sensible().mean(), withinPercentage(1));
  }

  /** Asked for a part, a unit of variable speed gives that part. */
  @Test
  void aPartIsGiven() {
    AirState room = new AirState(26, 0.011, PRESSURE);
    Able able = able(Cooling.Kind.VARIABLE_HEAT_PUMP, 35, room);
    assertThat(able.power(1, 1)).isCloseTo(able.power(), within(1e-6));
    assertThat(able.condensate(1) * 2_501_000).isCloseTo(able.latent(), withinPercentage(4));
    assertThat(able.power(0.5, 0.6)).isLessThan(0.5 * able.power());
    assertThat(able.power(0, 0)).isZero();
    assertThat(able.running(0.1, 0.2)).isBetween(0.05, 0.99);
  }

  /** A year closes its books with every kind. */
  @ParameterizedTest
  @MethodSource("units")
  void theYearCloses(String name, Cooling unit) {
    YearWeather weather = MadeYears.swinging();
    ShopYear year =
        ShopYear.of(
            MadeYears.plants(
                MadeShops.example("insulated-foam-door", MadeShops.MOBILE),
                RoomCooling.UNIT,
                RoomHeating.IDEAL,
                "work"),
            weather);
    YearBooks books = YearBooks.closed(year, new YearRun(year, Optional.of(unit), 20));
    assertThat(books.result().kilowattHours(YearResult.Figure.POWER, 0)).isBetween(50.0, 10_000.0);
  }
}
