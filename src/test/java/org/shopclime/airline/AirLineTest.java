package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.air.AirState;
import org.shopclime.gain.CompressorGain;

class AirLineTest {

  private static final AirCompressor FIVE_HP = AirCompressor.usual(5 * Ip.HORSEPOWER, Stages.TWO);
  private static final AirState DAMP = Ip.air(90, 70);
  private static final LineSurroundings SUMMER = new LineSurroundings(38, 26, 20);
  private static final AirDemand BLASTING = AirDemand.of(AirTool.BLAST_CABINET.usedFor(45));

  /** By hand: 3728.5 W / 0.82 = 4547 W; 9 cfm of 17.5 cfm at 68 °F is a duty of about 0.52. */
  @Test
  void dutyAndPower() {
    AirState cool = Ip.air(68, 0);
    AirCompressor.Running hour = FIVE_HP.running(BLASTING.mean(), cool);
    assertThat(hour.duty()).isCloseTo(9 / 17.5, within(0.01));
    assertThat(hour.electricWatts())
        .isCloseTo(CompressorGain.electricInput(3728.5, hour.duty()), within(0.01))
        .isCloseTo(4547 * 0.514, within(25.0));
    assertThat(hour.missing()).isZero();
    assertThat(hour.dryAir()).isEqualTo(BLASTING.mean());
  }

  @Test
  void moreThanItCanGiveIsMissing() {
    AirDemand pot = AirDemand.of(AirTool.BLAST_POT.usedFor(60));
    AirCompressor.Running hour = FIVE_HP.running(pot.mean(), DAMP);
    assertThat(hour.duty()).isGreaterThan(1.1);
    assertThat(hour.dryAir()).isEqualTo(FIVE_HP.delivers(DAMP));
    assertThat(hour.dryAir()).isCloseTo(pot.mean() * (1 - hour.missing()), within(1e-12));
    assertThat(hour.electricWatts())
        .isCloseTo(CompressorGain.electricInput(FIVE_HP.shaftWatts(), 1), within(1e-9));
    AirLine line = AirLine.plain(FIVE_HP);
    LineResult result = line.run(DAMP, pot, SUMMER);
    assertThat(LineCaution.of(line, pot, SUMMER, result))
        .extracting(LineCaution::kind)
        .contains(LineCaution.Kind.CANNOT_KEEP_UP)
        .doesNotContain(LineCaution.Kind.LONG_DUTY);
  }

  /** 80 gal: 2.5 times as tall as wide, 0.536 m by 1.34 m; area 2.256 + 0.451 = 2.71 m2. */
  @Test
  void tankAsACylinder() {
    assertThat(FIVE_HP.tankVolume() / Ip.GALLON).isCloseTo(80, within(0.01));
    assertThat(FIVE_HP.tankArea()).isCloseTo(2.71, within(0.01));
  }

  /**
   * Nearly all electricity is heat at the machine, and the vapour that condenses there adds its
   * own.
   */
  @Test
  void heatAtTheMachine() {
    LineResult dry = AirLine.plain(FIVE_HP).run(Ip.air(90, 0), BLASTING, SUMMER);
    double input = dry.running().electricWatts();
    double carried =
        dry.running().dryAir() * (dry.beforeColdest().enthalpy() - dry.drawn().enthalpy());
    assertThat(dry.heatAt(LineSite.PLACE)).isCloseTo(input - carried, within(1e-9));
    assertThat(carried / input).isBetween(0.0, 0.07);
    LineResult damp = AirLine.plain(FIVE_HP).run(DAMP, BLASTING, SUMMER);
    double condensing = damp.tankWater() / 3.6e6 * 2.4e6;
    assertThat(damp.heatAt(LineSite.PLACE))
        .isCloseTo(damp.running().electricWatts() - carried + condensing, within(60.0));
  }

