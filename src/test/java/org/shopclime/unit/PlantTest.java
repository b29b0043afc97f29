package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.AirState;

/** Window and portable units, heaters and fans as plants; running on and off. */
class PlantTest {

  private static final double SEA_LEVEL = 101325;

  /** W in a BTU/h, NIST SP 811. */
  private static final double BTUH = 0.29307107;

  private static final double TON = 12000 * BTUH;

  private static final AirState RATED = wet(80, 67);
  private static final AirState HOT = wet(95, 75);
  private static final AirState MILD = wet(83, 67.5);

  private static final RoomUnit MACHINE = RoomUnit.windowUnitByEer(TON, 3.2);
  private static final PortableUnit ONE_HOSE = PortableUnit.oneHose(Rating.ofEer(TON, 9));
  private static final PortableUnit TWO_HOSES = PortableUnit.twoHoses(Rating.ofEer(TON, 9));

  @Test
  void aWindowUnitIsItsMachine() {
    WindowUnit unit = new WindowUnit(MACHINE, Cycling.usual());
    Delivered machine = MACHINE.at(HOT.dryBulb(), RATED);
    RoomEffect flatOut = unit.at(RATED, HOT, 1);
    assertThat(flatOut.sensible()).isCloseTo(-machine.sensible(), within(1e-9));
    assertThat(flatOut.water()).isEqualTo(-machine.condensate());
    assertThat(flatOut.power()).isEqualTo(machine.power());
    assertThat(flatOut.runFraction()).isEqualTo(1);
    assertThat(flatOut.inducedAir()).isZero();
    assertThat(flatOut.elsewhere().heatOutdoors())
        .isCloseTo(machine.total() + machine.power(), within(1e-9));
    assertThat(flatOut.elsewhere().waterOutdoors()).isEqualTo(machine.condensate());
    assertThat(flatOut.limits()).isEqualTo(machine.limits());
    // half of it at more than half the power: 0.5 / (1 - 0.25 x 0.5) = 0.5714
    RoomEffect half = unit.at(RATED, HOT, 0.5);
    assertThat(half.sensible()).isCloseTo(-machine.sensible() / 2, within(1e-9));
    assertThat(half.runFraction()).isCloseTo(0.571429, within(1e-6));
    assertThat(half.power()).isCloseTo(0.571429 * machine.power(), within(1e-3));
  }

  /**
   * Label and answer at the rating point, but for the half per cent the window set is off there.
   */
  @Test
  void aWindowUnitGivesItsLabel() {
    RoomUnit machine = RoomUnit.windowUnitByCeer(TON, 10.84 * BTUH);
    RoomEffect effect = new WindowUnit(machine, Cycling.usual()).at(RATED, HOT, 1);
    double total = -effect.heatToRoom(RATED.dryBulb());
    assertThat(total).isCloseTo(TON, within(0.006 * TON));
    assertThat(Ceer.of(total, effect.power(), 1) / BTUH).isCloseTo(10.84, within(0.01 * 10.84));
    // 12,000 BTU/h, 1,100 W, 1 W standby: the worked figure of the appendix
    assertThat(effect.power()).isCloseTo(1100, within(0.007 * 1100));
  }

  @Test
  void portableUnitsGiveTheirLabel() {
    RoomEffect one = ONE_HOSE.withHeatBack(0).at(RATED, HOT, 1);
    assertThat(-one.heatToRoom(RATED.dryBulb())).isCloseTo(TON, within(1e-3));
    assertThat(one.power()).isCloseTo(12000 / 9.0, within(0.01));
    RoomEffect two = TWO_HOSES.withHeatBack(0).at(RATED, HOT, 1);
    assertThat(-two.heatToRoom(RATED.dryBulb())).isCloseTo(TON, within(1e-3));
    assertThat(two.power()).isCloseTo(12000 / 9.0, within(0.01));
    assertThat(two.inducedAir()).isZero();
  }

  /**
   * By hand: 300 cfm of room air at 13.85 ft³/lb is 1,300 lb/h. At 95 °F and 75 °F wet bulb the air
   * that replaces it holds 38.4 BTU/lb, the room 31.5, at 83 and 67.5 °F 31.85: 8,940 and 470
   * BTU/h. Hose and case: 0.05 x (12,000 + 1,333 x 3.412) = 827. So 12,000 - 827 - 0.2 x 8,940 -
   * 0.8 x 470 = 9,010 BTU/h.
   */
  @Test
  void oneHoseCostsAQuarterByPencil() {
    assertThat(ONE_HOSE.at(RATED, HOT, 1).inducedAir() / 0.45359237 * 3600)
        .isCloseTo(1300, within(5.0));
    double adjusted = AdjustedCapacity.of(ONE_HOSE) / BTUH;
    assertThat(adjusted).isCloseTo(9010, within(90.0));
    // two hoses: at 83 °F 5 % more than at 95, less the same hose: 12,000 x 1.04 - 820 = 11,660
    assertThat(AdjustedCapacity.of(TWO_HOSES) / BTUH).isCloseTo(11660, within(120.0));
    assertThat(AdjustedCapacity.of(new WindowUnit(MACHINE, Cycling.usual())) / BTUH)
        .isBetween(12000.0, 12700.0);
  }

