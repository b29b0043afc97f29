package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Schedules as people write them. */
class ScheduleTextTest {

  @Test
  void daysAndPeriodsAreRead() {
    assertThat(ScheduleText.read("Mon-Wed, Sat 8:00-12:00, 13:00-17:30 50 %"))
        .contains(
            new Schedule(
                false,
                Set.of(
                    DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY),
                List.of(new Schedule.Period(480, 720, 1), new Schedule.Period(780, 1050, 0.5))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ALWAYS | always",
        "daily 0:00-24:00 | always",
        " never | never",
        "Work | work",
        "monday-friday 8-17 | Mon-Fri 8:00-17:00",
        "Fri-Mon 8:00-9:00 | Mon,Fri-Sun 8:00-9:00",
        "Tue, Thu 18:00–21:00 | Tue,Thu 18:00-21:00",
        "Sat-Sun 9:00-10:00 25% | Sat,Sun 9:00-10:00 25 %",
        "daily 7:05-24:00 | daily 7:05-24:00"
      })
  void spellingsComeDownToOne(String typed, String written) {
    assertThat(ScheduleText.write(ScheduleText.read(typed).orElseThrow())).isEqualTo(written);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "sometimes",
        "8:00-17:00",
        "Mon-Fri",
        "Mo-Fr 8:00-17:00",
        "Mon-Wed-Fri 8:00-17:00",
        "Mon-Fri 17:00-8:00",
        "Mon-Fri 8:00-8:00",
        "Mon-Fri 8:00-24:01",
        "Mon-Fri 8:60-9:00",
        "Mon-Fri 8:00-9:60",
        "Mon-Fri 8:00-17:00 150 %",
        "Mon-Fri 8:00-17:00 half",
        "Mon-Fri 8:00-12:00,",
        "Someday 8:00-12:00"
      })
  void nothingElseIsTaken(String typed) {
    assertThat(ScheduleText.read(typed)).isEmpty();
  }
}
