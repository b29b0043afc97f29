package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Grades of tightness against the handbook's table in inches. */
class TightnessPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/tightness.csv", useHeadersInDisplayName = true)
  void agreesWithTheTable(String id, Tightness grade, double in2PerFt2, double tolerance) {
    double cm2PerM2 = in2PerFt2 / 144 * 1e4;
    assertThat(grade.unitLeakageArea())
        .as("%s %s", id, grade)
        .isCloseTo(cm2PerM2, withinPercentage(100 * tolerance));
  }
}
