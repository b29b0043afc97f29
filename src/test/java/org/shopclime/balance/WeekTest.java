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
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Gain;
import org.shopclime.shop.OvenBatches;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;

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

  /**
   * An oven kept hot for 6 h on Tuesday gives the heat of its shell, 6.8 m² / 1.4 m²·K/W · 178 K =
   * 0.86 kW, and of 22.7 kg of steel each hour, 480 J/(kg·K) · 178 K · 22.7 kg / h = 0.54 kW: 8
   * kWh, more than 4 kWh of Thursday. One batch in that time is in for an hour or so: under 3 kWh.
   */
  @Test
  void ovenIsRankedByItsBatches() {
    Gain.Oven oven =
        new Gain.Oven(
            "Oven", 1, 1, 1.2, Span.known(1.4), 204, 6000, 22.7, 0, when("Tue 9:00-15:00"));
    Gain.Oven batch =
        oven.withBatches(
            Optional.of(new OvenBatches(Optional.empty(), 22.7, 0.003, 1200, 60, 0, 1)));
    Gain lathe = gain("Lathe", 1000, 0.3, 0, "Thu 8:00-12:00");
    assertThat(week("Mon-Fri 8:00-17:00", oven, lathe).busiestDay()).isEqualTo(DayOfWeek.TUESDAY);
    assertThat(week("Mon-Fri 8:00-17:00", batch, lathe).busiestDay()).isEqualTo(DayOfWeek.THURSDAY);
    assertThat(week("Mon-Fri 8:00-17:00", batch).busiestDay()).isEqualTo(DayOfWeek.TUESDAY);
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
