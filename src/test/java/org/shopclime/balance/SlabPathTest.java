package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.shop.Build;
import org.shopclime.shop.BuildLayer;
import org.shopclime.shop.Span;

/** A slab of 24 x 24 ft, against ISO 13370 by hand. */
class SlabPathTest {

  private static final double AREA = 53.5;
  private static final double EDGE = 29.26;
  private static final double FILM = 0.162;

  private static SlabPath path(double edge, double insulation, double depth) {
    List<BuildLayer> concrete = ((Build.Layers) TestShops.concrete()).layers();
    return SlabPath.of(
        new Build.Slab(concrete, edge, insulation, depth, Span.known(2)), AREA, FILM);
  }

  private static double resistance(SlabPath path) {
    double sum = FILM + 1 / path.outerConductance();
    for (int node = 0; node < path.nodes().count() - 1; node++) {
      sum += 1 / path.nodes().conductance(node);
    }
    return sum;
  }

  /**
   * B = 53.5 / 14.63 = 3.657 m; dt = 0.15 + 2 (0.17 + 0.0598 + 0.04) = 0.6895 m; U = 2 x 2 / (π B +
   * dt) ln(π B / dt + 1) = 4 / 12.178 x ln(17.66) = 0.943 W/(m²·K).
   */
  @Test
  void uninsulatedSlabByHand() {
    SlabPath path = path(EDGE, 0, 0);
    assertThat(path.uFactor()).isCloseTo(0.943, within(0.002));
    assertThat(1 / resistance(path))
        .as("the chain conducts as much")
        .isCloseTo(path.uFactor(), withinPercentage(1e-6));
  }

  /** Soil and massless layer together resist 1/U - Rsi - Rf, as much as soil of that depth. */
  @Test
  void groundTemperatureIsTakenWhereTheSoilEnds() {
    SlabPath path = path(EDGE, 0, 0);
    assertThat(path.depth())
        .isCloseTo(2 * (1 / path.uFactor() - FILM - 0.1016 / 1.7), withinPercentage(0.01));
    assertThat(path.soilConductivity()).isEqualTo(2);
  }

  /**
   * Half a metre of soil and 4 in of concrete: 0.5 x 1800 x 1100 + 0.1016 x 2240 x 840 J/(m²·K).
   */
  @Test
  void massOfSlabAndHalfAMetreOfSoil() {
    SlabPath path = path(EDGE, 0, 0);
    double sum = 0;
    for (int node = 0; node < path.nodes().count(); node++) {
      sum += path.nodes().capacity(node);
    }
    assertThat(sum).isCloseTo(990_000 + 191_171, withinPercentage(0.1));
  }

  @Test
  void edgeInsulationLowersIt() {
    SlabPath insulated = path(EDGE, 1.76, 0.6);
    assertThat(insulated.uFactor()).isLessThan(0.9 * path(EDGE, 0, 0).uFactor());
    assertThat(1 / resistance(insulated)).isCloseTo(insulated.uFactor(), withinPercentage(1e-6));
  }

  @Test
  void slabWithoutEdgeLosesNothing() {
    SlabPath inner = path(0, 0, 0);
    assertThat(inner.uFactor()).isZero();
    assertThat(inner.outerConductance()).isZero();
    assertThat(inner.depth()).isEqualTo(0.5);
  }

  /** A sliver with much edge loses more than half a metre of soil would let: the soil is cut. */
  @Test
  void sliverCutsTheSoil() {
    List<BuildLayer> concrete = ((Build.Layers) TestShops.concrete()).layers();
    SlabPath sliver = SlabPath.of(new Build.Slab(concrete, 20, 0, 0, Span.known(2)), 5, FILM);
    assertThat(sliver.uFactor()).isGreaterThan(1.9);
    double sum = 0;
    for (int node = 0; node < sliver.nodes().count(); node++) {
      sum += sliver.nodes().capacity(node);
    }
    assertThat(sum).isLessThan(990_000 + 191_171 - 40_000);
    assertThat(1 / resistance(sliver)).isCloseTo(sliver.uFactor(), withinPercentage(0.05));
  }
}
