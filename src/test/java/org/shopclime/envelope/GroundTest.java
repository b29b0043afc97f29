package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.EdgeInsulation.Placement;

/** Slabs: edges, the layer that stands for the deep soil, and refusals. */
class GroundTest {

  private static final EdgeInsulation BARE = EdgeInsulation.none();

  /**
   * ISO 13370, worked by hand: A 100, P 40, so B 5; soil 2, walls 0.3: dt = 0.3 + 2 · 0.21 = 0.72;
   * U = 4/(5π + 0.72) · ln(5π/0.72 + 1) = 0.7611. Edge of R 2 down 0.6 m: R' = 2 - 0.07/2 = 1.965,
   * d' = 3.93; ψ = -(2/π)(ln(1.2/0.72 + 1) - ln(1.2/4.65 + 1)) = -0.4781; ΔU = 2ψ/B = -0.1912.
   */
  @Test
  void edgeInsulationByHand() {
    assertThat(Ground.slabUFactor(100, 40, 0.3, 2, 0, BARE)).isCloseTo(0.7611, within(0.0005));
    EdgeInsulation down = new EdgeInsulation(Placement.VERTICAL, 2, 0.6);
    assertThat(Ground.slabUFactor(100, 40, 0.3, 2, 0, down)).isCloseTo(0.5698, within(0.0006));
    EdgeInsulation level = new EdgeInsulation(Placement.HORIZONTAL, 2, 1.2);
    assertThat(Ground.slabUFactor(100, 40, 0.3, 2, 0, level))
        .isCloseTo(Ground.slabUFactor(100, 40, 0.3, 2, 0, down), within(1e-12));
  }

  /**
   * ISO 13370 for a well insulated floor: B 2, dt = 0.3 + 2 · 3.21 = 6.72, U = 2/(0.914 + 6.72).
   */
  @Test
  void wellInsulatedFloorByHand() {
    assertThat(Ground.slabUFactor(10, 10, 0.3, 2, 3, BARE)).isCloseTo(0.2620, within(0.0001));
  }

  @Property
  void edgeInsulationOnlyHelps(
      @ForAll @DoubleRange(min = 10, max = 400) double area,
      @ForAll @DoubleRange(min = 0, max = 5) double resistance,
      @ForAll @DoubleRange(min = 0, max = 1.2) double reach,
      @ForAll @DoubleRange(min = 1.5, max = 3.5) double soil) {
    double edge = 4 * Math.sqrt(area);
    double bare = Ground.slabUFactor(area, edge, 0.15, soil, 0, BARE);
    double insulated =
        Ground.slabUFactor(
            area, edge, 0.15, soil, 0, new EdgeInsulation(Placement.VERTICAL, resistance, reach));
    assertThat(insulated).isPositive().isLessThanOrEqualTo(bare + 1e-12);
  }

  /** The layers of the model make the steady transmittance wherever slab and film leave room. */
  @Property
  void slabSoilAndVirtualLayerMakeU(
      @ForAll @DoubleRange(min = 0.1, max = 1.5) double u,
      @ForAll @DoubleRange(min = 0.05, max = 0.4) double slab,
      @ForAll @DoubleRange(min = 0.2, max = 3.5) double soil) {
    double depth = Ground.soilDepth(u, 0.17, slab, 0.5, soil);
    double virtual = Ground.virtualResistance(u, 0.17, slab, depth, soil);
    assertThat(depth).isBetween(0.0, 0.5);
    assertThat(0.17 + slab + depth / soil + virtual).isCloseTo(1 / u, within(1e-9));
  }

  @Test
  void withTooLittleRoomTheVirtualLayerIsNone() {
    assertThat(Ground.virtualResistance(2, 0.17, 0.1, 0.5, 1)).isZero();
    assertThat(Ground.soilDepth(2, 0.17, 0.1, 0.5, 1)).isCloseTo(0.23, within(1e-12));
    assertThat(Ground.soilDepth(4, 0.17, 0.1, 0.5, 1)).isZero();
    assertThat(Ground.virtualResistance(0.5, 0.17, 0.1, 0.5, 2)).isCloseTo(1.48, within(1e-12));
  }

  @Test
  void fFactorsRunStraightBetweenPrintedOnesAndAreHeldBeyond() {
    double perFoot = InchPound.PER_FOOT;
    double foot = 12 * InchPound.INCH;
    double r = InchPound.R;
    assertThat(FFactor.of(new EdgeInsulation(Placement.VERTICAL, 7.5 * r, 2 * foot)) / perFoot)
        .isCloseTo(0.56, within(1e-9));
    assertThat(FFactor.of(new EdgeInsulation(Placement.VERTICAL, 5 * r, 2.5 * foot)) / perFoot)
        .isCloseTo(0.57, within(1e-9));
    assertThat(FFactor.of(new EdgeInsulation(Placement.HORIZONTAL, 30 * r, 6 * foot)) / perFoot)
        .isCloseTo(0.63, within(1e-9));
    assertThat(FFactor.fullyInsulated(25 * r) / perFoot).isCloseTo(0.235, within(1e-9));
    assertThatThrownBy(() -> FFactor.fullyInsulated(5 * r)).hasMessageContaining("under the slab");
  }

  @Test
  void refusesASlabWithoutEdge() {
    assertThatThrownBy(() -> Ground.slabUFactor(50, 0, 0.15, 2, 0, BARE))
        .hasMessage("exposed perimeter, m, is 0.0; takes more than 0.0, up to 100000.0");
    assertThatThrownBy(() -> Ground.slabUFactor(50, 20, 0.15, 0.1, 0, BARE))
        .hasMessageContaining("conductivity of the soil");
    assertThatThrownBy(() -> new EdgeInsulation(Placement.VERTICAL, 1, -1))
        .hasMessageContaining("reach of the edge insulation");
  }
}
