package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class HoursTest {
  private final Hours rising = Hours.from(hour -> hour);

  @Test
  void isReadByTheHourEnding() {
    assertThat(rising.at(1)).isEqualTo(1);
    assertThat(rising.at(24)).isEqualTo(24);
    assertThatIllegalArgumentException().isThrownBy(() -> rising.at(0)).withMessageContaining("0");
    assertThatIllegalArgumentException().isThrownBy(() -> rising.at(25));
  }

  @Test
  void knowsMeanAndExtremes() {
    assertThat(rising.mean()).isEqualTo(12.5);
    assertThat(rising.max()).isEqualTo(24);
    assertThat(rising.min()).isEqualTo(1);
    assertThat(rising.argMax()).isEqualTo(24);
    assertThat(Hours.constant(3).argMax()).as("the first of equals").isEqualTo(1);
    assertThat(rising.map(value -> -2 * value).at(3)).isEqualTo(-6);
  }

  @Test
  void cannotBeChangedFromOutside() {
    double[] values = new double[24];
    Hours day = Hours.of(values);
    values[0] = 5;
    day.toArray()[1] = 6;
    assertThat(day).isEqualTo(Hours.constant(0)).hasSameHashCodeAs(Hours.constant(0));
    assertThat(day).isNotEqualTo(rising).hasToString(Hours.constant(0).toString());
  }

  @Test
  void refusesWrongCountsAndWhatIsNoNumber() {
    assertThatIllegalArgumentException().isThrownBy(() -> Hours.of(1, 2, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> Hours.constant(Double.NaN));
  }

  @Test
  void monthsDoAlike() {
    Months months = Months.from(month -> month == 3 ? 20 : month);
    assertThat(months.at(12)).isEqualTo(12);
    assertThat(months.max()).isEqualTo(20);
    assertThat(months.min()).isEqualTo(1);
    assertThat(months.argMax()).isEqualTo(3);
    assertThat(months.mean()).isEqualTo((78 + 17) / 12.0);
    assertThat(months).isEqualTo(Months.from(month -> month == 3 ? 20 : month));
    assertThatIllegalArgumentException().isThrownBy(() -> months.at(0));
    assertThatIllegalArgumentException().isThrownBy(() -> Months.of(1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Months.from(month -> Double.POSITIVE_INFINITY));
  }
}
