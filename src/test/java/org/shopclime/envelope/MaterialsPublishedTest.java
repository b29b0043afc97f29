package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The table of materials against printed resistances. */
class MaterialsPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/materials.csv", useHeadersInDisplayName = true)
  void resistance(
      String id, String material, double thickness, double resistance, double tolerance) {
    Layer layer = Materials.find(material).orElseThrow().layer(thickness * InchPound.INCH);
    assertThat(layer.resistance() / InchPound.R)
        .as("%s, %s, materials.csv", id, material)
        .isCloseTo(resistance, within(tolerance));
  }
}
