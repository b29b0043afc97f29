package org.shopclime.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The sizes of units against NIST SP 811. */
class UnitsPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/quantity/units.csv", useHeadersInDisplayName = true)
  void agreesWithNist(String id, Kind kind, String text, double si, double tolerance) {
    assertThat(Quantities.read(kind, text)).as(id).isInstanceOf(Reading.Good.class);
    assertThat(((Reading.Good) Quantities.read(kind, text)).si())
        .as("%s, units.csv", id)
        .isCloseTo(si, offset(tolerance * Math.abs(si)));
  }

  /** NIST SP 811, appendix B.8 (from memory), seven figures. */
  @Test
  void functionsAgreeWithNist() {
    assertThat(Units.wattsFromBtuh(12000)).isCloseTo(3516.853, offset(5e-4));
    assertThat(Units.JOULES_PER_BTU).isCloseTo(1055.056, offset(5e-4));
    assertThat(Units.WATTS_PER_HORSEPOWER).isCloseTo(745.6999, offset(5e-5));
    assertThat(Units.PASCALS_PER_PSI).isCloseTo(6894.757, offset(5e-4));
    assertThat(Units.CUBIC_METRES_PER_GALLON).isCloseTo(3.785412e-3, offset(5e-10));
    assertThat(Units.SI_PER_IP_U_FACTOR).isCloseTo(5.678263, offset(5e-7));
    assertThat(Units.rValueSi(1)).isCloseTo(0.1761102, offset(5e-8));
    assertThat(Units.SI_PER_IP_CONDUCTIVITY).isCloseTo(0.1442279, offset(5e-8));
    assertThat(Units.CUBIC_METRES_PER_SECOND_PER_CFM).isCloseTo(4.719474e-4, offset(5e-11));
    assertThat(Units.JOULES_PER_KWH).isEqualTo(3.6e6);
    assertThat(Units.eer(1)).isCloseTo(3.412142, offset(5e-7));
    assertThat(Units.fahrenheit(100)).isCloseTo(212, offset(1e-12));
    assertThat(Units.celsius(-40)).isCloseTo(-40, offset(1e-12));
    assertThat(Units.fahrenheitDifference(5)).isCloseTo(9, offset(1e-12));
    assertThat(Units.grainsPerPound(0.01)).isCloseTo(70, offset(1e-12));
  }
}
