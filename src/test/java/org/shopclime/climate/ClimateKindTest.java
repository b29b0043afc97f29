package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.quantity.Units;

class ClimateKindTest {

  /** A made climate with other figures: 1 % dry bulb and dew point, 99 % dry bulb, °F. */
  private static StationClimate with(double hot, double dewPoint, double cold) {
    StationClimate made = MadeClimate.at(MadeYear.PLACE);
    double dry = Units.celsius(hot);
    AirState air = AirState.ofDewPoint(dry, Units.celsius(dewPoint), MoistAir.STANDARD_PRESSURE);
    Map<Level, HotPoint> levels = new EnumMap<>(made.levels());
    levels.put(
        Level.P1,
        new HotPoint(
            dry, MoistAir.wetBulb(dry, air.humidityRatio(), MoistAir.STANDARD_PRESSURE), 7));
    return new StationClimate(
        made.station(),
        MoistAir.STANDARD_PRESSURE,
        levels,
        made.dailyRange(),
        made.monthRange(),
        made.shape(),
        made.humid(),
        new Winter(Units.celsius(cold), Units.celsius(cold) - 2, 3),
        made.hotDayWind(),
        made.hotHourWind(),
        made.aerosol(),
        made.waterCm(),
        made.monthDryBulb(),
        made.ground(),
        made.degreeDays());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "99.6|65|45|very hot, humid summers, warm winters",
        "99.4|64.6|44.6|hot, humid summers, warm winters",
        "90|64.4|44.4|hot, fairly humid summers, mild winters",
        "89.4|55.6|20|warm, fairly humid summers, mild winters",
        "80|55.4|19.4|warm, dry summers, cold winters",
        "79|30|0|mild, dry summers, cold winters",
        "70|60|-0.6|mild, fairly humid summers, very cold winters",
        "69|60|-40|cool summers, very cold winters"
      })
  void goesByWholeDegrees(double hot, double dewPoint, double cold, String words) {
    assertThat(ClimateKind.of(with(hot, dewPoint, cold)).words()).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"95,70", "105,45", "80,60"})
  void findsTheDewPointOfHotHours(double hot, double dewPoint) {
    assertThat(Units.fahrenheit(ClimateKind.hotDewPoint(with(hot, dewPoint, 30))))
        .isCloseTo(dewPoint, within(0.01));
  }
}
