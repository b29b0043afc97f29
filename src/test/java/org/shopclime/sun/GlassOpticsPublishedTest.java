package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Glass by angle against handbook tables. */
class GlassOpticsPublishedTest {

  /** Both ways of describing the glass must meet the table: by its label, and by its panes. */
  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/glass-by-angle.csv", useHeadersInDisplayName = true)
  void heatGainByAngle(String id, int count, Double angle, double expected, double tolerance) {
    // U of uncoated glass alone, 12 mm of air: ASHRAE Fundamentals, table of U-factors (memory).
    GlassOptics label =
        count == 1 ? GlassOptics.ofWindow(5.9, 0.86) : GlassOptics.ofWindow(2.73, 0.76);
    GlassOptics panes = GlassOptics.ofPanes(new Panes(count, 0.836, 0.075, 0.003, 0.17));
    assertThat(angle == null ? label.diffuseShgc() : label.shgc(angle))
        .as("%s by label at %s", id, angle)
        .isCloseTo(expected, within(tolerance));
    assertThat(angle == null ? panes.diffuseShgc() : panes.shgc(angle))
        .as("%s by panes at %s", id, angle)
        .isCloseTo(expected, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/sun/double-pane-by-angle.csv",
      useHeadersInDisplayName = true)
  void doublePaneByAngle(
      String id,
      Double angle,
      double transmittance,
      double table,
      double absorbedOutside,
      double absorbedInside) {
    // No resistance in the panes: the share acting inside is what the inner pane absorbs.
    GlassOptics glass = GlassOptics.ofPanes(new Panes(2, 0.836, 0.075, 0, 0.17));
    double passed = angle == null ? glass.diffuseTransmittance() : glass.transmittance(angle);
    double absorbed = angle == null ? glass.diffuseAbsorptance() : glass.absorptance(angle);
    double share = angle == null ? glass.diffuseInnerShare() : glass.innerShare(angle);
    assertThat(passed).as(id).isCloseTo(transmittance, within(0.001));
    assertThat(passed).as(id).isCloseTo(table, within(0.0055));
    assertThat(absorbed * (1 - share)).as(id).isCloseTo(absorbedOutside, within(0.001));
    assertThat(absorbed * share).as(id).isCloseTo(absorbedInside, within(0.001));
  }

  /**
   * Source: ANSI/ASHRAE Standard 140, editions to 2017 (from memory): two panes 3.175 mm, index
   * 1.526, extinction 0.0196 per mm, gap 6.297 W/(m²·K): U 3.0, SHGC 0.789, passed 0.747, absorbed
   * 0.0643 and 0.0521.
   */
  @Test
  void olderStandardWindow() {
    double r = Math.pow(0.526 / 2.526, 2);
    double through = Math.exp(-0.0196 * 3.175);
    double t = (1 - r) * (1 - r) * through / (1 - r * r * through * through);
    GlassOptics glass =
        GlassOptics.ofPanes(new Panes(2, t, r * (1 + through * t), 0.003175 / 1.06, 1 / 6.297));
    assertThat(glass.transmittance(0)).isCloseTo(0.747, within(0.001));
    assertThat(glass.absorptance(0)).isCloseTo(0.0643 + 0.0521, within(0.001));
    assertThat(glass.shgc(0)).isCloseTo(0.789, within(0.001));
    assertThat(1 / (1 / 8.29 + glass.glassResistance() + 1 / 21.0)).isCloseTo(3.003, within(0.002));
  }
}
