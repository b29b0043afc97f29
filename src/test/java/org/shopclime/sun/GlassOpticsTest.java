package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Behaviour of glass by angle. */
class GlassOpticsTest {

  @ParameterizedTest
  @CsvSource({
    "0.3,0.1",
    "1,0.25",
    "1.7,0.15",
    "2.73,0.76",
    "3.4,0.6",
    "4,0.5",
    "4.5,0.72",
    "5.8,0.3",
    "5.9,0.86",
    "7,0.79",
    "9,0.9"
  })
  void theLabelIsKept(double uFactor, double shgc) {
    GlassOptics glass = GlassOptics.ofWindow(uFactor, shgc);
    assertThat(glass.transmittance(0) + glass.inwardFraction() * glass.absorptance(0))
        .isCloseTo(shgc, within(1e-9));
    assertThat(glass.shgc(0)).isCloseTo(shgc, within(1e-9));
    double films = GlassOptics.ratingInsideFilm(uFactor) + GlassOptics.ratingOutsideFilm(uFactor);
    assertThat(1 / (films + glass.glassResistance())).isCloseTo(uFactor, within(1e-9));
    assertThat(glass.glassResistance()).isPositive();
    assertThat(glass.innerShare(30)).isEqualTo(0.5);
    assertThat(glass.diffuseInnerShare()).isEqualTo(0.5);
  }

  /**
   * Physical for every label: never more than all, less at a slant, and diffuse as at about 58
   * degrees (common practice).
   */
  @Test
  void physicalForEveryLabel() {
    for (double u = 0.3; u <= 9; u += 0.3) {
      for (double shgc = 0.01; shgc <= 0.9; shgc += 0.04) {
        GlassOptics glass = GlassOptics.ofWindow(u, shgc);
        double before = Double.MAX_VALUE;
        for (int angle = 0; angle <= 90; angle += 5) {
          double passed = glass.transmittance(angle);
          double kept = glass.absorptance(angle);
          assertThat(kept).isNotNegative();
          assertThat(passed + kept).isLessThanOrEqualTo(1);
          assertThat(glass.shgc(angle)).isLessThanOrEqualTo(before + 1e-3);
          before = glass.shgc(angle);
        }
        assertThat(glass.diffuseShgc()).isBetween(glass.shgc(64), glass.shgc(45));
        assertThat(glass.diffuseTransmittance())
            .isBetween(glass.transmittance(64), glass.transmittance(45));
        assertThat(glass.transmittance(90)).isZero();
        assertThat(glass.absorptance(120)).isZero();
        assertThat(glass.shgc(180)).isZero();
      }
    }
  }

  @Test
  void noStepsBetweenTheKindsOfWindow() {
    for (double edge : new double[] {3.4, 4.5, 5.85}) {
      GlassOptics below = GlassOptics.ofWindow(edge - 1e-6, 0.5);
      GlassOptics above = GlassOptics.ofWindow(edge + 1e-6, 0.5);
      assertThat(below.transmittance(60)).isCloseTo(above.transmittance(60), within(1e-4));
      assertThat(below.glassResistance()).isCloseTo(above.glassResistance(), within(3e-4));
    }
    for (double edge : new double[] {0.15, 0.7206}) {
      for (double u : new double[] {2, 6}) {
        assertThat(GlassOptics.ofWindow(u, edge - 1e-6).transmittance(0))
            .isCloseTo(GlassOptics.ofWindow(u, edge + 1e-6).transmittance(0), within(1e-4));
      }
    }
  }

  /** LBNL-2804E by hand: U 5 and SHGC 0.5; U 2 and SHGC 0.5 (equations from memory). */
  @Test
  void normalFiguresByHand() {
    GlassOptics single = GlassOptics.ofWindow(5, 0.5);
    assertThat(single.transmittance(0)).isCloseTo(0.939998 * 0.25 + 0.20332 / 2, within(1e-9));
    // Films 1/7.52783 and 1/29.29056.
    assertThat(single.glassResistance()).isCloseTo(0.2 - 1 / 7.52783 - 1 / 29.290563, within(1e-6));
    // x = 0.16334: inside film 1/8.59371, outside film 1/20.94065.
    double in = 1 / 8.59371;
    double out = 1 / 20.94065;
    assertThat(single.inwardFraction())
        .isCloseTo(
            (out + single.glassResistance() / 2) / (out + single.glassResistance() + in),
            within(1e-4));
    GlassOptics pair = GlassOptics.ofWindow(2, 0.5);
    assertThat(pair.transmittance(0))
        .isCloseTo(0.085775 * 0.25 + 0.963954 / 2 - 0.084958, within(1e-9));
    // x = 0.08154: 0.10832 - 0.60259 + 1.60931 + 6.76658 = 7.88162; 5.763355 x + 20.541528 =
    // 21.01145.
    in = 1 / 7.88162;
    out = 1 / 21.01145;
    assertThat(pair.inwardFraction())
        .isCloseTo(
            (out + pair.glassResistance() / 2) / (out + pair.glassResistance() + in), within(1e-4));
  }

