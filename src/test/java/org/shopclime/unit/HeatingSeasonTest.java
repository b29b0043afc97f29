package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Units;

/** The season of HSPF2 and the efficiency at 47 °F behind it. */
class HeatingSeasonTest {

  private static final Rating COOLING = new Rating(3516.85, 1000);
  private static final double LOWEST = DuctlessHeatPump.USUAL_LOWEST_OUTDOOR;

  private static double hspf2(double cop, Compressor compressor) {
    DuctlessHeatPump pump = DuctlessHeatPump.usual(COOLING, Rating.ofCop(3516.85, cop), compressor);
    return HeatingSeason.hspf2(pump, COOLING.capacity(), compressor);
  }

  private static double cop(double hspf2, Compressor compressor, double lowest) {
    return HeatingSeason.copAt47(COOLING, 3516.85, compressor, lowest, hspf2);
  }

  @Test
  void thereAndBack() {
    for (double cop : new double[] {2, 3, 3.6, 5}) {
      for (Compressor each :
          new Compressor[] {Compressor.singleSpeed(), Compressor.variableSpeed()}) {
        assertThat(cop(hspf2(cop, each), each, LOWEST)).isCloseTo(cop, within(1e-9));
      }
    }
  }

  /** Where the compressor never runs, all is resistance: a watt for a watt. */
  @Test
  void resistanceGivesAWattForAWatt() {
    DuctlessHeatPump standing =
        DuctlessHeatPump.usual(COOLING, Rating.ofCop(3516.85, 3.6), Compressor.singleSpeed())
            .withLowestOutdoor(20);
    assertThat(HeatingSeason.hspf2(standing, COOLING.capacity(), Compressor.singleSpeed()))
        .isCloseTo(1, within(1e-12));
  }

  /**
   * Another way to the same: 47 °F COP of a single speed by its HSPF (Wassmer 2003, as in the
   * simulation protocols), HSPF2 being 0.9 of it without ducts. The two rest on different units and
   * load lines; a fifth is what they may lie apart (ours).
   */
  @Test
  void nearTheBondOfSingleSpeeds() {
    for (double hspf : new double[] {7.7, 8.2, 9}) {
      double hspf2 = Units.wattsPerWattFromEer(SeasonalRating.Build.DUCTLESS.hspf2(hspf));
      assertThat(cop(hspf2, Compressor.singleSpeed(), LOWEST))
          .as("HSPF %s", hspf)
          .isCloseTo(SeasonalRating.singleSpeedCopAt47(hspf), withinPercentage(20));
    }
  }

  /** A variable speed lives at half load, so the same label asks less of it at full speed. */
  @Test
  void aVariableSpeedNeedsLessAtFullSpeed() {
    assertThat(cop(2.6, Compressor.variableSpeed(), LOWEST))
        .isLessThan(cop(2.6, Compressor.singleSpeed(), LOWEST));
  }

  @Test
  void labelsThatCannotBeMadeAreHeldAtTheEdge() {
    assertThat(cop(50, Compressor.singleSpeed(), LOWEST)).isEqualTo(7);
    assertThat(cop(0.5, Compressor.singleSpeed(), LOWEST)).isEqualTo(1.5);
    assertThatIllegalArgumentException().isThrownBy(() -> cop(0, Compressor.singleSpeed(), LOWEST));
  }
}
