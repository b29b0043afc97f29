package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
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

  /** In the heat it cools, and draws no more than its label would. */
  @Test
  void inTheHeatItCools() {
    PumpYear told = PumpYear.of(year(35), 0, CAPACITY);
    assertThat(told.heat()).isZero();
    assertThat(told.cooling(HOUR)).isBetween(0.01, CAPACITY / 1000 / 3.4);
  }
}
