package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

class RoomUnitTest {

  private static final double SEA_LEVEL = 101325;
  private static final double CAPACITY = 3516.85;
  private static final double POWER = 1100;

  private static final RoomUnit WINDOW =
      new RoomUnit(CAPACITY, POWER, 1, 0.165, 0.70, CurveSet.windowUnit());
  private static final RoomUnit RESIDENTIAL =
      new RoomUnit(CAPACITY, POWER, 1, 0.165, 0.70, CurveSet.residentialSingleSpeed());
  private static final List<RoomUnit> BOTH = List.of(WINDOW, RESIDENTIAL);

  private static final AirState RATED =
      new AirState(
          celsius(80),
          MoistAir.humidityRatioFromWetBulb(celsius(80), celsius(67), SEA_LEVEL),
          SEA_LEVEL);

  @Test
  void givesItsRatingAtTheRatingPoint() {
    for (RoomUnit unit : BOTH) {
      Delivered delivered = unit.at(celsius(95), RATED);
      CurveSet.Evaluation curve = unit.curves().at(celsius(67), celsius(95), 1);
      // the wet bulb comes back from the humidity ratio, to the closeness of its own search
      assertThat(delivered.total()).isCloseTo(CAPACITY * curve.capacityRatio(), within(1e-3));
      assertThat(delivered.power())
          .isCloseTo(POWER * curve.capacityRatio() * curve.powerPerCapacityRatio(), within(1e-3));
      assertThat(delivered.sensibleHeatRatio()).isCloseTo(0.70, within(1e-6));
      assertThat(delivered.limits()).isEmpty();
      assertThat(delivered.dry()).isFalse();
      assertThat(delivered.airMassFlow())
          .isCloseTo(
              0.165 * MoistAir.dryAirDensity(RATED.dryBulb(), RATED.humidityRatio(), SEA_LEVEL),
              within(1e-12));
    }
  }

  /**
   * The leaving air of the rated state worked by hand: 3,497.5 W over 0.1909 kg/s is 18.3 kJ/kg, 30
   * % of it latent over 2,551 kJ/kg; so about 57.4 °F. The straight line meets the saturation line
   * of the psychrometric chart at 53 °F.
   */
  @Test
  void leavesAsOnTheChart() {
    Delivered delivered = WINDOW.at(celsius(95), RATED);
    assertThat(fahrenheit(delivered.leavingDryBulb())).isCloseTo(57.4, within(0.2));
    assertThat(delivered.leavingHumidityRatio()).isCloseTo(0.00901, within(0.00003));
    assertThat(fahrenheit(delivered.apparatusDewPoint())).isCloseTo(53.2, within(0.3));
    assertThat(delivered.bypassFactor()).isCloseTo(0.157, within(0.01));
  }

  @Test
  void dryDesertAirKeepsTheCoilDry() {
    AirState desert =
        new AirState(
            celsius(80), MoistAir.saturationHumidityRatio(celsius(30), SEA_LEVEL), SEA_LEVEL);
    for (RoomUnit unit : BOTH) {
      Delivered delivered = unit.at(celsius(105), desert);
      assertThat(delivered.dry()).isTrue();
      assertThat(delivered.latent()).isZero();
      assertThat(delivered.condensate()).isZero();
      assertThat(delivered.sensible()).isEqualTo(delivered.total());
      assertThat(delivered.leavingHumidityRatio()).isEqualTo(desert.humidityRatio());
      assertThat(delivered.apparatusDewPoint())
          .isGreaterThan(MoistAir.dewPoint(desert.humidityRatio(), SEA_LEVEL));
      // just-dry wet bulb is inside the tested range, the desert's own 53 °F is not
      assertThat(delivered.limits()).isEmpty();
      assertThat(MoistAir.wetBulb(desert.dryBulb(), desert.humidityRatio(), SEA_LEVEL))
          .isLessThan(unit.curves().lowestWetBulb());
    }
  }

  @Test
  void aDryCoilGivesTheSameHoweverDryTheAir() {
    for (RoomUnit unit : BOTH) {
      double before = unit.at(celsius(105), air(80, 0.05)).total();
      double after = unit.at(celsius(105), air(80, 0.25)).total();
      // only the density of the entering air moves with its water
      assertThat(after).isCloseTo(before, within(0.002 * before));
    }
  }

  /** At the humidity where the coil just turns dry, both ways of reading the curves meet. */
  @Test
  void wetAndDryMeetWithoutAStep() {
    for (RoomUnit unit : BOTH) {
      double driest = 0.001;
      double wettest = 0.012;
      for (int i = 0; i < 50; i++) {
        double middle = 0.5 * (driest + wettest);
        if (unit.at(40, new AirState(27, middle, SEA_LEVEL)).dry()) {
          driest = middle;
        } else {
          wettest = middle;
        }
      }
      Delivered dry = unit.at(40, new AirState(27, driest, SEA_LEVEL));
      Delivered wet = unit.at(40, new AirState(27, wettest, SEA_LEVEL));
      assertThat(dry.dry()).isTrue();
      assertThat(wet.dry()).isFalse();
      assertThat(wet.total()).isCloseTo(dry.total(), within(1e-4));
      assertThat(wet.sensible()).isCloseTo(dry.sensible(), within(1e-4));
      assertThat(wet.power()).isCloseTo(dry.power(), within(1e-4));
      assertThat(wet.apparatusDewPoint()).isCloseTo(dry.apparatusDewPoint(), within(1e-6));
      assertThat(wet.leavingDryBulb()).isCloseTo(dry.leavingDryBulb(), within(1e-6));
    }
  }

