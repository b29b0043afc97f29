package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Doors and flues under suction against published limits. */
class SuctionPublishedTest {

  private static final double INCH_OF_WATER = 249.089; // Pa, NIST SP 811
  private static final double POUND_FORCE = 4.448222; // N, NIST SP 811
  private static final double INCH = 0.0254;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/door-force.csv", useHeadersInDisplayName = true)
  void doorForce(
      String id, double closerLbf, double widthIn, double inchesOfWater, double tolerance) {
    double newtons =
        DoorForce.at(
            inchesOfWater * INCH_OF_WATER,
            widthIn * INCH,
            84 * INCH,
            3 * INCH,
            closerLbf * POUND_FORCE);
    assertThat(newtons / POUND_FORCE).as(id).isCloseTo(30, within(tolerance));
    assertThat(DoorForce.LIMIT / POUND_FORCE).isCloseTo(30, within(1e-4));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/flue-limits.csv", useHeadersInDisplayName = true)
  void flueLimit(String id, Flue flue, double pascals) {
    assertThat(flue.limit()).as(id).isEqualTo(pascals);
    assertThat(flue.isEndangeredBy(pascals + 0.01)).as(id).isTrue();
    assertThat(flue.isEndangeredBy(pascals)).as(id).isFalse();
  }
}