  /**
   * By hand: 9,010 BTU/h over 1,333 W is 6.76; with 1 W of standby, 2,235 hours beside 750, over
   * 1,336 W 6.74.
   */
  @Test
  void portableLabelByPencil() {
    assertThat(AdjustedCapacity.ceer(ONE_HOSE, 0) / BTUH).isCloseTo(6.76, within(0.07));
    assertThat(AdjustedCapacity.ceer(ONE_HOSE, 0) / AdjustedCapacity.ceer(ONE_HOSE, 1))
        .isCloseTo(1 + 2.98 / 1333.3, within(1e-5));
    assertThat(AdjustedCapacity.ceer(TWO_HOSES, 1))
        .isGreaterThan(1.2 * AdjustedCapacity.ceer(ONE_HOSE, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> AdjustedCapacity.ceer(ONE_HOSE, -1));
  }

  /**
   * By hand: 250 cfm of room air in the rated state are 1,083 lb/h; 98 °F at a dew point of 75 °F
   * holds 44.3 BTU/lb, the room 31.5: 13,860 BTU/h, more than a unit of 12,000 takes out.
   */
  @Test
  void onAHumidDayOneHoseCanCancelItself() {
    AirState room = RATED;
    AirState humid = AirState.ofDewPoint(celsius(98), celsius(75), SEA_LEVEL);
    RoomEffect effect = ONE_HOSE.withCondenserAirflow(250 * 4.719474e-4).at(room, humid, 1);
    RoomEffect counted = effect.withInducedAirCounted(room, humid);
    double cost = counted.heatToRoom(room.dryBulb()) - effect.heatToRoom(room.dryBulb());
    assertThat(cost / BTUH).isCloseTo(13860, within(140.0));
    assertThat(counted.heatToRoom(room.dryBulb())).isPositive();
    assertThat(counted.water()).isPositive();
    assertThat(counted.inducedAir()).isZero();
    assertThat(counted.suppliedAir()).isEqualTo(effect.inducedAir());
  }

  @Test
  void aOneHoseMachineFeelsTheRoomNotTheDay() {
    RoomEffect mild = ONE_HOSE.at(RATED, MILD, 1);
    RoomEffect hot = ONE_HOSE.at(RATED, HOT, 1);
    assertThat(hot.sensible()).isEqualTo(mild.sensible());
    assertThat(hot.power()).isEqualTo(mild.power());
    // two hoses with all air from the room are one hose
    RoomEffect leaky = TWO_HOSES.withRoomAirPart(1).at(RATED, HOT, 1);
    assertThat(leaky.inducedAir()).isCloseTo(hot.inducedAir(), within(1e-12));
    assertThat(TWO_HOSES.withRoomAirPart(0.3).at(RATED, HOT, 1).inducedAir())
        .isCloseTo(0.3 * hot.inducedAir(), within(1e-12));
    // some 40 to 60 °F above the room at the end of the hose
    assertThat((ONE_HOSE.exhaust(RATED, HOT).dryBulb() - RATED.dryBulb()) * 1.8)
        .isBetween(35.0, 60.0);
  }

  @Test
  void dustTakesFromAPortableUnitToo() {
    RoomEffect clean = ONE_HOSE.at(RATED, HOT, 1);
    RoomEffect dusty = ONE_HOSE.withAirflowFraction(0.6).at(RATED, HOT, 1);
    assertThat(dusty.sensible()).isGreaterThan(clean.sensible());
    assertThat(dusty.limits()).isEmpty();
  }

  @Test
  void aHeaterTurnsEveryWattIntoHeat() {
    RoomEffect half = new Heater(1500).at(RATED, HOT, 0.5);
    assertThat(half.sensible()).isEqualTo(750);
    assertThat(half.power()).isEqualTo(750);
    assertThat(half.water()).isZero();
    assertThat(half.elsewhere()).isEqualTo(Elsewhere.NOTHING);
  }

  /**
   * By hand, in the rated state and running 0.8 of the time, 3 cycles at most: 1,500 s on, 375 s
   * off. Evaporated, in seconds of latent capacity: 1.5 x 375 - (1.5 x 375)² / 4,000 = 483. Of the
   * run 60 s are lost to the start, so 483 of 1,440 useful seconds go into wetting the coil again:
   * 0.664 is left. At half time it is 697 of 540 seconds: nothing.
   */
  @ParameterizedTest
  @CsvSource({"0.8, 0.6643", "0.5, 0", "1, 1", "0, 0"})
  void aFanThatRunsOnGivesWaterBack(double run, double kept) {
    Cycling cycling = Cycling.usual().withFanRunningOn(FanRunsOn.usual(80));
    assertThat(cycling.latentKept(run, 1, RATED)).isCloseTo(kept, within(0.0005));
  }

  @Test
  void aFanThatRunsOnMovesLatentToSensibleAndHeats() {
    WindowUnit stops = new WindowUnit(MACHINE, Cycling.usual());
    WindowUnit runsOn =
        new WindowUnit(MACHINE, Cycling.usual().withFanRunningOn(FanRunsOn.usual(80)));
    RoomEffect before = stops.at(RATED, HOT, 0.75);
    RoomEffect after = runsOn.at(RATED, HOT, 0.75);
    double fan = (1 - before.runFraction()) * 80;
    assertThat(after.water()).isGreaterThan(before.water() * 0.999).isNegative();
    assertThat(after.heatToRoom(RATED.dryBulb()))
        .isCloseTo(before.heatToRoom(RATED.dryBulb()) + fan, within(1e-9));
    assertThat(after.power()).isCloseTo(before.power() + fan, within(1e-9));
    assertThat(runsOn.at(RATED, HOT, 1)).isEqualTo(stops.at(RATED, HOT, 1));
    // switched on without load it only heats
    assertThat(runsOn.at(RATED, HOT, 0).sensible()).isEqualTo(80);
    // saturated air takes nothing up
    AirState fog = AirState.ofRelativeHumidity(celsius(75), 1, SEA_LEVEL);
    assertThat(runsOn.cycling().latentKept(0.5, 1, fog)).isCloseTo(1, within(1e-3));
  }

  @Test
  void theDemandOfAnOnOffUnitIsTheShareOfItsSensibleHeat() {
    WindowUnit unit = new WindowUnit(MACHINE, Cycling.usual());
    double full = unit.at(RATED, HOT, 1).sensible();
    assertThat(unit.demandFor(0.3 * full, RATED, HOT)).isCloseTo(0.3, within(1e-12));
    assertThat(unit.demandFor(2 * full, RATED, HOT)).isEqualTo(1);
    assertThat(unit.demandFor(500, RATED, HOT)).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> unit.demandFor(Double.NaN, RATED, HOT));
  }

