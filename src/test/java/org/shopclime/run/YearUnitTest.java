package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ShopYear;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;

/** A unit in one step of a year, in the example's shop on a damp day of 33 °C. */
class YearUnitTest {

  private static final int HOUR = 4000;

  private static final ShopYear YEAR =
      ShopYear.of(
          MadeYears.plants(
              MadeShops.example("insulated-foam-door", MadeShops.MOBILE),
              RoomCooling.UNIT,
              RoomHeating.NONE,
              "always"),
          MadeYears.constant(33, 24));

  /** Too small a unit gives all it has in the mean air of the step, which is what it sees. */
  @Test
  void aSmallUnitSeesTheAirItLeaves() {
    YearParts parts = YearParts.of(YEAR, Optional.of(MadeShops.window(800)), HOUR, 33);
    assertThat(parts.look(HOUR, true)).isTrue();
    assertThat(parts.unit().isAsked()).isTrue();
    parts.unit().settle(parts.plants());
    assertThat(-parts.plants().plant(0)).isBetween(400.0, 900.0);
    assertThat(parts.unit().coil()).isPositive();
    Moisture.Step kept = parts.unit().lookAtWater();
    Moisture.Step anew = parts.water().look(0, parts.unit().coil());
    assertThat(kept).isEqualTo(anew);
    assertThat(parts.unit().isStill(parts.plants().plant(0))).isTrue();
  }

  /** One that holds the room runs a part of the step and is told so. */
  @Test
  void aUnitThatHoldsRunsAPartOfTheStep() {
    double wished = YEAR.plants().cooledTo(0);
    YearParts parts = YearParts.of(YEAR, Optional.of(MadeShops.window(3000)), HOUR, wished);
    assertThat(parts.look(HOUR, true)).isTrue();
    assertThat(parts.plants().unitHolds()).isTrue();
    parts.unit().settle(parts.plants());
    parts.march().go(parts.drivers());
    double humidity = parts.unit().lookAtWater().mean();
    parts.unit().made(humidity);
    YearResult result = new YearResult(YEAR);
    parts.unit().tell(result, HOUR, 1);
    double power = result.at(YearResult.Figure.POWER, 0, HOUR);
    double full = parts.unit().most(wished);
    double part = -parts.plants().made(0) / full;
    assertThat(part).isBetween(0.05, 0.9);
    // 3,000 W at 3.2 W/W draw 940 W, for that part; starts cost up to a third of it.
    assertThat(power).isBetween(0.9 * part * 940, 1.4 * part * 940);
  }

  /** A cooler with wet pads blows until the room is at its set point, or all the step. */
  @Test
  void aCoolerBlowsAsLongAsItTakes() {
    Cooling cooler = Cooling.evaporative(0, 0.5, 70, 0.8);
    YearParts parts = YearParts.of(YEAR, Optional.of(cooler), HOUR, 34);
    assertThat(parts.look(HOUR, true)).isTrue();
    assertThat(parts.unit().blows()).isTrue();
    assertThat(parts.unit().isBlowing()).isTrue();
    parts.unit().settle(parts.plants());
    parts.march().go(parts.drivers());
    parts.unit().made(parts.unit().lookAtWater().mean());
    DayLedger ledger = new DayLedger(YEAR.rooms());
    parts.unit().audit(ledger, 300);
    assertThat(ledger.removed).isCloseTo(300 * parts.unit().blownHeat(), within(1e-6));
    assertThat(ledger.waterCoil).isNegative();
  }

  /** Released it is asked nothing and takes nothing. */
  @Test
  void releasedItTakesNothing() {
    YearParts parts = YearParts.of(YEAR, Optional.of(MadeShops.window(800)), HOUR, 33);
    parts.look(HOUR, true);
    parts.unit().release();
    assertThat(parts.unit().isAsked()).isFalse();
    assertThat(parts.unit().coil()).isZero();
  }
}