  @Test
  void tankIsWarmerThanItsPlaceAndInBalance() {
    AirTank tank = AirTank.of(FIVE_HP);
    LineResult hour = AirLine.plain(FIVE_HP).run(DAMP, BLASTING, SUMMER);
    LineStep step = hour.steps().get(1);
    assertThat(step.where()).isEqualTo(LineStep.Where.TANK);
    assertThat(step.out().celsius()).isBetween(38 + 5.0, 38 + 25.0);
    assertThat(tank.area() * tank.uValue() * (step.out().celsius() - 38))
        .isCloseTo(step.heat(), within(1e-6));
    LineResult idle = AirLine.plain(FIVE_HP).run(DAMP, new AirDemand(List.of()), SUMMER);
    assertThat(idle.steps().get(1).out().celsius()).isCloseTo(38, within(1e-9));
    assertThat(idle.tankWater() + idle.lineWater()).isZero();
  }

  /** Where it stands moves the water from tank to line; how much there is follows the intake. */
  @Test
  void heatOnlyMovesWhereItDropsOut() {
    LineResult cool = AirLine.plain(FIVE_HP).run(DAMP, BLASTING, new LineSurroundings(24, 24, 18));
    LineResult hot = AirLine.plain(FIVE_HP).run(DAMP, BLASTING, new LineSurroundings(48, 24, 18));
    assertThat(hot.lineWater()).isGreaterThan(2 * cool.lineWater());
    assertThat(hot.tankWater()).isLessThan(cool.tankWater());
    assertThat(hot.tankWater() + hot.lineWater())
        .isCloseTo(cool.tankWater() + cool.lineWater(), within(1e-9));
    assertThat(hot.pressureDewPoint()).isGreaterThan(cool.pressureDewPoint());
  }

  @Test
  void coolDryIntakeMakesLessWater() {
    LineResult outdoor = AirLine.plain(FIVE_HP).run(DAMP, BLASTING, SUMMER);
    LineResult cooled = AirLine.plain(FIVE_HP).run(Ip.air(76, 50), BLASTING, SUMMER);
    double ratio =
        (cooled.tankWater() + cooled.lineWater()) / (outdoor.tankWater() + outdoor.lineWater());
    assertThat(ratio).isBetween(0.3, 0.45);
  }

  /** With dry air the march is the exponential: UA / (m c) = pi 0.022 15 10 / (0.0068 1006). */
  @Test
  void dropLegIsTheExponential() {
    PipeRun leg = new PipeRun(15, 0.022, PipeRun.BARE_METAL, LineSite.ROOM);
    LineAir in = new LineAir(60, 8e5, 0);
    LineStep step = leg.pass(in, new LineFlow(0.005, 0.0068), SUMMER);
    double units = Math.PI * 0.022 * 15 * 10 / (0.0068 * 1006);
    assertThat(step.out().celsius()).isCloseTo(26 + 34 * Math.exp(-units), within(1e-6));
    assertThat(step.drained()).isZero();
    assertThat(step.heat()).isCloseTo(0.005 * 1006 * (60 - step.out().celsius()), within(1e-9));
  }

  /** Damp air carries the heat of its water, so it leaves warmer; twice the pipe is two pipes. */
  @Test
  void dropLegWithWater() {
    LineAir wet = new LineAir(50, 8e5, 1).at(50);
    LineFlow flow = new LineFlow(0.0068, 0.0068);
    PipeRun leg = new PipeRun(8, 0.022, PipeRun.BARE_METAL, LineSite.ROOM);
    LineStep once = leg.pass(wet, flow, SUMMER);
    LineStep dry = leg.pass(new LineAir(50, 8e5, 0), flow, SUMMER);
    assertThat(once.out().celsius()).isGreaterThan(dry.out().celsius() + 1);
    assertThat(once.drained()).isPositive();
    PipeRun twice = new PipeRun(16, 0.022, PipeRun.BARE_METAL, LineSite.ROOM);
    assertThat(twice.pass(wet, flow, SUMMER).out().celsius())
        .isCloseTo(leg.pass(once.out(), flow, SUMMER).out().celsius(), within(2e-3));
    assertThat(leg.pass(wet, new LineFlow(0, 0), SUMMER).out().celsius()).isEqualTo(26);
  }

