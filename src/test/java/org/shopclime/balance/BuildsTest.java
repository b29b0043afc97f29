package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Assembly;
import org.shopclime.envelope.Layer;
import org.shopclime.shop.Board;
import org.shopclime.shop.Build;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.Door;
import org.shopclime.shop.Member;
import org.shopclime.shop.Part;
import org.shopclime.shop.Span;

/** The owner's layers as figures. */
class BuildsTest {

  private static Layer one(BuildLayer layer) {
    return Builds.layers(List.of(layer)).get(0);
  }

  private static BuildLayer layer(
      String name, Double thick, Double conducts, Double dense, Double heat, Double resists) {
    return new BuildLayer(
        name,
        Optional.ofNullable(thick),
        Optional.ofNullable(conducts),
        Optional.ofNullable(dense),
        Optional.ofNullable(heat),
        Optional.ofNullable(resists));
  }

  @Test
  void materialOfTheTablesAtItsUsualOrAnotherThickness() {
    Layer usual = one(layer("gypsum board", null, null, null, null, null));
    assertThat(usual.thickness()).isCloseTo(0.0127, within(1e-9));
    assertThat(usual.resistance()).isCloseTo(0.0127 / 0.16, within(1e-6));
    Layer thick = one(layer("gypsum board", 0.03, null, null, null, null));
    assertThat(thick.resistance()).isCloseTo(0.03 / 0.16, within(1e-6));
    assertThat(thick.heatCapacity()).isCloseTo(0.03 * 640 * 1150, withinPercentage(0.1));
  }

  @Test
  void figuresByHandGoBeforeTheTables() {
    Layer changed = one(layer("gypsum board", 0.02, null, 900.0, 1000.0, null));
    assertThat(changed.conductivity()).isCloseTo(0.16, within(1e-9));
    assertThat(changed.heatCapacity()).isCloseTo(0.02 * 900 * 1000, within(1e-6));
    Layer conducting = one(layer("gypsum board", null, 0.3, null, null, null));
    assertThat(conducting.conductivity()).isEqualTo(0.3);
    Layer own = one(layer("my slag wool", 0.1, 0.05, 40.0, 900.0, null));
    assertThat(own.resistance()).isCloseTo(2, within(1e-12));
    assertThat(own.heatCapacity()).isCloseTo(0.1 * 40 * 900, within(1e-9));
    assertThat(one(layer("light wool", 0.1, 0.05, null, null, null)).heatCapacity()).isZero();
  }

  @Test
  void resistanceByHandHasMassOnlyIfToldInFull() {
    Layer light = one(layer("board", 0.05, null, 30.0, null, 1.5));
    assertThat(light.resistance()).isCloseTo(1.5, within(1e-12));
    assertThat(light.heatCapacity()).isZero();
    Layer heavy = one(layer("board", 0.05, null, 30.0, 1400.0, 1.5));
    assertThat(heavy.resistance()).isCloseTo(1.5, within(1e-12));
    assertThat(heavy.heatCapacity()).isCloseTo(0.05 * 30 * 1400, within(1e-9));
  }

  private static BuildLayer vapour(String name, Double resists, Double permeance, Double sd) {
    return new BuildLayer(
        name,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.ofNullable(resists),
        Optional.ofNullable(permeance),
        Optional.ofNullable(sd));
  }

  @Test
  void vapourAsTypedGoesBeforeTheTables() {
    assertThat(one(vapour("gypsum board", null, null, null)).vapour().orElseThrow())
        .isCloseTo(0.127, within(1e-9));
    assertThat(one(vapour("gypsum board", null, null, 2.5)).vapour()).hasValue(2.5);
    assertThat(one(vapour("gypsum board", null, 1e-11, null)).vapour().orElseThrow())
        .isCloseTo(20, within(1e-9));
    // 2 m²K/W of XPS at 0.0288 W/mK are 57.6 mm, times 115
    assertThat(one(vapour("XPS foam", 2.0, null, null)).vapour().orElseThrow())
        .isCloseTo(0.0576 * 115, within(1e-9));
    assertThat(one(vapour("my own board", 1.0, null, null)).vapour()).isEmpty();
    assertThat(one(vapour("my own board", 1.0, null, 0.3)).vapour()).hasValue(0.3);
  }

  @Test
  void unknownMaterialIsRefused() {
    assertThatThrownBy(() -> one(layer("kryptonite", null, null, null, null, null)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("kryptonite");
  }

  /** Share of wood at 16 in: walls 25 %, level parts 10 % (ASHRAE 90.1; see {@code Framing}). */
  @Test
  void framingByPart() {
    Build framed =
        new Build.Framed(
            Member.TWO_BY_FOUR,
            0.4064,
            List.of(TestShops.layer("OSB")),
            2.3,
            Span.known(0),
            0,
            List.of(TestShops.layer("gypsum board")));
    assertThat(fill(framed, Part.WALL)).isCloseTo(0.75, within(0.001));
    assertThat(fill(framed, Part.ROOF)).isCloseTo(0.90, within(0.001));
    assertThat(fill(framed, Part.CEILING)).isCloseTo(0.90, within(0.001));
    assertThat(fill(framed, Part.FLOOR)).isCloseTo(0.90, within(0.001));
  }

  private static double fill(Build build, Part part) {
    return Builds.assembly(build, part).paths().get(0).fraction();
  }

  /** Sheet steel with 1 in of XPS over 90 %: U with of films by hand. */
  @Test
  void boardsInADoor() {
    Door bare = TestShops.door("Door", 2, 2, 0);
    Assembly open = Builds.door(bare);
    Assembly foam = Builds.door(bare.withBoards(List.of(new Board("XPS foam", 0.0254))));
    double films = 0.93 * TestShops.R;
    assertThat(open.uFactor(0.25 * TestShops.R, 0.68 * TestShops.R))
        .isCloseTo(1 / films, withinPercentage(1));
    double hand = 0.9 / (films + 5 * TestShops.R) + 0.1 / films;
    assertThat(foam.uFactor(0.25 * TestShops.R, 0.68 * TestShops.R))
        .isCloseTo(hand, withinPercentage(8));
  }
}
