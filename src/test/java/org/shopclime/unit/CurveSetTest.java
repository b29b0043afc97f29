package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CurveSetTest {

  private static final List<CurveSet> SETS =
      List.of(CurveSet.windowUnit(), CurveSet.residentialSingleSpeed());

  @Test
  void anEdgeIsHeldAndTold() {
    for (CurveSet set : SETS) {
      double w = 20;
      double t = 35;
      assertThat(set.at(w, t, 1).limits()).isEmpty();
      assertHeld(
          set.at(set.lowestWetBulb() - 5, t, 1),
          set.at(set.lowestWetBulb(), t, 1),
          Limit.WET_BULB_LOW);
      assertHeld(
          set.at(set.highestWetBulb() + 5, t, 1),
          set.at(set.highestWetBulb(), t, 1),
          Limit.WET_BULB_HIGH);
      assertHeld(
          set.at(w, set.lowestOutdoor() - 5, 1),
          set.at(w, set.lowestOutdoor(), 1),
          Limit.OUTDOOR_LOW);
      assertHeld(
          set.at(w, set.highestOutdoor() + 5, 1),
          set.at(w, set.highestOutdoor(), 1),
          Limit.OUTDOOR_HIGH);
      assertHeld(set.at(w, t, 0.3), set.at(w, t, 0.6), Limit.AIRFLOW_LOW);
    }
  }

  private static void assertHeld(
      CurveSet.Evaluation beyond, CurveSet.Evaluation edge, Limit limit) {
    assertThat(edge.limits()).isEmpty();
    assertThat(beyond.limits()).containsExactly(limit);
    assertThat(beyond.capacityRatio()).isEqualTo(edge.capacityRatio());
    assertThat(beyond.powerPerCapacityRatio()).isEqualTo(edge.powerPerCapacityRatio());
  }

  @Test
  void severalEdgesAreToldTogether() {
    assertThat(CurveSet.windowUnit().at(0, 60, 0.5).limits())
        .containsExactlyInAnyOrder(Limit.WET_BULB_LOW, Limit.OUTDOOR_HIGH, Limit.AIRFLOW_LOW);
  }

  @Test
  void testedRangesAreTheOnesNamed() {
    CurveSet window = CurveSet.windowUnit();
    assertThat(window.lowestWetBulb()).isCloseTo(13.889, within(0.001));
    assertThat(window.highestWetBulb()).isCloseTo(22.778, within(0.001));
    assertThat(window.lowestOutdoor()).isCloseTo(23.889, within(0.001));
    assertThat(window.highestOutdoor()).isCloseTo(46.111, within(0.001));
    CurveSet residential = CurveSet.residentialSingleSpeed();
    assertThat(residential.highestWetBulb()).isCloseTo(23.889, within(0.001));
    assertThat(residential.lowestOutdoor()).isCloseTo(18.333, within(0.001));
    assertThat(residential.highestOutdoor()).isCloseTo(51.667, within(0.001));
  }

  @Test
  void hotterOutdoorsGivesLessAndDrawsMore() {
    for (CurveSet set : SETS) {
      for (double w = set.lowestWetBulb(); w <= set.highestWetBulb(); w += 0.5) {
        CurveSet.Evaluation before = set.at(w, set.lowestOutdoor(), 1);
        for (double t = set.lowestOutdoor() + 1; t <= set.highestOutdoor(); t += 1) {
          CurveSet.Evaluation now = set.at(w, t, 1);
          assertThat(now.capacityRatio()).isLessThan(before.capacityRatio());
          if (t < 46.2) {
            assertThat(now.capacityRatio() * now.powerPerCapacityRatio())
                .isGreaterThan(before.capacityRatio() * before.powerPerCapacityRatio());
          }
          before = now;
        }
      }
    }
  }

  @Test
  void lessAirGivesLessAtTheSamePower() {
    for (CurveSet set : SETS) {
      CurveSet.Evaluation clean = set.at(19, 38, 1);
      CurveSet.Evaluation dusty = set.at(19, 38, 0.7);
      assertThat(dusty.capacityRatio()).isLessThan(clean.capacityRatio());
      assertThat(dusty.capacityRatio() * dusty.powerPerCapacityRatio())
          .isCloseTo(clean.capacityRatio() * clean.powerPerCapacityRatio(), within(0.005));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-100.1, 100.1, Double.NaN})
  void refusesSenselessTemperatures(double celsius) {
    CurveSet set = CurveSet.windowUnit();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> set.at(celsius, 35, 1))
        .withMessageContaining("entering wet bulb " + celsius);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> set.at(20, celsius, 1))
        .withMessageContaining("outdoor dry bulb " + celsius);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
  void refusesSenselessAirflow(double fraction) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CurveSet.windowUnit().at(20, 35, fraction))
        .withMessageContaining("airflow fraction " + fraction);
  }
}