  @Test
  void smallHotDryerMissesItsDewPointAndSaysSo() {
    RefrigeratedDryer dryer = RefrigeratedDryer.usual(10 * Ip.CFM, LineSite.PLACE);
    AirLine line = AirLine.plain(FIVE_HP).with(dryer);
    assertThat(line.parts().get(2)).isEqualTo(dryer);
    LineSurroundings hot = new LineSurroundings(45, 26, 20);
    LineResult hour = line.run(DAMP, BLASTING, hot);
    assertThat(hour.pressureDewPoint()).isGreaterThan(dryer.dewPoint() + 5);
    assertThat(LineCaution.of(line, BLASTING, hot, hour))
        .extracting(LineCaution::kind)
        .contains(
            LineCaution.Kind.HOT_PLACE,
            LineCaution.Kind.HOT_DRYER,
            LineCaution.Kind.HOT_DRYER_INLET,
            LineCaution.Kind.SMALL_DRYER);
    LineStep step = hour.steps().get(2);
    assertThat(dryer.capacity(45)).isLessThan(dryer.capacity(30));
    assertThat(step.electric()).isEqualTo(dryer.electricWatts());
    AirLine large =
        AirLine.plain(FIVE_HP)
            .with(RefrigeratedDryer.usual(30 * Ip.CFM, LineSite.ROOM))
            .with(new Aftercooler(7, LineSite.PLACE));
    LineResult well = large.run(DAMP, BLASTING, new LineSurroundings(35, 26, 20));
    assertThat(Ip.fahrenheit(well.pressureDewPoint())).isCloseTo(38, within(1e-6));
    assertThat(LineCaution.of(large, BLASTING, new LineSurroundings(35, 26, 20), well)).isEmpty();
  }

  @Test
  void towersTakeAirForThemselves() {
    Desiccant towers =
        new Desiccant(Desiccant.USUAL_DEW_POINT, Desiccant.USUAL_PURGE, LineSite.ROOM);
    LineResult plain = AirLine.plain(FIVE_HP).run(DAMP, BLASTING, SUMMER);
    LineResult dried = AirLine.plain(FIVE_HP).with(towers).run(DAMP, BLASTING, SUMMER);
    assertThat(dried.pressureDewPoint()).isCloseTo(-40, within(1e-6));
    assertThat(dried.lineWater()).isZero();
    assertThat(dried.toolAir()).isCloseTo(BLASTING.mean(), within(1e-12));
    assertThat(dried.running().duty())
        .isCloseTo(plain.running().duty() / (1 - 0.175), within(1e-9));
  }

  /** By hand: 1 kg of gel holds 200 g. */
  @Test
  void cartridgeFills() {
    Desiccant cartridge = new Desiccant(-40, 0, LineSite.ROOM);
    LineResult hour = AirLine.plain(FIVE_HP).with(cartridge).run(DAMP, BLASTING, SUMMER);
    LineStep step = hour.steps().get(2);
    assertThat(Desiccant.hours(1, step)).isCloseTo(200 / hour.held(), within(1e-9));
    assertThat(step.heat()).isPositive();
    assertThat(Desiccant.hours(1, hour.steps().get(1))).isInfinite();
  }

  @Test
  void aftercoolerStandsBeforeTheTank() {
    Aftercooler cooler = new Aftercooler(7, LineSite.PLACE);
    AirLine line = AirLine.plain(FIVE_HP).with(cooler);
    assertThat(line.parts().get(1)).isEqualTo(cooler);
    LineResult plain = AirLine.plain(FIVE_HP).run(DAMP, BLASTING, SUMMER);
    LineResult cooled = line.run(DAMP, BLASTING, SUMMER);
    assertThat(cooled.steps().get(1).out().celsius()).isCloseTo(45, within(1e-9));
    assertThat(cooled.lineWater()).isLessThan(plain.lineWater());
    assertThat(cooled.tankWater() + cooled.lineWater())
        .isCloseTo(plain.tankWater() + plain.lineWater(), within(1e-9));
  }

