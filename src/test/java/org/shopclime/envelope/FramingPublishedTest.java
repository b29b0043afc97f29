package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Framed walls and ceilings against the tables of ASHRAE 90.1 and worked examples. */
class FramingPublishedTest {

  private static final double R = InchPound.R;
  private static final double INCH = InchPound.INCH;
  private static final double OUT = 0.17 * R;
  private static final double IN = 0.68 * R;
  private static final Layer STUCCO = Layer.massless("stucco", 0.08 * R);
  private static final Layer GYPSUM = Layer.massless("gypsum", 0.56 * R);

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/wood-walls.csv", useHeadersInDisplayName = true)
  void woodWalls(
      String id, double depth, double batt, double continuous, double uFactor, double tolerance) {
    Assembly wall =
        Framing.framed(
            FramedPart.WALL,
            1.5 * INCH,
            depth * INCH,
            16 * INCH,
            List.of(STUCCO, GYPSUM),
            batt * R,
            0,
            continuous * R,
            List.of(GYPSUM));
    assertThat(wall.uFactor(OUT, IN) * R)
        .as("%s, wood-walls.csv", id)
        .isCloseTo(uFactor, within(tolerance));
  }

  /** The taper at the eaves, half of the insulation over 5 % of the area, is added here. */
  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/attics.csv", useHeadersInDisplayName = true)
  void attics(String id, double insulation, double uFactor, double tolerance) {
    double attic = 0.46 * R;
    double up = 0.61 * R;
    Assembly ceiling =
        Framing.framed(
            FramedPart.CEILING_OR_ROOF,
            1.5 * INCH,
            3.5 * INCH,
            16 * INCH,
            List.of(),
            insulation * R,
            0,
            0,
            List.of(GYPSUM));
    double full = 1 / ((0.46 + 0.56 + 0.61 + insulation) * R);
    double half = 1 / ((0.46 + 0.56 + 0.61 + insulation / 2) * R);
    assertThat((ceiling.uFactor(attic, up) + 0.05 * (half - full)) * R)
        .as("%s, attics.csv", id)
        .isCloseTo(uFactor, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/roof-deck.csv", useHeadersInDisplayName = true)
  void roofDeck(String id, double insulation, double uFactor, double tolerance) {
    Assembly roof =
        Assembly.of(
            List.of(
                Layer.massless("insulation", insulation * R),
                Materials.find("sheet steel").orElseThrow().usualLayer()));
    assertThat(roof.uFactor(OUT, Films.interiorResistance(HeatFlow.UP)) * R)
        .as("%s, roof-deck.csv", id)
        .isCloseTo(uFactor, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/steel-walls.csv", useHeadersInDisplayName = true)
  void steelWalls(String id, double batt, double uFactor, double tolerance) {
    double effective = SteelStuds.effectiveCavityResistance(batt * R, 16 * INCH);
    Assembly wall =
        Assembly.of(List.of(STUCCO, GYPSUM, Layer.massless("studs", effective), GYPSUM));
    assertThat(wall.uFactor(OUT, IN) * R)
        .as("%s, steel-walls.csv", id)
        .isCloseTo(uFactor, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/envelope/framed-wall-methods.csv",
      useHeadersInDisplayName = true)
  void methods(String id, String figure, double value, double tolerance) {
    double found = id.equals("C-27") ? timberFrame(figure) : woodFrame(figure);
    assertThat(found)
        .as("%s, %s, framed-wall-methods.csv", id, figure)
        .isCloseTo(value, within(tolerance));
  }

  private static double woodFrame(String figure) {
    Assembly wall =
        new Assembly(List.of(new Path(0.8, woodFramePath(11)), new Path(0.2, woodFramePath(4.38))));
    return switch (figure) {
      case "parallel U" -> wall.uFactor(OUT, IN) * R;
      case "cavity path R" -> wall.paths().get(0).resistance() / R + 0.85;
      case "stud path R" -> wall.paths().get(1).resistance() / R + 0.85;
      case "planes R" -> IsothermalPlanes.resistance(wall, OUT, IN) / R;
      case "planes U" -> R / IsothermalPlanes.resistance(wall, OUT, IN);
      default -> throw new IllegalArgumentException(figure);
    };
  }

  private static List<Layer> woodFramePath(double between) {
    return List.of(
        Layer.massless("siding", 0.81 * R),
        Layer.massless("sheathing", 1.32 * R),
        Layer.massless("batt or stud", between * R),
        Layer.massless("gypsum", 0.45 * R));
  }

  private static double timberFrame(String figure) {
    Assembly wall =
        new Assembly(
            List.of(
                new Path(0.905, timberFramePath(3.333)), new Path(0.095, timberFramePath(1.077))));
    double outside = Films.isoExteriorResistance();
    double inside = Films.isoInteriorResistance(HeatFlow.HORIZONTAL);
    double films = outside + inside;
    return switch (figure) {
      case "insulation path" -> wall.paths().get(0).resistance() + films;
      case "timber path" -> wall.paths().get(1).resistance() + films;
      case "upper" -> 1 / wall.uFactor(outside, inside);
      case "lower" -> IsothermalPlanes.resistance(wall, outside, inside);
      case "total" -> IsothermalPlanes.combinedResistance(wall, outside, inside);
      case "U" -> 1 / IsothermalPlanes.combinedResistance(wall, outside, inside);
      default -> throw new IllegalArgumentException(figure);
    };
  }

  private static List<Layer> timberFramePath(double between) {
    return List.of(
        Layer.massless("brick", 0.132),
        Layer.massless("cavity", 0.09),
        Layer.massless("plywood", 0.146),
        Layer.massless("mineral wool or timber", between),
        Layer.massless("plasterboard", 0.100));
  }
}
