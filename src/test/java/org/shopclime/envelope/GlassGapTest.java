package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Gaps of air between panes. */
class GlassGapTest {

  /** EN 673: 4-12-4 of clear glass and air has U 2.9 (from memory; 2.85 by hand). */
  @Test
  void doubleGlazingIsRatedAsPublished() {
    double gap = new GlassGap(0.012, 0.837).ratedConductance();
    double uFactor = 1 / (1 / 8.0 + 2 * 0.004 + 1 / gap + 1 / 23.0);
    assertThat(uFactor).isCloseTo(2.86, within(0.02));
    // By hand: 0.02496/0.012 + 4 x 5.67e-8 x 283.15^3 / (2/0.837 - 1) = 2.080 + 3.705.
    assertThat(gap).isCloseTo(5.785, within(0.005));
  }

  @Test
  void warmGapsPassMoreAndWideOnesStir() {
    GlassGap gap = new GlassGap(0.012, 0.84);
    assertThat(gap.conductance(40, 10, 101_325)).isGreaterThan(gap.conductance(0, 10, 101_325));
    GlassGap wide = new GlassGap(0.02, 0.84);
    double still = wide.conductance(10, 0, 101_325);
    assertThat(wide.conductance(10, 20, 101_325)).isGreaterThan(still);
    assertThat(wide.conductance(10, -20, 101_325)).isEqualTo(wide.conductance(10, 20, 101_325));
    assertThat(wide.conductance(10, 20, 80_000)).isLessThan(wide.conductance(10, 20, 101_325));
  }

  @Test
  void refusesWhatIsNoGap() {
    assertThatThrownBy(() -> new GlassGap(0, 0.84)).hasMessageContaining("width");
    assertThatThrownBy(() -> new GlassGap(0.01, 0)).hasMessageContaining("emittance");
    GlassGap gap = new GlassGap(0.01, 0.84);
    assertThatThrownBy(() -> gap.conductance(200, 1, 1e5)).hasMessageContaining("temperature");
    assertThatThrownBy(() -> gap.conductance(20, 1, 0)).hasMessageContaining("pressure");
  }
}
