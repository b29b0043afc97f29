package org.shopclime.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.api.Assertions;

/** What heat index and wet-bulb globe temperature do everywhere, and pencil arithmetic. */
class HeatProperties {

  private static double fahrenheit(double fahrenheit, double percent) {
    return HeatIndex.of((fahrenheit - 32) / 1.8, percent / 100) * 1.8 + 32;
  }

  /** 70 °F, 50 %: simple 0.5 (70 + 61 + 2.4 + 4.7) = 69.05, with 70 in the mean 69.525. */
  @Example
  void theSimpleFormByPencil() {
    assertThat(fahrenheit(70, 50)).isCloseTo(69.525, offset(1e-9));
  }

  /**
   * 100 °F, 10 %: -42.379 + 204.901523 + 101.4333127 - 224.75541 - 68.3783 - 5.481717 + 122.874 +
   * 8.5282 - 1.99 = 94.7526087; dry air takes off 3/4 sqrt(12/17) = 0.6301260.
   */
  @Example
  void dryAirByPencil() {
    assertThat(fahrenheit(100, 10)).isCloseTo(94.7526087 - 0.6301260, offset(1e-6));
  }

  /**
   * 82 °F, 100 %: -42.379 + 168.01924886 + 1014.333127 - 1842.994362 - 45.9775689 - 548.1717 +
   * 826.204776 + 699.3124 - 133.8076 = 94.5393209; humid air adds 1.5 x 1 = 1.5.
   */
  @Example
  void humidAirByPencil() {
    assertThat(fahrenheit(82, 100)).isCloseTo(94.5393209 + 1.5, offset(1e-6));
  }

  @Property
  void theIndexRisesWithTemperature(
      @ForAll @DoubleRange(min = 40, max = 115) double low,
      @ForAll @DoubleRange(min = 0.01, max = 10) double more,
      @ForAll @DoubleRange(min = 40, max = 100) double percent) {
    assertThat(fahrenheit(low + more, percent)).isGreaterThan(fahrenheit(low, percent));
  }

  @Property
  void theIndexRisesWithHumidity(
      @ForAll @DoubleRange(min = 82, max = 110) double t,
      @ForAll @DoubleRange(min = 40, max = 95) double low,
      @ForAll @DoubleRange(min = 0.01, max = 5) double more) {
    assertThat(fahrenheit(t, low + more)).isGreaterThan(fahrenheit(t, low));
  }

  /** The slope of the regression is at most 14 °F for each degree and 2.5 for each percent here. */
  @Property
  void theIndexIsContinuousButWhereTheSimpleFormEnds(
      @ForAll @DoubleRange(min = 82, max = 120) double t,
      @ForAll @DoubleRange(min = 0, max = 99.99) double percent) {
    assertThat(fahrenheit(t + 1e-6, percent)).isCloseTo(fahrenheit(t, percent), within(2e-5));
    // A square root begins in dry air at 78 and 112 °F only, and there at its zero.
    assertThat(fahrenheit(t, percent + 1e-6)).isCloseTo(fahrenheit(t, percent), within(1e-5));
  }

  /** The step told in the Javadoc: at most 6 °F in saturated air, 1.6 between 10 and 60 %. */
  @Property
  void theStepIsAsSmallAsTold(@ForAll @DoubleRange(min = 0, max = 100) double percent) {
    // Where 0.25 (2.2 t - 20.6 + 0.094 RH) + 0.5 t is 80.
    double at = (320 + 20.6 - 0.094 * percent) / 4.2;
    double step = fahrenheit(at + 1e-6, percent) - fahrenheit(at - 1e-6, percent);
    assertThat(Math.abs(step)).isLessThan(percent > 10 && percent < 60 ? 1.6 : 6);
  }

  @Property
  void moreHeatMoreWaterMoreRadiationRaiseTheGlobe(
      @ForAll @DoubleRange(min = 0, max = 55) double air,
      @ForAll @DoubleRange(min = 0, max = 55) double radiant,
      @ForAll @DoubleRange(min = 0, max = 0.99) double humidity,
      @ForAll @DoubleRange(min = 0.05, max = 4.9) double speed) {
    double here = WetBulbGlobe.indoors(air, radiant, humidity, speed);
    assertThat(WetBulbGlobe.indoors(air + 0.1, radiant, humidity, speed)).isGreaterThan(here);
    assertThat(WetBulbGlobe.indoors(air, radiant + 0.1, humidity, speed)).isGreaterThan(here);
    assertThat(WetBulbGlobe.indoors(air, radiant, humidity + 0.01, speed)).isGreaterThan(here);
    assertThat(WetBulbGlobe.indoors(air + 1e-5, radiant, humidity, speed))
        .isCloseTo(here, offset(2e-5));
    assertThat(WetBulbGlobe.indoors(air, radiant, humidity, speed + 1e-7))
        .isCloseTo(here, offset(1e-4));
  }

  /** A fan cools wick and globe wherever walls are as warm as the air or warmer. */
  @Property
  void windNeverWarmsAmongWarmWalls(
      @ForAll @DoubleRange(min = 0, max = 45) double air,
      @ForAll @DoubleRange(min = 0, max = 30) double warmer,
      @ForAll @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll @DoubleRange(min = 0.05, max = 4) double speed) {
    double still = WetBulbGlobe.indoors(air, air + warmer, humidity, speed);
    assertThat(WetBulbGlobe.indoors(air, air + warmer, humidity, speed + 1))
        .isLessThanOrEqualTo(still + 1e-8);
  }

  /** Saturated air among walls as warm: nothing evaporates, nothing radiates. */
  @Property
  void saturatedRoomsReadTheirAir(
      @ForAll @DoubleRange(min = 0, max = 60) double air,
      @ForAll @DoubleRange(min = 0.05, max = 5) double speed) {
    assertThat(WetBulbGlobe.indoors(air, air, 1, speed)).isCloseTo(air, offset(1e-8));
  }

  @Property
  void theGlobeLiesBetweenAirAndWalls(
      @ForAll @DoubleRange(min = -50, max = 100) double air,
      @ForAll @DoubleRange(min = -50, max = 150) double radiant,
      @ForAll @DoubleRange(min = 0.05, max = 5) double speed) {
    assertThat(WetBulbGlobe.globe(air, radiant, speed))
        .isBetween(Math.min(air, radiant) - 1e-8, Math.max(air, radiant) + 1e-8);
  }

  @Example
  void sillyInputIsRefused() {
    refused(() -> HeatIndex.of(Double.NaN, 0.5), "dry bulb NaN °C is not within -50.0 to 100.0");
    refused(() -> HeatIndex.of(101, 0.5), "dry bulb 101.0");
    refused(() -> HeatIndex.of(30, 50), "relative humidity 50.0 is not within 0.0 to 1.0");
    refused(() -> WetBulbGlobe.indoors(30, 30, -0.1, 0.3), "relative humidity -0.1");
    refused(() -> WetBulbGlobe.indoors(30, 160, 0.5, 0.3), "radiant temperature 160.0");
    refused(() -> WetBulbGlobe.indoors(-60, 30, 0.5, 0.3), "air temperature -60.0");
    refused(() -> WetBulbGlobe.globe(30, 30, 0), "air speed 0.0 m/s is not within 0.05 to 5.0");
    refused(() -> WetBulbGlobe.globe(30, 30, Double.NaN), "air speed NaN");
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String text) {
    Assertions.assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(text);
  }
}
