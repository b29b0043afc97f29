package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How layers are cut. */
class NodesTest {

  private static final Layer STEEL = new Layer("steel", 0.0005, 45, 7830, 500);

  @Test
  void aThinSheetIsOneSlice() {
    Nodes nodes = Nodes.of(List.of(STEEL));
    assertThat(nodes.count()).isEqualTo(2);
    assertThat(nodes.capacity(0)).isCloseTo(0.0005 * 7830 * 500 / 2, within(1e-9));
    assertThat(nodes.capacity(1)).isEqualTo(nodes.capacity(0));
    assertThat(nodes.conductance(0)).isCloseTo(90000, within(1e-6));
  }

  @Test
  void anAirSpaceJoinsTheNodesBesideIt() {
    Nodes nodes =
        Nodes.of(List.of(STEEL, Layer.massless("air", 0.1), Layer.massless("more", 0.06), STEEL));
    assertThat(nodes.count()).isEqualTo(4);
    assertThat(nodes.conductance(1)).isCloseTo(1 / 0.16, within(1e-9));
    assertThat(nodes.capacity(1)).isPositive();
    assertThat(nodes.capacity(2)).isPositive();
  }

  @Test
  void layersThatTouchShareANode() {
    Nodes nodes = Nodes.of(List.of(STEEL, STEEL));
    assertThat(nodes.count()).isEqualTo(3);
    assertThat(nodes.capacity(1)).isCloseTo(2 * nodes.capacity(0), within(1e-9));
  }

  @Test
  void aFaceMayBeWithoutMass() {
    Nodes nodes = Nodes.of(List.of(Layer.massless("outside", 0.2), STEEL));
    assertThat(nodes.count()).isEqualTo(3);
    assertThat(nodes.capacity(0)).isZero();
    assertThat(nodes.conductance(0)).isCloseTo(5, within(1e-9));
  }

  @Test
  void onlyResistanceMakesTwoFaces() {
    Nodes nodes = Nodes.of(List.of(Layer.massless("a", 0.2), Layer.massless("b", 0.3)));
    assertThat(nodes.count()).isEqualTo(2);
    assertThat(nodes.conductance(0)).isCloseTo(2, within(1e-9));
  }

  /** α = 1.63 / 2.3e6: a wave of 15 minutes reaches √(α · 900 / π) = 14.25 mm. */
  @Test
  void slicesAreNoThickerThanAFifteenMinuteWaveReaches() {
    assertThat(Nodes.of(List.of(new Layer("concrete", 0.100, 1.63, 2300, 1000))).count())
        .isEqualTo(9);
    assertThat(Nodes.of(List.of(new Layer("concrete", 0.085, 1.63, 2300, 1000))).count())
        .isEqualTo(7);
    assertThat(Nodes.of(List.of(new Layer("soil", 2, 2, 1000, 2000))).count()).isEqualTo(25);
  }

  @Test
  void refusesWhatResistsNothing() {
    assertThatThrownBy(() -> Nodes.of(List.of(Layer.massless("none", 0))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("takes more than 0");
    assertThatThrownBy(() -> Nodes.of(List.of())).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void saysWhatItHolds() {
    assertThat(Nodes.of(List.of(Layer.massless("a", 0.5))))
        .hasToString("Nodes[capacities=[0.0, 0.0], conductances=[2.0]]");
  }
}
