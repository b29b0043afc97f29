package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class YearFactsTest {

  @Test
  void waterIsTakenOutOrBroughtIn() {
    assertThat(YearFacts.taken(2000, 300))
        .isEqualTo("The unit takes out 2,000 kWh of heat and 300 kWh as water in the air");
    assertThat(YearFacts.taken(2000, -1500))
        .isEqualTo("The unit takes out 2,000 kWh of heat and adds 1,500 kWh of moisture");
  }
}