  @Test
  void stressIsTheHungriestToolAlone() {
    AirDemand day = AirDemand.of(AirTool.INFLATING.usual(), AirTool.BLAST_CABINET.usual());
    assertThat(day.stress(50)).isEqualTo(AirDemand.of(AirTool.BLAST_CABINET.usedFor(50)));
    assertThat(day.drawing()).isEqualTo(AirTool.BLAST_CABINET.usual().drawing());
    assertThat(day.mean())
        .isCloseTo(ToolUse.STANDARD_DENSITY * Ip.CFM * (12 * 30 + 3 * 3) / 60, within(1e-7));
    assertThat(day.pressure() / Ip.PSI).isCloseTo(80, within(1e-3));
    assertThat(new AirDemand(List.of()).stress(60).mean()).isZero();
    assertThat(new AirDemand(List.of()).drawing()).isZero();
  }

  @Test
  void dayOfWaterInLitres() {
    LineResult hour = AirLine.plain(FIVE_HP).run(DAMP, BLASTING, SUMMER);
    assertThat(hour.litresToDrain(8))
        .isCloseTo((hour.tankWater() + hour.lineWater()) * 8 / 998, within(1e-12))
        .isBetween(1.0, 4.0);
  }

  @Test
  void standingHeatIsGivenOffOnce() {
    StandingHeat hot = StandingHeat.of(FIVE_HP);
    assertThat(hot.stored()).isCloseTo(40 * 500 * 100, within(10.0));
    assertThat(hot.given(1e6)).isCloseTo(hot.stored(), within(1e-6));
    double seconds = 0.5;
    double sum = 0;
    for (double t = seconds / 2; t < 3600; t += seconds) {
      sum += hot.watts(t) * seconds;
    }
    assertThat(sum).isCloseTo(hot.given(3600), within(10.0));
    assertThat(hot.watts(0)).isCloseTo(hot.stored() / 1800, within(1e-9));
  }

  @Test
  void cautionsOfPressureWaterAndIce() {
    AirCompressor weak = new AirCompressor(1500, Stages.SINGLE, 0.003, 80 * Ip.PSI, 0.1);
    AirLine line = AirLine.plain(weak);
    AirDemand sanding = AirDemand.of(AirTool.SANDER.usedFor(5));
    LineResult hour = line.run(DAMP, sanding, SUMMER);
    assertThat(LineCaution.of(line, sanding, SUMMER, hour))
        .extracting(LineCaution::kind)
        .containsExactly(LineCaution.Kind.LOW_PRESSURE, LineCaution.Kind.WET_LINE);
    LineSurroundings frost = new LineSurroundings(10, 10, -5);
    LineResult winter = line.run(Ip.air(40, 80), sanding, frost);
    assertThat(LineCaution.of(line, sanding, frost, winter))
        .extracting(LineCaution::kind)
        .contains(LineCaution.Kind.ICE_IN_LINE);
    AirDemand longer = AirDemand.of(AirTool.SANDER.usedFor(24));
    LineResult much = line.run(DAMP, longer, SUMMER);
    assertThat(LineCaution.of(line, longer, SUMMER, much))
        .contains(new LineCaution(LineCaution.Kind.LONG_DUTY, much.running().duty(), 0.6));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new AirCompressor(3000, Stages.TWO, Double.NaN, 1e6, 0.2))
        .withMessageContaining("free air, m³/s, NaN is not in");
    assertThatIllegalArgumentException().isThrownBy(() -> new ToolUse(0.01, 6e5, 61));
    assertThatIllegalArgumentException().isThrownBy(() -> new Desiccant(-40, 0.6, LineSite.ROOM));
    assertThatIllegalArgumentException().isThrownBy(() -> new PipeRun(-1, 0.02, 10, LineSite.ROOM));
    assertThatIllegalArgumentException().isThrownBy(() -> Nozzle.flow(0.003, 1e5, 20, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> IdealCompression.dischargeCelsius(20, 0.9, Stages.TWO));
  }
}
