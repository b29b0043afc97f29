package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts of films, slopes and directions. */
class FilmsTest {

  @ParameterizedTest
  @CsvSource({
    "0, COOLING, DOWN", "0, HEATING, UP", "89, COOLING, DOWN", "90, COOLING, HORIZONTAL",
    "90, HEATING, HORIZONTAL", "135, COOLING, UP", "180, COOLING, UP", "180, HEATING, DOWN"
  })
  void heatComesInWhenCoolingAndGoesOutWhenHeating(double tilt, Season season, HeatFlow flow) {
    assertThat(Films.flow(tilt, season)).isEqualTo(flow);
  }

  /** ASHRAE Handbook - Fundamentals, surface film table, slopes of 45 degrees; from memory. */
  @ParameterizedTest
  @CsvSource({
    "0, COOLING, 0.92", "45, COOLING, 0.76", "90, COOLING, 0.68", "135, COOLING, 0.62",
    "180, COOLING, 0.61", "0, HEATING, 0.61", "45, HEATING, 0.62", "90, HEATING, 0.68",
    "135, HEATING, 0.76", "180, HEATING, 0.92"
  })
  void slopes(double tilt, Season season, double resistance) {
    assertThat(Films.interiorResistance(tilt, season) / InchPound.R)
        .isCloseTo(resistance, within(1e-9));
  }

  @Test
  void betweenPrintedSlopesItRunsWithoutAJump() {
    for (Season season : Season.values()) {
      for (double tilt = 0.5; tilt <= 180; tilt += 0.5) {
        double step =
            Films.interiorConvective(tilt, season) - Films.interiorConvective(tilt - 0.5, season);
        assertThat(Math.abs(step)).as("tilt %s", tilt).isLessThan(0.016);
        boolean towardsUp = season == Season.COOLING;
        assertThat(towardsUp ? step : -step).as("tilt %s", tilt).isNotNegative();
      }
    }
  }

  /** 4 · 0.9 · 5.67e-8 · 293.15³ = 5.143; 1/(0.68 · 0.17611) = 8.350, and so on. */
  @Test
  void convectivePartIsWhatRadiationLeaves() {
    assertThat(Films.radiative(0.9, 20)).isCloseTo(5.143, within(0.001));
    assertThat(Films.interiorConvective(HeatFlow.HORIZONTAL)).isCloseTo(3.207, within(0.002));
    assertThat(Films.interiorConvective(HeatFlow.UP)).isCloseTo(4.166, within(0.002));
    assertThat(Films.interiorConvective(HeatFlow.DOWN)).isCloseTo(1.029, within(0.002));
    assertThat(Films.interiorConvective(0, Season.COOLING))
        .isCloseTo(Films.interiorConvective(HeatFlow.DOWN), within(1e-12));
  }

  /**
   * 1/(0.17 · 0.17611) = 33.40, less 4.16 at 0 °C; 1/(0.25 · 0.17611) = 22.71, less 5.69 at 30 °C.
   */
  @Test
  void windTakesTheRestOutside() {
    assertThat(Films.exteriorConvective(Season.HEATING)).isCloseTo(29.24, within(0.01));
    assertThat(Films.exteriorConvective(Season.COOLING)).isCloseTo(17.03, within(0.01));
  }

  @Test
  void refusesWhatIsOutOfRange() {
    assertThatThrownBy(() -> Films.flow(181, Season.COOLING))
        .hasMessage("tilt, degrees, is 181.0; takes 0.0 to 180.0");
    assertThatThrownBy(() -> Films.radiative(1.1, 20)).hasMessageContaining("emittance");
    assertThatThrownBy(() -> AirSpace.resistance(0, HeatFlow.UP, 0.9, 0.9))
        .hasMessageContaining("thickness of the air space");
  }

  /**
   * ISO 6946 for 25 mm, upright, one face of 0.05: E = 1/(1/0.05 + 1/0.9 - 1) = 0.0497, so 1/(1.25
   * + 0.0497 · 5.15) = 0.664 m²·K/W.
   */
  @Test
  void foilHoldsRadiationBack() {
    assertThat(AirSpace.resistance(0.025, HeatFlow.HORIZONTAL, 0.05, 0.9))
        .isCloseTo(0.664, within(0.001));
    assertThat(AirSpace.resistance(0.025, HeatFlow.HORIZONTAL, 0.9, 0.05))
        .isCloseTo(0.664, within(0.001));
  }
}
