package org.shopclime.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Bills by pencil. */
class TariffTest {

  /** The year of the program: 1 January is a Wednesday. */
  static final YearClock CLOCK = new YearClock(DayOfWeek.WEDNESDAY, true);

  private static final YearClock STANDARD = new YearClock(DayOfWeek.WEDNESDAY, false);

  private static final Months SUMMER = new Months(Month.JUNE, Month.SEPTEMBER);
  private static final Months WINTER = new Months(Month.OCTOBER, Month.MAY);
  private static final Set<DayOfWeek> WEEKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

  /** 500 kWh at 10 c, the next 500 at 12 c, all above at 20 c. */
  private static final Tariff TIERS =
      new Tariff(
          new Rate.Tiered(
              List.of(
                  new Rate.Tier(500, 0.10, Months.ALL),
                  new Rate.Tier(1000, 0.12, Months.ALL),
                  new Rate.Tier(Double.POSITIVE_INFINITY, 0.20, Months.ALL))),
          14.5,
          0);

  @Test
  void oneMonthOfTiersByPencil() {
    // 500 x 0.10 + 500 x 0.12 + 250 x 0.20 + 14.50 = 50 + 60 + 50 + 14.50 = 174.50
    MonthlyCost bills = TIERS.cost(Use.monthly(month -> 1250), CLOCK);
    assertThat(bills.of(Month.FEBRUARY)).isCloseTo(174.5, offset(1e-9));
    assertThat(bills.total()).isCloseTo(12 * 174.5, offset(1e-8));
    assertThat(TIERS.averagePrice(Use.monthly(month -> 1250), CLOCK).orElseThrow())
        .isCloseTo(174.5 / 1250, offset(1e-12));
  }

  @Test
  void whatIsAddedPaysTheLastTiersItReaches() {
    // On 900 kWh the next 200 cost 100 x 0.12 + 100 x 0.20 = 32; alone they would cost 20.
    Use base = Use.monthly(month -> 900);
    Use unit = Use.monthly(month -> month == Month.JULY ? 200 : 0);
    MonthlyCost added = TIERS.added(base, unit, CLOCK);
    assertThat(added.of(Month.JULY)).isCloseTo(32, offset(1e-9));
    assertThat(added.total()).isCloseTo(32, offset(1e-8));
    assertThat(TIERS.addedPrice(base, unit, CLOCK).orElseThrow()).isCloseTo(0.16, offset(1e-10));
    assertThat(TIERS.added(Use.none(), unit, CLOCK).total()).isCloseTo(20, offset(1e-9));
    assertThat(TIERS.addedPrice(base, Use.none(), CLOCK)).isEmpty();
    assertThat(TIERS.times(1.2).added(base, unit, CLOCK).total()).isCloseTo(38.4, offset(1e-8));
  }

  @Test
  void tiersOfSummerAndWinter() {
    Rate rate =
        new Rate.Tiered(
            List.of(
                new Rate.Tier(Double.POSITIVE_INFINITY, 0.09, WINTER),
                new Rate.Tier(1000, 0.11, SUMMER),
                new Rate.Tier(Double.POSITIVE_INFINITY, 0.15, SUMMER)));
    Use use = Use.monthly(month -> 1200);
    assertThat(rate.energy(use, Month.JANUARY, CLOCK)).isCloseTo(108, offset(1e-9));
    assertThat(rate.energy(use, Month.AUGUST, CLOCK)).isCloseTo(140, offset(1e-9));
  }

  @Test
  void hoursOfUseByTheClockOnTheWall() {
    Tariff tariff =
        new Tariff(
            new Rate.TimeOfUse(
                0.08, List.of(new Rate.Period(0.32, SUMMER, WEEKDAYS, 14 * 60, 20 * 60))),
            0,
            0);
    // 1 kW through July 2025's calendar: 23 weekdays of 6 h at 32 c, 744 - 138 = 606 h at 8 c.
    Use even = Use.hourly(hour -> 1);
    assertThat(tariff.cost(even, CLOCK).of(Month.JULY))
        .isCloseTo(138 * 0.32 + 606 * 0.08, offset(1e-9));
    assertThat(tariff.cost(even, CLOCK).of(Month.JANUARY)).isCloseTo(744 * 0.08, offset(1e-9));
    // 13:00 to 14:00 standard time on Tuesday 1 July is 14:00 to 15:00 by daylight saving.
    int hour = (31 + 28 + 31 + 30 + 31 + 30) * 24 + 13;
    Use one = Use.hourly(each -> each == hour ? 2 : 0);
    assertThat(tariff.cost(one, CLOCK).total()).isCloseTo(0.64, offset(1e-12));
    assertThat(tariff.cost(one, STANDARD).total()).isCloseTo(0.16, offset(1e-12));
    // the same hour on Saturday 5 July
    Use saturday = Use.hourly(each -> each == hour + 96 ? 2 : 0);
    assertThat(tariff.cost(saturday, CLOCK).total()).isCloseTo(0.16, offset(1e-12));
  }

