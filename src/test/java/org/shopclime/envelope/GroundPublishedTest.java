package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Slabs against ISO 13370 tables and ASHRAE 90.1. */
class GroundPublishedTest {

  private static final double FOOT = 12 * InchPound.INCH;

  /** W/(m·K) in a BTU/(h·ft·°F), ASHRAE Handbook - Fundamentals, units chapter: 1.7307. */
  private static final double PER_FOOT = 1.730735;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/slab-iso.csv", useHeadersInDisplayName = true)
  void slab(
      String id, double perimeterOverArea, double insulation, double uFactor, double tolerance) {
    double found =
        Ground.slabUFactor(
            100, 100 * perimeterOverArea, 0.3, 1.5, insulation, EdgeInsulation.none());
    assertThat(found).as("%s, slab-iso.csv", id).isCloseTo(uFactor, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/slab-edge.csv", useHeadersInDisplayName = true)
  void edge(
      String id,
      EdgeInsulation.Placement placement,
      double reach,
      double resistance,
      double fFactor,
      double tolerance) {
    EdgeInsulation edge = new EdgeInsulation(placement, resistance * InchPound.R, reach * FOOT);
    assertThat(FFactor.of(edge) / PER_FOOT)
        .as("%s, slab-edge.csv", id)
        .isCloseTo(fFactor, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/slab-full.csv", useHeadersInDisplayName = true)
  void fullyInsulated(String id, double underSlab, double fFactor, double tolerance) {
    assertThat(FFactor.fullyInsulated(underSlab * InchPound.R) / PER_FOOT)
        .as("%s, slab-full.csv", id)
        .isCloseTo(fFactor, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/slab-loss.csv", useHeadersInDisplayName = true)
  void loss(String id, double perimeter, double difference, double loss, double tolerance) {
    double watts =
        FFactor.loss(FFactor.of(EdgeInsulation.none()), perimeter * FOOT, difference / 1.8);
    assertThat(watts * 3.412142).as("%s, slab-loss.csv", id).isCloseTo(loss, within(tolerance));
  }
}
