package org.shopclime.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ends of ranges, the meeting of ice and water, and what is refused. */
class MoistAirTest {

  private static final double P = 101_325;

  private static void refuses(String message, ThrowingCallable call) {
    assertThatThrownBy(call)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message);
  }

  @Test
  void iceAndWaterMeetAtTheTriplePoint() {
    double ice = MoistAir.saturationPressure(0.01);
    double water = MoistAir.saturationPressure(Math.nextUp(0.01));
    assertThat(water).isGreaterThan(ice).isCloseTo(ice, offset(4e-6));
    // Which of the two it is; the curve laid out differs from its equation by rounding.
    assertThat(ice).isCloseTo(Phase.ICE.pressure(0.01), offset(1e-9));
    double between = MoistAir.humidityRatio((ice + water) / 2, P);
    assertThat(MoistAir.dewPoint(between, P)).isEqualTo(0.01);
    assertThat(MoistAir.dewPoint(MoistAir.humidityRatio(ice, P), P)).isCloseTo(0.01, offset(1e-9));
    assertThat(MoistAir.dewPoint(MoistAir.humidityRatio(water, P), P))
        .isCloseTo(0.01, offset(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.001, 0.005, 0.009999, 0.01, 0.010001, 0.02})
  void wetBulbHasNoGapNearFreezing(double wetBulb) {
    for (double dryBulb : new double[] {wetBulb, 0.02, 1, 5, 9}) {
      double ratio = MoistAir.humidityRatioFromWetBulb(dryBulb, wetBulb, P);
      // At the triple point itself the two vapour equations differ by 8e-8 K.
      assertThat(MoistAir.wetBulb(dryBulb, ratio, P)).isCloseTo(wetBulb, offset(1e-9));
    }
  }

  @Test
  void aLiquidBulbIsTakenWhereIceWouldDoToo() {
    double ratio = MoistAir.humidityRatioFromWetBulb(10, -0.2, P);
    double water = MoistAir.wetBulb(10, ratio, P);
    assertThat(water).isPositive();
    assertThat(MoistAir.humidityRatioFromWetBulb(10, water, P)).isCloseTo(ratio, offset(1e-12));
  }

  @Test
  void coldFogMeltsAtZero() {
    // At -10 °C eq. 33 asks for more water at a bulb of 0 °C than eq. 35 does, by 0.0005 kg/kg.
    double saturated = MoistAir.saturationHumidityRatio(0, P);
    double ice = WetBulb.humidityRatio(-10, -1e-12, saturated);
    double water = WetBulb.humidityRatio(-10, 0, saturated);
    assertThat(water).isGreaterThan(ice);
    assertThat(MoistAir.wetBulb(-10, (ice + water) / 2, P)).isZero();
    assertThat(MoistAir.wetBulb(-10, ice - 1e-5, P)).isNegative();
    assertThat(MoistAir.wetBulb(-10, water + 1e-5, P)).isPositive();
  }

  @Test
  void dryAirHasAWetBulbButNoDewPoint() {
    assertThat(MoistAir.relativeHumidity(20, 0, P)).isZero();
    double wetBulb = MoistAir.wetBulb(40, 0, P);
    assertThat(MoistAir.humidityRatioFromWetBulb(40, wetBulb + 1e-9, P))
        .isCloseTo(0, offset(1e-11));
    refuses("vapour pressure 0.0 Pa is not within", () -> MoistAir.dewPoint(0, P));
  }

  @Test
  void endsOfTheRangesAreTaken() {
    assertThat(MoistAir.saturationPressure(-100)).isCloseTo(0.0014051, offset(1e-7));
    assertThat(MoistAir.saturationPressure(200)).isCloseTo(1_555_074, offset(1.0));
    assertThat(MoistAir.standardPressure(-5000)).isCloseTo(177_700, offset(300.0));
    assertThat(MoistAir.standardPressure(11_000)).isCloseTo(22_632, offset(30.0));
    assertThat(MoistAir.humidityRatio(0, P)).isZero();
    assertThat(MoistAir.vapourPressure(10, 1e7)).isCloseTo(9.4145e6, offset(100.0));
    assertThat(MoistAir.vapourPressure(0, 1e3)).isZero();
    assertThat(MoistAir.humidityRatioFromRelativeHumidity(20, 0, P)).isZero();
    double hottest = MoistAir.saturationHumidityRatio(200, 1e7);
    assertThat(MoistAir.dewPoint(hottest - 1e-12, 1e7)).isCloseTo(200, offset(1e-6));
    double coldest = MoistAir.saturationHumidityRatio(-100, P);
    assertThat(MoistAir.dewPoint(coldest * (1 + 1e-12), P)).isCloseTo(-100, offset(1e-6));
    assertThat(MoistAir.wetBulb(200, 0, P)).isBetween(40.0, 60.0);
    assertThat(MoistAir.wetBulb(-100, 0, P)).isCloseTo(-100, offset(1e-4));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-100.001, 200.001, Double.NaN, Double.POSITIVE_INFINITY})
  void temperaturesOutsideAreRefused(double celsius) {
    String message = celsius + " °C is not within -100.0 to 200.0";
    refuses("temperature " + message, () -> MoistAir.saturationPressure(celsius));
    refuses("dry bulb " + message, () -> MoistAir.enthalpy(celsius, 0.01));
    refuses("dry bulb " + message, () -> MoistAir.specificVolume(celsius, 0.01, P));
    refuses("dry bulb " + message, () -> MoistAir.wetBulb(celsius, 0.01, P));
    refuses("dry bulb " + message, () -> MoistAir.humidityRatioFromWetBulb(celsius, 5, P));
    refuses("dry bulb " + message, () -> new AirState(celsius, 0.01, P));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, 10.001, Double.NaN})
  void humidityRatiosOutsideAreRefused(double ratio) {
    String message = "humidity ratio " + ratio + " kg/kg is not within 0.0 to 10.0";
    refuses(message, () -> MoistAir.vapourPressure(ratio, P));
    refuses(message, () -> MoistAir.enthalpy(20, ratio));
    refuses(message, () -> MoistAir.dryBulbFromEnthalpy(1e4, ratio));
    refuses(message, () -> MoistAir.specificVolume(20, ratio, P));
    refuses(message, () -> MoistAir.wetBulb(20, ratio, P));
    refuses(message, () -> MoistAir.humidHeat(ratio));
    refuses(message, () -> new AirState(20, ratio, P));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 999, 1.001e7, Double.NaN})
  void pressuresOutsideAreRefused(double pressure) {
    String message = "pressure " + pressure + " Pa is not within 1000.0 to 1.0E7";
    refuses(message, () -> MoistAir.humidityRatio(100, pressure));
    refuses(message, () -> MoistAir.vapourPressure(0.01, pressure));
    refuses(message, () -> MoistAir.specificVolume(20, 0.01, pressure));
    refuses(message, () -> MoistAir.wetBulb(20, 0.01, pressure));
    refuses(message, () -> new AirState(20, 0.01, pressure));
  }

  @Test
  void otherThingsThatCannotBeAreRefused() {
    refuses("altitude 11000.1 m is not within", () -> MoistAir.standardPressure(11_000.1));
    refuses("altitude -5000.1 m is not within", () -> MoistAir.standardPressure(-5000.1));
    refuses(
        "relative humidity 1.01 is not within 0.0 to 1.0",
        () -> MoistAir.humidityRatioFromRelativeHumidity(20, 1.01, P));
    refuses(
        "relative humidity -0.01 is not within",
        () -> MoistAir.humidityRatioFromRelativeHumidity(20, -0.01, P));
    refuses("vapour pressure -1.0 Pa", () -> MoistAir.humidityRatio(-1, P));
    refuses("below the total of 101325.0 Pa", () -> MoistAir.humidityRatio(P, P));
    refuses("below the total", () -> MoistAir.saturationHumidityRatio(101, P));
    refuses(
        "wet bulb 20.1 °C is not within -100.0 to 20.0",
        () -> MoistAir.humidityRatioFromWetBulb(20, 20.1, P));
    refuses(
        "wet bulb 5.0 °C is below that of dry air at 40.0 °C and 101325.0 Pa",
        () -> MoistAir.humidityRatioFromWetBulb(40, 5, P));
    refuses(
        "dew point 20.1 °C is not within -100.0 to 20.0", () -> AirState.ofDewPoint(20, 20.1, P));
    refuses("enthalpy NaN J/kg", () -> MoistAir.dryBulbFromEnthalpy(Double.NaN, 0.01));
  }

  /**
   * ASHRAE Handbook - Fundamentals (2017, SI), ch. 1, eq. 30 by hand: 1.006·30 + 0.01·(2501 +
   * 55.8).
   */
  @Test
  void enthalpyByHand() {
    assertThat(MoistAir.enthalpy(30, 0.01)).isCloseTo(55_748, offset(1e-9));
    assertThat(MoistAir.humidHeat(0.01)).isCloseTo(1024.6, offset(1e-12));
  }

  @Test
  void aStateSaysWhatTheFunctionsSay() {
    AirState air = AirState.ofRelativeHumidity(30, 0.5, P);
    double ratio = air.humidityRatio();
    assertThat(air.vapourPressure()).isEqualTo(MoistAir.vapourPressure(ratio, P));
    assertThat(air.relativeHumidity()).isCloseTo(0.5, offset(1e-12));
    assertThat(air.dewPoint()).isEqualTo(MoistAir.dewPoint(ratio, P));
    assertThat(air.wetBulb()).isEqualTo(MoistAir.wetBulb(30, ratio, P));
    assertThat(air.enthalpy()).isEqualTo(MoistAir.enthalpy(30, ratio));
    assertThat(air.specificVolume()).isEqualTo(MoistAir.specificVolume(30, ratio, P));
    assertThat(air.density()).isEqualTo(MoistAir.density(30, ratio, P));
    assertThat(air.dryAirDensity()).isEqualTo(MoistAir.dryAirDensity(30, ratio, P));
    assertThat(air.withDryBulb(20)).isEqualTo(new AirState(20, ratio, P));
  }
}