  @Test
  void halfAnHourOfAPeriodCountsHalf() {
    Rate rate =
        new Rate.TimeOfUse(
            0.10,
            List.of(new Rate.Period(0.30, Months.ALL, EnumSet.allOf(DayOfWeek.class), 510, 540)));
    Use one = Use.hourly(hour -> hour == 8 ? 1 : 0); // 8:00 to 9:00, dear from 8:30
    assertThat(rate.energy(one, Month.JANUARY, CLOCK)).isCloseTo(0.20, offset(1e-12));
  }

  @Test
  void demandGoesByTheGreatestHour() {
    Tariff tariff = new Tariff(new Rate.Flat(0.05), 0, 8);
    Use base = Use.hourly(hour -> 1);
    Use burst = Use.hourly(hour -> hour == 12 ? 3 : 0);
    // 3 kWh at 5 c and 3 kW more at 8 $
    assertThat(tariff.added(base, burst, CLOCK).total()).isCloseTo(24.15, offset(1e-8));
  }

  @Test
  void theClockTurnsOnSundays() {
    // 9 March and 2 November 2025 were Sundays
    int march = (31 + 28 + 8) * 24;
    int november = (304 + 1) * 24;
    assertThat(CLOCK.minuteOfWeek(march - 1)).isEqualTo(6 * 1440 - 60);
    assertThat(CLOCK.minuteOfWeek(march)).isEqualTo(6 * 1440 + 60);
    assertThat(CLOCK.minuteOfWeek(november - 1)).isEqualTo(6 * 1440);
    assertThat(CLOCK.minuteOfWeek(november)).isEqualTo(6 * 1440);
    assertThat(STANDARD.minuteOfWeek(march)).isEqualTo(6 * 1440);
    assertThat(STANDARD.minuteOfWeek(0)).isEqualTo(2 * 1440);
    assertThat(YearClock.month(8759)).isEqualTo(Month.DECEMBER);
    assertThatIllegalArgumentException().isThrownBy(() -> YearClock.month(8760));
  }

  @Test
  void aMonthlyUseKeepsItsMonths() {
    Use use = Use.monthly(month -> 100 * month.getValue());
    assertThat(use.of(Month.FEBRUARY)).isCloseTo(200, offset(1e-9));
    assertThat(use.total()).isCloseTo(7800, offset(1e-8));
    assertThat(use.at(0)).isCloseTo(100 / 744.0, offset(1e-12));
  }

  @Test
  void runsOfMonthsMayPassTheYear() {
    assertThat(WINTER.contains(Month.JANUARY)).isTrue();
    assertThat(WINTER.contains(Month.MAY)).isTrue();
    assertThat(WINTER.contains(Month.JUNE)).isFalse();
    assertThat(new Months(Month.MAY, Month.MAY).contains(Month.MAY)).isTrue();
    assertThat(new Months(Month.MAY, Month.MAY).contains(Month.APRIL)).isFalse();
  }

  @Test
  void sillyTariffsAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Tariff.flat(-0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> Tariff.flat(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> new Tariff(new Rate.Flat(1), -1, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Rate.Tiered(List.of(new Rate.Tier(500, 0.1, Months.ALL))))
        .withMessageContaining("end at 500.0 kWh");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Rate.Tiered(
                    List.of(
                        new Rate.Tier(500, 0.1, Months.ALL), new Rate.Tier(400, 0.1, Months.ALL))))
        .withMessageContaining("do not rise");
    Rate.Period noon = new Rate.Period(0.3, Months.ALL, WEEKDAYS, 600, 780);
    Rate.Period late = new Rate.Period(0.3, SUMMER, WEEKDAYS, 779, 900);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Rate.TimeOfUse(0.1, List.of(noon, late)))
        .withMessageContaining("periods 0 and 1 meet");
    assertThatIllegalArgumentException().isThrownBy(() -> Use.hourly(hour -> -1));
  }
}
