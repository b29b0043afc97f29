package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.shopclime.air.AirState;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;
import org.shopclime.unit.Compressor;
import org.shopclime.unit.DuctlessHeatPump;
import org.shopclime.unit.Rating;
import org.shopclime.unit.RoomPlant;

/** A heat pump through the year. */
class PumpYearTest {

  private static final double CAPACITY = MadeShops.btuh(12000);
  private static final int HOUR = 4000;

  private static final Shop BOX =
      MadeShops.box(
          "10",
          "2000 m3",
          "0.2 /h",
          ", \"setPoint\": \"25 °C\", \"heatedTo\": \"20 °C\", \"gains\": [{\"kind\": \"other\","
              + " \"name\": \"Lamp\", \"power\": \"300 W\", \"when\": \"always\"}]");

  private static ShopYear year(double celsius) {
    YearWeather weather = MadeYears.constant(celsius, celsius - 2);
    return ShopYear.of(
        MadeYears.plants(BOX, RoomCooling.UNIT, RoomHeating.IDEAL, "always"), weather);
  }

  /** Colder than the pump can stand: every watt of heat is a watt drawn. */
  @Test
  void resistanceInDeepCold() {
    PumpYear told = PumpYear.of(year(-25), 0, CAPACITY);
    assertThat(told.heat()).isGreaterThan(1000);
    assertThat(told.resistance()).isCloseTo(told.heat(), withinPercentage(1e-6));
    YearResult ideal = YearRun.of(year(-25), Optional.empty());
    assertThat(told.heating(HOUR))
        .isCloseTo(ideal.at(YearResult.Figure.HEATING, 0, HOUR) / 1000, within(1e-6));
    assertThat(told.cooling(HOUR)).isZero();
  }

  /**
   * At 47 °F a watt gives between the 3.6 of full speed and what half and less gain; no resistance.
   */
  @Test
  void inTheMildColdItSaves() {
    ShopYear year = year(MadeShops.celsius(47));
    PumpYear told = PumpYear.of(year, 0, CAPACITY);
    double heat = YearRun.of(year, Optional.empty()).at(YearResult.Figure.HEATING, 0, HOUR);
    assertThat(heat).isBetween(300.0, CAPACITY);
    assertThat(told.resistance()).isCloseTo(0, within(1e-9));
    assertThat(heat / 1000 / told.heating(HOUR)).isBetween(3.3, 6.5);
    RoomPlant heater =
        DuctlessHeatPump.usual(
                Rating.ofEer(CAPACITY, 12), Rating.ofCop(CAPACITY, 3.6), Compressor.variableSpeed())
            .heating();
    AirState outdoor =
        new AirState(MadeShops.celsius(47), year.outdoorHumidityRatio(HOUR), year.pressure());
    AirState room = new AirState(20, year.outdoorHumidityRatio(HOUR), year.pressure());
    double power = heater.at(room, outdoor, heater.demandFor(heat, room, outdoor)).power();
    assertThat(told.heating(HOUR)).isCloseTo(power / 1000, withinPercentage(2));
  }

  /**
   * A single speed at 17 °F, the room at 70 °F, by pencil: 36,000 BTU/h at 47 °F come to 0.6304 /
   * 0.9958 of it, 6,679 W, at 1.3472 / 0.9937 of the power for each watt, 3.6 to 2.655. What runs a
   * part x of the time loses a quarter of what it stands: 1 - 0.25 (1 - x).
   */
  @Test
  void inSteadyColdItDrawsLoadOverCop() {
    ShopYear year = steady(17);
    double big = 3 * CAPACITY;
    Cooling pump =
        Cooling.heatPump(
            Cooling.Kind.HEAT_PUMP,
            0,
            new Cooling.Plate(big, 3.5, Cooling.Label.EER, 1),
            new Cooling.Heat(big, OptionalDouble.empty(), -15));
    YearResult run = YearRun.of(year, Optional.of(pump));
    double load = run.at(YearResult.Figure.HEATING, 0, HOUR);
    double able = big * 0.6304 / 0.9958;
    double cop = 3.6 / (1.3472 / 0.9937);
    assertThat(load).isBetween(0.3 * able, 0.95 * able);
    double partLoad = 1 - 0.25 * (1 - load / able);
    assertThat(run.at(YearResult.Figure.PUMP_POWER, 0, HOUR))
        .isCloseTo(load / cop / partLoad, withinPercentage(0.2));
    assertThat(run.missing(0, HOUR)).isZero();
    assertThat(pump.heatAt(MadeShops.celsius(70), MadeShops.celsius(17)))
        .isCloseTo(able, withinPercentage(0.1));
  }

  /** One too small gives all it has, and the heater the rest. */
  @Test
  void aHeaterGivesTheRest() {
    ShopYear year = steady(17);
    double small = CAPACITY / 4;
    Cooling pump =
        Cooling.heatPump(
            Cooling.Kind.VARIABLE_HEAT_PUMP,
            0,
            new Cooling.Plate(small, 3.5, Cooling.Label.EER, 1),
            new Cooling.Heat(small, OptionalDouble.of(2.5), -15));
    YearResult run = YearRun.of(year, Optional.of(pump));
    double load = run.at(YearResult.Figure.HEATING, 0, HOUR);
    assertThat(load).isGreaterThan(small);
    assertThat(run.at(YearResult.Figure.PUMP_HEAT, 0, HOUR))
        .isCloseTo(small * 0.6304 / 0.9958, withinPercentage(0.1));
    assertThat(run.missing(0, HOUR))
        .isCloseTo(load - small * 0.6304 / 0.9958, withinPercentage(0.1));
  }

  @Test
  void onlyAHeatPumpHeats() {
    Cooling.Plate plate = new Cooling.Plate(CAPACITY, 3.5, Cooling.Label.EER, 1);
    Cooling.Heat heat = new Cooling.Heat(CAPACITY, OptionalDouble.empty(), -15);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cooling.heatPump(Cooling.Kind.WINDOW, 0, plate, heat));
    Cooling window = Cooling.of(Cooling.Kind.WINDOW, 0, plate);
    assertThat(window.heats()).isFalse();
    assertThat(window.heatAt(20, 0)).isZero();
    YearResult run = YearRun.of(steady(17), Optional.of(window));
    assertThat(run.at(YearResult.Figure.PUMP_HEAT, 0, HOUR)).isZero();
    assertThat(run.missing(0, HOUR))
        .isEqualTo(run.at(YearResult.Figure.HEATING, 0, HOUR))
        .isPositive();
  }

  private static ShopYear steady(double fahrenheit) {
    Shop warm =
        MadeShops.box(
            "10", "2000 m3", "0.2 /h", ", \"setPoint\": \"25 °C\", \"heatedTo\": \"70 °F\"");
    double outdoors = MadeShops.celsius(fahrenheit);
    return ShopYear.of(
        MadeYears.plants(warm, RoomCooling.UNIT, RoomHeating.IDEAL, "always"),
        MadeYears.constant(outdoors, outdoors - 2));
  }

  /** In the heat it cools, and draws no more than its label would. */
  @Test
  void inTheHeatItCools() {
    PumpYear told = PumpYear.of(year(35), 0, CAPACITY);
    assertThat(told.heat()).isZero();
    assertThat(told.cooling(HOUR)).isBetween(0.01, CAPACITY / 1000 / 3.4);
  }
}
