package org.shopclime.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shopclime.air.MoistAir;

/**
 * Ours and the root finders on 8,192 states of air: the equations as printed (source at {@link
 * PlainMoistAir}) leave both the same or a smaller error with ours. The error of an answer is what
 * its equation misses there over the slope of the equation, in K.
 */
class PlainMoistAirTest {

  /** Below this neither is better than the rounding of the equations, K. */
  private static final double ROUNDING = 1e-11;

  /** Over which slopes are taken, K. */
  private static final double STEP = 1e-4;

  private double worstOurs;
  private double worstPlain;

  @Test
  void saturationIsThatPrinted() {
    overAll(
        (air, i) -> {
          double printed = PlainMoistAir.saturationPressure(air.dryBulb[i]);
          assertThat(MoistAir.saturationPressure(air.dryBulb[i]))
              .isCloseTo(printed, within(1e-12 * printed));
        });
  }

  @ParameterizedTest
  @EnumSource
  void wetBulb(PlainMoistAir.Finder finder) {
    PlainMoistAir plain = new PlainMoistAir(finder);
    overAll(
        (air, i) -> {
          double t = air.dryBulb[i];
          double p = air.pressure[i];
          double w = air.humidityRatio[i];
          DoubleUnaryOperator missed =
              bulb -> PlainMoistAir.humidityRatioFromWetBulb(t, bulb, p) - w;
          note(missed, MoistAir.wetBulb(t, w, p), plain.wetBulb(t, w, p));
        });
    oursIsNoWorse();
  }

  @ParameterizedTest
  @EnumSource
  void dewPoint(PlainMoistAir.Finder finder) {
    PlainMoistAir plain = new PlainMoistAir(finder);
    overAll(
        (air, i) -> {
          double p = air.pressure[i];
          double w = air.humidityRatio[i];
          DoubleUnaryOperator missed =
              dew -> Math.log(PlainMoistAir.saturationHumidityRatio(dew, p) / w);
          note(missed, MoistAir.dewPoint(w, p), plain.dewPoint(w, p));
        });
    oursIsNoWorse();
  }

  @ParameterizedTest
  @EnumSource
  void saturatedTemperature(PlainMoistAir.Finder finder) {
    PlainMoistAir plain = new PlainMoistAir(finder);
    overAll(
        (air, i) -> {
          double p = air.pressure[i];
          double h = air.enthalpy[i];
          DoubleUnaryOperator missed =
              t -> PlainMoistAir.enthalpy(t, PlainMoistAir.saturationHumidityRatio(t, p)) - h;
          note(
              missed,
              MoistAir.saturatedTemperature(h, p),
              plain.saturatedTemperature(h, p, air.dryBulb[i] + 1));
        });
    oursIsNoWorse();
  }

  @ParameterizedTest
  @EnumSource
  void dryBulb(PlainMoistAir.Finder finder) {
    PlainMoistAir plain = new PlainMoistAir(finder);
    overAll(
        (air, i) -> {
          double w = air.humidityRatio[i];
          double h = air.enthalpy[i];
          note(
              t -> PlainMoistAir.enthalpy(t, w) - h,
              MoistAir.dryBulbFromEnthalpy(h, w),
              plain.dryBulb(h, w));
        });
    oursIsNoWorse();
  }

  private interface OfState {
    void of(AirSpread air, int i);
  }

  private static void overAll(OfState check) {
    for (int number = 1; number <= 8; number++) {
      AirSpread air = new AirSpread(number);
      for (int i = 0; i < AirSpread.SIZE; i++) {
        check.of(air, i);
      }
    }
  }

  private void note(DoubleUnaryOperator missed, double ours, double plain) {
    worstOurs = Math.max(worstOurs, error(missed, ours));
    worstPlain = Math.max(worstPlain, error(missed, plain));
  }

  /** The slope is taken on the side away from freezing, where the equations have a step. */
  private static double error(DoubleUnaryOperator missed, double celsius) {
    double step = celsius < 0 ? -STEP : STEP;
    double here = missed.applyAsDouble(celsius);
    double slope = (missed.applyAsDouble(celsius + step) - here) / step;
    return Math.abs(here / slope);
  }

  private void oursIsNoWorse() {
    assertThat(worstOurs).isLessThanOrEqualTo(Math.max(worstPlain, ROUNDING));
  }
}
