package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.Profile;

/** A lived day as a worker bears it. */
class WorkerHeatTest {

  private static Profile all(double value) {
    return Profile.of(hour -> value);
  }

  private static Trace trace(Profile air, double operative, double humidity) {
    Profile none = all(0);
    return new Trace(
        air, all(operative), none, all(humidity), none, none, none, none, none, none, none);
  }

  /** 90 °F and 70 % among walls as warm: the chart's 105 °F, 105.9 by its equation. */
  @Test
  void theChartIsMet() {
    WorkerHeat heat = WorkerHeat.of(trace(all(290 / 9.0), 290 / 9.0, 0.7), 0.3);
    assertThat(heat.heatIndex().at(12) * 1.8 + 32).isCloseTo(105.92, offset(0.01));
  }

  /**
   * Air of 30 °C and an operative temperature of 52.35 °C mean walls of 74.7 °C: the globe of the
   * worked example of ISO 7726 reads 55 °C, 0.3 of which are 16.5 K; the wick lies between a dry
   * and a wet 30 °C and the warmth of the walls.
   */
  @Test
  void wallsAreTakenFromTheOperativeTemperature() {
    WorkerHeat heat = WorkerHeat.of(trace(all(30), 52.35, 0.5), 0.3);
    double wick = org.shopclime.air.WetBulbGlobe.naturalWetBulb(30, 74.7, 0.5, 0.3);
    assertThat(heat.wetBulbGlobe().at(1)).isCloseTo(0.7 * wick + 0.3 * 55, offset(0.03));
  }

  /** Saturated air among walls as warm reads its own temperature, fog too. */
  @Test
  void fogCountsAsSaturated() {
    assertThat(WorkerHeat.of(trace(all(28), 28, 1.02), 1).wetBulbGlobe().at(5))
        .isCloseTo(28, offset(1e-6));
  }

  @Test
  void theWorstHourIsTheFirstOfThoseAsked() {
    WorkerHeat heat = WorkerHeat.of(trace(Profile.of(hour -> hour == 24 ? 40 : 30), 30, 0.5), 0.3);
    assertThat(WorkerHeat.worst(heat.heatIndex(), List.of(9, 10, 11))).hasValue(9);
    assertThat(WorkerHeat.worst(heat.heatIndex(), List.of(9, 24))).hasValue(24);
    assertThat(WorkerHeat.worst(heat.heatIndex(), List.of())).isEmpty();
  }

  @Test
  void aFanIsFelt() {
    Trace trace = trace(all(30), 32, 0.5);
    assertThat(WorkerHeat.of(trace, 2).wetBulbGlobe().at(1))
        .isLessThan(WorkerHeat.of(trace, 0.3).wetBulbGlobe().at(1) - 0.3);
    assertThatIllegalArgumentException().isThrownBy(() -> WorkerHeat.of(trace, 0));
  }
}