  @Test
  void hotSoakedDampRoomHoldsTheWetBulbEdge() {
    AirState soaked = air(100, 0.70);
    for (RoomUnit unit : BOTH) {
      Delivered delivered = unit.at(celsius(100), soaked);
      assertThat(delivered.limits()).containsExactly(Limit.WET_BULB_HIGH);
      assertThat(delivered.total())
          .isCloseTo(
              CAPACITY
                  * unit.curves().capacityRatio(unit.curves().highestWetBulb(), celsius(100))
                  * unit.curves().capacityRatio(1.0),
              within(1e-9));
      assertThat(delivered.sensibleHeatRatio()).isBetween(0.3, 0.5);
      assertThat(delivered.leavingDryBulb()).isLessThan(soaked.dryBulb());
    }
  }

  @Test
  void extremeColdIsAnsweredAndTold() {
    for (RoomUnit unit : BOTH) {
      Delivered delivered = unit.at(-20, air(0, 0.5));
      assertThat(delivered.limits())
          .containsExactlyInAnyOrder(Limit.WET_BULB_LOW, Limit.OUTDOOR_LOW, Limit.COIL_ICES);
      assertThat(delivered.total()).isPositive();
      assertThat(delivered.leavingDryBulb()).isLessThan(celsius(0));
    }
    Delivered starved = WINDOW.withAirflowFraction(0.3).at(-60, new AirState(-20, 0, 60000));
    assertThat(starved.dry()).isTrue();
    assertThat(starved.sensible()).isPositive();
    assertThat(starved.limits()).contains(Limit.AIRFLOW_LOW, Limit.COIL_ICES);
  }

  @Test
  void nearlySaturatedAirLeavesSaturatedNotAsFog() {
    for (double humidity : new double[] {0.95, 1}) {
      AirState damp = air(75, humidity);
      Delivered delivered = WINDOW.at(celsius(85), damp);
      assertThat(
              MoistAir.relativeHumidity(
                  delivered.leavingDryBulb(), delivered.leavingHumidityRatio(), SEA_LEVEL))
          .isCloseTo(1, within(1e-9));
      assertBalanced(delivered, damp);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "80, 0.51, 95",
    "80, 0.35, 105",
    "80, 0.15, 105",
    "100, 0.70, 100",
    "100, 0.15, 105",
    "40, 0.5, 40",
    "75, 1, 85",
    "120, 0.10, 115",
    "72, 0.6, 78"
  })
  void energyAndWaterBalance(double fahrenheit, double humidity, double outdoorF) {
    for (RoomUnit unit : BOTH) {
      for (double fraction : new double[] {1, 0.6}) {
        AirState entering = air(fahrenheit, humidity);
        assertBalanced(
            unit.withAirflowFraction(fraction).at(celsius(outdoorF), entering), entering);
      }
    }
  }

  /**
   * The convention told in {@link Delivered}, with the enthalpy of ASHRAE Fundamentals written out.
   */
  private static void assertBalanced(Delivered delivered, AirState entering) {
    double m = delivered.airMassFlow();
    double t = entering.dryBulb();
    double w = entering.humidityRatio();
    double leavingT = delivered.leavingDryBulb();
    double leavingW = delivered.leavingHumidityRatio();
    double close = 1e-9 * delivered.total();
    assertThat(delivered.sensible() + delivered.latent())
        .isCloseTo(delivered.total(), within(close));
    assertThat(m * (enthalpy(t, w) - enthalpy(leavingT, leavingW)))
        .isCloseTo(delivered.total(), within(close));
    assertThat(m * (w - leavingW) * (2501000 + 1860 * t))
        .isCloseTo(delivered.latent(), within(close));
    assertThat(m * (1006 + 1860 * leavingW) * (t - leavingT))
        .isCloseTo(delivered.sensible(), within(close));
    assertThat(m * (w - leavingW)).isCloseTo(delivered.condensate(), within(1e-15));
    // the air that was touched leaves on the saturation line, with the share of the bypass
    if (!delivered.dry() && delivered.leavingHumidityRatio() < saturated(leavingT) * 0.9999) {
      double bypass = delivered.bypassFactor();
      double faceT = delivered.apparatusDewPoint();
      assertThat(bypass * enthalpy(t, w) + (1 - bypass) * enthalpy(faceT, saturated(faceT)))
          .isCloseTo(enthalpy(leavingT, leavingW), within(1e-4));
      assertThat(bypass * w + (1 - bypass) * saturated(faceT)).isCloseTo(leavingW, within(1e-9));
    }
  }

