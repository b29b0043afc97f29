package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The integrals of a mode over a step, against Simpson's rule on its solutions in closed form. */
class ModeStepTest {

  private static final int PARTS = 200_000;

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.3, 0.999, 1, 1.001, 5, 60, 700})
  void areTheIntegralsOfTheSolutions(double x) {
    ModeStep step = ModeStep.of(x);
    DoubleUnaryOperator tilted = t -> 2 * t - 1;
    DoubleUnaryOperator left = t -> Math.exp(-x * t);
    DoubleUnaryOperator driven = t -> -Math.expm1(-x * t) / x;
    // z' = -x z + 2 t - 1, z(0) = 0
    DoubleUnaryOperator drivenTilted =
        t -> (2 * t - 1) / x - 2 / (x * x) + (1 / x + 2 / (x * x)) * Math.exp(-x * t);
    near(step.decay(), left.applyAsDouble(1));
    near(step.mean(), integral(left));
    near(step.tilt(), integral(t -> tilted.applyAsDouble(t) * left.applyAsDouble(t)));
    near(step.mean(), driven.applyAsDouble(1));
    near(-step.tilt(), drivenTilted.applyAsDouble(1));
    near(step.meanOfSteady(), integral(driven));
    near(step.meanOfTilted(), integral(drivenTilted));
    near(-step.meanOfTilted(), integral(t -> tilted.applyAsDouble(t) * driven.applyAsDouble(t)));
    near(
        step.tiltOfTilted(),
        integral(t -> tilted.applyAsDouble(t) * drivenTilted.applyAsDouble(t)));
  }

  private static void near(double value, double exact) {
    assertThat(value).isCloseTo(exact, within(1e-12 + 1e-9 * Math.abs(exact)));
  }

  private static double integral(DoubleUnaryOperator of) {
    double sum = of.applyAsDouble(0) + of.applyAsDouble(1);
    for (int i = 1; i < PARTS; i++) {
      sum += (i % 2 == 0 ? 2 : 4) * of.applyAsDouble((double) i / PARTS);
    }
    return sum / (3 * PARTS);
  }

  /** A mode that nothing drains keeps what it has and adds up what it is given. */
  @Test
  void aModeThatKeepsEverything() {
    ModeStep step = ModeStep.of(0);
    assertThat(step.decay()).isEqualTo(1);
    assertThat(step.mean()).isEqualTo(1);
    assertThat(step.tilt()).isZero();
    assertThat(step.meanOfSteady()).isEqualTo(0.5);
    assertThat(step.meanOfTilted()).isCloseTo(-1 / 6.0, within(1e-15));
    assertThat(step.tiltOfTilted()).isZero();
  }

  /** The two ways of reckoning meet. */
  @Test
  void seriesAndClosedFormsMeet() {
    ModeStep below = ModeStep.of(Math.nextDown(1.0));
    ModeStep above = ModeStep.of(1);
    assertThat(below.mean()).isCloseTo(above.mean(), within(1e-15));
    assertThat(below.tilt()).isCloseTo(above.tilt(), within(1e-15));
    assertThat(below.meanOfSteady()).isCloseTo(above.meanOfSteady(), within(1e-15));
    assertThat(below.meanOfTilted()).isCloseTo(above.meanOfTilted(), within(1e-15));
    assertThat(below.tiltOfTilted()).isCloseTo(above.tiltOfTilted(), within(2e-15));
  }
}
