package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;

/** What plants do in a step of a year, in a light box. */
class YearPlantsTest {

  private static final int HOUR = 4000;

  private static ShopYear year(double outdoor, RoomCooling cooling, String when) {
    Shop box = MadeShops.box("100 m3", "1 /h", "");
    YearWeather weather = MadeYears.constant(outdoor, outdoor - 15);
    return ShopYear.of(MadeYears.plants(box, cooling, RoomHeating.IDEAL, when), weather);
  }

  /**
   * A room that would get too warm within a short step is brought to its set point by its end, and
   * held there in the next. By pencil: 33 W/K of leaks and 15 of walls bring 450 W at 9.9 K, which
   * warm 118 kJ/K of air by 1.1 K in five minutes, from 0.5 K below.
   */
  @Test
  void aRoomIsBroughtToItsSetPointAndThenHeld() {
    ShopYear year = year(35, RoomCooling.IDEAL, "always");
    double wished = year.plants().cooledTo(0);
    YearParts parts = YearParts.of(year, Optional.empty(), HOUR, wished - 0.5);
    assertThat(parts.look(HOUR, true)).isTrue();
    assertThat(parts.march().ahead(0)).isCloseTo(wished, within(1e-9));
    assertThat(parts.plants().constant(0)).isBetween(-450.0, -100.0);
    parts.march().go(parts.drivers());
    assertThat(parts.look(HOUR, true)).isTrue();
    assertThat(parts.plants().constant(0)).isZero();
    assertThat(parts.plants().plant(0)).isBetween(-600.0, -300.0);
    assertThat(parts.march().meanAir(0)).isCloseTo(wished, within(1e-9));
    parts.march().go(parts.drivers());
    assertThat(parts.plants().made(0)).isNegative();
  }

  /** One that is too warm already is held at it all through the step. */
  @Test
  void aWarmRoomIsHeldAtOnce() {
    ShopYear year = year(35, RoomCooling.IDEAL, "always");
    YearParts parts = YearParts.of(year, Optional.empty(), HOUR, year.plants().cooledTo(0) + 5);
    assertThat(parts.look(HOUR, true)).isTrue();
    assertThat(parts.march().meanAir(0)).isCloseTo(year.plants().cooledTo(0), within(1e-9));
    assertThat(parts.plants().constant(0)).isZero();
  }

  /** In a long step that would be too coarse; the step is refused. */
  @Test
  void nothingStartsWithinALongStep() {
    ShopYear year = year(35, RoomCooling.IDEAL, "always");
    YearParts parts = YearParts.of(year, Optional.empty(), HOUR, year.plants().cooledTo(0) + 5);
    assertThat(parts.look(HOUR, false)).isFalse();
  }

  /** A room below its set point is heated, one between both is left alone. */
  @Test
  void heatingWorksTheOtherWay() {
    ShopYear cold = year(-5, RoomCooling.NONE, "always");
    YearParts parts = YearParts.of(cold, Optional.empty(), HOUR, cold.plants().heatedTo(0) - 3);
    assertThat(parts.look(HOUR, true)).isTrue();
    assertThat(parts.plants().plant(0)).isPositive();
    assertThat(parts.march().ahead(0)).isCloseTo(cold.plants().heatedTo(0), within(1e-9));
    assertThat(parts.plants().within(0, HOUR, -20)).isEqualTo(cold.plants().heatedTo(0));
    ShopYear mild = year(21, RoomCooling.NONE, "always");
    YearParts left = YearParts.of(mild, Optional.empty(), HOUR, 21);
    assertThat(left.look(HOUR, true)).isTrue();
    assertThat(left.plants().plant(0)).isZero();
    assertThat(left.plants().within(0, HOUR, 21)).isEqualTo(21);
  }

  /** Plants that are switched off do nothing. */
  @Test
  void switchedOffTheyDoNothing() {
    ShopYear year = year(35, RoomCooling.IDEAL, "never");
    YearParts parts = YearParts.of(year, Optional.empty(), HOUR, year.plants().cooledTo(0) + 5);
    assertThat(parts.look(HOUR, true)).isTrue();
    assertThat(parts.plants().plant(0)).isZero();
  }
}
