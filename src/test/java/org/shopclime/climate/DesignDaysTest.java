package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** By pencil, with the saturation pressures of the ASHRAE tables at 13, 24 and 25 °C. */
class DesignDaysTest {
  private final StationClimate climate = MadeClimate.at(MadeYear.PLACE);
  private final HotDay day = DesignDays.hotDay(climate, Level.P1);

  @Test
  void runsFromPeakToLowInTheStationsShape() {
    assertThat(day.dryBulb().at(12)).isEqualTo(35);
    assertThat(day.peak()).isEqualTo(35);
    assertThat(day.dryBulb().at(24)).isEqualTo(23);
    assertThat(day.dryBulb().at(6)).isEqualTo(29);
    assertThat(day.dryBulb().at(1)).isCloseTo(35 - 11, within(1e-9));
  }

  /**
   * 24 °C wet bulb: 2985 Pa, 0.01888 kg/kg; ((2501 - 2.326 24) 0.01888 - 1.006 11) / (2501 + 1.86
   * 35 - 4.186 24) = 0.014235.
   */
  @Test
  void holdsOneHumidityRatioFromTheCoincidentWetBulb() {
    assertThat(day.dayHumidityRatio()).isCloseTo(0.014235, within(5e-6));
    assertThat(day.humidityRatio()).isEqualTo(Hours.constant(day.dayHumidityRatio()));
    assertThat(day.wetBulb().at(12)).isCloseTo(24, within(1e-4));
    assertThat(day.wetBulb().at(24)).isLessThan(24);
    assertThat(day.saturatedHours()).isZero();
  }

  @Test
  void liesOnThe21stOfItsMonthWithThatMonthsSky() {
    assertThat(day.date()).isEqualTo(LocalDate.of(2025, 8, 21));
    assertThat(day.aerosol()).isEqualTo(0.08);
    assertThat(day.waterCm()).isEqualTo(2);
    assertThat(day.wind()).isEqualTo(climate.hotDayWind());
    assertThat(day.pressure()).isEqualTo(101_325);
    assertThat(day.groundMean()).isEqualTo(19);
    assertThat(day.station()).isEqualTo(MadeYear.PLACE);
    assertThat(DesignDays.hotDay(climate, Level.HOTTEST).date())
        .isEqualTo(LocalDate.of(2025, 6, 21));
  }

  @Test
  void aTypedPeakKeepsRangeAndDewPoint() {
    HotDay typed = DesignDays.hotDay(climate, Level.P1, 41);
    assertThat(typed.dryBulb()).isEqualTo(day.dryBulb().map(value -> value + 6));
    assertThat(typed.humidityRatio()).isEqualTo(day.humidityRatio());
    assertThat(typed.date()).isEqualTo(day.date());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DesignDays.hotDay(climate, Level.P1, 101))
        .withMessageContaining("101.0 is outside 0.0 to 60.0");
  }

  /**
   * Dew point of 0.014235 kg/kg: 19.5 °C. Moved down by 10 K the hours to 6 and from 18 are cooler.
   */
  @Test
  void aCoolerDayIsSaturatedBelowItsDewPoint() {
    HotDay cool = DesignDays.shifted(day, -10);
    assertThat(cool.dryBulb().at(24)).isEqualTo(13);
    assertThat(cool.humidityRatio().at(24)).as("1498 Pa at 13 °C").isCloseTo(0.00933, within(1e-5));
    assertThat(cool.wetBulb().at(24)).isCloseTo(13, within(1e-3));
    assertThat(cool.humidityRatio().at(12)).isEqualTo(day.dayHumidityRatio());
    assertThat(cool.saturatedHours()).isEqualTo(13);
    assertThat(cool.waterCm()).isEqualTo(day.waterCm());
    assertThat(cool.wind()).isEqualTo(day.wind());
  }

  @Test
  void movingBackGivesTheDayAgain() {
    HotDay back = DesignDays.shifted(DesignDays.shifted(day, -10), 10);
    assertThat(back).isEqualTo(day);
    assertThatIllegalArgumentException().isThrownBy(() -> DesignDays.shifted(day, Double.NaN));
  }

  /**
   * 25 °C dew point: 3169 Pa, 0.02008 kg/kg; the day runs from 31 to 23 °C, so its night is
   * saturated.
   */
  @Test
  void theHumidDayHoldsItsDewPoint() {
    HotDay humid = DesignDays.humidDay(climate);
    assertThat(humid.dayHumidityRatio()).isCloseTo(0.02008, within(1e-5));
    assertThat(humid.peak()).isEqualTo(31);
    assertThat(humid.dryBulb().at(24)).isEqualTo(23);
    assertThat(humid.date()).isEqualTo(LocalDate.of(2025, 9, 21));
    // 31 - 8 |h - 12| / 12 < 25 where |h - 12| > 9: hours 1, 2, 22, 23, 24
    assertThat(humid.saturatedHours()).isEqualTo(5);
    assertThat(humid.wetBulb().at(24)).isCloseTo(23, within(1e-3));
  }
}
