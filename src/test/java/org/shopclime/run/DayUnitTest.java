package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ShopModel;

/** A unit in one step of a day, in a room at 35 °C. */
class DayUnitTest {

  private static final int NOON = 144;

  private final ShopModel model =
      MadeShops.model(MadeShops.example("insulated-foam-door", MadeShops.MOBILE));

  private DayParts look(Cooling unit) {
    DayParts parts = DayParts.of(model, Optional.of(unit));
    parts.march().start(35);
    parts.unit().startDay();
    parts.look(NOON);
    return parts;
  }

  private static double gain(DayParts parts) {
    return parts.days().drivers(org.shopclime.balance.DayKind.WORKING).airGain(0, NOON);
  }

  /** One that is too small gives all it has; what comes out of the books is its heat. */
  @Test
  void aSmallUnitGivesAllItHas() {
    DayParts parts = look(MadeShops.window(1000));
    parts.unit().find(true, gain(parts));
    assertThat(parts.unit().fraction()).isEqualTo(1);
    assertThat(parts.march().ahead(0)).isGreaterThan(model.setPoint(0));
    assertThat(parts.unit().coil()).isPositive();
    parts.march().go(parts.drivers());
    DayLedger ledger = new DayLedger(model.rooms());
    parts.unit().audit(ledger, 300);
    assertThat(ledger.removed)
        .isCloseTo(300 * parts.unit().able().sensible(), within(1e-9 * ledger.removed));
    assertThat(parts.unit().given().running()).isCloseTo(1, within(1e-9));
  }

  /** One that can brings the room to its set point by the end of the step, and no further. */
  @Test
  void aLargeUnitBringsTheRoomToItsSetPoint() {
    DayParts parts = look(MadeShops.window(200_000));
    parts.unit().find(true, gain(parts));
    assertThat(parts.unit().fraction()).isBetween(0.01, 0.99);
    assertThat(parts.march().ahead(0)).isCloseTo(model.setPoint(0), within(0.02));
  }

  /** A cooler with wet pads blows as long as that takes, or all the time. */
  @Test
  void aCoolerBlowsAsLongAsItTakes() {
    DayParts parts = look(Cooling.evaporative(0, 0.05, 10, 0.8));
    parts.unit().find(true, gain(parts));
    parts.unit().leaves(0.015);
    assertThat(parts.unit().fraction()).isEqualTo(1);
    assertThat(parts.outdoors().blowing()).isEqualTo(1);
    assertThat(parts.unit().able().sensible()).isPositive();
  }

  /** Switched off it is asked nothing and does nothing. */
  @Test
  void switchedOffItDoesNothing() {
    DayParts parts = look(MadeShops.window(3500));
    parts.unit().find(false, gain(parts));
    assertThat(parts.unit().able()).isNull();
    assertThat(parts.unit().fraction() + parts.unit().coil()).isZero();
  }
}
