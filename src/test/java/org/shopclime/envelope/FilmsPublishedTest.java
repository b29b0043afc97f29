package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Films and air spaces against the handbook and ISO 6946. */
class FilmsPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/inside-films.csv", useHeadersInDisplayName = true)
  void inside(String id, HeatFlow flow, double resistance, double tolerance) {
    assertThat(Films.interiorResistance(flow) / InchPound.R)
        .as("%s, inside-films.csv", id)
        .isCloseTo(resistance, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/envelope/outside-films.csv",
      useHeadersInDisplayName = true)
  void outside(String id, Season season, double resistance, double tolerance) {
    assertThat(Films.exteriorResistance(season) / InchPound.R)
        .as("%s, outside-films.csv", id)
        .isCloseTo(resistance, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/iso-films.csv", useHeadersInDisplayName = true)
  void iso(String id, String where, double resistance) {
    double found =
        where.equals("OUTSIDE")
            ? Films.isoExteriorResistance()
            : Films.isoInteriorResistance(HeatFlow.valueOf(where));
    assertThat(found).as("%s, iso-films.csv", id).isEqualTo(resistance);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/air-spaces.csv", useHeadersInDisplayName = true)
  void airSpaces(String id, HeatFlow flow, double thickness, double resistance, double tolerance) {
    assertThat(AirSpace.resistance(thickness / 1000, flow, 0.9, 0.9))
        .as("%s, air-spaces.csv", id)
        .isCloseTo(resistance, within(tolerance));
  }
}
