package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Air between rooms by pencil, and against what is published of flat openings. */
class RoomExchangeTest {

  /**
   * Brown and Solvason (1962), C = 0.65, both from memory: a doorway of 0.9 m by 2 m, 25 °C against
   * 20 °C, mean 295.65 K. g H ΔT / T = 9.80665 · 2 · 5 / 295.65 = 0.33170, its root 0.57593 m/s;
   * 0.65 / 3 · 1.8 · 0.57593 = 0.22461 m³/s, some 270 W for each kelvin or 1.35 kW.
   */
  @Test
  void doorwayByPencil() {
    assertThat(RoomExchange.doorway(0.9, 2, 25, 20)).isCloseTo(0.22461, within(1e-5));
    assertThat(RoomExchange.doorway(0.9, 2, 20, 25)).isCloseTo(0.22461, within(1e-5));
    assertThat(RoomExchange.doorway(0.9, 2, 20, 20)).isZero();
  }

  /**
   * Epstein (1988), from memory: a hatch of 0.75 m by 1.2 m, 0.9 m², in a floor 0.25 m thick, 15 °C
   * above 25 °C. D = √(3.6 / π) = 1.07047 m, x = 0.233542; 1 + 400 x³ = 6.09513, its sixth root
   * 1.35154, its root 2.46883; x⁶ + 117 x² = 0.000162 + 6.381286, to 3/4: 4.01507. 0.055 · 1.35154
   * / (1 + 0.00527 · 2.46883 · 4.01507)^(1/3) = 0.0743353 / 1.017116 = 0.0730844. √(D⁵ g ΔT / T) =
   * D² √(1.07047 · 9.80665 · 10 / 293.15) = 1.145916 · 0.598413 = 0.685731, so 0.050116 m³/s.
   */
  @Test
  void hatchByPencil() {
    assertThat(RoomExchange.floorOpening(0.9, 0.25, 15, 25)).isCloseTo(0.050116, within(2e-5));
  }

  @Test
  void nothingPassesUnderALoftThatIsHotter() {
    assertThat(RoomExchange.floorOpening(0.9, 0.25, 45, 25)).isZero();
    assertThat(RoomExchange.floorOpening(0.9, 0.25, 25, 25)).isZero();
  }

  /**
   * The four ranges that Epstein (1988) names, from memory: 0.055 for a thin partition, 0.147
   * √(L/D) to L/D = 0.4 or so, 0.32 (D/L)^1.5 for a long tube. The formula is one line through all
   * of them; by eye they part by no more than a tenth.
   */
  @Test
  void flatOpeningMeetsTheLimitsOfItsAuthor() {
    double area = Math.PI / 4;
    double free = Math.sqrt(9.80665 * 10 / 293.15);
    assertThat(RoomExchange.floorOpening(area, 0, 15, 25) / free).isCloseTo(0.055, within(1e-9));
    assertThat(RoomExchange.floorOpening(area, 0.3, 15, 25) / free)
        .isCloseTo(0.147 * Math.sqrt(0.3), withinPercentage(10));
    assertThat(RoomExchange.floorOpening(area, 20, 15, 25) / free)
        .isCloseTo(0.32 * Math.pow(20, -1.5), withinPercentage(10));
  }

  /**
   * Brown (1962), from memory: Nu = 0.0546 Gr^0.55 Pr (L/H)^(1/3) by thickness H for square
   * openings of side L, measured for H/L of 0.0825 to 0.66 with air, H up to 0.3 m. Both are fits
   * to measurements of their own and part by a tenth at most; heat here is that of 10 K between 15
   * and 25 °C, ν 15.1e-6 m²/s, k 0.0257 W/(m·K), Pr 0.71, ρ cp 1.204 · 1006.
   */
  @Test
  void flatOpeningCarriesTheHeatThatBrownMeasured() {
    for (double side : new double[] {0.5, 0.75, 1, 1.5}) {
      double thick = 0.25;
      double grashof = 9.80665 * 10 / 293.15 * Math.pow(thick, 3) / Math.pow(15.1e-6, 2);
      double nusselt = 0.0546 * Math.pow(grashof, 0.55) * 0.71 * Math.cbrt(side / thick);
      double measured = nusselt * 0.0257 / thick * side * side * 10;
      double ours = RoomExchange.floorOpening(side * side, thick, 15, 25) * 1.204 * 1006 * 10;
      assertThat(ours).as("side %s m", side).isCloseTo(measured, withinPercentage(12));
    }
  }

  @Test
  void refusesWhatIsNoOpening() {
    assertThatThrownBy(() -> RoomExchange.doorway(0, 2, 20, 25))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("width of a doorway");
    assertThatThrownBy(() -> RoomExchange.floorOpening(1, -1, 20, 25))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("depth of a floor opening");
    assertThatThrownBy(() -> RoomExchange.floorOpening(1, 1, 20, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("other side");
  }
}
