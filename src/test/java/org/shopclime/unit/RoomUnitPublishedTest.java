package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

class RoomUnitPublishedTest {

  /** The usual unit of 12,000 BTU/h, and what it does in the published rating state. */
  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/usual-unit.csv", useHeadersInDisplayName = true)
  void theUsualUnitLiesInThePublishedRange(String id, String what, double low, double high) {
    RoomUnit unit = RoomUnit.windowUnitByEer(3516.85, 3.2);
    double t = (80 - 32) / 1.8;
    double w = MoistAir.humidityRatioFromWetBulb(t, (67 - 32) / 1.8, 101325);
    Delivered delivered = unit.at((95 - 32) / 1.8, new AirState(t, w, 101325));
    double actual =
        switch (what) {
          case "sensible heat ratio" -> delivered.sensibleHeatRatio();
          case "indoor airflow" ->
              delivered.airMassFlow() / MoistAir.dryAirDensity(t, w, 101325) / 4.71947e-4;
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(actual).as("%s, usual-unit.csv", id).isBetween(low, high);
  }
}
