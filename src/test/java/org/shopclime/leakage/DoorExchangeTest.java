package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shopclime.leakage.DoorExchange.Protection;

class DoorExchangeTest {

  @Test
  void equalAirStaysWhereItIs() {
    assertThat(DoorExchange.flow(3, 2.4, 1.15, 1.15)).isZero();
    assertThat(DoorExchange.kielWilson(3, 2.4, 25, 25)).isZero();
  }

  @Test
  void kielWilsonDoesNotCareWhichSideIsWarm() {
    assertThat(DoorExchange.kielWilson(3, 2.4, 35, 22))
        .isCloseTo(DoorExchange.kielWilson(3, 2.4, 22, 35), within(1e-12));
  }

  /** BS 5925: 0.025 A U, by hand 0.025 · 7.2 m² · 4 m/s. */
  @Test
  void windThroughOneDoor() {
    assertThat(DoorExchange.windFlow(3, 2.4, 4)).isCloseTo(0.72, within(1e-12));
  }

  @Test
  void openFraction() {
    assertThat(DoorExchange.openFraction(360)).isCloseTo(0.1, within(1e-12));
    assertThat(DoorExchange.openFraction(3600)).isEqualTo(1);
  }

  @Test
  void nothingHungStopsNothing() {
    assertThat(Protection.NONE.stopped()).isZero();
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DoorExchange.openFraction(3601))
        .withMessage("seconds open in an hour 3601.0 is not in 0.0 to 3600.0");
    assertThatIllegalArgumentException().isThrownBy(() -> DoorExchange.flow(0, 2, 1.1, 1.2));
    assertThatIllegalArgumentException().isThrownBy(() -> DoorExchange.flow(2, 31, 1.1, 1.2));
    assertThatIllegalArgumentException().isThrownBy(() -> DoorExchange.flow(2, 2, 11, 1.2));
    assertThatIllegalArgumentException().isThrownBy(() -> DoorExchange.flow(2, 2, 1.1, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> DoorExchange.kielWilson(2, 2, 61, 20));
    assertThatIllegalArgumentException().isThrownBy(() -> DoorExchange.kielWilson(2, 2, 20, -61));
    assertThatIllegalArgumentException().isThrownBy(() -> DoorExchange.windFlow(2, 2, -1));
  }
}
