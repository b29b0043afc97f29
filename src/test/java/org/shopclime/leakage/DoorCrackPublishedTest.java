package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.leakage.DoorCrack.Seal;

/** Closed doors against the handbook's leakage areas and slots. */
class DoorCrackPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/leakage/door-crack.csv", useHeadersInDisplayName = true)
  void agreesWithTheHandbook(String id, Seal seal, double low, double high) {
    double perimeter = 2 * (3 + 6.0 + 2.0 / 3) * 0.3048;
    assertThat(DoorCrack.leakageArea(seal, perimeter) * 1e4).as(id).isBetween(low, high);
  }

  /** Sharp-edged slot, discharge coefficient 0.6, common practice: gaps of 1 mm and 3 mm. */
  @Test
  void openGapsAreSlots() {
    assertThat(DoorCrack.leakageArea(Seal.WORN, 11))
        .isCloseTo(DoorCrack.leakageAreaOfGap(11, 0.001), within(1e-12));
    assertThat(DoorCrack.leakageArea(Seal.DAYLIGHT, 11))
        .isCloseTo(DoorCrack.leakageAreaOfGap(11, 0.003), within(1e-12));
    assertThat(DoorCrack.leakageAreaOfGap(2, 0.01)).isCloseTo(0.012, within(1e-12));
    assertThat(Seal.TIGHT.areaPerMetre()).isEqualTo(2);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> DoorCrack.leakageArea(Seal.WORN, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> DoorCrack.leakageAreaOfGap(1, 0.4));
    assertThatIllegalArgumentException().isThrownBy(() -> DoorCrack.leakageAreaOfGap(-1, 0.1));
  }
}
