package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/** Evaporative coolers and dehumidifiers. */
class WetAndDryTest {

  private static final double SEA_LEVEL = 101325;

  /** 1,500 cfm and 250 W. */
  private static final EvaporativeCooler COOLER = EvaporativeCooler.usual(1500 * 4.719474e-4, 250);

  /**
   * By hand: supply = dry bulb - 0.8 (dry bulb - wet bulb), and the blower's 250 W warm 1,500 cfm
   * by half a degree. Hot days of Phoenix (108 °F, 70 °F wet bulb) and of the Gulf coast (93 and 77
   * °F): 77.6 °F at half humidity beside 80.2 °F near saturation.
   */
  @ParameterizedTest
  @CsvSource({"108, 70, 77.6, 0.65, 0.75", "93, 77, 80.2, 0.83, 0.90"})
  void desertAndGulfByPencil(
      double dryBulbF, double wetBulbF, double pads, double driest, double dampest) {
    AirState outdoor = AirState.ofWetBulb(celsius(dryBulbF), celsius(wetBulbF), SEA_LEVEL);
    EvaporativeCooler.Supply supply = COOLER.supply(outdoor);
    assertThat(fahrenheit(supply.air().dryBulb())).isCloseTo(pads + 0.55, within(0.1));
    assertThat(supply.air().relativeHumidity()).isBetween(driest, dampest);
    // all but the warmth of the blower: the wet bulb stays
    assertThat(fahrenheit(supply.air().wetBulb())).isCloseTo(wetBulbF, within(0.25));
  }

  /**
   * What owners are told: 105 °F at 15 % makes about 77 °F; 95 °F at 50 % about 83 °F, near fog.
   */
  @Test
  void dryAirCoolsAndDampAirDoesNot() {
    AirState dry = AirState.ofRelativeHumidity(celsius(105), 0.15, SEA_LEVEL);
    AirState damp = AirState.ofRelativeHumidity(celsius(95), 0.50, SEA_LEVEL);
    assertThat(fahrenheit(COOLER.supply(dry).air().dryBulb())).isCloseTo(77, within(0.5));
    assertThat(fahrenheit(COOLER.supply(damp).air().dryBulb())).isCloseTo(82.5, within(1.0));
    assertThat(COOLER.supply(damp).air().relativeHumidity()).isGreaterThan(0.85);
    AirState room = AirState.ofRelativeHumidity(celsius(80), 0.5, SEA_LEVEL);
    assertThat(COOLER.at(room, dry, 1).sensible()).isNegative();
    assertThat(COOLER.at(room, damp, 1).sensible()).isPositive();
    assertThat(COOLER.at(room, damp, 1).water()).isPositive();
  }

  /**
   * By hand: pads that reach the wet bulb let the air go saturated; 0.8 of the way at 105 °F and 15
   * % takes up 0.8 x (0.0137 - 0.0071) kg/kg, some 0.0053; 1,500 cfm of it, 0.79 kg/s, drink 4.2
   * g/s, four gallons an hour, and a fifth more to bleed.
   */
  @Test
  void drinksFiveGallonsAnHour() {
    AirState dry = AirState.ofRelativeHumidity(celsius(105), 0.15, SEA_LEVEL);
    EvaporativeCooler.Supply supply = COOLER.supply(dry);
    assertThat(supply.evaporated()).isCloseTo(0.0052, within(0.0001));
    assertThat(supply.waterUsed()).isCloseTo(1.2 * supply.evaporated(), within(1e-15));
    assertThat(supply.evaporated() * 3600 / 3.785).isCloseTo(5, within(0.2));
    AirState saturated = new EvaporativeCooler(0.7, 1, 1, 0).supply(dry).air();
    assertThat(saturated.relativeHumidity()).isCloseTo(1, within(0.001));
  }

  @Test
  void halfTheTimeIsHalfTheAir() {
    AirState dry = AirState.ofRelativeHumidity(celsius(105), 0.15, SEA_LEVEL);
    AirState room = AirState.ofRelativeHumidity(celsius(85), 0.4, SEA_LEVEL);
    RoomEffect full = COOLER.at(room, dry, 1);
    RoomEffect half = COOLER.at(room, dry, 0.5);
    assertThat(half.sensible()).isCloseTo(full.sensible() / 2, within(1e-9));
    assertThat(half.suppliedAir()).isCloseTo(full.suppliedAir() / 2, within(1e-12));
    assertThat(half.power()).isEqualTo(125);
    assertThat(full.inducedAir()).isZero();
  }

