package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Paths of framed assemblies. */
class FramingTest {

  private static final double R = InchPound.R;
  private static final double INCH = InchPound.INCH;
  private static final List<Layer> PLYWOOD =
      List.of(new Layer("plywood", 0.0127, 0.1154, 540, 1210));
  private static final List<Layer> DRYWALL = List.of(new Layer("drywall", 0.0127, 0.16, 640, 1150));

  /** ASHRAE 90.1-2007 A3.4 (walls); California Joint Appendix 4 (others), both from memory. */
  @ParameterizedTest
  @CsvSource({
    "WALL, 16, 0.25",
    "WALL, 24, 0.22",
    "CEILING_OR_ROOF, 16, 0.10",
    "CEILING_OR_ROOF, 24, 0.07",
    "CEILING_OR_ROOF, 48, 0.04",
    "FLOOR, 16, 0.10",
    "FLOOR, 24, 0.07"
  })
  void woodShare(FramedPart part, double spacing, double share) {
    assertThat(Framing.framingFraction(part, 1.5 * INCH, spacing * INCH))
        .isCloseTo(share, within(1e-12));
  }

  /** The trade's compression charts, from memory; 5 % is the spread between makers. */
  @ParameterizedTest
  @CsvSource({
    "19, 5.5, 18",
    "19, 3.5, 13.5",
    "22, 5.5, 19",
    "25, 7.25, 24",
    "30, 7.25, 25.5",
    "30, 5.5, 21",
    "38, 9.25, 32.5",
    "21, 3.5, 15.5",
    "13, 3.5, 13",
    "13, 5.5, 13",
    "15, 3.5, 15"
  })
  void squeezedBatts(double label, double depth, double installed) {
    assertThat(Batt.installedResistance(label * R, depth * INCH) / R)
        .isCloseTo(installed, within(0.05 * installed));
  }

  @Test
  void foamOfAnotherFigureIsNotSqueezed() {
    assertThat(Batt.installedResistance(21.7 * R, 3.5 * INCH)).isEqualTo(21.7 * R);
  }

  @Test
  void aFilledWallHasThreePathsAndAGappyOneFour() {
    assertThat(wall(PLYWOOD, 13, 0, DRYWALL).paths())
        .extracting(Path::fraction)
        .satisfiesExactly(
            space -> assertThat(space).isCloseTo(0.75, within(1e-12)),
            studs -> assertThat(studs).isCloseTo(0.21, within(1e-12)),
            header -> assertThat(header).isCloseTo(0.04, within(1e-12)));
    assertThat(wall(PLYWOOD, 13, 0.08, DRYWALL).paths())
        .extracting(Path::fraction)
        .satisfiesExactly(
            space -> assertThat(space).isCloseTo(0.69, within(1e-12)),
            gap -> assertThat(gap).isCloseTo(0.06, within(1e-12)),
            studs -> assertThat(studs).isCloseTo(0.21, within(1e-12)),
            header -> assertThat(header).isCloseTo(0.04, within(1e-12)));
  }

  /** 0.06 of the area goes from R-13 to the air space of; both have 0.85 + 0.63 + 0.45. */
  @Test
  void gapsCostWhatTheirAreaCosts() {
    double films = 0.85 * R;
    double rest = films + (0.0127 / 0.1154 + 0.0127 / 0.16);
    double cost = 0.06 * (1 / (rest + 0.91 * R) - 1 / (rest + 13 * R));
    double without = wall(PLYWOOD, 13, 0, DRYWALL).uFactor(0, films);
    assertThat(wall(PLYWOOD, 13, 0.08, DRYWALL).uFactor(0, films) - without)
        .isCloseTo(cost, within(1e-9));
  }

  @Test
  void bareStudsLeaveTheCladdingAlone() {
    Assembly wall = wall(PLYWOOD, 0, 0, List.of());
    assertThat(wall.paths().get(0).fraction()).isCloseTo(0.75, within(1e-12));
    assertThat(wall.paths().get(0).layers()).isEqualTo(PLYWOOD);
  }

  /**
   * Fin of Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, ch. 3: m = √(2 h / (k w)),
   * conductance k m tanh(m (L + w/2)). With h = 8.35, k = 0.1154, w = 38.1 mm, L = 88.9 mm: m =
   * 61.6, k m = 7.11, tanh = 1.000, so 1/7.11 - 1/8.35 = 0.021 m²·K/W; the mass is that of the
   * wood.
   */
  @Test
  void bareStudsAreFins() {
    Path studs = wall(PLYWOOD, 0, 0, List.of()).paths().get(1);
    Layer stud = studs.layers().get(1);
    assertThat(stud.resistance()).isCloseTo(0.0209, within(0.0003));
    assertThat(stud.heatCapacity()).isCloseTo(0.0889 * 500 * 1630, within(1e-6));
  }

