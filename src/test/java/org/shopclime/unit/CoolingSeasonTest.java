package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.quantity.Units;

/** The season behind a SEER2. */
class CoolingSeasonTest {

  private static final double CAPACITY = 12_000 * 0.29307107;

  private static double eer(Compressor compressor, double seer2) {
    double found = CoolingSeason.eer(CAPACITY, compressor, Units.wattsPerWattFromEer(seer2));
    return found / Units.wattsPerWattFromEer(1);
  }

  /**
   * By the bond used in the simulation protocols (Wassmer 2003: EER = 1.12 SEER - 0.02 SEER²), and
   * the season of a unit of one speed of that EER beside it: the same label within 0.7 % at 10 and
   * 10 % at 14, where the bond bends.
   */
  @ParameterizedTest
  @CsvSource({"10, 0.02", "13, 0.09", "14, 0.11"})
  void oneSpeedFollowsTheBondOfSingleSpeeds(double seer, double near) {
    assertThat(eer(Compressor.singleSpeed(), seer))
        .isCloseTo((1.12 - 0.02 * seer) * seer, within(1e-9));
    Rating rating = Rating.ofEer(CAPACITY, SeasonalRating.singleSpeedEer(seer));
    Compressor one = Compressor.singleSpeed();
    double season = CoolingSeason.seer2(DuctlessHeatPump.usual(rating, rating, one), CAPACITY, one);
    assertThat(season / Units.wattsPerWattFromEer(seer)).isCloseTo(1, within(near));
  }

  /**
   * Ductless units of variable speed with both figures on their labels: SEER2 of 20 with EER2 of 11
   * to 13, of 16 with 9 to 11.5; common practice.
   */
  @ParameterizedTest
  @CsvSource({"20, 11, 13", "16, 9, 11.5", "24, 13, 15.5"})
  void variableSpeedIsAmongLabelsWithBoth(double seer2, double least, double most) {
    assertThat(eer(Compressor.variableSpeed(), seer2)).isBetween(least, most);
  }

  /** A unit of the efficiency found makes the label it was found from. */
  @ParameterizedTest
  @CsvSource({"14", "20", "26"})
  void thereAndBack(double seer2) {
    Compressor compressor = Compressor.variableSpeed();
    double label = Units.wattsPerWattFromEer(seer2);
    Rating rating = Rating.ofCop(CAPACITY, CoolingSeason.eer(CAPACITY, compressor, label));
    DuctlessHeatPump unit = DuctlessHeatPump.usual(rating, rating, compressor);
    assertThat(CoolingSeason.seer2(unit, CAPACITY, compressor)).isCloseTo(label, within(1e-9));
  }

  @Test
  void theEdgesHold() {
    assertThat(CoolingSeason.eer(CAPACITY, Compressor.variableSpeed(), 100))
        .isEqualTo(CoolingSeason.MOST);
    assertThat(CoolingSeason.eer(CAPACITY, Compressor.variableSpeed(), 0.1))
        .isEqualTo(CoolingSeason.LEAST);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CoolingSeason.eer(CAPACITY, Compressor.singleSpeed(), 0));
  }
}