  /**
   * The coil ices where its mean face is below freezing. By hand, a room of 65 °F and 40 % holds
   * 21.4 BTU/lb; 11,000 BTU/h from 1,610 lb/h, a sixth of it untouched, lead to 13.3, saturated at
   * 36 °F. With two fifths of the air gone it is 10.0, saturated at 28 °F.
   */
  @Test
  void aDustyCoilOnACoolNightIces() {
    AirState room = AirState.ofRelativeHumidity(celsius(65), 0.4, SEA_LEVEL);
    AirState night = AirState.ofRelativeHumidity(celsius(60), 0.6, SEA_LEVEL);
    assertThat(MACHINE.at(night.dryBulb(), room).apparatusDewPoint() * 1.8 + 32)
        .isCloseTo(36, within(1.5));
    WindowUnit clean = new WindowUnit(MACHINE, Cycling.usual());
    WindowUnit dusty = new WindowUnit(MACHINE.withAirflowFraction(0.6), Cycling.usual());
    assertThat(clean.at(room, night, 1).limits()).doesNotContain(Limit.COIL_ICES);
    assertThat(dusty.at(room, night, 1).limits()).contains(Limit.COIL_ICES);
  }

  @Test
  void refusesWhatCannotBe() {
    WindowUnit unit = new WindowUnit(MACHINE, Cycling.usual());
    AirState high = new AirState(30, 0.01, 80000);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> unit.at(RATED, high, 1))
        .withMessageContaining("differ in pressure");
    for (double demand : new double[] {-0.1, 1.1, Double.NaN}) {
      for (RoomPlant plant : List.of(unit, ONE_HOSE, new Heater(1500))) {
        assertThatIllegalArgumentException()
            .isThrownBy(() -> plant.at(RATED, HOT, demand))
            .withMessageContaining("demand " + demand);
      }
    }
    assertThatIllegalArgumentException().isThrownBy(() -> ONE_HOSE.withHeatBack(1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> ONE_HOSE.withRoomAirPart(-0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> ONE_HOSE.withCondenserAirflow(0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Rating(0, 100));
    assertThatIllegalArgumentException().isThrownBy(() -> new Rating(100, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> Rating.ofCop(100, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Cycling(1, Optional.empty()));
    assertThatIllegalArgumentException().isThrownBy(() -> PartLoad.powerFraction(0.5, -0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> FanRunsOn.usual(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> new FanRunsOn(0, 0, 1, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new FanRunsOn(0, 1, 0, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new FanRunsOn(0, 1, 1, 0, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new FanRunsOn(0, 1, 1, 1, 0));
  }

  private static AirState wet(double dryBulbF, double wetBulbF) {
    return AirState.ofWetBulb(celsius(dryBulbF), celsius(wetBulbF), SEA_LEVEL);
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }
}
