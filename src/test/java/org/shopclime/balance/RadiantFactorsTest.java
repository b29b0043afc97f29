package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Carroll's rule F = 1 / (1 - A F / Σ A F), in the cases that can be solved by hand. */
class RadiantFactorsTest {

  @Test
  void cubeHasOnePointTwo() {
    RadiantFactors cube =
        new RadiantFactors(List.of("a", "b", "c", "d", "e", "f"), List.of(4., 4., 4., 4., 4., 4.));
    for (String plane : List.of("a", "b", "c", "d", "e", "f")) {
      assertThat(cube.of(plane)).isCloseTo(1.2, within(1e-9));
    }
  }

  /** Two in series between the plates give the exchange of two black plates: σ (T1⁴ - T2⁴). */
  @Test
  void facingPlatesHaveTwo() {
    RadiantFactors plates = new RadiantFactors(List.of("up", "down"), List.of(9., 9.));
    assertThat(plates.of("up")).isCloseTo(2, within(1e-9));
    assertThat(plates.of("down")).isCloseTo(2, within(1e-9));
  }

  /** n equal planes: F = 1 / (1 - 1/n). */
  @Test
  void threeEqualPlanesHaveOneAndAHalf() {
    RadiantFactors prism = new RadiantFactors(List.of("a", "b", "c"), List.of(2., 2., 2.));
    assertThat(prism.of("b")).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void piecesOfOnePlaneCountTogether() {
    RadiantFactors split =
        new RadiantFactors(List.of("up", "down", "up", "up"), List.of(4., 9., 4., 1.));
    assertThat(split.of("up")).isCloseTo(2, within(1e-9));
  }

  /** A plane larger than all others sees itself by this rule; it is held at 3. */
  @Test
  void largePlanesAreHeld() {
    RadiantFactors lid = new RadiantFactors(List.of("large", "small"), List.of(20., 1.));
    assertThat(lid.of("large")).isCloseTo(3, within(1e-9));
    assertThat(lid.of("small")).isBetween(1.0, 1.1);
  }

  @Test
  void onePlaneAloneSeesNothing() {
    assertThat(new RadiantFactors(List.of("only", "only"), List.of(1., 2.)).of("only"))
        .isEqualTo(1);
    new RadiantFactors(List.of(), List.of());
  }

  /** Where no plane is larger than all others, the rule itself holds for each of them. */
  @Property(tries = 100)
  void ruleHoldsForEveryBox(
      @ForAll @DoubleRange(min = 2, max = 12) double length,
      @ForAll @DoubleRange(min = 2, max = 12) double width,
      @ForAll @DoubleRange(min = 2, max = 4) double height) {
    List<String> planes = List.of("n", "s", "e", "w", "up", "down");
    List<Double> areas =
        List.of(
            length * height,
            length * height,
            width * height,
            width * height,
            length * width,
            length * width);
    RadiantFactors box = new RadiantFactors(planes, areas);
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      sum += areas.get(i) * box.of(planes.get(i));
    }
    for (int i = 0; i < 6; i++) {
      double factor = box.of(planes.get(i));
      assertThat(factor).isCloseTo(1 / (1 - areas.get(i) * factor / sum), within(1e-6));
    }
  }
}
