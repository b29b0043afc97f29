package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shopclime.shop.Clock;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Work;

class WallClockTest {

  private static final LocalDate JULY = LocalDate.of(2025, 7, 21);
  private static final LocalDate JANUARY = LocalDate.of(2025, 1, 21);

  private static Work work(String hours, Clock clock) {
    return new Work(ScheduleText.read(hours).orElseThrow(), 3600, clock, 18);
  }

  @Test
  void inSummerTheWallIsAnHourAhead() {
    // 15 U.S.C. 260a: daylight saving from March to November; Arizona and Hawaii keep standard time
    WallClock summer = new WallClock(work("Mon-Fri 8:00-17:00", Clock.DAYLIGHT), JULY);
    assertThat(summer.start(15)).isEqualTo("3 pm");
    assertThat(summer.end(15)).isEqualTo("4 pm");
    assertThat(summer.during(15)).isEqualTo("3 to 4 pm");
    assertThat(summer.during(11)).isEqualTo("11 am to noon");
    assertThat(summer.during(12)).isEqualTo("noon to 1 pm");
    assertThat(summer.during(24)).isEqualTo("midnight to 1 am");
    assertThat(summer.working()).containsExactly(8, 9, 10, 11, 12, 13, 14, 15, 16);
    WallClock arizona = new WallClock(work("Mon-Fri 8:00-17:00", Clock.STANDARD), JULY);
    assertThat(arizona.during(15)).isEqualTo("2 to 3 pm");
    assertThat(arizona.working()).containsExactly(9, 10, 11, 12, 13, 14, 15, 16, 17);
    assertThat(new WallClock(work("Mon-Fri 8:00-17:00", Clock.DAYLIGHT), JANUARY).during(15))
        .isEqualTo("2 to 3 pm");
  }

  @Test
  void timesOfDay() {
    assertThat(List.of(0, 1, 60, 719, 720, 750, 780, 1439, 1440, 1500))
        .extracting(WallClock::text)
        .containsExactly(
            "midnight",
            "12:01 am",
            "1 am",
            "11:59 am",
            "noon",
            "12:30 pm",
            "1 pm",
            "11:59 pm",
            "midnight",
            "1 am");
  }

  @Test
  void aNightShiftIsOneStretch() {
    WallClock clock = new WallClock(work("Mon-Fri 8:00-17:00", Clock.STANDARD), JULY);
    assertThat(WallClock.lived(Set.of(23, 24, 1, 2, 6))).containsExactly(23, 24, 1, 2, 6);
    assertThat(clock.stretches(Set.of(23, 24, 1, 2, 6)))
        .isEqualTo("10 pm to 2 am and 5 am to 6 am");
    assertThat(clock.stretches(Set.of())).isEmpty();
    assertThat(clock.stretches(java.util.stream.IntStream.rangeClosed(1, 24).boxed().toList()))
        .isEqualTo("all day and night");
  }

  @Test
  void noWorkNoHours() {
    assertThat(new WallClock(work("never", Clock.DAYLIGHT), JULY).working()).isEmpty();
  }
}
