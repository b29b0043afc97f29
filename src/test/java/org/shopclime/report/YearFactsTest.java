package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shopclime.plan.HeaterHelp;
import org.shopclime.quantity.UnitSystem;

class YearFactsTest {

  /** Heat in the hours of warming up is a mean of the hour, so it is told that it is too much. */
  @Test
  void theHeatersShareIsToldWithItsLimit() {
    String warmed = YearFacts.help(new HeaterHelp(50, 100, 80, 3000, -5, 5), UnitSystem.SI);
    assertThat(warmed)
        .contains(
            "50 hours with 100 kWh", "warmed up again", "more than it need be", "the heater less");
    String cold = YearFacts.help(new HeaterHelp(50, 100, 0, 3000, -5, 5), UnitSystem.SI);
    assertThat(cold).endsWith("outdoors.").doesNotContain("more than it need be");
    assertThat(YearFacts.help(new HeaterHelp(0, 0, 0, 0, 0, 0), UnitSystem.SI))
        .isEqualTo("No heater has to help it.");
  }

  @Test
  void waterIsTakenOutOrBroughtIn() {
    assertThat(YearFacts.taken(2000, 300))
        .isEqualTo("The unit takes out 2,000 kWh of heat and 300 kWh as water in the air");
    assertThat(YearFacts.taken(2000, -1500))
        .isEqualTo("The unit takes out 2,000 kWh of heat and adds 1,500 kWh of moisture");
  }
}
