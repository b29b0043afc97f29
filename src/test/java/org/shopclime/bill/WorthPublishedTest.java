package org.shopclime.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Present worth of yearly amounts. */
class WorthPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/bill/present-worth.csv", useHeadersInDisplayName = true)
  void factors(
      String id, double discount, double rise, int years, double factor, double tolerance) {
    assertThat(new Outlook(years, rise, discount).worthOfAll(1))
        .as(id)
        .isCloseTo(factor, offset(tolerance));
  }
}
