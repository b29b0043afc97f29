package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.gain;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.when;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/** The working day and the day of rest that stand for a week. */
class WeekTest {

  private static final LocalDate DATE = LocalDate.of(2021, 7, 21);

  private static Week week(String hours, Gain... gains) {
    Room room =
        box("Shop", RoomUse.COOLED, insulation(10), insulation(10)).withGains(List.of(gains));
    Shop shop = TestShops.shop(room).withWork(TestShops.work(hours, Clock.STANDARD));
    return new Week(shop, DATE);
  }

  /** 2 kW for 3 h on Thursday beat 1 kW for 5 h on Tuesday. */
  @Test
  void busiestDayGivesOffMostHeat() {
    Week week =
        week(
            "Mon-Fri 8:00-17:00",
            gain("Oven", 2000, 0.3, 0, "Thu 8:00-11:00"),
            gain("Lathe", 1000, 0.3, 0, "Tue 8:00-13:00"),
            gain("Sunday fire", 9000, 0.3, 0, "Sun 8:00-20:00"));
    assertThat(week.busiestDay()).isEqualTo(DayOfWeek.THURSDAY);
    assertThat(week.slots(when("Thu 8:00-11:00"), DayKind.WORKING).hours())
        .isCloseTo(3, within(1e-12));
    assertThat(week.slots(when("Tue 8:00-13:00"), DayKind.WORKING).hours()).isZero();
    assertThat(week.working().hours()).isCloseTo(9, within(1e-12));
  }

  @Test
  void firstOfEqualDays() {
    assertThat(week("Wed-Fri 8:00-17:00").busiestDay()).isEqualTo(DayOfWeek.WEDNESDAY);
    assertThat(week("never").busiestDay()).isEqualTo(DayOfWeek.MONDAY);
  }

  @Test
  void dayOfRestIsTheFirstFreeDay() {
    Week week = week("Mon-Fri 8:00-17:00");
    assertThat(week.slots(when("work"), DayKind.IDLE).hours()).isZero();
    assertThat(week.slots(when("always"), DayKind.IDLE).hours()).isCloseTo(24, within(1e-12));
    assertThat(week.slots(when("Sat 8:00-10:00"), DayKind.IDLE).hours())
        .isCloseTo(2, within(1e-12));
    assertThat(week.slots(when("Sun 8:00-10:00"), DayKind.IDLE).hours()).isZero();
    assertThat(week.slots(when("Mon-Fri 8:00-10:00"), DayKind.IDLE).hours()).isZero();
    assertThat(week.slots(when("daily 8:00-10:00"), DayKind.IDLE).hours())
        .isCloseTo(2, within(1e-12));
  }

  /** Where every day is worked, only what goes on around the clock goes on in the idle days. */
  @Test
  void sevenDayWeek() {
    Week week = week("daily 8:00-17:00");
    assertThat(week.slots(when("always"), DayKind.IDLE).hours()).isCloseTo(24, within(1e-12));
    assertThat(week.slots(when("daily 8:00-10:00"), DayKind.IDLE).hours()).isZero();
    assertThat(week.slots(when("work"), DayKind.IDLE).hours()).isZero();
    assertThat(week.slots(when("work"), DayKind.WORKING).hours()).isCloseTo(9, within(1e-12));
  }
}