  @Test
  void onePaneHasItsOwnFigures() {
    GlassOptics glass = GlassOptics.ofPanes(new Panes(1, 0.836, 0.075, 0.003, 9e-9));
    assertThat(glass.transmittance(0)).isCloseTo(0.836, within(1e-12));
    assertThat(glass.absorptance(0)).isCloseTo(1 - 0.836 - 0.075, within(1e-12));
    assertThat(glass.innerShare(0)).isCloseTo(0.5, within(1e-12));
    assertThat(glass.glassResistance()).isEqualTo(0.003);
    // Brewster's and Fresnel's laws: index 1.5204; at 60 degrees both reflectances by hand.
    assertThat(glass.transmittance(60)).isCloseTo(0.749, within(0.002));
  }

  /** Two panes by hand: T = t²/(1 - r²); the second pane takes t(1 - t - r)/(1 - r²). */
  @Test
  void twoAndThreePanesByHand() {
    double t = 0.8;
    double r = 0.08;
    GlassOptics two = GlassOptics.ofPanes(new Panes(2, t, r, 0, 0.2));
    assertThat(two.transmittance(0)).isCloseTo(t * t / (1 - r * r), within(1e-12));
    double second = t * (1 - t - r) / (1 - r * r);
    double first = (1 - t - r) * (1 + t * r / (1 - r * r));
    assertThat(two.absorptance(0)).isCloseTo(first + second, within(1e-12));
    assertThat(two.innerShare(0)).isCloseTo(second / (first + second), within(1e-12));
    GlassOptics three = GlassOptics.ofPanes(new Panes(3, t, r, 0, 0.2));
    double pair = t * t / (1 - r * r);
    double pairR = r + t * t * r / (1 - r * r);
    assertThat(three.transmittance(0)).isCloseTo(pair * t / (1 - pairR * r), within(1e-12));
    assertThat(three.glassResistance()).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void panesHaveDepth() {
    Panes panes = new Panes(2, 0.8, 0.08, 0.1, 0.2);
    assertThat(panes.resistance()).isCloseTo(0.4, within(1e-12));
    assertThat(panes.depth(0)).isCloseTo(0.125, within(1e-12));
    assertThat(panes.depth(1)).isCloseTo(0.875, within(1e-12));
    assertThat(new Panes(1, 0.8, 0.08, 0, 0).depth(0)).isEqualTo(0.5);
  }

  @Test
  void refusesWhatIsNoGlass() {
    assertThatThrownBy(() -> GlassOptics.ofWindow(0.2, 0.5)).hasMessageContaining("U-factor");
    assertThatThrownBy(() -> GlassOptics.ofWindow(2, 0.95)).hasMessageContaining("SHGC");
    assertThatThrownBy(() -> GlassOptics.ratingInsideFilm(10)).hasMessageContaining("U-factor");
    assertThatThrownBy(() -> GlassOptics.ratingOutsideFilm(10)).hasMessageContaining("U-factor");
    GlassOptics glass = GlassOptics.ofWindow(2, 0.5);
    assertThatThrownBy(() -> glass.transmittance(-1)).hasMessageContaining("incidence");
    assertThatThrownBy(() -> glass.innerShare(90)).hasMessageContaining("incidence");
    assertThatThrownBy(() -> new Panes(0, 0.8, 0.08, 0, 0)).hasMessageContaining("number");
    assertThatThrownBy(() -> new Panes(1, 0.98, 0.01, 0, 0)).hasMessageContaining("transmittance");
    assertThatThrownBy(() -> new Panes(1, 0.8, 0.25, 0, 0)).hasMessageContaining("reflectance");
    assertThatThrownBy(() -> new Panes(1, 0.8, 0.08, -1, 0)).hasMessageContaining("pane resis");
    assertThatThrownBy(() -> new Panes(1, 0.8, 0.08, 0, -1)).hasMessageContaining("gap");
  }
}
