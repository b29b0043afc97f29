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
        "daily 7:05-24:00 | daily 7:05-24:00",
        "Mon-Fri 8 am to 5 pm | Mon-Fri 8:00-17:00",
        "Mon to Sat 8:00 a.m. – 12:30 p.m., 1pm-5:30PM 50 % | Mon-Sat 8:00-12:30, 13:00-17:30 50 %",
        "daily 6pm-12am | daily 18:00-24:00",
        "daily 12am-12pm | daily 0:00-12:00"
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
        "Someday 8:00-12:00",
        "Mon-Fri 13pm-14pm",
        "Mon-Fri 0am-8am"
      })
  void nothingElseIsTaken(String typed) {
    assertThat(ScheduleText.read(typed)).isEmpty();
  }

  /** The complaint names what was missed, where the text is nearly a schedule. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Mon-Fri 8:00-25:00 | times from 0:00 to 24:00",
        "Mon-Fri 9-5 | periods that end after they begin",
        "daily 22:00-6:00 | for work past midnight two of them",
        "8-17 | the days before the times, such as \"Mon-Fri 8-17\"",
        "sometimes | \"always\", \"never\", \"work\""
      })
  void whatWasMissedIsTold(String typed, String part) {
    assertThat(ScheduleText.read(typed)).isEmpty();
    assertThat(ScheduleText.takes(typed)).contains(part);
  }

  /** Every schedule that a complaint gives as an example is taken. */
  @Test
  void whatIsOfferedIsTaken() {
    for (String wrong : List.of("Mon-Fri 8:00-25:00", "8-17")) {
      String takes = ScheduleText.takes(wrong);
      String example = takes.substring(takes.indexOf('"') + 1, takes.lastIndexOf('"'));
      assertThat(ScheduleText.read(example)).as(example).isPresent();
    }
    assertThat(ScheduleText.read("daily 0:00-2:00, 18:00-24:00")).isPresent();
  }
}
