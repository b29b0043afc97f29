package org.shopclime.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What moist air does everywhere, and each search against a bisection of the printed equation. */
class MoistAirProperties {

  private static final double SEARCH = 1e-9;

  /** The root of a rising function, found without derivatives. */
  private static double bisect(DoubleUnaryOperator rising, double low, double high) {
    double below = low;
    double above = high;
    for (int i = 0; i < 200; i++) {
      double middle = (below + above) / 2;
      if (rising.applyAsDouble(middle) > 0) {
        above = middle;
      } else {
        below = middle;
      }
    }
    return (below + above) / 2;
  }

  @Property
  void dewPointInvertsSaturation(
      @ForAll @Scale(8) @DoubleRange(min = -99.9, max = 80) double dewPoint,
      @ForAll @Scale(8) @DoubleRange(min = 60_000, max = 1_500_000) double pressure) {
    double ratio = MoistAir.humidityRatioFromDewPoint(dewPoint, pressure);
    // At the triple point the two equations differ by 8e-8 K.
    assertThat(MoistAir.dewPoint(ratio, pressure)).isCloseTo(dewPoint, offset(SEARCH));
  }

  @Property
  void dewPointIsThatOfABisection(
      @ForAll @Scale(8) @DoubleRange(min = 1e-7, max = 0.2) double ratio,
      @ForAll @Scale(8) @DoubleRange(min = 60_000, max = 110_000) double pressure) {
    double vapour = MoistAir.vapourPressure(ratio, pressure);
    assertThat(MoistAir.dewPoint(ratio, pressure))
        .isCloseTo(bisect(t -> MoistAir.saturationPressure(t) - vapour, -100, 200), offset(SEARCH));
  }

  @Property
  void wetBulbIsThatOfABisection(
      @ForAll @Scale(8) @DoubleRange(min = -60, max = 120) double dryBulb,
      @ForAll @Scale(8) @DoubleRange(min = 0, max = 1) double share,
      @ForAll @Scale(8) @DoubleRange(min = 60_000, max = 110_000) double pressure) {
    double most = dryBulb < 75 ? MoistAir.saturationHumidityRatio(dryBulb, pressure) : 0.3;
    double ratio = share * most;
    double wetBulb = MoistAir.wetBulb(dryBulb, ratio, pressure);
    double high = Math.min(dryBulb, 80);
    DoubleUnaryOperator printed =
        bulb ->
            WetBulb.humidityRatio(dryBulb, bulb, MoistAir.saturationHumidityRatio(bulb, pressure))
                - ratio;
    double expected;
    if (high >= 0 && printed.applyAsDouble(0) <= 0) {
      expected = bisect(printed, 0, high);
    } else {
      expected = bisect(printed, -100, Math.min(high, -Double.MIN_NORMAL));
    }
    assertThat(wetBulb).isCloseTo(expected, offset(2 * SEARCH)).isLessThanOrEqualTo(dryBulb + 1e-9);
  }

  /** From cold thin air far outside towns to near boiling. */
  @Property
  void saturatedTemperatureReturns(
      @ForAll @Scale(8) @DoubleRange(min = -99.9, max = 199) double celsius,
      @ForAll @Scale(4) @DoubleRange(min = 1000, max = 10_000_000) double pressure) {
    Assume.that(MoistAir.saturationPressure(celsius) < 0.9 * pressure);
    double ratio = MoistAir.saturationHumidityRatio(celsius, pressure);
    assertThat(MoistAir.saturatedTemperature(MoistAir.enthalpy(celsius, ratio), pressure))
        .isCloseTo(celsius, offset(SEARCH));
  }

