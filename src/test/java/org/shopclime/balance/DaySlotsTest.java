package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Work;

/** Schedules as they fall on the hours of a day by standard time. */
class DaySlotsTest {

  private static final LocalDate SUMMER = LocalDate.of(2021, 7, 21);
  private static final LocalDate WINTER = LocalDate.of(2021, 1, 21);
  private static final Work WORK =
      TestShops.work("Mon-Fri 8:00-12:00, 13:00-17:00", Clock.STANDARD);
  private static final Work SAVING =
      TestShops.work("Mon-Fri 8:00-12:00, 13:00-17:00", Clock.DAYLIGHT);

  private static DaySlots day(String text, Work work, DayOfWeek day, LocalDate date) {
    return DaySlots.of(TestShops.when(text), work, day, date);
  }

  private static double hour(DaySlots day, int hourEnding) {
    return day.mean((hourEnding - 1) * 12, 12);
  }

  @Test
  void workWithItsBreak() {
    DaySlots day = day("work", WORK, DayOfWeek.MONDAY, SUMMER);
    for (int hour = 1; hour <= 24; hour++) {
      boolean works = (hour > 8 && hour <= 12) || (hour > 13 && hour <= 17);
      assertThat(hour(day, hour)).as("hour ending %d", hour).isEqualTo(works ? 1 : 0);
    }
    assertThat(day.hours()).isCloseTo(8, within(1e-12));
    assertThat(day.firstActiveSlot()).isEqualTo(8 * 12);
    DaySlots whole = day.withoutBreaks();
    assertThat(whole.hours()).isCloseTo(9, within(1e-12));
    assertThat(hour(whole, 13)).isEqualTo(1);
    assertThat(hour(whole, 18)).isZero();
    assertThat(hour(whole, 8)).isZero();
  }

  /** At 9:00 on the summer clock it is 8:00 standard time; in winter clocks agree. */
  @Test
  void summerClockIsAnHourAhead() {
    DaySlots summer = day("work", SAVING, DayOfWeek.FRIDAY, SUMMER);
    assertThat(hour(summer, 8)).isEqualTo(1);
    assertThat(hour(summer, 17)).isZero();
    assertThat(hour(summer, 12)).isZero();
    DaySlots winter = day("work", SAVING, DayOfWeek.FRIDAY, WINTER);
    assertThat(hour(winter, 8)).isZero();
    assertThat(hour(winter, 17)).isEqualTo(1);
  }

  /** 15 U.S.C. 260a: 14 March to 7 November 2021; 10 March to 3 November 2024. */
  @ParameterizedTest
  @CsvSource({
    "2021-03-13, 0", "2021-03-14, 60", "2021-11-06, 60", "2021-11-07, 0",
    "2024-03-09, 0", "2024-03-10, 60", "2024-11-02, 60", "2024-11-03, 0"
  })
  void daylightSavingBeginsAndEnds(String date, int ahead) {
    assertThat(DaySlots.minutesAhead(Clock.DAYLIGHT, LocalDate.parse(date))).isEqualTo(ahead);
    assertThat(DaySlots.minutesAhead(Clock.STANDARD, LocalDate.parse(date))).isZero();
  }

  @Test
  void weekendIsFreeButAlwaysGoesOn() {
    assertThat(day("work", WORK, DayOfWeek.SUNDAY, SUMMER).hours()).isZero();
    assertThat(day("always", WORK, DayOfWeek.SUNDAY, SUMMER).hours()).isCloseTo(24, within(1e-12));
    assertThat(day("never", WORK, DayOfWeek.MONDAY, SUMMER).hours()).isZero();
    assertThat(day("Sat-Sun 10:00-11:00", WORK, DayOfWeek.SUNDAY, SUMMER).hours())
        .isCloseTo(1, within(1e-12));
  }

  /** 0:00 to 1:00 on the summer clock is 23:00 to 24:00 standard time; it stays in the day. */
  @Test
  void overMidnightStaysInTheDay() {
    DaySlots day = day("daily 0:00-1:30, 22:00-24:00", SAVING, DayOfWeek.MONDAY, SUMMER);
    assertThat(hour(day, 24)).isEqualTo(1);
    assertThat(hour(day, 1)).isEqualTo(0.5);
    assertThat(hour(day, 22)).isEqualTo(1);
    assertThat(day.hours()).isCloseTo(3.5, within(1e-12));
    assertThat(day.firstActiveSlot()).isEqualTo(21 * 12);
    assertThat(day.withoutBreaks().hours()).isCloseTo(3.5, within(1e-12));
  }

  @Test
  void partsOfASlotAndOfFullLoad() {
    DaySlots day = day("Mon 9:02-9:10 50 %", WORK, DayOfWeek.MONDAY, SUMMER);
    assertThat(day.at(9 * 12)).isCloseTo(0.5 * 3 / 5, within(1e-12));
    assertThat(day.at(9 * 12 + 1)).isCloseTo(0.5, within(1e-12));
    assertThat(day.at(9 * 12 + 2)).isZero();
    assertThat(day.mean(9 * 12, 2)).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void allDayAndNothing() {
    assertThat(DaySlots.constant(1).firstActiveSlot()).isZero();
    assertThat(DaySlots.constant(0).firstActiveSlot()).isEqualTo(-1);
    assertThat(DaySlots.constant(0).withoutBreaks().hours()).isZero();
    assertThat(DaySlots.constant(1).withoutBreaks().hours()).isCloseTo(24, within(1e-12));
  }

  /** A door open 8 minutes an hour stands open for one slot and three fifths of the next. */
  @Test
  void doorStandsOpenAtTheStartOfTheHour() {
    DaySlots open = DaySlots.opened(day("work", WORK, DayOfWeek.MONDAY, SUMMER), 480);
    assertThat(open.at(8 * 12)).isEqualTo(1);
    assertThat(open.at(8 * 12 + 1)).isCloseTo(0.6, within(1e-12));
    assertThat(open.at(8 * 12 + 2)).isZero();
    assertThat(open.at(12 * 12)).as("break").isZero();
    assertThat(hour(open, 9)).isCloseTo(8.0 / 60, within(1e-12));
    assertThat(open.hours()).isCloseTo(8 * 8.0 / 60, within(1e-12));
    DaySlots half = DaySlots.opened(day("daily 9:30-10:00", WORK, DayOfWeek.MONDAY, SUMMER), 3600);
    assertThat(half.at(9 * 12)).as("half of the hour counts half").isEqualTo(0.5);
  }
}
