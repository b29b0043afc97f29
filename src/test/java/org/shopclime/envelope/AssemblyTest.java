package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Layers, paths and the ways to join them. */
class AssemblyTest {

  private static final Layer ONE = Layer.massless("one", 1);
  private static final Layer TWO = Layer.massless("two", 2);

  @Test
  void aLayerResistsAndStores() {
    Layer layer = new Layer("concrete", 0.1, 2, 2300, 900);
    assertThat(layer.resistance()).isCloseTo(0.05, within(1e-15));
    assertThat(layer.heatCapacity()).isCloseTo(207000, within(1e-6));
    assertThat(ONE.resistance()).isEqualTo(1);
    assertThat(ONE.heatCapacity()).isZero();
  }

  @Test
  void heatCapacityIsWeighedByShare() {
    Layer heavy = new Layer("heavy", 0.1, 1, 2000, 1000);
    Assembly wall =
        new Assembly(List.of(new Path(0.25, List.of(heavy, ONE)), new Path(0.75, List.of(TWO))));
    assertThat(wall.heatCapacity()).isCloseTo(50000, within(1e-9));
    assertThat(wall.uFactor(0, 0)).isCloseTo(0.25 / 1.1 + 0.75 / 2, within(1e-12));
    assertThat(wall.paths().get(0).heatCapacity()).isCloseTo(200000, within(1e-9));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> new Assembly(List.of(new Path(0.5, List.of(ONE)))))
        .hasMessageContaining("make 0.5; must make 1");
    assertThatThrownBy(() -> new Path(0, List.of(ONE)))
        .hasMessageContaining("takes more than 0.0, up to 1.0");
    assertThatThrownBy(() -> new Path(1, List.of())).hasMessageContaining("at least one");
    assertThatThrownBy(() -> Layer.massless("x", Double.NaN))
        .hasMessage("resistance of x, m²·K/W, is NaN; takes 0.0 to 100.0");
    assertThatThrownBy(() -> new Layer("x", 0.1, 0, 1, 1))
        .hasMessageContaining("conductivity of x");
    assertThatThrownBy(() -> Assembly.of(List.of(Layer.massless("x", 0))).uFactor(0, 0))
        .hasMessageContaining("takes more than 0.0");
    Assembly uneven =
        new Assembly(List.of(new Path(0.5, List.of(ONE)), new Path(0.5, List.of(ONE, TWO))));
    assertThatThrownBy(() -> IsothermalPlanes.resistance(uneven, 0.1, 0.1))
        .hasMessageContaining("takes equally many");
  }

  @Test
  void aPlaneOfNoResistanceIsPassedOver() {
    Layer none = Layer.massless("sheet", 0);
    Assembly wall =
        new Assembly(List.of(new Path(0.5, List.of(none, ONE)), new Path(0.5, List.of(none, TWO))));
    assertThat(IsothermalPlanes.resistance(wall, 0, 0)).isCloseTo(4.0 / 3, within(1e-12));
  }

  /** ISO 6946: the upper limit is never below the lower, and the total lies between. */
  @Property
  void limitsAreInOrder(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share,
      @ForAll @DoubleRange(min = 0.1, max = 6) double first,
      @ForAll @DoubleRange(min = 0.1, max = 6) double second) {
    Assembly wall =
        new Assembly(
            List.of(
                new Path(share, List.of(ONE, Layer.massless("a", first))),
                new Path(1 - share, List.of(ONE, Layer.massless("b", second)))));
    double upper = 1 / wall.uFactor(0.04, 0.13);
    double lower = IsothermalPlanes.resistance(wall, 0.04, 0.13);
    assertThat(lower).isLessThanOrEqualTo(upper + 1e-12);
    assertThat(IsothermalPlanes.combinedResistance(wall, 0.04, 0.13))
        .isBetween(lower - 1e-12, upper + 1e-12);
  }
}