  @Test
  void padsDoNotRunInFrost() {
    AirState room = AirState.ofRelativeHumidity(20, 0.4, SEA_LEVEL);
    AirState frost = AirState.ofRelativeHumidity(-5, 0.5, SEA_LEVEL);
    RoomEffect effect = COOLER.at(room, frost, 1);
    assertThat(effect.limits()).containsExactly(Limit.TOO_COLD);
    assertThat(effect.power()).isZero();
    assertThat(effect.sensible()).isZero();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> COOLER.supply(frost))
        .withMessageContaining("freeze");
    // fog passes as it came
    AirState fog = new AirState(20, MoistAir.saturationHumidityRatio(20, SEA_LEVEL), SEA_LEVEL);
    assertThat(COOLER.supply(fog).evaporated()).isCloseTo(0, within(1e-9));
  }

  /**
   * By hand: 50 pints a day are 23.66 kg, at 1.8 L/kWh 548 W; 23.66 kg/day of water at 65 °F give
   * 2,458 kJ/kg as they condense, 673 W. Together 1,221 W, the 4,000 BTU/h owners are told.
   */
  @Test
  void aDehumidifierIsAHeater() {
    Dehumidifier unit = Dehumidifier.ofLabel(23.66, 1.8);
    AirState rated = AirState.ofRelativeHumidity(celsius(65), 0.60, SEA_LEVEL);
    RoomEffect effect = unit.at(rated, rated, 1);
    assertThat(-effect.water() * 86400).isCloseTo(23.66, within(1e-9));
    assertThat(effect.power()).isCloseTo(547.7, within(0.1));
    assertThat(effect.sensible()).isCloseTo(1221, within(1.0));
    assertThat(effect.sensible() / 0.29307107).isBetween(3900.0, 4300.0);
    assertThat(effect.elsewhere().waterPiped()).isEqualTo(-effect.water());
    assertThat(effect.limits()).isEmpty();
    // cycling loses a twentieth at half load: 0.5 / (1 - 0.1 x 0.5) = 0.5263
    RoomEffect half = unit.at(rated, rated, 0.5);
    assertThat(half.water()).isCloseTo(effect.water() / 2, within(1e-15));
    assertThat(half.runFraction()).isCloseTo(0.526316, within(1e-6));
  }

  @Test
  void dampAndWarmAirGivesMoreWater() {
    Dehumidifier unit = Dehumidifier.ofLabel(23.66, 1.8);
    for (double fahrenheit = 45; fahrenheit < 88; fahrenheit += 4) {
      for (double humidity = 0.1; humidity < 0.95; humidity += 0.1) {
        AirState here = AirState.ofRelativeHumidity(celsius(fahrenheit), humidity, SEA_LEVEL);
        AirState damper =
            AirState.ofRelativeHumidity(celsius(fahrenheit), humidity + 0.05, SEA_LEVEL);
        AirState warmer = AirState.ofRelativeHumidity(celsius(fahrenheit + 2), humidity, SEA_LEVEL);
        double water = -unit.at(here, here, 1).water();
        assertThat(water).isNotNegative();
        assertThat(-unit.at(damper, here, 1).water()).isGreaterThanOrEqualTo(water);
        assertThat(-unit.at(warmer, here, 1).water()).isGreaterThanOrEqualTo(water);
        // the power of a usual machine swings by less than half
        assertThat(unit.at(here, here, 1).power()).isBetween(0.7 * 547.7, 1.5 * 547.7);
      }
    }
  }

  @Test
  void tellsWhereItsCurvesEnd() {
    Dehumidifier unit = Dehumidifier.ofLabel(23.66, 1.8);
    assertThat(limits(unit, 50, 0.3)).containsExactlyInAnyOrder(Limit.ROOM_LOW, Limit.HUMIDITY_LOW);
    assertThat(limits(unit, 95, 0.9))
        .containsExactlyInAnyOrder(Limit.ROOM_HIGH, Limit.HUMIDITY_HIGH);
    AirState cold = AirState.ofRelativeHumidity(celsius(40), 0.8, SEA_LEVEL);
    RoomEffect refused = unit.at(cold, cold, 1);
    assertThat(refused.limits()).containsExactly(Limit.TOO_COLD);
    assertThat(refused.power()).isZero();
    assertThat(refused.water()).isZero();
    assertThat(unit.withLowestRoom(0).at(cold, cold, 1).water()).isNegative();
  }

  private static Iterable<Limit> limits(Dehumidifier unit, double fahrenheit, double humidity) {
    AirState air = AirState.ofRelativeHumidity(celsius(fahrenheit), humidity, SEA_LEVEL);
    return unit.at(air, air, 1).limits();
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> EvaporativeCooler.usual(0, 100));
    assertThatIllegalArgumentException().isThrownBy(() -> EvaporativeCooler.usual(1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new EvaporativeCooler(1, 100, 1.1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new EvaporativeCooler(1, 100, 0.8, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> Dehumidifier.ofLabel(0, 1.8));
    assertThatIllegalArgumentException().isThrownBy(() -> Dehumidifier.ofLabel(20, Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Dehumidifier.ofLabel(20, 1.8).withLowestRoom(40));
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  private static double fahrenheit(double celsius) {
    return 32 + 1.8 * celsius;
  }
}
