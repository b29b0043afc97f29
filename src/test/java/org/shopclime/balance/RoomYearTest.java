package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.balance.TestShops.WISHED;

import java.time.DayOfWeek;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Season;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/** A room's gains and plant hours on each kind of day of the year. */
class RoomYearTest {

  private static final int MONDAY = 0;
  private static final int SATURDAY = 5;
  private static final int SUNDAY = 6;
  private static final int SUMMER = 7;

  private static RoomYear room(Clock clock, Room room) {
    Shop shop =
        TestShops.shop(room).withWork(TestShops.work("Mon-Fri 8:00-12:00, 13:00-17:30", clock));
    return new RoomYear(
        shop,
        SkeletonMaker.of(shop, Season.COOLING),
        0,
        new YearWeek(shop.work(), DayOfWeek.MONDAY));
  }

  private static Room bare(String when) {
    Room room =
        TestShops.box("Box", RoomUse.COOLED, TestShops.concrete(), TestShops.concrete())
            .withGains(
                List.of(
                    TestShops.gain("Stove", 1000, 0.3, 0, when),
                    TestShops.gain("Kettle", 200, 0, 500, "Sat 10:00-10:15")));
    return DrawnShop.with(
        room, "cooledWhen", TestShops.when("work"), "heatedWhen", TestShops.when("Sun 6:00-6:40"));
  }

  @Test
  void gainsAreSharedByTheirRadiantPartAndOnByTheirHours() {
    RoomYear year = room(Clock.STANDARD, bare("Mon 9:00-10:30 50 %"));
    assertThat(year.convective(MONDAY, 9)).isCloseTo(0.5 * 700, within(1e-9));
    assertThat(year.radiant(MONDAY, 9)).isCloseTo(0.5 * 300, within(1e-9));
    assertThat(year.convective(MONDAY, 10)).isCloseTo(0.25 * 700, within(1e-9));
    assertThat(year.convective(MONDAY, 8)).isZero();
    assertThat(year.convective(MONDAY, 11)).isZero();
    assertThat(year.convective(SUNDAY, 9)).isZero();
    assertThat(year.convective(SATURDAY, 10)).isCloseTo(200 / 4.0, within(1e-9));
    assertThat(year.radiant(SATURDAY, 10)).isZero();
  }

  /** Water by its heat of evaporation, about 2.45 MJ/kg at room temperature (steam tables). */
  @Test
  void waterIsGivenOffByItsLatentHeat() {
    RoomYear year = room(Clock.STANDARD, bare("never"));
    assertThat(year.moisture(SATURDAY, 10)).isCloseTo(500 / 4.0 / 2.45e6, within(2e-6));
    assertThat(year.moisture(SATURDAY, 10)).isPositive();
    assertThat(year.moisture(MONDAY, 10)).isZero();
  }

  /** Work has its break; what cools for work has none. Half an hour counts as on, less does not. */
  @Test
  void plantsRunThroughBreaks() {
    RoomYear year = room(Clock.STANDARD, bare("never"));
    assertThat(year.working(MONDAY, 8)).isEqualTo(1);
    assertThat(year.working(MONDAY, 12)).isZero();
    assertThat(year.working(MONDAY, 17)).isCloseTo(0.5, within(1e-12));
    assertThat(year.working(SATURDAY, 9)).isZero();
    assertThat(year.coolingOn(MONDAY, 7)).isFalse();
    assertThat(year.coolingOn(MONDAY, 8)).isTrue();
    assertThat(year.coolingOn(MONDAY, 12)).isTrue();
    assertThat(year.coolingOn(MONDAY, 17)).isTrue();
    assertThat(year.coolingOn(MONDAY, 18)).isFalse();
    assertThat(year.coolingOn(SATURDAY, 9)).isFalse();
    assertThat(year.heatingOn(SUNDAY, 6)).isTrue();
    assertThat(year.heatingOn(SUNDAY, 7)).isFalse();
    assertThat(year.heatingOn(MONDAY, 8)).isFalse();
  }

  /** With the clock ahead all comes an hour sooner by standard time; without, it does not. */
  @Test
  void theClockOfSummerBringsAllForward() {
    RoomYear ahead = room(Clock.DAYLIGHT, bare("Mon 9:00-10:00"));
    assertThat(ahead.convective(MONDAY, 9)).isCloseTo(700, within(1e-9));
    assertThat(ahead.convective(MONDAY + SUMMER, 9)).isZero();
    assertThat(ahead.convective(MONDAY + SUMMER, 8)).isCloseTo(700, within(1e-9));
    assertThat(ahead.working(MONDAY + SUMMER, 7)).isEqualTo(1);
    assertThat(ahead.coolingOn(MONDAY + SUMMER, 7)).isTrue();
    RoomYear standard = room(Clock.STANDARD, bare("Mon 9:00-10:00"));
    assertThat(standard.convective(MONDAY + SUMMER, 9)).isCloseTo(700, within(1e-9));
  }

  /** Gains of another room are none of this one's. */
  @Test
  void onlyItsOwnGainsCount() {
    Room loud = bare("always");
    Room still =
        TestShops.room(
            "Still",
            RoomUse.COOLED,
            10,
            2,
            WISHED,
            TestShops.wall("Still wall", 0, 3, 2, TestShops.concrete()));
    Shop shop = TestShops.shop(loud, still);
    YearWeek week = new YearWeek(shop.work(), DayOfWeek.MONDAY);
    RoomYear quiet = new RoomYear(shop, SkeletonMaker.of(shop, Season.COOLING), 1, week);
    assertThat(quiet.convective(MONDAY, 9)).isZero();
    assertThat(quiet.radiant(MONDAY, 9)).isZero();
    assertThat(quiet.moisture(SATURDAY, 10)).isZero();
    assertThat(quiet.working(MONDAY, 9)).isEqualTo(1);
  }
}
