package org.shopclime.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class WavesTest {

  private static final double[] STEPS = new Random(1).doubles(Waves.STEPS, -3, 5).toArray();
  private static final double[] HOURS = new Random(2).doubles(24, -3, 5).toArray();

  @Test
  void halfHoursComeBack() {
    assertThat(Waves.of(STEPS).steps()).containsExactly(STEPS, within(1e-14));
  }

  @Test
  void hoursAreMeansOfTheirHalves() {
    double[] hours = Waves.of(STEPS).hours();
    for (int hour = 0; hour < 24; hour++) {
      double mean = (STEPS[2 * hour] + STEPS[2 * hour + 1]) / 2;
      assertThat(hours[hour]).isCloseTo(mean, within(1e-14));
    }
  }

  @Test
  void hoursStandStillThroughTheirHalves() {
    double[] steps = Waves.ofHours(HOURS).steps();
    for (int step = 0; step < Waves.STEPS; step++) {
      assertThat(steps[step]).isCloseTo(HOURS[step / 2], within(1e-14));
    }
    assertThat(Waves.ofHours(HOURS).hours()).containsExactly(HOURS, within(1e-14));
  }

  @Test
  void sumsAndMeans() {
    Waves waves = Waves.ofHours(HOURS);
    waves.add(2, Waves.of(STEPS));
    waves.add(-1);
    double[] steps = waves.steps();
    double sum = 0;
    for (int step = 0; step < Waves.STEPS; step++) {
      assertThat(steps[step]).isCloseTo(HOURS[step / 2] + 2 * STEPS[step] - 1, within(1e-13));
      sum += steps[step];
    }
    assertThat(waves.mean()).isCloseTo(sum / Waves.STEPS, within(1e-13));
  }

  /** A wave of the day is one wave: 3 + 2 cos(2 π (s - 10) / 48). */
  @Test
  void oneWaveIsTold() {
    double[] steps = new double[Waves.STEPS];
    for (int step = 0; step < steps.length; step++) {
      steps[step] = 3 + 2 * Math.cos(2 * Math.PI * (step - 10) / 48);
    }
    Waves waves = Waves.of(steps);
    assertThat(waves.re[0]).isCloseTo(3, within(1e-14));
    assertThat(waves.re[1]).isCloseTo(Math.cos(2 * Math.PI * 10 / 48), within(1e-14));
    assertThat(waves.im[1]).isCloseTo(-Math.sin(2 * Math.PI * 10 / 48), within(1e-14));
    for (int k = 2; k < Waves.COUNT; k++) {
      assertThat(Math.hypot(waves.re[k], waves.im[k])).isCloseTo(0, within(1e-14));
    }
  }
}
