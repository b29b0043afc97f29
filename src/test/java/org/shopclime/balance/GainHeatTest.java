package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.when;

import org.junit.jupiter.api.Test;
import org.shopclime.gain.HeatGain;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Span;

/** The owner's gains as heat, each against a sum by pencil or the class that knows it. */
class GainHeatTest {

  private static HeatGain heat(Gain gain) {
    return GainHeat.fullOn(gain, WISHED);
  }

  @Test
  void lightsGiveOffTheirPower() {
    Gain lamps = new Gain.Lights("Lights", 6, 40, Gain.Lamp.LED, when("work"));
    assertThat(heat(lamps).total()).isCloseTo(240, withinPercentage(0.1));
    assertThat(GainHeat.kind(lamps)).isEqualTo(ComponentKind.LIGHTS);
  }

  /**
   * Moderately active work: about 1,000 BTU/h each (handbook), more than half of it water at 78 °F.
   */
  @Test
  void peopleGiveOffHeatAndWater() {
    Gain two = new Gain.People("People", 2, Gain.Activity.MODERATE_WORK, when("work"));
    HeatGain one = heat(new Gain.People("People", 1, Gain.Activity.MODERATE_WORK, when("work")));
    assertThat(heat(two).total()).isCloseTo(2 * one.total(), within(1e-9));
    assertThat(one.total() / TestShops.BTUH).isBetween(900.0, 1100.0);
    assertThat(one.latent()).isGreaterThan(one.sensible());
    assertThat(GainHeat.kind(two)).isEqualTo(ComponentKind.PEOPLE);
  }

  /** 1.5 hp at 60 % load 15 % of the time, efficiency about 0.8: 746 x 1.5 x 0.6 x 0.15 / 0.8. */
  @Test
  void motorByItsUse() {
    Gain grinder = new Gain.Motor("Grinder", 1118.5, 0.6, Span.known(0.15), when("work"));
    assertThat(heat(grinder).total()).isCloseTo(126, withinPercentage(8));
    assertThat(GainHeat.kind(grinder)).isEqualTo(ComponentKind.MOTOR);
  }

  /** 5 hp half the time, efficiency 0.82 by the handbook's table of motors: 3729 x 0.5 / 0.82. */
  @Test
  void compressorByItsDuty() {
    Gain compressor = new Gain.Compressor("Compressor", 3728.5, Span.known(0.5), when("work"));
    assertThat(heat(compressor).total()).isCloseTo(2273, withinPercentage(0.1));
    assertThat(GainHeat.kind(compressor)).isEqualTo(ComponentKind.COMPRESSOR);
  }

  /** A hood that takes half the warm air leaves all of the radiant heat. */
  @Test
  void ovenAndItsHood() {
    HeatGain open = heat(oven(0));
    HeatGain hooded = heat(oven(0.5));
    assertThat(hooded.radiant()).isCloseTo(open.radiant(), within(1e-9));
    assertThat(hooded.convective()).isCloseTo(open.convective() / 2, within(1e-9));
    assertThat(open.total()).isBetween(500.0, 6000.0);
    assertThat(GainHeat.kind(oven(0))).isEqualTo(ComponentKind.OVEN);
  }

  private static Gain oven(double hood) {
    return new Gain.Oven("Oven", 1, 1, 1.2, Span.known(1.4), 204, 6000, 22.7, hood, when("work"));
  }

  /** 60 W drawn are 60 W in the air of the room, and no water. */
  @Test
  void aFanOverTheWorkerWarmsTheRoom() {
    Gain fan = new Gain.WorkFan("Fan", 60, 2, when("work"));
    assertThat(heat(fan)).isEqualTo(new HeatGain(60, 0, 0));
    assertThat(GainHeat.kind(fan)).isEqualTo(ComponentKind.MOTOR);
  }

  @Test
  void anythingElseAsTold() {
    Gain steam = new Gain.Other("Steam", 400, 0.3, 200, when("work"));
    assertThat(heat(steam)).isEqualTo(new HeatGain(280, 120, 200));
    assertThat(GainHeat.kind(steam)).isEqualTo(ComponentKind.OTHER);
  }

  @Test
  void wordsOfKinds() {
    assertThat(ComponentKind.DOOR_AIR.word()).isEqualTo("door air");
    assertThat(ComponentKind.FAN.isAir()).isTrue();
    assertThat(ComponentKind.DOOR_AIR.isAir()).isTrue();
    assertThat(ComponentKind.LEAKAGE.isAir()).isTrue();
    assertThat(ComponentKind.DOOR.isAir()).isFalse();
    assertThat(ComponentKind.DOOR.isFace()).isTrue();
    assertThat(ComponentKind.FROM_ROOM.isFace()).isFalse();
  }
}
