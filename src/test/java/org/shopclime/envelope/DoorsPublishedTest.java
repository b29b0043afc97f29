package org.shopclime.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Doors against codes and handbook. */
class DoorsPublishedTest {

  private static final double OUT = 0.17 * InchPound.R;
  private static final double IN = 0.68 * InchPound.R;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/doors.csv", useHeadersInDisplayName = true)
  void bareDoors(String id, String leaf, double uFactor, double tolerance) {
    assertThat(DoorLeaves.door(leaf, List.of(), 1).uFactor(OUT, IN) * InchPound.R)
        .as("%s, %s, doors.csv", id, leaf)
        .isCloseTo(uFactor, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/envelope/boarded-door.csv", useHeadersInDisplayName = true)
  void boardedDoor(String id, String leaf, double foam, double uFactor, double tolerance) {
    List<Layer> boards =
        foam == 0
            ? List.of()
            : List.of(Materials.find("XPS foam").orElseThrow().layer(foam * InchPound.INCH));
    assertThat(DoorLeaves.door(leaf, boards, 1).uFactor(OUT, IN) * InchPound.R)
        .as("%s, boarded-door.csv", id)
        .isCloseTo(uFactor, within(tolerance));
  }
}
