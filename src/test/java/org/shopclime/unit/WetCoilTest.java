package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.quantity.Units;

/** A wet coil under a fan that runs on. */
class WetCoilTest {

  /** One kilogram, of which 2 g a second evaporate at first: dry after 2 x 1000 / 2 = 1000 s. */
  private static final WetCoil COIL = new WetCoil(70, 1, 0.002, 2.5e6);

  /**
   * By hand: the rate falls in a straight line from 2 g/s to nothing in 1000 s. After 500 s it is 1
   * g/s, 1.5 g/s in the mean: 750 g are gone, a quarter is left.
   */
  @Test
  void itsRateFallsInAStraightLine() {
    assertThat(COIL.evaporated(500)).isCloseTo(0.75, within(1e-12));
    assertThat(COIL.left(1, 500)).isCloseTo(0.25, within(1e-12));
    assertThat(COIL.rateAfter(500, 0.75)).isCloseTo(0.001, within(1e-12));
    assertThat(COIL.evaporated(0)).isZero();
    assertThat(COIL.evaporated(2000)).isEqualTo(1);
    assertThat(COIL.left(1, 2000)).isZero();
  }

  /** What is left goes on as if the coil had begun fuller: 250 g are those after 500 s. */
  @Test
  void whatIsLeftGoesOn() {
    assertThat(COIL.left(0.25, 100)).isCloseTo(1 - COIL.evaporated(600), within(1e-12));
    assertThat(COIL.left(0.25, 500)).isZero();
  }

  /**
   * Where less condenses in a run than would evaporate, the coil never drips. By hand, 160 g each
   * rest of 200 s: (1 - x)² of 1 kg before, with steps of 0.2: r² - (r - 0.2)² = 0.16, r = 0.5, so
   * 250 g and 90 g, at 2 x 0.3 = 0.6 g/s in the end.
   */
  @Test
  void aCoilThatNeverDripsEvaporatesMoreSlowly() {
    assertThat(COIL.rateAfter(200, 0.16)).isCloseTo(0.0006, within(1e-12));
    assertThat(COIL.left(0.25, 200)).isCloseTo(0.09, within(1e-12));
    // 30 g are less than the 40 g that a rest of 200 s dries
    assertThat(COIL.rateAfter(200, 0.03)).isZero();
  }

  @Test
  void nothingHangsOnNothing() {
    assertThat(WetCoil.NONE.evaporated(100)).isZero();
    assertThat(WetCoil.NONE.left(0, 100)).isZero();
    assertThat(WetCoil.NONE.rateAfter(100, 0)).isZero();
  }

  /**
   * By hand, 12,000 BTU/h of which a quarter is latent: 3,000 BTU/h are 879 W, 0.345 g/s at 2.55
   * MJ/kg; 1,000 s of that are 345 g, and 1.5 times as fast 0.52 g/s in the rated air of 80 and 67
   * °F. In air of half the wet-bulb depression it is half as much, in fog nothing.
   */
  @Test
  void theUsualCoil() {
    double watts = 3000 * Units.WATTS_PER_BTUH;
    FanRunsOn fan = FanRunsOn.usual(70);
    AirState rated =
        AirState.ofWetBulb(Units.celsius(80), Units.celsius(67), MoistAir.STANDARD_PRESSURE);
    AirState damper =
        AirState.ofWetBulb(Units.celsius(80), Units.celsius(73.5), MoistAir.STANDARD_PRESSURE);
    AirState fog = AirState.ofRelativeHumidity(Units.celsius(80), 1, MoistAir.STANDARD_PRESSURE);
    WetCoil coil = fan.over(watts, rated);
    assertThat(coil.held()).isCloseTo(0.345, withinPercentage(0.5));
    assertThat(coil.evaporation()).isCloseTo(0.000518, withinPercentage(0.5));
    assertThat(fan.over(watts, damper).evaporation())
        .isCloseTo(coil.evaporation() / 2, withinPercentage(0.1));
    assertThat(fan.over(watts, fog).evaporation()).isCloseTo(0, within(1e-9));
    assertThat(coil.fanPower()).isEqualTo(70);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> fan.over(-1, rated))
        .withMessageContaining("rated latent capacity");
  }
}
