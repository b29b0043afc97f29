package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.Profile;

/** A lived day as a worker bears it. */
class WorkerHeatTest {

  private static final double SEA_LEVEL = 101_325;

  private static Profile all(double value) {
    return Profile.of(hour -> value);
  }

  private static Trace trace(Profile air, double operative, double humidity) {
    Profile none = all(0);
    return new Trace(
        air, all(operative), none, all(humidity), none, none, none, none, none, none, none);
  }

  /**
   * Among walls as warm as the air: three squares of the printed heat index chart of the National
   * Weather Service (from memory; whole degrees, some cut and some rounded), and what the equation
   * it is drawn from gives there (105.92 by pencil in the first).
   */
  @ParameterizedTest
  @CsvSource({"90, 70, 105", "100, 40, 109", "96, 50, 108"})
  void theChartIsMet(double fahrenheit, double percent, double printed) {
    double air = (fahrenheit - 32) / 1.8;
    WorkerHeat heat = WorkerHeat.of(trace(all(air), air, percent / 100), 0.3);
    assertThat(heat.heatIndex().at(12) * 1.8 + 32).isCloseTo(printed, offset(1.0));
  }

  @Test
  void theEquationOfTheChartIsMet() {
    WorkerHeat heat = WorkerHeat.of(trace(all(290 / 9.0), 290 / 9.0, 0.7), 0.3);
    assertThat(heat.heatIndex().at(12) * 1.8 + 32).isCloseTo(105.92, offset(0.01));
  }

  /** Among walls as warm as the air: the published sum for indoors, tolerance as told there. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/air/indoor-wet-bulb-globe.csv",
      useHeadersInDisplayName = true)
  void thePublishedSumIsMet(String id, double air, double wetBulb, double speed, double wbgt) {
    double water = MoistAir.humidityRatioFromWetBulb(air, wetBulb, SEA_LEVEL);
    double humidity = MoistAir.relativeHumidity(air, water, SEA_LEVEL);
    WorkerHeat heat = WorkerHeat.of(trace(all(air), air, humidity), speed);
    assertThat(heat.wetBulbGlobe().at(12)).as(id).isCloseTo(wbgt, offset(0.4));
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