  @Test
  void hotterOutdoorsGivesLessAndDrawsMore() {
    for (RoomUnit unit : BOTH) {
      for (AirState entering : List.of(RATED, air(78, 0.5), air(80, 0.15), air(85, 0.6))) {
        Delivered before = unit.at(celsius(75), entering);
        for (double outdoorF = 77; outdoorF <= 115; outdoorF += 2) {
          Delivered now = unit.at(celsius(outdoorF), entering);
          assertThat(now.total()).isLessThan(before.total());
          assertThat(now.power()).isGreaterThan(before.power());
          before = now;
        }
      }
    }
  }

  @Test
  void lessAirMakesAColderCoilAndMoreWater() {
    for (RoomUnit unit : BOTH) {
      Delivered clean = unit.at(celsius(95), RATED);
      Delivered dusty = unit.withAirflowFraction(0.7).at(celsius(95), RATED);
      assertThat(dusty.total()).isLessThan(clean.total());
      assertThat(dusty.sensible()).isLessThan(clean.sensible());
      assertThat(dusty.latent()).isGreaterThan(clean.latent());
      assertThat(dusty.apparatusDewPoint()).isLessThan(clean.apparatusDewPoint());
      // NTU = UA / (m cp): BF(0.7 m) = BF(m)^(1 / 0.7)
      assertThat(dusty.bypassFactor())
          .isCloseTo(Math.pow(clean.bypassFactor(), 1 / 0.7), within(1e-12));
    }
  }

  @Test
  void thinAirMakesALargerTemperatureDrop() {
    Delivered low = WINDOW.at(celsius(95), air(80, 0.3));
    double pressure = 83400;
    double w = 0.0066;
    Delivered high = WINDOW.at(celsius(95), new AirState(celsius(80), w, pressure));
    assertThat(high.leavingDryBulb()).isLessThan(low.leavingDryBulb());
  }

  @Test
  void labelsMakeTheUsualUnit() {
    RoomUnit byEer = RoomUnit.windowUnitByEer(CAPACITY, 3.2);
    assertThat(byEer.ratedCapacity()).isEqualTo(CAPACITY);
    assertThat(byEer.ratedPower()).isCloseTo(CAPACITY / 3.2, within(1e-9));
    assertThat(byEer.airflowFraction()).isEqualTo(1);
    // 350 cfm at 4.719474e-4 m³/s (NIST SP 811)
    assertThat(byEer.ratedAirflow()).isCloseTo(350 * 4.719474e-4, within(1e-6));
    assertThat(byEer.ratedSensibleHeatRatio()).isEqualTo(0.70);
    RoomUnit byCeer = RoomUnit.windowUnitByCeer(CAPACITY, 3.2);
    assertThat(Ceer.of(CAPACITY, byCeer.ratedPower(), 1)).isCloseTo(3.2, within(1e-12));
  }

  @Test
  void refusesWhatNoUnitCanBe() {
    CurveSet curves = CurveSet.windowUnit();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RoomUnit(0, POWER, 1, 0.165, 0.7, curves))
        .withMessageContaining("rated capacity 0.0 W");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RoomUnit(CAPACITY, Double.NaN, 1, 0.165, 0.7, curves))
        .withMessageContaining("rated power NaN W");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RoomUnit(CAPACITY, POWER, 0.29, 0.165, 0.7, curves))
        .withMessageContaining("airflow fraction 0.29");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RoomUnit(CAPACITY, POWER, 1, -1, 0.7, curves))
        .withMessageContaining("rated airflow -1.0 m³/s");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RoomUnit(CAPACITY, POWER, 1, 0.165, 1.1, curves))
        .withMessageContaining("sensible heat ratio 1.1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RoomUnit(CAPACITY, POWER, 1, 0.165, 0.5, curves))
        .withMessageContaining("no coil above 0 °C");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RoomUnit(CAPACITY, POWER, 1, 0.165, 0.85, curves))
        .withMessageContaining("beyond saturation");
    assertThatIllegalArgumentException().isThrownBy(() -> RoomUnit.windowUnitByEer(-1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> RoomUnit.windowUnitByEer(3000, 0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-100, 90, Double.NaN})
  void refusesSenselessAir(double celsius) {
    assertThatIllegalArgumentException().isThrownBy(() -> WINDOW.at(celsius, RATED));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WINDOW.at(35, new AirState(celsius, 0.005, SEA_LEVEL)));
  }

  private static double enthalpy(double t, double w) {
    return 1006 * t + w * (2501000 + 1860 * t);
  }

  private static double saturated(double celsius) {
    return MoistAir.saturationHumidityRatio(celsius, SEA_LEVEL);
  }

  private static AirState air(double fahrenheit, double humidity) {
    return AirState.ofRelativeHumidity(celsius(fahrenheit), humidity, SEA_LEVEL);
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  private static double fahrenheit(double celsius) {
    return 32 + 1.8 * celsius;
  }
}
