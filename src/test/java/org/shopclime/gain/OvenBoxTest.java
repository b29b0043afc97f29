package org.shopclime.gain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OvenBoxTest {

  private static final OvenBox STRONG = new OvenBox(1.2, 1.2, 1.8, 1.4, 200, 6000, 25);
  private static final OvenBox WEAK = new OvenBox(1.2, 1.2, 1.8, 1.4, 200, 1000, 25);

  @Test
  void areaOfSixWalls() {
    assertThat(STRONG.area()).isCloseTo(11.52, within(1e-9));
  }

  /** By hand: 11.52 / (0.04 + 1.4 + 0.12) = 7.385 W/K; 25 · 490 / 3600 = 3.403 W/K; 170 K. */
  @Test
  void shellAndPartsMakeTheInput() {
    assertThat(STRONG.shellLoss(30)).isCloseTo(1255.4, within(0.1));
    assertThat(STRONG.partsHeat(30)).isCloseTo(578.5, within(0.1));
    assertThat(STRONG.input(30))
        .isCloseTo(STRONG.shellLoss(30) + STRONG.partsHeat(30), within(1e-9));
    assertThat(STRONG.reaches(30)).isTrue();
    assertThat(STRONG.heldTemperature(30)).isCloseTo(200, within(1e-9));
  }

  @Test
  void weakHeaterStaysBelowTheSetPointAndSaysSo() {
    assertThat(WEAK.reaches(30)).isFalse();
    assertThat(WEAK.demand(30)).isCloseTo(STRONG.demand(30), within(1e-9));
    assertThat(WEAK.input(30)).isEqualTo(1000);
    assertThat(WEAK.heldTemperature(30)).isCloseTo(30 + 1000 / (7.3846 + 3.4028), within(0.01));
    assertThat(WEAK.shellLoss(30) + WEAK.partsHeat(30)).isCloseTo(1000, within(1e-9));
    assertThat(WEAK.inRoom(30, 0).total()).isCloseTo(1000, within(1e-9));
  }

  @Test
  void hoodTakesWarmAirOnly() {
    HeatGain open = STRONG.inRoom(30, 0);
    HeatGain half = STRONG.inRoom(30, 0.5);
    assertThat(half.radiant()).isEqualTo(open.radiant());
    assertThat(half.convective()).isCloseTo(open.convective() / 2, within(1e-9));
    assertThat(STRONG.inRoom(30, 1).convective()).isZero();
    assertThat(open.latent()).isZero();
  }

  @Test
  void idleInARoomHotterThanItsSetPoint() {
    OvenBox drying = new OvenBox(1, 1, 1, 1, 40, 1000, 0);
    assertThat(drying.inRoom(45, 0)).isEqualTo(HeatGain.NONE);
    assertThat(drying.heldTemperature(45)).isEqualTo(45);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new OvenBox(0, 1, 1, 1, 200, 1000, 0))
        .withMessageContaining("oven width, m, 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new OvenBox(1, 1, 1, 0, 200, 1000, 0))
        .withMessageContaining("resistance");
    assertThatIllegalArgumentException().isThrownBy(() -> STRONG.inRoom(30, 1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> STRONG.inRoom(Double.NaN, 0));
  }
}