  /** The thickest fog taken: the printed equation holds, at a bulb below boiling. */
  @Property
  void anyFogHasAWetBulb(
      @ForAll @Scale(6) @DoubleRange(min = -100, max = 100) double dryBulb,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 10) double ratio,
      @ForAll @Scale(4) @DoubleRange(min = 1000, max = 1_000_000) double pressure) {
    double wetBulb = MoistAir.wetBulb(dryBulb, ratio, pressure);
    assertThat(MoistAir.saturationPressure(wetBulb)).isLessThan(pressure);
    // Cold fog may melt at 0 °C, between both equations.
    Assume.that(wetBulb != 0);
    double saturated = MoistAir.saturationHumidityRatio(wetBulb, pressure);
    assertThat(WetBulb.humidityRatio(dryBulb, wetBulb, saturated))
        .isCloseTo(ratio, offset(1e-8 * ratio));
  }

  @Property
  void wetBulbReturns(
      @ForAll @Scale(8) @DoubleRange(min = 0, max = 60) double wetBulb,
      @ForAll @Scale(8) @DoubleRange(min = 0, max = 1) double share,
      @ForAll @Scale(8) @DoubleRange(min = 60_000, max = 110_000) double pressure) {
    // Dry air has the highest dry bulb for this wet bulb; go some way there.
    double saturated = MoistAir.saturationHumidityRatio(wetBulb, pressure);
    double dryBulb = Math.min(195, wetBulb + 0.95 * share * saturated * 2_300_000 / 1006);
    double ratio = MoistAir.humidityRatioFromWetBulb(dryBulb, wetBulb, pressure);
    assertThat(MoistAir.wetBulb(dryBulb, ratio, pressure)).isCloseTo(wetBulb, offset(SEARCH));
  }

  @Property
  void iceBulbReturnsUnlessWaterIsPossible(
      @ForAll @Scale(8) @DoubleRange(min = -60, max = -1e-6) double wetBulb,
      @ForAll @Scale(8) @DoubleRange(min = 0, max = 0.95) double share,
      @ForAll @Scale(8) @DoubleRange(min = 60_000, max = 110_000) double pressure) {
    double saturated = MoistAir.saturationHumidityRatio(wetBulb, pressure);
    double dryBulb = wetBulb + share * saturated * 2_800_000 / 1006;
    double ratio = MoistAir.humidityRatioFromWetBulb(dryBulb, wetBulb, pressure);
    double found = MoistAir.wetBulb(dryBulb, ratio, pressure);
    if (found < 0) {
      assertThat(found).isCloseTo(wetBulb, offset(SEARCH));
    } else {
      assertThat(wetBulb).isGreaterThan(-2);
      assertThat(MoistAir.humidityRatioFromWetBulb(dryBulb, found, pressure))
          .isCloseTo(ratio, offset(1e-12));
    }
  }

  @Property
  void wetBulbLiesBetweenDewPointAndDryBulb(
      @ForAll @Scale(8) @DoubleRange(min = -50, max = 60) double dryBulb,
      @ForAll @Scale(8) @DoubleRange(min = 0.01, max = 1) double relativeHumidity,
      @ForAll @Scale(8) @DoubleRange(min = 70_000, max = 110_000) double pressure) {
    AirState air = AirState.ofRelativeHumidity(dryBulb, relativeHumidity, pressure);
    assertThat(air.relativeHumidity()).isCloseTo(relativeHumidity, offset(1e-12));
    assertThat(air.wetBulb()).isBetween(air.dewPoint() - 1e-9, dryBulb + 1e-9);
  }

  @Property
  void enthalpyReturnsAndRisesByHumidHeat(
      @ForAll @Scale(8) @DoubleRange(min = -50, max = 100) double dryBulb,
      @ForAll @Scale(8) @DoubleRange(min = 0, max = 0.1) double ratio) {
    double enthalpy = MoistAir.enthalpy(dryBulb, ratio);
    assertThat(MoistAir.dryBulbFromEnthalpy(enthalpy, ratio)).isCloseTo(dryBulb, offset(1e-9));
    assertThat(MoistAir.enthalpy(dryBulb + 1, ratio) - enthalpy)
        .isCloseTo(MoistAir.humidHeat(ratio), offset(1e-7));
  }

  /** Dalton and the ideal gas: dry air and vapour each fill the room at their own pressure. */
  @Property
  void densityIsTheSumOfTwoGases(
      @ForAll @Scale(8) @DoubleRange(min = -50, max = 100) double dryBulb,
      @ForAll @Scale(8) @DoubleRange(min = 0, max = 0.2) double ratio,
      @ForAll @Scale(8) @DoubleRange(min = 60_000, max = 110_000) double pressure) {
    double vapour = MoistAir.vapourPressure(ratio, pressure);
    double kelvin = dryBulb + 273.15;
    double dryAir = (pressure - vapour) / (287.042 * kelvin);
    double steam = vapour / (287.042 / 0.621945 * kelvin);
    assertThat(MoistAir.dryAirDensity(dryBulb, ratio, pressure)).isCloseTo(dryAir, offset(1e-12));
    assertThat(MoistAir.density(dryBulb, ratio, pressure)).isCloseTo(dryAir + steam, offset(1e-12));
    assertThat(MoistAir.specificVolume(dryBulb, ratio, pressure))
        .isCloseTo(1 / dryAir, offset(1e-11));
    assertThat(MoistAir.humidityRatio(vapour, pressure)).isCloseTo(ratio, offset(1e-15));
  }

  @Property
  void saturationRises(
      @ForAll @Scale(8) @DoubleRange(min = -100, max = 199.999) double celsius,
      @ForAll @Scale(8) @DoubleRange(min = 1e-6, max = 1e-3) double more) {
    assertThat(MoistAir.saturationPressure(celsius + more))
        .isGreaterThan(MoistAir.saturationPressure(celsius));
  }

  /** The slope used by the searches against a difference of the pressures themselves. */
  @Property
  void slopeIsThatOfThePressure(
      @ForAll Phase phase, @ForAll @Scale(8) @DoubleRange(min = 200, max = 400) double kelvin) {
    double step = 1e-3;
    double difference =
        (phase.logPressure(kelvin + step) - phase.logPressure(kelvin - step)) / (2 * step);
    assertThat(phase.logSlope(kelvin)).isCloseTo(difference, offset(1e-9));
  }

  @Property
  void fogHasItsWetBulbAboveTheDryBulb(
      @ForAll @Scale(8) @DoubleRange(min = 1, max = 40) double dryBulb,
      @ForAll @Scale(8) @DoubleRange(min = 1.01, max = 1.5) double times) {
    double ratio = times * MoistAir.saturationHumidityRatio(dryBulb, 101_325);
    AirState fog = new AirState(dryBulb, ratio, 101_325);
    Assume.that(fog.relativeHumidity() > 1);
    assertThat(fog.wetBulb()).isGreaterThan(dryBulb).isLessThan(fog.dewPoint());
  }
}
