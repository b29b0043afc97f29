package org.shopclime.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The curves laid out against the printed equations, closely spaced over both. */
class SaturationCurveTest {

  private static final double SPACING = 0.0103;

  @Test
  void overIce() {
    followsThePrintedEquation(SaturationCurve.ICE, Phase.ICE, -100, 0.99);
  }

  @Test
  void overWater() {
    followsThePrintedEquation(SaturationCurve.WATER, Phase.WATER, 0.01, 200);
  }

  /** What is asked on the way of a search only. */
  @Test
  void beyondWhatIsLaidOut() {
    followsThePrintedEquation(SaturationCurve.WATER, Phase.WATER, 200, 230);
    followsThePrintedEquation(SaturationCurve.ICE, Phase.ICE, -120, -100);
  }

  private static void followsThePrintedEquation(
      SaturationCurve curve, Phase phase, double low, double high) {
    for (double t = low; t <= high; t += SPACING) {
      double printed = phase.pressure(t);
      double slope = printed * phase.logSlope(t + Phase.ZERO_CELSIUS);
      assertThat(curve.pressure(t)).as("at %s", t).isCloseTo(printed, within(2e-12 * printed));
      assertThat(curve.slope(t)).as("slope at %s", t).isCloseTo(slope, within(1e-8 * slope));
      double bend =
          (phase.pressure(t + 0.05) - 2 * printed + phase.pressure(t - 0.05)) / (0.05 * 0.05);
      assertThat(curve.curvature(t)).as("curvature at %s", t).isCloseTo(bend, within(0.3 * bend));
      assertThat(curve.temperature(printed)).as("back from %s", t).isCloseTo(t, within(1e-10));
    }
  }
}