  @Test
  void aBattBehindNoLiningLeavesStudsAsTheyAre() {
    Path studs = wall(PLYWOOD, 13, 0, List.of()).paths().get(1);
    assertThat(studs.layers().get(1).resistance() / R).isCloseTo(4.375, within(1e-9));
  }

  @Test
  void aGapBehindNoLiningIsTheCladdingAlone() {
    assertThat(wall(PLYWOOD, 13, 0.05, List.of()).paths().get(1).layers()).isEqualTo(PLYWOOD);
  }

  @Test
  void unbrokenInsulationAddsToEveryPath() {
    Assembly with = framed(FramedPart.WALL, 5.5, PLYWOOD, 19, 0.05, 5, DRYWALL);
    Assembly without = framed(FramedPart.WALL, 5.5, PLYWOOD, 19, 0.05, 0, DRYWALL);
    for (int i = 0; i < 4; i++) {
      assertThat(with.paths().get(i).resistance() - without.paths().get(i).resistance())
          .isCloseTo(5 * R, within(1e-9));
    }
  }

  @Test
  void insulationAloneClosesTheOutside() {
    Assembly ceiling = framed(FramedPart.CEILING_OR_ROOF, 5.5, List.of(), 0, 0, 5, DRYWALL);
    assertThat(ceiling.paths().get(0).layers())
        .extracting(Layer::name)
        .containsExactly("unbroken insulation", "air space", "drywall");
  }

  @Test
  void thickBattsStandAboveTheJoistsOfAnOpenCeiling() {
    Assembly ceiling = framed(FramedPart.CEILING_OR_ROOF, 5.5, List.of(), 30, 0, 0, DRYWALL);
    double drywall = 0.0127 / 0.16;
    assertThat(ceiling.paths().get(0).resistance()).isCloseTo(30 * R + drywall, within(1e-9));
    double above = 30 * R * (1 - 5.5 / 9.5);
    assertThat(ceiling.paths().get(1).resistance())
        .isCloseTo(above + 5.5 * 1.25 * R + drywall, within(1e-9));
    Assembly roof = framed(FramedPart.CEILING_OR_ROOF, 5.5, PLYWOOD, 30, 0, 0, DRYWALL);
    assertThat(roof.paths().get(0).resistance()).isLessThan(25 * R);
  }

  @Test
  void aThinFillDoesNotCoverTheJoists() {
    Assembly ceiling = framed(FramedPart.CEILING_OR_ROOF, 5.5, List.of(), 13, 0, 0, DRYWALL);
    assertThat(ceiling.paths().get(1).layers()).hasSize(2);
  }

  @Test
  void aHeaderHoldsThreeAndAHalfInchesOfWood() {
    Path header = framed(FramedPart.WALL, 5.5, PLYWOOD, 19, 0, 0, DRYWALL).paths().get(2);
    assertThat(header.layers().get(1).resistance() / R).isCloseTo(4.375, within(1e-9));
  }

  @Test
  void refusesFramingWithNothingOnEitherSide() {
    assertThatThrownBy(() -> wall(List.of(), 13, 0, List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least one side");
    assertThatThrownBy(() -> wall(PLYWOOD, -1, 0, DRYWALL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("takes 0.0 to 20.0");
    assertThatThrownBy(() -> Framing.framingFraction(FramedPart.WALL, 0.0381, 0.05))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void steelStudsRunStraightBetweenPrintedBatts() {
    assertThat(SteelStuds.effectiveCavityResistance(12 * R, 16 * INCH) / R)
        .isCloseTo(5.75, within(1e-9));
    assertThat(SteelStuds.effectiveCavityResistance(13 * R, 20 * INCH) / R)
        .isCloseTo(6.6, within(1e-9));
    assertThatThrownBy(() -> SteelStuds.effectiveCavityResistance(25 * R, 16 * INCH))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Assembly wall(List<Layer> outside, double batt, double gaps, List<Layer> inside) {
    return framed(FramedPart.WALL, 3.5, outside, batt, gaps, 0, inside);
  }

  private static Assembly framed(
      FramedPart part,
      double depth,
      List<Layer> outside,
      double batt,
      double gaps,
      double continuous,
      List<Layer> inside) {
    return Framing.framed(
        part, 1.5 * INCH, depth * INCH, 16 * INCH, outside, batt * R, gaps, continuous * R, inside);
  }
}
